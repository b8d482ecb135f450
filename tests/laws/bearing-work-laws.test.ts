import fc from 'fast-check';
import { expect, test } from 'vitest';
import { CalculationError } from '@seatwright/core';
import { bearingFitting, bearingRemoval, ratingLife, seatClasses, seatRepair, type BearingFittingInput } from '@seatwright/core/bearing';
import { lifeModification } from '../../packages/core/src/bearing/internal/iso-281.js';
import { expectWorkingHolds } from './internal/evaluate-working.js';
import { expectWords, numbersIn } from './internal/expect-words.js';
import { numRuns } from './internal/num-runs.js';

const seats: fc.Arbitrary<BearingFittingInput> = fc.record(
  {
    designation: fc.constantFrom('6000', '6202', '6203', '6205', '6305', '6208'),
    shaftClass: fc.constantFrom('g6', 'h6', 'js5', 'k5', 'm6', 'p6'),
    housingClass: fc.constantFrom('G7', 'H7', 'J7', 'K7', 'N7', 'P7'),
    housingMaterial: fc.constantFrom('al-a380', 'gjl250', 'steel-c45', 'mg-az91d'),
    isSealedOrGreased: fc.boolean(),
    caseLimitC: fc.integer({ min: 60, max: 180 }),
    slipInGapUm: fc.integer({ min: 0, max: 60 }),
    ambientC: fc.integer({ min: 0, max: 35 }),
    basicStaticLoadRatingN: fc.integer({ min: 1000, max: 40_000 }),
  },
  { requiredKeys: ['designation', 'shaftClass', 'housingClass', 'housingMaterial', 'caseLimitC'] },
);

test('bearing-fitting: words, working and numbers hold; nothing beyond a limit; a wider gap is never easier', () => {
  fc.assert(
    fc.property(seats, fc.integer({ min: 0, max: 40 }), (input, moreUm) => {
      const output = bearingFitting.compute(input);
      expectWords({ ...output, cautions: output.steps.flatMap(({ cautions }) => cautions) });
      expectWorkingHolds(bearingFitting.explain(input, output));
      expect(numbersIn(output).every(Number.isFinite)).toBe(true);
      const wider = bearingFitting.compute({ ...input, slipInGapUm: (input.slipInGapUm ?? 20) + moreUm });
      output.ways.forEach((way, i) => {
        expect(way.warmPartC).toBeLessThanOrEqual(way.limitC + 1e-9);
        if (way.benchTimeS !== null) expect(way.benchTimeS.low).toBeLessThanOrEqual(way.benchTimeS.high);
        if (wider.ways[i]?.feasible === true && input.slipInGapUm !== undefined) expect(way.feasible).toBe(true);
      });
    }),
    { numRuns: Math.min(numRuns, 500) },
  );
});

test('bearing-removal and seat-repair: words, working and numbers hold; a tighter seat never draws off easier', () => {
  fc.assert(
    fc.property(seats, fc.boolean(), fc.constantFrom('shaft', 'housing'), fc.constantFrom('rotating', 'stationary'), (seat, flag, where, load) => {
      const { isSealedOrGreased: _, caseLimitC: __, slipInGapUm: ___, basicStaticLoadRatingN: ____, ambientC: _____, ...input } = seat;
      const removal = { ...input, isBlindBore: flag, mustBeReused: !flag };
      const output = bearingRemoval.compute(removal);
      expectWords({ ...output, cautions: output.steps.flatMap(({ cautions }) => cautions) });
      expectWorkingHolds(bearingRemoval.explain(removal, output));
      const tighter = bearingRemoval.compute({ ...removal, shaftClass: 'r6' });
      expect(tighter.seats[0]?.pullForceN.high).toBeGreaterThanOrEqual(output.seats[0]?.pullForceN.high ?? Infinity);
      const asked = { ...input, seat: where, innerRingLoad: load, outerRingLoad: load, temperatureC: 80 } as const;
      const repair = seatRepair.compute(asked);
      expectWords(repair);
      expectWorkingHolds(seatRepair.explain(asked, repair));
      for (const option of repair.options) expectWords({ findings: option.findings, assumptions: [], notChecked: [] });
      expect(numbersIn([output, repair]).every(Number.isFinite)).toBe(true);
      if (repair.mostGapUm < 0) expect(repair.verdict).toBe('suits');
      else if (load === 'rotating') expect(repair.verdict).toBe('does not suit');
    }),
    { numRuns: Math.min(numRuns, 400) },
  );
});

