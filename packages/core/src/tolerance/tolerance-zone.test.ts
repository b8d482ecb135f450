import { describe, expect, it } from 'vitest';
import { toleranceZone } from './tolerance-zone.js';

describe('tolerance zone', () => {
  it('gives the limits of a shaft', () => {
    expect(toleranceZone.compute({ nominalMm: 25, toleranceClass: 'p6' })).toEqual({
      nominalMm: 25,
      toleranceClass: 'p6',
      kind: 'shaft',
      letter: 'p',
      grade: '6',
      upperLimitDeviationUm: 35,
      lowerLimitDeviationUm: 22,
      standardToleranceUm: 13,
      fundamentalDeviationUm: 22,
      upperLimitOfSizeMm: 25.035,
      lowerLimitOfSizeMm: 25.022,
      held: 'page',
      assumptions: [],
      notChecked: [],
    });
  });

  it('reads spaces in a class and gives it back as the standard writes it', () => {
    expect(toleranceZone.run({ nominalMm: 25, toleranceClass: ' JS 7 ' })).toMatchObject({ toleranceClass: 'JS7', upperLimitDeviationUm: 10.5, lowerLimitDeviationUm: -10.5 });
  });

  it('takes a length as people write it', () => {
    expect(toleranceZone.run({ nominalMm: '1 3/8 in', toleranceClass: 'h11' })).toMatchObject({ nominalMm: 34.925, lowerLimitDeviationUm: -160, lowerLimitOfSizeMm: 34.765 });
  });

  it('tells grade 01 from grade 1 and grade 0', () => {
    const widths = ['h01', 'h0', 'h1'].map((toleranceClass) => toleranceZone.run({ nominalMm: 2, toleranceClass }).lowerLimitDeviationUm);
    expect(widths).toEqual([-0.3, -0.5, -0.8]);
  });

  it('settles a nominal size with the noise of a conversion before the table is read', () => {
    expect(toleranceZone.run({ nominalMm: 30.0000000001, toleranceClass: 'H7' })).toMatchObject({ nominalMm: 30, upperLimitDeviationUm: 21 });
    expect(toleranceZone.run({ nominalMm: 30.001, toleranceClass: 'H7' })).toMatchObject({ upperLimitDeviationUm: 25 });
  });

  it('never answers with minus zero', () => {
    const { lowerLimitDeviationUm } = toleranceZone.run({ nominalMm: 25, toleranceClass: 'H7' });
    expect(Object.is(lowerLimitDeviationUm, 0)).toBe(true);
  });

  it.each([
    ['t6', 20, 't is given over 24, up to and including 3150 mm only; nearest: s6, u6'],
    ['j9', 25, 'j is given in grades 5 to 8 only; nearest: j7, h9, js9'],
    ['j8', 25, 'j8 is given over 0, up to and including 3 mm only; nearest: j7, h8, js8'],
    ['K9', 25, 'K above grade 8 is given over 0, up to and including 3 mm only; nearest: K8, JS9, M9'],
    ['a1', 0.9, 'a is not used up to and including 1 mm; nearest: c1'],
    ['EF8', 60, 'EF is given over 0, up to and including 50 mm only; nearest: E8, F8'],
    ['za7', 600, 'za is given over 0, up to and including 500 mm only; nearest: u7'],
    ['H01', 600, 'grade 01 is given up to and including 500 mm only; nearest: H1'],
    ['N9', 1, 'N above grade 8 is not used up to and including 1 mm; nearest: N8, M9, P9'],
    ['h14', 1, 'grades 14 to 18 are not used up to and including 1 mm; nearest: h13'],
    ['H19', 25, 'grades run 01, 0, 1 to 18; nearest: H18'],
    ['q7', 25, 'ISO 286 has no letter q; nearest: p7, r7'],
  ])('%s at %d mm is not given, and the error says why', (toleranceClass, nominalMm, why) => {
    expect(thrown({ nominalMm, toleranceClass })).toMatchObject({
      code: 'no-such-class',
      path: 'toleranceClass',
      message: `toleranceClass: no class "${toleranceClass}": ${why}`,
    });
  });

  it.each(['', 'H', '7', 'Js7', 'IT7', 'H7/p6', 'banana', 'h007', 'XY7', '__proto__', 'constructor'])('does not take %j for a class', (toleranceClass) => {
    expect(thrown({ nominalMm: 25, toleranceClass })).toMatchObject({ code: 'invalid-input', path: 'toleranceClass' });
  });

  it.each([0, -5, Number.NaN, Infinity, 3150.001, '25 bar', '0', '4 m', null])('does not take %j for a nominal size', (nominalMm) => {
    expect(thrown({ nominalMm, toleranceClass: 'H7' })).toMatchObject({ code: 'invalid-input', path: 'nominalMm' });
  });

  it('says that the table ends when asked beyond it directly', () => {
    expect(() => toleranceZone.compute({ nominalMm: 4000, toleranceClass: 'H7' })).toThrow(
      'nominalMm: 4000 is outside ISO 286-1 (over 0, up to and including 3150 mm)',
    );
  });

  it('marks the zone by its least trusted cell', () => {
    expect(toleranceZone.run({ nominalMm: 25, toleranceClass: 'j7' }).held).toBe('memory');
    expect(toleranceZone.run({ nominalMm: 25, toleranceClass: 'K7' }).held).toBe('computed');
  });

  it('says that no increment is given for holes finer than grade 3', () => {
    expect(toleranceZone.run({ nominalMm: 25, toleranceClass: 'M2' }).assumptions).toMatchObject([{ name: 'deltaUm', effect: 'increment-not-given-below-it3' }]);
  });
});

function thrown(input: unknown): unknown {
  try {
    toleranceZone.run(input);
  } catch (error) {
    return error;
  }
  return undefined;
}
