import { describe, expect, test } from 'vitest';
import { expectWorkingHolds } from '../../../../tests/laws/internal/evaluate-working.js';
import { ratingLife, type RatingLifeInput } from './rating-life.js';

/** L10 = (10)³ = 1000 million turns, 16 667 h at 1000 rpm (ISO 281, clause 5). */
const balls: RatingLifeInput = { basicDynamicLoadRatingN: 20_000, equivalentLoadN: 2000, kind: 'ball', speedRpm: 1000 };
const byLoads: RatingLifeInput = { basicDynamicLoadRatingN: 20_000, basicStaticLoadRatingN: 10_000, f0Factor: 14, radialLoadN: 2000, kind: 'ball', speedRpm: 1000 };
const lubricated: RatingLifeInput = { ...balls, meanDiameterMm: 100, viscosityMm2PerS: 15, fatigueLoadLimitN: 1000, contaminationFactor: 0.5 };

const look = (input: RatingLifeInput) => ratingLife.compute(input);
const told = (input: RatingLifeInput) => look(input).findings.map(({ code, severity }) => `${code} ${severity}`);
const working = (input: RatingLifeInput) => {
  const steps = ratingLife.explain(input, look(input));
  expectWorkingHolds(steps);
  return steps.map(({ symbol }) => symbol).join(' ');
};

describe('the load', () => {
  test('without any load there is no life to rate, and rollers under axial load are the maker’s matter', () => {
    expect(() => ratingLife.run({ ...byLoads, radialLoadN: 0 })).toThrow(/radialLoadN, axialLoadN|without any load/);
    expect(() => ratingLife.run({ basicDynamicLoadRatingN: 20_000, radialLoadN: 2000, axialLoadN: 1, kind: 'roller', speedRpm: 1000 })).toThrow(/axialLoadN/);
    expect(ratingLife.run({ basicDynamicLoadRatingN: 20_000, radialLoadN: 2000, axialLoadN: 0, kind: 'roller', speedRpm: 1000 }).equivalentLoadN).toBe(2000);
    expect(look({ ...byLoads, radialLoadN: 0, axialLoadN: 500 }).equivalentLoadN).toBeGreaterThan(500);
  });

  test('one load or the other, one cleanliness or the other', () => {
    expect(() => ratingLife.run({ ...balls, radialLoadN: 10 })).toThrow(/equivalentLoadN/);
    expect(() => ratingLife.run({ basicDynamicLoadRatingN: 20_000, kind: 'ball', speedRpm: 1000 })).toThrow(/equivalentLoadN/);
    expect(() => ratingLife.run({ ...lubricated, contamination: 'normal cleanliness' })).toThrow(/contamination/);
  });

  // ISO 281: over half of C the formula is not meant for it.
  test.each([[10_000, false], [10_001, true]])('a load of %d N of 20 000: warned %s', (equivalentLoadN, isWarned) => {
    expect(told({ ...balls, equivalentLoadN }).includes('load-beyond-rating-life care')).toBe(isWarned);
  });
});

