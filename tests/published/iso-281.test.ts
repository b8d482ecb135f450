import { describe, expect, it } from 'vitest';
import { ratingLife } from '@seatwright/core/bearing';

/** One textbook example, and the equations of the standard (from memory) worked by hand at single points. */
describe('rating life, ISO 281', () => {
  it.each([
    // By hand: 30 kN at 2 kN, balls: 15^3 = 3375 million turns.
    [{ basicDynamicLoadRatingN: 30_000, equivalentLoadN: 2000, kind: 'ball', speedRpm: 1000 }, 3375],
    // By hand: rollers (C/P)^(10/3); C/P = 8: 8^(10/3) = 2^10 = 1024 million turns.
    [{ basicDynamicLoadRatingN: 80_000, equivalentLoadN: 10_000, kind: 'roller', speedRpm: 500 }, 1024],
    // A load doubled: an eighth of the life for balls.
    [{ basicDynamicLoadRatingN: 30_000, equivalentLoadN: 4000, kind: 'ball', speedRpm: 1000 }, 421.875],
  ] as const)('%o: %d million turns', (input, million) => {
    expect(ratingLife.run(input).basicRatingLifeMillionRev).toBeCloseTo(million, 6);
  });

  it('Shigley, 8th edition, example 11-1 (from memory): 5 000 h at 1 725 rpm under 400 lbf ask for a rating of 3 211 lbf, 14.3 kN', () => {
    const lbf = 4.4482216152605;
    expect(ratingLife.run({ basicDynamicLoadRatingN: 3211 * lbf, equivalentLoadN: 400 * lbf, kind: 'ball', speedRpm: 1725 }).basicRatingLifeHours / 1000).toBeCloseTo(5, 2);
  });

  it('hours: 10⁶·L/(60·n); 3 375 million turns at 1 000 rpm are 56 250 h', () => {
    expect(ratingLife.run({ basicDynamicLoadRatingN: 30_000, equivalentLoadN: 2000, kind: 'ball', speedRpm: 1000 }).basicRatingLifeHours).toBeCloseTo(56_250, 6);
  });

  it('equivalent load of deep groove balls at the rows of table 3: X 0.56, Y by f0·Fa/C0', () => {
    for (const [ratio, e, y] of [[0.172, 0.19, 2.3], [0.689, 0.26, 1.71], [1.38, 0.3, 1.45], [3.45, 0.38, 1.15], [6.89, 0.44, 1]] as const) {
      const axialLoadN = (ratio * 10_000) / 14;
      const at = (radialLoadN: number) => ratingLife.run({ basicDynamicLoadRatingN: 20_000, basicStaticLoadRatingN: 10_000, f0Factor: 14, radialLoadN, axialLoadN, kind: 'ball', speedRpm: 1000 }).equivalentLoadN;
      expect(at((axialLoadN / e) * 1.05)).toBeCloseTo((axialLoadN / e) * 1.05, 6);
      expect(at(axialLoadN / 2)).toBeCloseTo(0.56 * (axialLoadN / 2) + y * axialLoadN, 6);
    }
  });

  it('viscosity wanted: 45 000·n^−0.83·D^−0.5 below 1 000 rpm, 4 500·n^−0.5·D^−0.5 from there', () => {
    const at = (speedRpm: number, meanDiameterMm: number) => ratingLife.run({ basicDynamicLoadRatingN: 1000, equivalentLoadN: 100, kind: 'ball', speedRpm, meanDiameterMm }).nominalViscosityMm2PerS;
    expect(at(3000, 70)).toBeCloseTo(9.82, 2);
    expect(at(1000, 100)).toBeCloseTo(14.23, 2);
    expect(at(100, 100)).toBeCloseTo(98.45, 1);
  });

  it('a_ISO of balls and rollers at single points, worked by hand from the equations of 9.3.3.4', () => {
    // ball, κ 1, eC·Cu/P 0.1: 0.1·[1 − (2.5671 − 1.9987)^0.83·0.1^(1/3)]^−9.3: 0.5684^0.83 = 0.6257, ·0.46416 = 0.2904 → 0.7096^−9.3·0.1 = 2.43
    const base = { basicDynamicLoadRatingN: 10_000, equivalentLoadN: 1000, speedRpm: 1000, meanDiameterMm: 100, fatigueLoadLimitN: 1000, contaminationFactor: 0.1 } as const;
    const viscosityMm2PerS = 4500 * 1000 ** -0.5 * 100 ** -0.5;
    expect(ratingLife.run({ ...base, kind: 'ball', viscosityMm2PerS }).lifeModificationFactor?.low).toBeCloseTo(2.43, 2);
    // roller, κ 1, 0.1: 0.1·[1 − (1.5859 − 1.2348)·0.1^0.4]^−9.185: 0.3511·0.39811 = 0.13978 → 0.86022^−9.185·0.1 = 0.399
    expect(ratingLife.run({ ...base, kind: 'roller', viscosityMm2PerS }).lifeModificationFactor?.low).toBeCloseTo(0.399, 3);
  });

  it('a1 of both editions: 1 at 90 %, 0.64 at 95 %, 0.25 at 99 % (2007)', () => {
    const at = (reliabilityPercent: number) => ratingLife.run({ basicDynamicLoadRatingN: 1000, equivalentLoadN: 100, kind: 'ball', speedRpm: 100, reliabilityPercent }).reliabilityFactor;
    expect([90, 95, 96, 97, 98, 99].map(at)).toEqual([1, 0.64, 0.55, 0.47, 0.37, 0.25]);
  });
});