test('seat-classes: every load has words, and a class that exists', () => {
  fc.assert(
    fc.property(
      fc.record({
        boreMm: fc.integer({ min: 3, max: 400 }), bearingKind: fc.constantFrom('deep-groove-ball', 'cylindrical-roller'), innerRingLoad: fc.constantFrom('rotating', 'stationary', 'indeterminate', 'axial'), outerRingLoad: fc.constantFrom('rotating', 'stationary', 'indeterminate', 'axial'),
        loadRatio: fc.integer({ min: 0, max: 300 }).map((value) => value / 1000), isSplitHousing: fc.boolean(), isThinWalled: fc.boolean(), isLightAlloy: fc.boolean(), hasHeatThroughShaft: fc.boolean(), mustSlideOnShaft: fc.boolean(),
      }),
      (input) => {
        const output = seatClasses.compute(input);
        expectWords(output);
        for (const { toleranceClass } of output.shaft) expect(toleranceClass).toMatch(/^[a-z]{1,2}\d(\+IT\d)?$/u);
        for (const toleranceClass of [...output.housing.map((one) => one.toleranceClass), ...output.tighterHousing]) expect(toleranceClass).toMatch(/^[A-Z]{1,2}\d$/u);
        if (input.mustSlideOnShaft && input.innerRingLoad === 'stationary') expect(output.shaft.map(({ toleranceClass }) => toleranceClass)).toEqual(['g6']);
      },
    ),
    { numRuns },
  );
});

test('rating-life: life falls with the load as its power and never rises with reliability; a_ISO grows with film and cleanliness and joins at its seams', () => {
  const real = (min: number, max: number) => fc.integer({ min: min * 1000, max: max * 1000 }).map((value) => value / 1000);
  fc.assert(
    fc.property(real(1, 100), real(1, 20), real(1, 5), fc.constantFrom('ball', 'roller'), fc.integer({ min: 90, max: 99 }), real(0.1, 6), real(0.001, 5), (C, P, times, kind, reliabilityPercent, kappa, share) => {
      const input = { basicDynamicLoadRatingN: C * 1000, equivalentLoadN: P * 1000, kind, speedRpm: 900, reliabilityPercent, serviceIntervalHours: 100 } as const;
      const output = ratingLife.compute(input);
      expectWords(output);
      expectWorkingHolds(ratingLife.explain(input, output));
      const heavier = ratingLife.compute({ ...input, equivalentLoadN: P * 1000 * times });
      expect(heavier.basicRatingLifeMillionRev * times ** (kind === 'ball' ? 3 : 10 / 3)).toBeCloseTo(output.basicRatingLifeMillionRev, 4);
      expect(ratingLife.compute({ ...input, reliabilityPercent: reliabilityPercent + 0.5 }).reliabilityFactor).toBeLessThan(output.reliabilityFactor);
      expect(lifeModification(kind, kappa * 1.05, share)).toBeGreaterThanOrEqual(lifeModification(kind, kappa, share));
      expect(lifeModification(kind, kappa, share * 1.05)).toBeGreaterThanOrEqual(lifeModification(kind, kappa, share));
      for (const seam of [0.4, 1]) expect(lifeModification(kind, seam - 1e-9, share) / lifeModification(kind, seam, share)).toBeCloseTo(1, 2);
    }),
    { numRuns },
  );
  expect(() => lifeModification('ball', 0.09, 1)).toThrow(CalculationError);
});

test('grease again: 10·(14·10⁶/(n·√d) − 4·d) h for balls, half as long 15 K over 70 °C, and never where the speed is beyond the rule', () => {
  const at = (speedRpm: number, boreMm: number, greaseTemperatureC?: number) => ratingLife.run({ basicDynamicLoadRatingN: 1000, equivalentLoadN: 100, kind: 'ball', speedRpm, boreMm, ...(greaseTemperatureC === undefined ? {} : { greaseTemperatureC }) }).relubricationHours;
  expect(at(1000, 25)?.high).toBeCloseTo(27_000, 6);
  expect(at(1000, 25, 85)?.high).toBeCloseTo(13_500, 6);
  expect(at(60_000, 100)).toBeNull();
});

