import { expect, test } from 'vitest';
import { ringStack } from './ring-stack.js';

const steel = { youngsModulusGpa: 200, poissonRatio: 0.3, expansionPerK: 1.2e-5, yieldMpa: 300, densityKgPerM3: 7850 };
const ring = (insideMm: number, outsideMm: number, more: object = {}) => ({ insideMm, outsideMm, material: steel, ...more });

test('a single ring, warm: it grows by heat alone and bears nothing', () => {
  const { joints, rings } = ringStack.run({ rings: [ring(20, 40, { temperatureC: 120 })], interferencesUm: [] });
  expect(joints).toEqual([]);
  expect(rings[0]?.boreDisplacementUm).toBeCloseTo(24, 9);
  expect(rings[0]?.outsideDisplacementUm).toBeCloseTo(48, 9);
  expect(rings[0]?.vonMisesMpa).toEqual({ bore: 0, outside: 0 });
  expect(rings[0]?.yields).toBe(false);
});

test('a solid core has no bore: null, not a number', () => {
  const { rings } = ringStack.run({ rings: [ring(0, 40), ring(40, 80)], interferencesUm: [40] });
  // p = E·U/(2·d)·(1 − (d/D)²) = 200 000·0.04/80·0.75
  expect(rings[0]?.hoopStressMpa).toEqual({ bore: null, outside: expect.closeTo(-75, 9) as number });
  expect(rings[0]?.vonMisesMpa.bore).toBeNull();
});

test('clearance stays a gap, and a fit of nothing is neither pressure nor gap', () => {
  const { joints } = ringStack.run({ rings: [ring(0, 40), ring(40, 60), ring(60, 80)], interferencesUm: [-12, 0] });
  expect(joints.map(({ contactPressureMpa, openGapUm }) => [contactPressureMpa, openGapUm])).toEqual([[0, 12], [0, 0]]);
});

test('a hub heated enough comes free, and the gap is what is left', () => {
  const { joints } = ringStack.run({ rings: [ring(0, 40), ring(40, 80, { temperatureC: 220 })], interferencesUm: [40] });
  // 40 mm · 12e-6 · 200 K = 96 µm of growth against 40 µm of interference.
  expect(joints[0]?.contactPressureMpa).toBe(0);
  expect(joints[0]?.openGapUm).toBeCloseTo(56, 9);
});

test('yields: no strength known is null; past it is true', () => {
  const { yieldMpa: _none, ...unknown } = steel;
  const { rings } = ringStack.run({ rings: [{ insideMm: 0, outsideMm: 40, material: unknown }, ring(40, 80)], interferencesUm: [100] });
  expect(rings.map(({ yields }) => yields)).toEqual([null, true]);
});

test('a turning solid disc: hoop stress at its rim ρω²b²(1 − ν)/4', () => {
  const { rings } = ringStack.run({ rings: [ring(0, 200)], interferencesUm: [], speedRpm: 10_000 });
  const omega = (10_000 * Math.PI) / 30;
  expect(rings[0]?.hoopStressMpa.outside).toBeCloseTo((7850 * omega ** 2 * 0.1 ** 2 * (1 - 0.3)) / 4 / 1e6, 9);
});

test('nominal diameters agree to within a millionth of a millimetre; more is a contradiction, by its fields', () => {
  expect(ringStack.run({ rings: [ring(0, 40), ring(40.000001, 60)], interferencesUm: [1] }).joints).toHaveLength(1);
  expect(() => ringStack.run({ rings: [ring(0, 40), ring(40.00001, 60)], interferencesUm: [1] })).toThrow(/^rings\[0\]\.outsideMm and rings\[1\]\.insideMm: neighbours meet on one nominal diameter/);
});

test.each([
  [{ rings: [ring(0, 40), ring(0, 60)], interferencesUm: [1] }, /rings\[1\]\.insideMm: only the innermost ring may be solid/],
  [{ rings: [], interferencesUm: [] }, /rings/],
  [{ rings: [ring(0, 40)], interferencesUm: [], colour: 'red' }, /colour: unknown field/],
  [{ rings: [ring(0, 40, { temperatureC: Number.NaN })], interferencesUm: [] }, /rings\[0\]\.temperatureC/],
])('%# refused by its field', (input, message) => {
  expect(() => ringStack.run(input)).toThrow(message);
});
