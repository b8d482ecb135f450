import { describe, expect, it } from 'vitest';
import { parseInchFitDesignation } from './parse-inch-fit-designation.js';
import { parseFitDesignation } from './parse-fit-designation.js';
import { parseZoneDesignation } from './parse-zone-designation.js';

describe('fit designation', () => {
  it.each(['25 H7/p6', '25H7/p6', 'ø25 H7/p6', '⌀ 25 mm H7 / p6', '25,0 H 7 / p 6', '25 H7-p6', '25 H7 p6', ' 25mmH7/p6 '])('reads %j', (text) => {
    expect(parseFitDesignation(text)).toEqual({ nominalMm: 25, hole: 'H7', shaft: 'p6' });
  });

  it.each(['1 in H7/p6', '1" H7/p6', '1inH7/p6', '25.4 H7/p6', '2 1/2 - 1 1/2 in H7/p6'])('reads inches in %j', (text) => {
    expect(parseFitDesignation(text)).toEqual({ nominalMm: 25.4, hole: 'H7', shaft: 'p6' });
  });

  it('reads letters of two signs and the finest grades', () => {
    expect(parseFitDesignation('2,5 JS01/za10')).toEqual({ nominalMm: 2.5, hole: 'JS01', shaft: 'za10' });
  });

  it.each([
    ['', 'invalid-input', ''],
    ['25', 'invalid-input', ''],
    ['25 H7', 'invalid-input', ''],
    ['H7/p6', 'invalid-input', 'nominalMm'],
    ['25 p6/H7', 'invalid-input', 'hole'],
    ['25 H7/G6', 'invalid-input', 'shaft'],
    ['25 h7/g6', 'invalid-input', 'hole'],
    ['x H7/p6', 'invalid-input', 'nominalMm'],
    ['25 H7/q6', 'no-such-class', 'shaft'],
    ['25 QQ7/h6', 'no-such-class', 'hole'],
    ['25 H70/p6', 'no-such-class', 'hole'],
    ['25 kg H7/p6', 'invalid-input', 'nominalMm'],
    [`${'2'.repeat(90)} H7/p6`, 'invalid-input', ''],
  ])('refuses %j as %s at %j', (text, code, path) => {
    expect(() => parseFitDesignation(text)).toThrow(expect.objectContaining({ code, path }) as Error);
  });

  it('says that the hole comes first', () => {
    expect(() => parseFitDesignation('25 p6/H7')).toThrow('the hole comes first: H7/p6');
  });
});

describe('inch fit designation', () => {
  it.each(['3/4 FN2', '3/4 in FN2', '0.75FN2', '3/4" fn 2', '19.05 mm FN2', ' .75 in FN2 '])('reads %j', (text) => {
    expect(parseInchFitDesignation(text)).toEqual({ nominalIn: 0.75, fitClass: 'FN2' });
  });

  it.each([
    ['FN2', 'nominalIn'],
    ['3/4 H7', ''],
    ['3/4 bar FN2', 'nominalIn'],
  ])('refuses %j at %j', (text, path) => {
    expect(() => parseInchFitDesignation(text)).toThrow(expect.objectContaining({ code: 'invalid-input', path }) as Error);
  });
});

describe('zone designation', () => {
  it.each(['25 p6', '25p6', 'ø25 p6', '25.0 mm p 6', ' 25 p6 '])('reads %j', (text) => {
    expect(parseZoneDesignation(text)).toEqual({ nominalMm: 25, toleranceClass: 'p6' });
  });

  it('reads fractions of an inch', () => {
    expect(parseZoneDesignation('1 3/8 in h11')).toEqual({ nominalMm: 34.925, toleranceClass: 'h11' });
    expect(parseZoneDesignation('3/4" h6')).toEqual({ nominalMm: 19.05, toleranceClass: 'h6' });
  });

  it('tells the class m6 from the unit of length', () => {
    expect(parseZoneDesignation('25 mm m6')).toEqual({ nominalMm: 25, toleranceClass: 'm6' });
    expect(parseZoneDesignation('25mmjs6')).toEqual({ nominalMm: 25, toleranceClass: 'js6' });
  });

  it.each([
    ['25', 'invalid-input', ''],
    ['p6', 'invalid-input', 'nominalMm'],
    ['25 H7/p6', 'invalid-input', 'toleranceClass'],
    ['25 IT7', 'invalid-input', 'toleranceClass'],
    ['25 q6', 'no-such-class', 'toleranceClass'],
    ['25 zz7', 'invalid-input', 'toleranceClass'],
    ['25 bar h7', 'invalid-input', 'nominalMm'],
  ])('refuses %j as %s at %j', (text, code, path) => {
    expect(() => parseZoneDesignation(text)).toThrow(expect.objectContaining({ code, path }) as Error);
  });
});
