import { expect, test } from 'vitest';
import { fitAtTemperature } from './fit-at-temperature.js';

/** On 100 mm, ten parts of a million a kelvin are one µm. */
const grows = (perMillion: number) => ({ youngsModulusGpa: 100, poissonRatio: 0.3, expansionPerK: perMillion / 1e6 });
const tight = { nominalMm: 100, hole: { lowerMm: 99.95, upperMm: 99.97 }, shaft: { lowerMm: 100, upperMm: 100.01 } };
const loose = { nominalMm: 100, hole: { lowerMm: 100.03, upperMm: 100.05 }, shaft: { lowerMm: 99.99, upperMm: 100 } };
const caseGrows = { holeMaterial: grows(20), shaftMaterial: grows(10) };
const shaftGrows = { holeMaterial: grows(10), shaftMaterial: grows(20) };
const run = (input: object) => fitAtTemperature.run(input);
const near = (earliest: number, probable: number | null, latest: number | null) => ({
  earliest: expect.closeTo(earliest, 9) as number,
  probable: probable === null ? null : (expect.closeTo(probable, 9) as number),
  latest: latest === null ? null : (expect.closeTo(latest, 9) as number),
});
const always = near(20, 20, 20);

test('a case that grows more lets go on warming, never on cooling; it is tight as it stands', () => {
  expect(run({ ...tight, ...caseGrows })).toMatchObject({ looseFromC: near(50, 65, 80), looseBelowC: null, tightFromC: always, tightBelowC: always });
});

test('a shaft that grows more lets go on cooling', () => {
  expect(run({ ...tight, ...shaftGrows })).toMatchObject({ looseFromC: null, looseBelowC: near(-10, -25, -40) });
});

test('clearance goes on warming where the shaft grows more, on cooling where the case does', () => {
  expect(run({ ...loose, ...shaftGrows })).toMatchObject({ tightFromC: near(50, 65, 80), tightBelowC: null, looseFromC: always, looseBelowC: always });
  expect(run({ ...loose, ...caseGrows })).toMatchObject({ tightFromC: null, tightBelowC: near(-10, -25, -40) });
});

test('what lies beyond 600 °C is not told; 600 °C itself is', () => {
  const input = { nominalMm: 100, hole: { lowerMm: 99.42, upperMm: 99.43 }, shaft: { lowerMm: 100, upperMm: 100.01 }, ...caseGrows };
  expect(run(input).looseFromC).toEqual(near(590, 600, null));
  expect(run({ ...input, hole: { lowerMm: 99.3, upperMm: 99.4 } }).looseFromC).toBeNull();
});

test('equal growth changes nothing: what is tight stays so', () => {
  expect(run({ ...tight, holeMaterial: grows(12), shaftMaterial: grows(12), temperatureC: 150 })).toMatchObject({ looseFromC: null, looseBelowC: null, kind: 'interference' });
});

test.each([
  [49, 'interference'],
  [51, 'transition'],
  [79, 'transition'],
  [81, 'clearance'],
] as const)('at %d °C it is a fit of %s', (temperatureC, kind) => {
  expect(run({ ...tight, ...caseGrows, temperatureC }).kind).toBe(kind);
});

test('interference that may be nothing is interference still, clearance that may be nothing is clearance, and nothing at all is clearance', () => {
  const kind = (hole: readonly [number, number], shaft: readonly [number, number]) => run({ nominalMm: 100, hole: { lowerMm: hole[0], upperMm: hole[1] }, shaft: { lowerMm: shaft[0], upperMm: shaft[1] }, ...caseGrows }).kind;
  expect(kind([99.95, 100], [100, 100.01])).toBe('interference');
  expect(kind([100, 100.02], [99.99, 100])).toBe('clearance');
  expect(kind([100, 100], [100, 100])).toBe('clearance');
});

test('each part at its own temperature, and the other at 20 °C', () => {
  expect(run({ ...tight, ...caseGrows, holeTemperatureC: 30 }).thermalInterferenceUm.low).toBeCloseTo(-20, 9);
  expect(run({ ...tight, ...caseGrows, shaftTemperatureC: 30 }).thermalInterferenceUm.high).toBeCloseTo(10, 9);
  expect(run({ ...tight, ...caseGrows, holeTemperatureC: 30, shaftTemperatureC: 40 }).atTemperature).toMatchObject({ leastInterferenceUm: expect.closeTo(30, 9) as number, probableInterferenceUm: expect.closeTo(45, 9) as number, mostInterferenceUm: expect.closeTo(60, 9) as number });
});

