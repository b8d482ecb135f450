import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { combineBudget, measuredSizeCalculation, type BudgetLine } from '@seatwright/core/measure';
import { expectWorkingHolds } from './internal/evaluate-working.js';
import { expectWords } from './internal/expect-words.js';
import { numRuns } from './internal/num-runs.js';

const um = (min: number, max: number) => fc.integer({ min, max }).map((value) => value / 1000);
const reading = um(49_900, 50_100);
const point = fc.record({ valueMm: reading, angleDeg: fc.integer({ min: -36, max: 36 }).map((value) => value * 10), depthMm: fc.integer({ min: 0, max: 4 }).map((value) => value * 5) });
const points = fc.array(point, { minLength: 1, maxLength: 16 });
const plain = fc.array(reading, { minLength: 1, maxLength: 12 });
const outside = (readings: readonly unknown[], more: object = {}) => measuredSizeCalculation.run({ measures: 'outside', readings, ...more });
const micrometer = (set: object) => [{ instrument: 'outside-micrometer', ...set }];

describe('a measured size', () => {
  it('moves with its readings, and keeps form, scatter and uncertainty', () => {
    fc.assert(
      fc.property(points, um(0, 500), (list, shiftMm) => {
        const before = outside(micrometer({ points: list }));
        const after = outside(micrometer({ points: list.map((one) => ({ ...one, valueMm: one.valueMm + shiftMm })) }));
        expect(after.meanMm).toBeCloseTo(before.meanMm + shiftMm, 9);
        expect(after.harmonicOvalityUm ?? 0).toBeCloseTo(before.harmonicOvalityUm ?? 0, 4);
        expect(after.fittedTaperUm ?? 0).toBeCloseTo(before.fittedTaperUm ?? 0, 4);
        expect(after.repeatabilityMm ?? 0).toBeCloseTo(before.repeatabilityMm ?? 0, 9);
      }),
      { numRuns },
    );
  });

  it('does not care in what order it was read', () => {
    fc.assert(
      fc.property(points.chain((list) => fc.tuple(fc.constant(list), fc.shuffledSubarray(list, { minLength: list.length }))), ([list, shuffled]) => {
        const [first, second] = [outside(micrometer({ points: list })), outside(micrometer({ points: shuffled }))];
        expect(second.meanMm).toBeCloseTo(first.meanMm, 10);
        expect(second.expandedUncertaintyMm).toBeCloseTo(first.expandedUncertaintyMm, 9);
        expect(second.harmonicOvalityUm ?? 0).toBeCloseTo(first.harmonicOvalityUm ?? 0, 5);
        expect([second.smallestMm, second.largestMm, second.ovalityUm]).toEqual([first.smallestMm, first.largestMm, first.ovalityUm]);
      }),
      { numRuns },
    );
  });

  it('turned around its axis has the same size and oval, and its long way turns along', () => {
    fc.assert(
      fc.property(points, fc.integer({ min: 0, max: 179 }), (list, turnDeg) => {
        const before = outside(micrometer({ points: list }));
        const turned = list.map((one) => ({ ...one, angleDeg: (one.angleDeg + turnDeg) % 360 }));
        const after = outside(micrometer({ points: turned }));
        expect(after.meanMm).toBeCloseTo(before.meanMm, 10);
        expect(after.leastSquaresDiameterMm ?? 0).toBeCloseTo(before.leastSquaresDiameterMm ?? 0, 8);
        expect(after.harmonicOvalityUm ?? 0).toBeCloseTo(before.harmonicOvalityUm ?? 0, 4);
        if (before.largestAtDeg !== null && after.largestAtDeg !== null && (before.harmonicOvalityUm ?? 0) > 1) {
          const apart = Math.abs(((after.largestAtDeg - before.largestAtDeg - turnDeg) % 180 + 270) % 180 - 90);
          expect(apart).toBeLessThan(0.001);
        }
      }),
      { numRuns },
    );
  });

  it('finds the oval and the taper that were put in', () => {
    fc.assert(
      fc.property(um(0, 50), fc.integer({ min: 0, max: 179 }), um(-50, 50), (ovalMm, atDeg, taperMm) => {
        const list = [0, 10, 20].flatMap((depthMm) =>
          [0, 30, 60, 90, 120, 150].map((angleDeg) => ({ depthMm, angleDeg, valueMm: 50 + (ovalMm / 2) * Math.cos(((angleDeg - atDeg) * Math.PI) / 90) + (taperMm * depthMm) / 20 })));
        const output = outside(micrometer({ points: list }));
        expect(output.harmonicOvalityUm).toBeCloseTo(ovalMm * 1000, 2);
        expect(output.fittedTaperUm).toBeCloseTo(taperMm * 1000, 2);
        expect(output.isWavy).toBe(false);
      }),
      { numRuns },
    );
  });

  it('read twice as often with the same outcome is known no worse', () => {
    fc.assert(
      fc.property(plain, (valuesMm) => {
        const u = (values: readonly number[]) => outside(micrometer({ valuesMm: values })).budget.find(({ component }) => component === 'repeatability')?.standardUncertaintyMm;
        const [once, twice] = [u(valuesMm), u([...valuesMm, ...valuesMm])];
        if (once !== undefined) expect(twice ?? 0).toBeLessThanOrEqual(once * (1 + 1e-9));
      }),
      { numRuns },
    );
  });

  it('is open by the instrument at least, and by more with temperature', () => {
    fc.assert(
      fc.property(plain, fc.integer({ min: -40, max: 200 }), fc.integer({ min: 0, max: 20 }), fc.constantFrom('steel-c45', 'al-a380', 'gjl250'), (valuesMm, partTemperatureC, temperatureUncertaintyK, partMaterial) => {
        const cold = outside(micrometer({ valuesMm }));
        const warm = outside(micrometer({ valuesMm }), { partTemperatureC, instrumentTemperatureC: 20, partMaterial, temperatureUncertaintyK });
        expect(cold.expandedUncertaintyMm).toBeGreaterThanOrEqual(cold.instrumentUncertaintyMm * (1 - 1e-12));
        expect(warm.standardUncertaintyMm).toBeGreaterThanOrEqual(cold.standardUncertaintyMm * (1 - 1e-12));
        expect(cold.coverageFactor).toBeGreaterThanOrEqual(2 - 1e-9);
        if (valuesMm.length > 1 && cold.effectiveDegreesOfFreedomCount !== null) expect(cold.effectiveDegreesOfFreedomCount).toBeGreaterThanOrEqual(valuesMm.length - 1);
        expect((warm.sizeAt20CMm ?? 0) <= warm.meanMm).toBe(partTemperatureC >= 20);
      }),
      { numRuns },
    );
  });

  it('has working that holds, words for every code, and no number that is none', () => {
    fc.assert(
      fc.property(points, plain, fc.boolean(), fc.boolean(), fc.constantFrom(undefined, 'two-point', 'three-point', 'v-block'), (list, valuesMm, hasTwo, isWarm, contact) => {
        const readings = [...micrometer({ points: list }), ...(hasTwo ? [{ instrument: 'digital-calliper', valuesMm }] : [])];
        const input = measuredSizeCalculation.parse({ measures: 'outside', readings, ...(contact === undefined ? {} : { contact }), ...(isWarm ? { partTemperatureC: 35, partMaterial: 'al-a380' } : {}) });
        const output = measuredSizeCalculation.compute(input);
        expectWorkingHolds(measuredSizeCalculation.explain(input, output));
        expect(JSON.stringify(output)).toBe(JSON.stringify(output, (_, value: unknown) => (typeof value === 'number' && !Number.isFinite(value) ? 'none' : value)));
        expectWords(output);
      }),
      { numRuns },
    );
  });
});