test('a plastic cage stands less heat, and a bearing less cold than dry ice gives', () => {
  const base = { designation: '6203', shaftClass: 'k5', housingClass: 'P7', housingMaterial: 'steel-c45', slipInGapUm: 30 } as const;
  expect(bearingFitting.run({ ...base, hasPolymerCage: true }).ways.map(({ limitC }) => limitC)).toEqual([93, 93]);
  const housing = bearingFitting.run({ ...base, coldestPartC: -78 }).ways.find(({ seat }) => seat === 'housing');
  expect(housing?.coldPartC ?? 0).toBeGreaterThanOrEqual(-54);
});

test('a bearing marked with seals or shields is never heated as an open one; a suffix that cannot be read counts as seals, and says so', () => {
  const base = { shaftClass: 'm6', housingClass: 'P7', housingMaterial: 'al-a380' } as const;
  const at = (designation: string, isSealedOrGreased?: boolean) => {
    const output = bearingFitting.run({ ...base, designation, ...(isSealedOrGreased === undefined ? {} : { isSealedOrGreased }) });
    expectWords(output);
    return { limits: output.ways.map(({ limitC }) => limitC), isSupposed: output.assumptions.some(({ name }) => name === 'suffix-may-mean-seals') };
  };
  const sealed = at('6203', true);
  const open = at('6203');
  // Nor is the case that takes it made hotter than its seals stand.
  expect(sealed.limits).toEqual([80, 93]);
  expect(open.limits).toEqual([120, 120]);
  for (const designation of ['6203 2RS', '6203-2RSC3', '6203 ZZ', '6203-2Z/C3', '6203RS']) for (const said of [undefined, false, true]) expect(at(designation, said)).toEqual(sealed);
  expect(at('6203 C3')).toEqual(open);
  expect(at('6203 TQ7')).toEqual({ ...sealed, isSupposed: true });
  expect(at('6203 TQ7', false)).toEqual(open);
});

test('seat-classes: a designation tells balls from rollers, and gives what its bore and kind give', () => {
  const loads = { innerRingLoad: 'rotating', outerRingLoad: 'stationary', magnitude: 'normal' } as const;
  expect(seatClasses.run({ ...loads, designation: 'NU 210' }).shaft.map(({ toleranceClass }) => toleranceClass)).toEqual(['m5']);
  expect(seatClasses.run({ ...loads, designation: '6210' }).shaft[0]?.toleranceClass).toBe('k5');
  for (const magnitude of ['light', 'normal', 'heavy', 'shock'] as const) {
    for (const boreMm of [25, 50, 75, 100]) {
      for (const [designation, bearingKind] of [[`NU 2${String(boreMm / 5).padStart(2, '0')}`, 'cylindrical-roller'], [`62${String(boreMm / 5).padStart(2, '0')}`, 'deep-groove-ball']] as const) {
        expect(seatClasses.run({ ...loads, magnitude, designation })).toEqual(seatClasses.run({ ...loads, magnitude, boreMm, bearingKind }));
      }
    }
  }
  // The handbook's row "all kinds of load" holds for shock as well.
  expect(seatClasses.run({ ...loads, magnitude: 'shock', boreMm: 25 }).housing.map(({ set, toleranceClass }) => `${set} ${toleranceClass}`)).toEqual(['abma-7 J6', 'handbook H7']);
});

test('rating-life: the working of the modified life holds over film, cleanliness and load', () => {
  fc.assert(
    fc.property(fc.constantFrom('ball', 'roller'), fc.integer({ min: 2, max: 200 }), fc.integer({ min: 1, max: 2000 }), fc.constantFrom('high cleanliness', 'typical contamination', 'severe contamination'), (kind, viscosityMm2PerS, fatigueLoadLimitN, contamination) => {
      const input = { basicDynamicLoadRatingN: 20_000, equivalentLoadN: 1000, kind, speedRpm: 1000, meanDiameterMm: 60, viscosityMm2PerS, fatigueLoadLimitN, contamination } as const;
      const output = ratingLife.compute(input);
      const steps = ratingLife.explain(input, output);
      expectWorkingHolds(steps);
      expect(steps.find(({ symbol }) => symbol === 'a_ISO')?.value).toBe(output.lifeModificationFactor?.low);
    }),
    { numRuns },
  );
});