test('the curve runs from −20 to 150 °C in 35 points unless asked otherwise', () => {
  const { curve } = run({ ...tight, ...caseGrows });
  expect([curve.length, curve[0]?.bothAtC, curve[1]?.bothAtC, curve.at(-1)?.bothAtC]).toEqual([35, -20, -15, 150]);
  expect(curve[0]?.leastInterferenceUm).toBeCloseTo(70, 9);
  expect(run({ ...tight, ...caseGrows, fromC: 0, toC: 100, curvePointCount: 3 }).curve.map(({ bothAtC }) => bothAtC)).toEqual([0, 50, 100]);
});

test('along the shaft: asked for by a length; parts of one kind and warmth grow alike', () => {
  expect(run({ ...tight, ...caseGrows, temperatureC: 70 }).axialGrowthUm).toBeNull();
  const { axialGrowthUm } = run({ ...tight, ...caseGrows, holeTemperatureC: 70, shaftTemperatureC: 30, lengthMm: 200 });
  expect(axialGrowthUm).toEqual({ low: expect.closeTo(180, 9) as number, high: expect.closeTo(180, 9) as number });
  const alloy = { holeMaterial: 'al-alsi9cu3', shaftMaterial: 'al-alsi9cu3', lengthMm: 100 };
  expect(run({ ...tight, ...alloy, temperatureC: 120 }).axialGrowthUm).toEqual({ low: 0, high: 0 });
  // 21 to 22 parts of a million: 210 to 220 µm, below zero when the case is the cold one.
  expect(run({ ...tight, ...alloy, shaftTemperatureC: 120 }).axialGrowthUm).toEqual({ low: expect.closeTo(-220, 6) as number, high: expect.closeTo(-210, 6) as number });
  expect(run({ ...tight, ...alloy, holeTemperatureC: 120 }).axialGrowthUm).toEqual({ low: expect.closeTo(210, 6) as number, high: expect.closeTo(220, 6) as number });
});

test('the spread of a material is in the answer, and named; parts of one material share theirs', () => {
  const one = run({ ...tight, holeMaterial: 'al-alsi9cu3', shaftMaterial: 'al-alsi9cu3', temperatureC: 120 });
  expect(one.thermalInterferenceUm.low).toBeCloseTo(0, 9);
  expect(one.thermalInterferenceUm.high).toBeCloseTo(0, 9);
  const two = run({ ...tight, holeMaterial: 'al-alsi9cu3', shaftMaterial: grows(10), temperatureC: 120 });
  expect(two.thermalInterferenceUm).toEqual({ low: expect.closeTo(-120, 6) as number, high: expect.closeTo(-110, 6) as number });
  expect(two.assumptions).toMatchObject([{ name: 'expansion-of-hole', value: 21e-6, upToValue: 22e-6, unit: '1/K' }]);
  expect(run({ ...tight, ...caseGrows }).assumptions).toEqual([]);
  expect(two.notChecked).toEqual(['parts-press-on-each-other', 'form-and-roughness']);
});

test.each([
  [{ nominalMm: 100, hole: 'H7' }, /give hole and shaft, or a fitClass/],
  [{ nominalMm: 100, shaft: 'h6' }, /give hole and shaft, or a fitClass/],
  [{ nominalMm: 100 }, /give hole and shaft, or a fitClass/],
  [{ nominalMm: 100, hole: 'H7', fitClass: 'FN2' }, /give hole and shaft, or a fitClass/],
  [{ nominalMm: 100, shaft: 'h6', fitClass: 'FN2' }, /give hole and shaft, or a fitClass/],
  [{ ...tight, temperatureC: 50, holeTemperatureC: 50 }, /temperatureC: give one temperature/],
  [{ ...tight, temperatureC: 50, shaftTemperatureC: 50 }, /temperatureC: give one temperature/],
  [{ ...tight, fromC: 50, toC: 50 }, /toC: fromC must be below toC/],
  [{ ...tight, fromC: 150 }, /fromC must be below toC/],
  [{ ...tight, toC: -20 }, /fromC must be below toC/],
])('%# is refused with its reason', (input, message) => {
  expect(() => run({ ...input, ...caseGrows })).toThrow(message);
});

test('limits of size: no width is a size, the wrong way round is none, a tenth of the nominal size is as far as they go', () => {
  const at = (lowerMm: number, upperMm: number) => () => run({ ...tight, ...caseGrows, shaft: { lowerMm, upperMm } }).at20C;
  expect(at(100, 100)()).toMatchObject({ mostInterferenceUm: 50 });
  expect(at(100.01, 100)).toThrow(/lowerMm must not exceed upperMm|tolerance class/);
  expect(at(90, 110)()).toMatchObject({ leastInterferenceUm: -9970 });
  expect(at(89.99, 100)).toThrow(/more than a tenth away/);
  expect(at(100, 110.01)).toThrow(/more than a tenth away/);
});

test('the range may end anywhere above its start', () => {
  expect(run({ ...tight, ...caseGrows, toC: 10 }).curve.at(-1)?.bothAtC).toBe(10);
});
