import { describe, expect, it } from 'vitest';
import { understandLength } from './understand-length.js';

describe('what a length field makes of a text', () => {
  it('says the value where a unit or a fraction had to be read, the unit alone behind plain millimetres', () => {
    expect(understandLength('3/4 in', 'mm', '.')).toEqual({ value: 19.05, stored: '3/4 in', shown: '= 19.05\u00a0mm' });
    expect(understandLength('20', 'mm', '.')).toEqual({ value: 20, stored: '20', shown: 'mm' });
    expect(understandLength('19,050', 'mm', '.').value).toBe(19.05);
    expect(understandLength('25 + 0.03', 'mm', ',').shown).toBe('= 25,03\u00a0mm');
    expect(understandLength('100 cm', 'mm', '.').shown).toBe('= 1000\u00a0mm');
  });

  it('says inches in an inch field', () => {
    expect(understandLength('1 1/8', 'in', '.').shown).toBe('= 1.125\u00a0in');
    expect(understandLength('20 mm', 'in', ',').shown).toBe('= 0,7874\u00a0in');
    expect(understandLength('0.75', 'in', '.').shown).toBe('in');
    expect(understandLength('0.75 in', 'in', '.').shown).toBe('');
    expect(understandLength('20 mm', 'mm', '.').shown).toBe('');
  });

  it('stores a bare number of an inch field with its unit, since a document counts bare numbers as millimetres', () => {
    expect(understandLength('7/16', 'in', '.')).toMatchObject({ value: 11.1125, stored: '7/16 in' });
    expect(understandLength('0.5 in', 'in', '.').stored).toBe('0.5 in');
    expect(understandLength('12 mm', 'in', '.').stored).toBe('12 mm');
  });

  it('refuses what is no length', () => {
    expect(() => understandLength('seven', 'mm', '.')).toThrow(/understood are/);
  });
});
