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

test('force of a joint: its pressure on its whole surface; without a length there is none', () => {
  const stack = { rings: [ring(0, 40), ring(40, 80)], interferencesUm: [40] };
  // p = 75 MPa, as above; π·40 mm·30 mm.
  expect(ringStack.run({ ...stack, lengthMm: 30 }).joints[0]?.contactForceN).toBeCloseTo(75 * Math.PI * 40 * 30, 6);
  expect(ringStack.run(stack).joints[0]?.contactForceN).toBeNull();
});

test('a spread of expansion is told of what is warm, once for each material', () => {
  const alloy = { id: 'any-alloy', youngsModulusGpa: 70, poissonRatio: 0.33, expansionMinPerK: 20e-6, expansionMaxPerK: 26e-6 };
  const own = (insideMm: number, outsideMm: number, temperatureC?: number) => ({ insideMm, outsideMm, material: 'any-alloy', ...(temperatureC === undefined ? {} : { temperatureC }) });
  const named = (rings: readonly object[]) => ringStack.run({ rings: [...rings], interferencesUm: rings.slice(1).map(() => 10), materials: [alloy] }).assumptions.map(({ name, value, upToValue }) => [name, value, upToValue]);
  expect(named([own(0, 40), own(40, 60)])).toEqual([]);
  expect(named([own(0, 40, 20), ring(40, 60, { temperatureC: 90 })])).toEqual([]);
  expect(named([own(0, 40, 90), ring(40, 60)])).toEqual([['expansion-taken-probable', 20e-6, 26e-6]]);
  expect(named([own(0, 40, 90), own(40, 60, 50), ring(60, 80, { temperatureC: 50 })])).toEqual([['expansion-taken-probable', 20e-6, 26e-6]]);
  expect(ringStack.run({ rings: [ring(0, 40)], interferencesUm: [] }).notChecked).toEqual(['edge-pressure', 'form-and-roughness']);
});

test('the working: from what was given, by heat and pressure, to a closed or an open joint', () => {
  const input = ringStack.input.parse({ rings: [ring(0, 40), ring(40, 60, { temperatureC: 70 }), ring(60, 80)], interferencesUm: [10, 30] });
  const output = ringStack.run(input);
  const steps = ringStack.explain(input, output);
  expect(steps.map(({ symbol }) => symbol)).toEqual(['U_1', 'gap_1', 'p_1', 'U_2', 'gap_2', 'p_2']);
  // The middle ring grows by 12e-6·50: 24 µm at its bore, 36 µm at its outside. The first joint stands open by 14 µm at least, the second is pressed with 66 µm.
  expect(steps[0]).toMatchObject({ scope: { I: 10, g_i: 0, g_o: expect.closeTo(0.024, 9) as number }, value: expect.closeTo(-0.014, 9) as number });
  expect(steps[3]).toMatchObject({ scope: { I: 30, g_i: expect.closeTo(0.036, 9) as number, g_o: 0 }, value: expect.closeTo(0.066, 9) as number });
  expect(steps[2]).toMatchObject({ kind: 'choice', value: output.joints[0]?.contactPressureMpa, unit: 'MPa' });
  for (const j of [0, 1]) {
    const { openGapUm = NaN, contactPressureMpa = NaN } = output.joints[j] ?? {};
    const [, gap, pressure] = steps.slice(3 * j);
    expect(gap).toMatchObject({ value: openGapUm / 1000, scope: { p: contactPressureMpa, p_b: j === 0 ? 0 : output.joints[0]?.contactPressureMpa, p_a: j === 0 ? output.joints[1]?.contactPressureMpa : 0 } });
    expect(pressure).toMatchObject({ why: openGapUm > 0 ? 'the joint stands open: nothing presses' : 'the joint is closed: its gap is zero' });
  }
  expect(output.joints.map(({ openGapUm }) => openGapUm > 0)).toEqual([false, false]);
  const open = ringStack.input.parse({ rings: [ring(0, 40), ring(40, 60)], interferencesUm: [-12] });
  expect(ringStack.explain(open, ringStack.run(open))).toMatchObject([{ value: expect.closeTo(-0.012, 12) as number }, { value: expect.closeTo(0.012, 12) as number }, { value: 0, why: 'the joint stands open: nothing presses' }]);
});

test('a ring without a wall is refused', () => {
  expect(() => ringStack.run({ rings: [ring(40, 40)], interferencesUm: [] })).toThrow(/rings\[0\]/u);
  expect(() => ringStack.run({ rings: [ring(41, 40)], interferencesUm: [] })).toThrow(/rings\[0\]/u);
});
