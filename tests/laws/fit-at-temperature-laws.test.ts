import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fit, fitAtTemperature, inchFit, type FitAtTemperatureInput } from '@seatwright/core/tolerance';
import { english } from '@seatwright/core/wording';
import { expectWorkingHolds } from './internal/evaluate-working.js';
import { numRuns } from './internal/num-runs.js';

const materials = fc.oneof(
  fc.constantFrom('steel-c45', 'al-a380', 'mg-az91d', 'gjl250', 'ss304', 'pvc-u'),
  fc.integer({ min: 1, max: 100 }).map((alpha) => ({ youngsModulusGpa: 100, poissonRatio: 0.3, expansionPerK: alpha * 1e-6 })),
);

const inputs: fc.Arbitrary<FitAtTemperatureInput> = fc
  .record({
    nominalMm: fc.integer({ min: 3, max: 400 }),
    hole: fc.constantFrom('H7', 'N7', 'P7', 'F8', 'K6'),
    shaft: fc.constantFrom('h6', 'p6', 's6', 'f7', 'k6'),
    holeMaterial: materials,
    shaftMaterial: materials,
    holeTemperatureC: fc.integer({ min: -60, max: 250 }),
    shaftTemperatureC: fc.integer({ min: -60, max: 250 }),
    lengthMm: fc.option(fc.integer({ min: 1, max: 500 }), { nil: undefined }),
  })
  .map(({ lengthMm, ...rest }) => (lengthMm === undefined ? rest : { ...rest, lengthMm }));

const numbersIn = (value: unknown): readonly number[] =>
  typeof value === 'number' ? [value] : Array.isArray(value) ? value.flatMap(numbersIn) : typeof value === 'object' && value !== null ? Object.values(value).flatMap(numbersIn) : [];

test('at 20 °C it is the fit of the same classes; no NaN; words and working hold', () => {
  fc.assert(
    fc.property(inputs, (input) => {
      const output = fitAtTemperature.compute(input);
      const plain = fit.compute({ nominalMm: input.nominalMm, hole: input.hole as string, shaft: input.shaft as string });
      expect(output.at20C.mostInterferenceUm).toBe(plain.maximumInterferenceUm > 0 ? plain.maximumInterferenceUm : -plain.minimumClearanceUm + 0);
      expect(output.at20C.leastInterferenceUm).toBe(plain.maximumClearanceUm > 0 ? -plain.maximumClearanceUm : plain.minimumInterferenceUm);
      expect(numbersIn(output).every(Number.isFinite)).toBe(true);
      for (const { name, effect } of output.assumptions) {
        expect(Object.keys(english.assumed), name).toContain(name);
        expect(Object.keys(english.effects), effect).toContain(effect);
      }
      for (const code of output.notChecked) expect(Object.keys(english.notChecked), code).toContain(code);
      expect(expectWorkingHolds(fitAtTemperature.explain(input, output))).toBe(6);
    }),
    { numRuns },
  );
});

test('least, probable and most stand in order at every temperature, and the curve passes through 20 °C', () => {
  fc.assert(
    fc.property(inputs, (input) => {
      const { curve, at20C } = fitAtTemperature.compute({ ...input, fromC: -80, toC: 120, curvePointCount: 21 });
      for (const { leastInterferenceUm, probableInterferenceUm, mostInterferenceUm } of curve) {
        expect(leastInterferenceUm).toBeLessThanOrEqual(probableInterferenceUm + 1e-9);
        expect(probableInterferenceUm).toBeLessThanOrEqual(mostInterferenceUm + 1e-9);
      }
      expect(curve[10]?.bothAtC).toBe(20);
      expect(curve[10]?.leastInterferenceUm).toBeCloseTo(at20C.leastInterferenceUm, 9);
    }),
    { numRuns },
  );
});

test('a shift of temperature is a shift of interference: equal for both materials alike, none for equal growth', () => {
  fc.assert(
    fc.property(inputs, (input) => {
      const same = fitAtTemperature.compute({ ...input, holeMaterial: 'steel-c45', shaftMaterial: 'steel-c45', holeTemperatureC: input.shaftTemperatureC ?? 20 });
      expect(same.thermalInterferenceUm.low).toBeCloseTo(0, 9);
      expect(same.thermalInterferenceUm.high).toBeCloseTo(0, 9);
    }),
    { numRuns },
  );
});