describe('static safety', () => {
  // ISO 76: P0 = max(Fr, 0.6·Fr + 0.5·Fa) for deep groove balls; asked for 1 with balls, 1.5 with rollers.
  test('the static load of balls counts the axial load, that of rollers the radial alone', () => {
    expect(look({ ...byLoads, axialLoadN: 1000 }).equivalentStaticLoadN).toBe(2000);
    expect(look({ ...byLoads, axialLoadN: 4000 }).equivalentStaticLoadN).toBe(3200);
    expect(look({ ...byLoads, axialLoadN: 4000 }).staticSafetyFactor).toBeCloseTo(10_000 / 3200, 12);
    expect(look({ basicDynamicLoadRatingN: 20_000, basicStaticLoadRatingN: 10_000, radialLoadN: 2000, kind: 'roller', speedRpm: 1000 }).equivalentStaticLoadN).toBe(2000);
  });

  test.each([
    ['ball', 10_000, 'static-safety-enough good'], ['ball', 10_001, 'static-safety-low care'],
    ['roller', 6666, 'static-safety-enough good'], ['roller', 6667, 'static-safety-low care'],
  ] as const)('%s, %d N on a rating of 10 000: %s', (kind, radialLoadN, expected) => {
    expect(told({ basicDynamicLoadRatingN: 1_000_000, basicStaticLoadRatingN: 10_000, radialLoadN, kind, speedRpm: 1000 })).toEqual([expected]);
  });

  test('nothing is said where the radial load or the rating is not given, or nothing presses', () => {
    expect(look({ ...balls, basicStaticLoadRatingN: 10_000 })).toMatchObject({ equivalentStaticLoadN: null, staticSafetyFactor: null });
    expect(look({ basicDynamicLoadRatingN: 20_000, radialLoadN: 2000, kind: 'ball', speedRpm: 1000 }).staticSafetyFactor).toBeNull();
  });
});

describe('the service interval', () => {
  // (20 000/2000)³·10⁶/(60·1000) = 16 666.67 h.
  test.each([[16_666, 'life-outlasts-interval good'], [16_667, 'life-shorter-than-interval bad']])('%d h: %s', (serviceIntervalHours, expected) => {
    expect(told({ ...balls, serviceIntervalHours })).toEqual([expected]);
    expect(look({ ...balls, serviceIntervalHours }).serviceIntervalsCount).toBeCloseTo(1e9 / 60_000 / serviceIntervalHours, 9);
  });

  test('the very hour is enough; without an interval nothing is counted', () => {
    expect(told({ ...balls, speedRpm: 10_000, serviceIntervalHours: 1e9 / 600_000 })).toEqual(['life-outlasts-interval good']);
    expect(told(balls)).toEqual([]);
    expect(look(balls).serviceIntervalsCount).toBeNull();
  });

  test('reliability shortens it: a1 = 0.64 at 95 % (ISO 281, table 12)', () => {
    expect(told({ ...balls, reliabilityPercent: 95, serviceIntervalHours: 10_666 })).toEqual(['life-outlasts-interval good']);
    expect(told({ ...balls, reliabilityPercent: 95, serviceIntervalHours: 10_667 })).toEqual(['life-shorter-than-interval bad']);
    expect(look(balls).assumptions.map(({ name }) => name)).toEqual(['reliability-90']);
    expect(look({ ...balls, reliabilityPercent: 90 }).assumptions).toEqual([]);
  });
});

describe('film and cleanliness', () => {
  // ν1 = 4500·1000^−0.5·100^−0.5 = 14.23 mm²/s (ISO 281, 9.3.3.1).
  const wanted = 4500 * 1000 ** -0.5 * 100 ** -0.5;
  test.each([[wanted, false], [wanted * 0.999, true]])('oil of %d mm²/s: thin %s', (viscosityMm2PerS, isThin) => {
    expect(told({ ...lubricated, viscosityMm2PerS }).includes('oil-film-thin care')).toBe(isThin);
    expect(look({ ...lubricated, viscosityMm2PerS }).viscosityRatio).toBeCloseTo(viscosityMm2PerS / wanted, 12);
  });

  test('each part that is missing leaves the modified life open', () => {
    expect(look(lubricated).modifiedRatingLifeHours).not.toBeNull();
    expect(look(lubricated).notChecked).toEqual(['relubrication-interval', 'mounting-and-dirt']);
    for (const key of ['meanDiameterMm', 'viscosityMm2PerS', 'fatigueLoadLimitN', 'contaminationFactor'] as const) {
      const { [key]: _left, ...rest } = lubricated;
      expect(look(rest).modifiedRatingLifeHours).toBeNull();
      expect(look(rest).notChecked).toContain('modified-life');
    }
  });

  test('a level of cleanliness gives a span, told as taken for granted; the low end rates', () => {
    const { contaminationFactor: _factor, ...rest } = lubricated;
    const span = look({ ...rest, contamination: 'slight contamination', serviceIntervalHours: 1 });
    const { low = 0, high = 0 } = span.modifiedRatingLifeHours ?? {};
    expect(low).toBeLessThan(high);
    expect(low).toBeCloseTo((span.lifeModificationFactor?.low ?? 0) * span.basicRatingLifeHours, 6);
    expect(high).toBeCloseTo((span.lifeModificationFactor?.high ?? 0) * span.basicRatingLifeHours, 6);
    expect(span.serviceIntervalsCount).toBeCloseTo(low, 6);
    expect(span.assumptions.map(({ name }) => name)).toEqual(['reliability-90', 'contamination-factor']);
    expect(span.assumptions[1]).toMatchObject({ unit: '', effect: 'rated-life' });
    const { meanDiameterMm: _diameter, ...without } = { ...rest, contamination: 'slight contamination' as const };
    expect(look(without).assumptions.map(({ name }) => name)).toEqual(['reliability-90']);
  });

  test('speed times mean diameter', () => {
    expect(look(lubricated).speedFactorMmRpm).toBe(100_000);
    expect(look(balls).speedFactorMmRpm).toBeNull();
  });
});

