import { describe, expect, it } from 'vitest';
import { fit } from './fit.js';

describe('fit', () => {
  it('gives a clearance fit', () => {
    expect(fit.run({ nominalMm: 25, hole: 'H7', shaft: 'g6' })).toMatchObject({
      kind: 'clearance',
      basis: 'hole-basis',
      maximumClearanceUm: 41,
      minimumClearanceUm: 7,
      maximumInterferenceUm: 0,
      minimumInterferenceUm: 0,
      fitToleranceUm: 34,
    });
  });

  it('gives a transition fit', () => {
    expect(fit.run({ nominalMm: 25, hole: 'H7', shaft: 'k6' })).toMatchObject({
      kind: 'transition',
      maximumClearanceUm: 19,
      minimumClearanceUm: 0,
      maximumInterferenceUm: 15,
      minimumInterferenceUm: 0,
    });
  });

  it('gives an interference fit with both zones', () => {
    expect(fit.run({ nominalMm: 25, hole: 'H7', shaft: 'p6' })).toMatchObject({
      kind: 'interference',
      maximumInterferenceUm: 35,
      minimumInterferenceUm: 1,
      holeZone: { toleranceClass: 'H7', upperLimitDeviationUm: 21, lowerLimitDeviationUm: 0 },
      shaftZone: { toleranceClass: 'p6', upperLimitDeviationUm: 35, lowerLimitDeviationUm: 22 },
    });
  });

  it('counts a fit that may just touch as clearance', () => {
    expect(fit.run({ nominalMm: 25, hole: 'H7', shaft: 'h6' })).toMatchObject({ kind: 'clearance', minimumClearanceUm: 0, basis: 'hole-basis' });
  });

  it('counts a fit that always at least touches as interference', () => {
    expect(fit.run({ nominalMm: 2, hole: 'H6', shaft: 'p5' })).toMatchObject({ kind: 'interference', minimumInterferenceUm: 0, maximumInterferenceUm: 10 });
  });

  it('knows the system from the letter H or h', () => {
    const basisOf = (hole: string, shaft: string) => fit.run({ nominalMm: 25, hole, shaft }).basis;
    expect([basisOf('H8', 'f7'), basisOf('P7', 'h6'), basisOf('F8', 'k6')]).toEqual(['hole-basis', 'shaft-basis', 'none']);
  });

  it('says which part was given the class of the other', () => {
    expect(() => fit.run({ nominalMm: 25, hole: 'h7', shaft: 'p6' })).toThrow(
      expect.objectContaining({ code: 'invalid-input', path: 'hole', allowed: 'a class with capital letters, e.g. H7' }) as Error,
    );
    expect(() => fit.run({ nominalMm: 25, hole: 'H7', shaft: 'P6' })).toThrow(
      expect.objectContaining({ code: 'invalid-input', path: 'shaft', allowed: 'a class with small letters, e.g. p6' }) as Error,
    );
  });

  it('says which part has a class that the standard does not give', () => {
    expect(() => fit.run({ nominalMm: 20, hole: 'H7', shaft: 't6' })).toThrow(expect.objectContaining({ code: 'no-such-class', path: 'shaft' }) as Error);
  });
});