test('at the temperature where it comes loose or tight the interference is nothing', () => {
  fc.assert(
    fc.property(inputs, (drawn) => {
      const { holeTemperatureC: _hole, shaftTemperatureC: _shaft, ...input } = drawn;
      const output = fitAtTemperature.compute(input);
      const at = (temperatureC: number) => fitAtTemperature.compute({ ...input, temperatureC }).atTemperature;
      const checks = [
        [output.looseFromC, 'leastInterferenceUm', 'mostInterferenceUm'],
        [output.looseBelowC, 'leastInterferenceUm', 'mostInterferenceUm'],
        [output.tightFromC, 'mostInterferenceUm', 'leastInterferenceUm'],
        [output.tightBelowC, 'mostInterferenceUm', 'leastInterferenceUm'],
      ] as const;
      for (const [crossing, first, last] of checks) {
        if (crossing === null) continue;
        if (crossing.earliest !== 20) expect(at(crossing.earliest)[first]).toBeCloseTo(0, 6);
        if (crossing.probable !== null && crossing.probable !== 20) expect(at(crossing.probable).probableInterferenceUm).toBeCloseTo(0, 6);
        if (crossing.latest !== null && crossing.latest !== 20) expect(at(crossing.latest)[last]).toBeCloseTo(0, 6);
        const distances = [crossing.earliest, crossing.probable, crossing.latest].filter((c) => c !== null).map((c) => Math.abs(c - 20));
        expect(distances).toEqual(distances.toSorted((a, b) => a - b));
      }
    }),
    { numRuns },
  );
});

test('the case of the house: a steel ring in a light-alloy bore loses its fit near 100 °C, in cast iron it does not', () => {
  const at = (holeMaterial: string) => fitAtTemperature.run({ nominalMm: 35, hole: 'N7', shaft: { lowerMm: 34.989, upperMm: 35 }, holeMaterial, shaftMaterial: 'steel-100cr6', temperatureC: 100 });
  const aluminium = at('al-a380');
  expect(aluminium.looseFromC?.earliest).toBe(20);
  expect(aluminium.looseFromC?.probable).toBeGreaterThan(40);
  expect(aluminium.looseFromC?.latest).toBeLessThan(160);
  expect(at('gjl250').looseFromC?.latest ?? null).toBeNull();
});

test('a 100 mm light-alloy case at +80 K grows about 90 µm more than its steel shaft', () => {
  // common practice (no source): the figure that the workshop carries in its head
  const { axialGrowthUm } = fitAtTemperature.run({ nominalMm: 35, hole: 'H7', shaft: 'h6', holeMaterial: 'al-a380', shaftMaterial: 'steel-c45', temperatureC: 100, lengthMm: 100 });
  expect(axialGrowthUm?.low).toBeLessThan(90);
  expect(axialGrowthUm?.high).toBeGreaterThan(85);
});

test('an inch fit, by class or by its limits, comes out the same', () => {
  const limits = inchFit.run({ nominalIn: '1 1/2', fitClass: 'FN2' });
  const byClass = fitAtTemperature.run({ nominalMm: '1 1/2 in', fitClass: 'FN2', holeMaterial: 'gjl250', shaftMaterial: 'steel-c45', temperatureC: '180 °F' });
  expect(byClass.at20C.mostInterferenceUm).toBeCloseTo(-limits.minimumThou * 25.4, 9);
  const byLimits = fitAtTemperature.run({
    nominalMm: '1 1/2 in',
    hole: { lowerMm: `${limits.holeSmallestIn} in`, upperMm: `${limits.holeLargestIn} in` },
    shaft: { lowerMm: `${limits.shaftSmallestIn} in`, upperMm: `${limits.shaftLargestIn} in` },
    holeMaterial: 'gjl250',
    shaftMaterial: 'steel-c45',
    temperatureC: '180 °F',
  });
  expect(byLimits.atTemperature.leastInterferenceUm).toBeCloseTo(byClass.atTemperature.leastInterferenceUm, 6);
});

test.each([
  [{ hole: 'H7' }, /give hole and shaft/],
  [{ hole: 'h7', shaft: 'h6' }, /hole: h7 is a class for a shaft/],
  [{ hole: 'H7', shaft: { lowerMm: 50, upperMm: 51 } }, /shaft\.lowerMm and nominalMm.*tenth/],
  [{ hole: 'H7', shaft: 'h6', temperatureC: 50, holeTemperatureC: 60 }, /temperatureC: give one temperature/],
  [{ hole: 'H7', shaft: 'h6', fromC: 100, toC: 50 }, /toC: fromC must be below toC/],
  [{ hole: 'H7', shaft: 'h6', holeMaterial: 'cheese' }, /holeMaterial: unknown material/],
])('refuses %j by its field', (parts, message) => {
  expect(() => fitAtTemperature.run({ nominalMm: 35, holeMaterial: 'al-a380', shaftMaterial: 'steel-c45', ...parts })).toThrow(message);
});