describe('when to grease again', () => {
  // t = k·(14·10⁶/(n·√d) − 4·d), k = 10 and 5; half for every 15 K over 70 °C (handbook, held from memory).
  const grease = (more: Partial<RatingLifeInput> = {}) => look({ ...balls, boreMm: 25, ...more }).relubricationHours;
  test('balls and rollers, cool and hot; the careful end is half', () => {
    expect(grease()).toEqual({ low: 13_500, high: 27_000 });
    expect(grease({ kind: 'roller' })).toEqual({ low: 6750, high: 13_500 });
    expect(grease({ greaseTemperatureC: 70 })?.high).toBe(27_000);
    expect(grease({ greaseTemperatureC: 40 })?.high).toBe(27_000);
    expect(grease({ greaseTemperatureC: 85 })?.high).toBeCloseTo(13_500, 9);
    expect(grease({ greaseTemperatureC: 100 })?.high).toBeCloseTo(6750, 9);
  });

  test('beyond the speed of the rule, or without a bore, nothing is said', () => {
    // 14·10⁶/(n·5) = 100 at 28 000 rpm.
    expect(grease({ speedRpm: 28_000 })).toBeNull();
    expect(grease({ speedRpm: 27_999 })?.high).toBeGreaterThan(0);
    expect(look(balls).relubricationHours).toBeNull();
    expect(look(balls).notChecked).toEqual(['relubrication-interval', 'mounting-and-dirt', 'modified-life']);
    expect(look({ ...balls, boreMm: 25 }).notChecked).toEqual(['mounting-and-dirt', 'modified-life']);
  });
});

test('the working shows what was computed, and no more', () => {
  expect(working(balls)).toBe('L10 L10h');
  expect(working({ ...byLoads, axialLoadN: 1000 })).toBe('P L10 L10h');
  expect(working({ ...balls, meanDiameterMm: 100 })).toBe('L10 L10h nu_1');
  expect(working({ ...balls, meanDiameterMm: 100, viscosityMm2PerS: 15 })).toBe('L10 L10h nu_1 kappa');
  expect(working({ ...balls, viscosityMm2PerS: 15 })).toBe('L10 L10h');
  expect(working({ ...balls, boreMm: 25 })).toBe('L10 L10h t_f');
  expect(working({ ...balls, kind: 'roller', boreMm: 25, greaseTemperatureC: 80 })).toBe('L10 L10h t_f');
  expect(working(lubricated)).toBe('L10 L10h nu_1 kappa g a_ISO Lnmh');
  expect(working({ ...lubricated, kind: 'roller' })).toBe('L10 L10h nu_1 kappa g a_ISO Lnmh');
});
