import { describe, expect, it } from 'vitest';
import { rowsOf, setOf } from './raw-readings.js';

describe('readings between file and field', () => {
  it('leaves untouched readings as the file had them', () => {
    const set = { instrument: 'inside-micrometer-rod', valuesMm: [35.012, '35,015'] };
    expect(setOf(rowsOf(set, 'mm', '.'), set.instrument, 'mm')).toEqual(set);
    const points = { instrument: 'inside-micrometer-rod', points: [{ valueMm: 35.012, angleDeg: '0', depthMm: '2' }] };
    expect(setOf(rowsOf(points, 'mm', '.'), points.instrument, 'mm')).toEqual(points);
  });

  it('shows numbers with the decimal mark in use, and leaves them as the file had them', () => {
    const set = { instrument: 'x', points: [{ valueMm: 35.012, angleDeg: 22.5, depthMm: '2.5' }] };
    const rows = rowsOf(set, 'mm', ',');
    expect(rows).toMatchObject([{ value: '35,012', angle: '22,5', depth: '2.5' }]);
    expect(setOf(rows, 'x', 'mm')?.points?.[0]?.valueMm).toBe(35.012);
  });

  it('says that a bare number is in millimetres where the form is in inches', () => {
    const set = { instrument: 'x', valuesMm: [35.012, '35.015', '1 3/8 in'] };
    const rows = rowsOf(set, 'in', '.');
    expect(rows.map(({ value }) => value)).toEqual(['35.012 mm', '35.015 mm', '1 3/8 in']);
    expect(setOf(rows, 'x', 'in')).toEqual(set);
  });

  it('drops cleared readings, and the set with the last of them', () => {
    const rows = rowsOf({ instrument: 'x', valuesMm: [1, 2] }, 'mm', '.');
    expect(setOf([{ ...rows[0]!, value: '', raw: undefined }, rows[1]!], 'x', 'mm')).toEqual({ instrument: 'x', valuesMm: [2] });
    expect(setOf([], 'x', 'mm')).toBeUndefined();
  });

  it('keeps a text that cannot be read, so that it can be mended', () => {
    expect(setOf([{ value: '35,o2', angle: '', depth: '' }], 'x', 'mm')).toEqual({ instrument: 'x', valuesMm: ['35,o2'] });
  });
});
