import fc from 'fast-check';
import { expect, test } from 'vitest';
import { bearingSeat, type BearingSeatInput } from '@seatwright/core/bearing';
import { expectWorkingHolds } from './internal/evaluate-working.js';
import { expectWords, numbersIn } from './internal/expect-words.js';
import { numRuns } from './internal/num-runs.js';

const tighter = ['g6', 'h6', 'js5', 'k5', 'm5', 'n5', 'p6', 'r6'] as const;
const tighterBores = ['G7', 'H7', 'J7', 'K7', 'M7', 'N7', 'P7'] as const;
const designations = ['6000', '6202', '6203', '6204', '6205', '6305', '6208', '61804'] as const;
const housings = ['al-a380', 'gjl250', 'steel-c45', 'mg-az91d', 'pom-c'] as const;

const seats: fc.Arbitrary<BearingSeatInput> = fc.record({
  designation: fc.constantFrom(...designations),
  shaftClass: fc.constantFrom(...tighter),
  housingClass: fc.constantFrom(...tighterBores),
  housingMaterial: fc.constantFrom(...housings),
  temperatureC: fc.integer({ min: -20, max: 140 }),
  clearanceGroup: fc.constantFrom('2', 'N', '3', '4', '5'),
  innerRingLoad: fc.constantFrom('rotating', 'stationary', 'indeterminate'),
  outerRingLoad: fc.constantFrom('rotating', 'stationary', 'indeterminate'),
  radialLoadN: fc.integer({ min: 0, max: 5000 }),
  seatFinish: fc.constantFrom('ground', 'turned'),
});

test('words, working and numbers hold; worst case, probable range and middle stand in order', () => {
  fc.assert(
    fc.property(seats, fc.boolean(), fc.boolean(), (input, hasShaft, isCold) => {
      const { shaftClass, ...rest } = input;
      const asked = { ...rest, ...(hasShaft ? { shaftClass } : {}), ...(isCold ? { coldC: -25 } : {}) };
      const output = bearingSeat.compute(asked);
      expectWords(output);
      expectWorkingHolds(bearingSeat.explain(asked, output));
      expect(numbersIn(output).every(Number.isFinite)).toBe(true);
      for (const clearance of [output.mountedClearanceUm, output.runningClearanceUm, output.coldClearanceUm]) {
        if (clearance === null) continue;
        const { min, probableLow, probable, probableHigh, max } = clearance;
        expect([min, probableLow, probable, probableHigh, max]).toEqual([min, probableLow, probable, probableHigh, max].toSorted((a, b) => a - b));
      }
    }),
    { numRuns: Math.min(numRuns, 1000) },
  );
});

const ends = (output: ReturnType<typeof bearingSeat.compute>) => [output.mountedClearanceUm, output.runningClearanceUm].flatMap((clearance) => (clearance === null ? [] : [clearance.min, clearance.probable, clearance.max]));

test('more interference never raises the clearance, on either seat', () => {
  fc.assert(
    fc.property(seats, fc.nat(tighter.length - 2), fc.nat(tighterBores.length - 2), (input, s, h) => {
      const at = (shaft: number, housing: number) => ends(bearingSeat.compute({ ...input, shaftClass: tighter[shaft] ?? 'h6', housingClass: tighterBores[housing] ?? 'H7' }));
      const before = at(s, h);
      for (const after of [at(s + 1, h), at(s, h + 1)]) after.forEach((clearance, i) => expect(clearance).toBeLessThanOrEqual((before[i] ?? 0) + 1e-9));
    }),
    { numRuns: Math.min(numRuns, 500) },
  );
});