describe('an uncertainty budget', () => {
  const line = fc.record({
    component: fc.constant('step' as const), instrument: fc.constant(null), standardUncertaintyMm: um(0, 100), distribution: fc.constant('normal' as const),
    sensitivityFactor: um(-2000, 2000), degreesOfFreedomCount: fc.option(fc.integer({ min: 1, max: 300 })),
  });
  const lines = fc.array(line, { minLength: 1, maxLength: 8 });
  const certain = (list: readonly BudgetLine[]) => list.map((one) => ({ ...one, degreesOfFreedomCount: null }));

  it('grows with every component: u always, U where only stated limits are in it', () => {
    fc.assert(
      fc.property(lines, line, (list, further) => {
        expect(combineBudget([...list, further]).standardUncertaintyMm).toBeGreaterThanOrEqual(combineBudget(list).standardUncertaintyMm);
        expect(combineBudget(certain([...list, further])).expandedUncertaintyMm).toBeGreaterThanOrEqual(combineBudget(certain(list)).expandedUncertaintyMm);
      }),
      { numRuns },
    );
  });

  it('has degrees of freedom between the fewest of its lines and the sum of all', () => {
    fc.assert(
      fc.property(lines, (list) => {
        const { effectiveDegreesOfFreedomCount: count, coverageFactor } = combineBudget(list);
        const weighing = list.filter((one) => one.standardUncertaintyMm > 0 && one.sensitivityFactor !== 0);
        const counts = weighing.map((one) => one.degreesOfFreedomCount ?? Infinity);
        if (count !== null) {
          expect(count).toBeGreaterThanOrEqual(Math.min(...counts));
          if (counts.every(Number.isFinite)) expect(count).toBeLessThanOrEqual(counts.reduce((sum, one) => sum + one, 0));
        }
        expect(coverageFactor).toBeGreaterThanOrEqual(2 - 1e-9);
        expect(coverageFactor).toBeLessThan(14);
      }),
      { numRuns },
    );
  });
});