test('a hotter light-alloy case never tightens a steel ring, nor takes clearance; from when it is loose does not depend on it', () => {
  fc.assert(
    fc.property(seats, fc.constantFrom('al-a380', 'mg-az91d', 'al-6061-t6'), fc.integer({ min: 1, max: 60 }), (input, housingMaterial, hotterK) => {
      const temperatureC = Math.max(20, input.temperatureC ?? 20);
      const at = (housingTemperatureC: number) => bearingSeat.compute({ ...input, housingMaterial, temperatureC, shaftTemperatureC: temperatureC, housingTemperatureC });
      const [before, after] = [at(temperatureC), at(temperatureC + hotterK)];
      expect(after.housingSeat?.atTemperature.mostInterferenceUm).toBeLessThan(before.housingSeat?.atTemperature.mostInterferenceUm ?? -Infinity);
      expect(after.housingSeat?.hotContactPressureMpa.high ?? 0).toBeLessThanOrEqual(before.housingSeat?.hotContactPressureMpa.high ?? 0);
      expect(after.runningClearanceUm?.min ?? 0).toBeGreaterThanOrEqual((before.runningClearanceUm?.min ?? 0) - 1e-9);
      expect(after.housingSeat?.looseFromC).toEqual(before.housingSeat?.looseFromC);
    }),
    { numRuns: Math.min(numRuns, 500) },
  );
});

test('a hollow shaft and a thin housing press less and leave more clearance', () => {
  fc.assert(
    fc.property(seats, fc.integer({ min: 1, max: 90 }), fc.integer({ min: 105, max: 300 }), (input, holeShare, wallShare) => {
      const solid = bearingSeat.compute(input);
      const hollow = bearingSeat.compute({ ...input, shaftBoreMm: (solid.boreMm * holeShare) / 100, housingOutsideMm: (solid.outsideMm * wallShare) / 100 });
      expect(hollow.shaftSeat?.contactPressureMpa.high ?? 0).toBeLessThanOrEqual((solid.shaftSeat?.contactPressureMpa.high ?? 0) + 1e-9);
      expect(hollow.housingSeat?.contactPressureMpa.high ?? 0).toBeLessThanOrEqual((solid.housingSeat?.contactPressureMpa.high ?? 0) + 1e-9);
      expect(hollow.mountedClearanceUm?.min ?? 0).toBeGreaterThanOrEqual((solid.mountedClearanceUm?.min ?? 0) - 1e-9);
    }),
    { numRuns: Math.min(numRuns, 500) },
  );
});

test('a larger clearance group never runs tighter, and the group that suits is the smallest that keeps clearance', () => {
  fc.assert(
    fc.property(seats, (input) => {
      const { clearanceGroups: groups, clearanceGroupThatSuits } = bearingSeat.compute(input);
      groups.slice(1).forEach(({ runningClearanceUm: { probable } }, i) => expect(probable).toBeGreaterThan(groups[i]?.runningClearanceUm.probable ?? Infinity));
      expect(clearanceGroupThatSuits).toBe(groups.find(({ runningClearanceUm }) => runningClearanceUm.probableLow >= 0)?.clearanceGroup ?? null);
    }),
    { numRuns: Math.min(numRuns, 500) },
  );
});

test('readings in inches or millimetres: the same seats', () => {
  const readings = (unit: 'mm' | 'in') => [{ instrument: 'outside-micrometer', valuesMm: unit === 'mm' ? [25.4] : ['1 in'] }];
  const bore = (unit: 'mm' | 'in') => [{ instrument: 'inside-micrometer-tubular', valuesMm: unit === 'mm' ? [50.8] : ['2 in'] }];
  const at = (unit: 'mm' | 'in') =>
    bearingSeat.run({ boreMm: unit === 'mm' ? 25.4 : '1 in', outsideMm: unit === 'mm' ? 50.8 : '2 in', widthMm: 12.7, shaftReadings: readings(unit), housingReadings: bore(unit), housingMaterial: 'gjl250' });
  expect(at('in')).toEqual(at('mm'));
});

test('where a group has no clearance for a small bore, the others are told all the same', () => {
  const { clearanceGroups } = bearingSeat.run({ boreMm: 6, outsideMm: 13, widthMm: 5, shaftClass: 'j5', housingClass: 'H7', housingMaterial: 'al-a380' });
  expect(clearanceGroups.map(({ clearanceGroup }) => clearanceGroup)).toEqual(['2', 'N', '3']);
});
