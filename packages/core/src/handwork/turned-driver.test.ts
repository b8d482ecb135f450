import { expect, test } from 'vitest';
import { driverSearch } from './driver-search.js';

const seal = { shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR', caseThicknessMm: 1, edgeRadiusMm: 1 } as const;
const shaft = { readings: [{ instrument: 'outside-micrometer', valuesMm: [20] }], protrusionMm: 60 };
const bore = { readings: [{ instrument: 'digital-calliper', valuesMm: [35.02, 35.01] }], leadIn: { lengthMm: 1, angleDeg: 15 }, depthMm: 8.5, innerEnd: 'shoulder' };
const base = { seal, shaft, bore, lipFacing: 'inward', seat: { kind: 'flush' }, includeStandardTubes: false };
type Input = Record<string, unknown>;
const run = (input: Input = {}) => driverSearch.run({ ...base, ...input });
const turned = (input: Input = {}) => run(input).turnedDriver;

test('flush: a plate that lands 3 mm on the face each side, hollow over the shaft, with 10 mm of solid end', () => {
  // Mouth 35.04 + 2·tan 15° = 35.60: 41.7. Inside midway of 20 and 35. The shaft reaches 60 mm in, 5 to spare. ISO 286: js12 ± 0.125, H12 0.21 (18 to 30 mm).
  expect(turned()).toEqual({
    form: 'flat plate', outsideMm: 41.7, outsideClass: 'js12', outsideDeviationMm: { low: -0.125, high: 0.125 },
    insideMm: 27.5, insideClass: 'H12', insideDeviationMm: { low: 0, high: 0.21 }, insideDepthMm: 65,
    collarOutsideMm: null, recessInsideMm: null, stepHeightMm: null, stepClass: null, stepDeviationMm: null, lengthMm: 75, faceOutOfSquareUpToMm: 0.05, isOpenThrough: false,
  });
});

test('to a depth: what enters is 0.4 mm under the seal and never larger, its collar lands; to a shoulder it follows in plain', () => {
  expect(turned({ seat: { kind: 'depth', depthMm: 3 } })).toMatchObject({ form: 'stepped collar', outsideMm: 34.6, outsideClass: 'h11', outsideDeviationMm: { low: -0.16, high: 0 }, collarOutsideMm: 41.7, stepHeightMm: 3, stepClass: 'js11', stepDeviationMm: { low: -0.03, high: 0.03 }, insideDepthMm: 68, lengthMm: 78 });
  expect(turned({ seat: { kind: 'shoulder' } })).toMatchObject({ form: 'plain sleeve', outsideMm: 34.6, outsideClass: 'h11', collarOutsideMm: null, stepHeightMm: null });
  // No depth at all is flush.
  expect(turned({ seat: { kind: 'depth', depthMm: 0 } })).toEqual(turned());
  // A tight bore asks for more: 0.2 mm under its least.
  const tight = turned({ seat: { kind: 'shoulder' }, bore: { ...bore, readings: [{ instrument: 'inside-micrometer-rod', valuesMm: [34.7] }] } });
  expect(tight?.outsideMm).toBe(34.4);
});

test('standing out: the rim of a recess lands, and the recess takes what stands out; 1 mm of rim it must have', () => {
  // ISO 6194-1 makes a metal case of 35 mm up to 35.2 mm: half a millimetre more is 35.7. The hollow is 1 mm less deep than at flush. ISO 286: js11 of 1 mm is ± 0.03.
  expect(turned({ seat: { kind: 'depth', depthMm: -1 } })).toMatchObject({
    form: 'recessed plate', outsideMm: 41.7, outsideClass: 'js12', recessInsideMm: 35.7, collarOutsideMm: null,
    stepHeightMm: 1, stepClass: 'js11', stepDeviationMm: { low: -0.03, high: 0.03 }, insideMm: 27.5, insideDepthMm: 64, lengthMm: 74,
  });
  const onFace = (faceDiameterMm: number) => turned({ seat: { kind: 'depth', depthMm: -1 }, bore: { ...bore, faceDiameterMm } });
  expect(onFace(37.7)).toMatchObject({ form: 'recessed plate', outsideMm: 37.7 });
  expect(onFace(37.6)).toMatchObject({ form: 'plain sleeve', outsideMm: 34.6, recessInsideMm: null, stepHeightMm: null });
});

test('inside: as deep as the shaft asks, a relief where it does not reach, open where nobody knows', () => {
  expect(turned({ shaft: { protrusionMm: -12 } })).toMatchObject({ insideDepthMm: 3, lengthMm: 30, isOpenThrough: false });
  expect(turned({ shaft: { protrusionMm: 0 } })).toMatchObject({ insideDepthMm: 3 });
  expect(turned({ shaft: { protrusionMm: 0.5 } })).toMatchObject({ insideDepthMm: 5.5, lengthMm: 30 });
  expect(turned({ shaft: { readings: shaft.readings } })).toMatchObject({ insideDepthMm: 5, lengthMm: 30, isOpenThrough: true });
  expect(turned({ shaft: { ...shaft, protrusionMm: 19 } })).toMatchObject({ insideDepthMm: 24, lengthMm: 34 });
  // A handle of 30 mm beyond the deepest end.
  expect(turned({ shaft: { protrusionMm: -40 }, seat: { kind: 'depth', depthMm: 3 } })).toMatchObject({ insideDepthMm: 3, lengthMm: 33 });
});

test('over a collar half a millimetre free; where that leaves no rim of 1 mm there is none to turn', () => {
  const over = (diameterMm: number, more: Input = {}) => turned({ shaft: { ...shaft, obstacles: [{ kind: 'collar', diameterMm, fromMm: 0 }] }, ...more });
  // Measured with a calliper: 31.06 + 0.5 = 31.6; H12 is 0.25 over 30 mm.
  expect(over(31)).toMatchObject({ insideMm: 31.6, insideDeviationMm: { low: 0, high: 0.25 } });
  expect(over(24)).toMatchObject({ insideMm: 27.5 });
  expect(over(33)).toBeNull();
  expect(over(32)?.insideMm).toBe(32.6);
  expect(over(32.1)).toBeNull();
});

test('the collar stays on the face of the housing where that is narrow, and lands where it can where there is hardly any', () => {
  expect(turned({ bore: { ...bore, faceDiameterMm: 38 } })?.outsideMm).toBe(38);
  expect(turned({ bore: { ...bore, faceDiameterMm: 60 } })?.outsideMm).toBe(41.7);
  expect(turned({ bore: { ...bore, faceDiameterMm: 35.5 } })?.outsideMm).toBe(41.7);
});

const exact = { outsideToleranceMm: 0.05, wallToleranceMm: 0.05, outOfRoundMm: 0, endSquarenessMm: 0.05 };
const tube = (outsideMm: number, insideMm = 29, more: object = {}) => ({ name: 'offcut', kind: 'tube', outsideMm, insideMm, lengthMm: 100, material: 'steel', ...exact, ...more });
const atBore = (outsideMm: number, input: Input = {}) => {
  const output = run({ ...input, toolsAtHand: [tube(outsideMm)] });
  const found = output.candidates[0] ?? output.nearMisses[0];
  return (found?.reasons ?? []).filter(({ code }) => /enters|has-no-stop|depth-mark|chamfer|close-to-call|follow|enter-bore|wide-but|may-stop|stops-at|stays-outside|standing-out|narrowly|wider/u.test(code)).map(({ code, severity, parameters, missing }) => [code, severity, parameters, ...(missing === undefined ? [] : [missing])]);
};

test('a tool that enters: free or barely, and what it lacks for a flush seal or a depth', () => {
  const { outsideUpToMm } = run().required;
  const entering = atBore(34.5);
  expect(entering).toMatchObject([['driver-enters-bore', 'good', { boreLowMm: outsideUpToMm, outsideHighMm: expect.closeTo(34.55, 9) as number, clearanceMm: expect.closeTo((outsideUpToMm ?? NaN) - 34.55, 9) as number }], ['driver-has-no-stop', 'note', {}]]);
  expect(atBore(34.88)[0]?.slice(0, 2)).toEqual(['driver-enters-barely', 'care']);
  expect(atBore(34.5, { seat: { kind: 'depth', depthMm: 3 } })).toMatchObject([['driver-enters-bore', 'good', {}], ['driver-needs-depth-mark', 'note', { depthMm: 3 }]]);
  expect(atBore(34.5, { seat: { kind: 'shoulder' } }).map(([code]) => code)).toEqual(['driver-enters-bore']);
  expect(atBore(34.5, { seat: { kind: 'depth', depthMm: -1 } })).toMatchObject([['driver-enters-bore', 'good', {}], ['driver-stop-standing-out', 'note', { outMm: 1 }]]);
  expect(atBore(34.5, { seat: { kind: 'depth', depthMm: 0 } }).map(([code]) => code)).toEqual(['driver-enters-bore', 'driver-has-no-stop']);
});

test('a wide tool: stops flush, lands narrowly, on the chamfer, beyond the face; cannot follow below it', () => {
  const mouthMm = run().required.flushOutsideOverMm ?? NaN;
  const flush = atBore(42);
  expect(flush).toMatchObject([['driver-stops-at-flush', 'good', { mouthHighMm: mouthMm, landingMm: expect.closeTo((41.95 - mouthMm) / 2, 9) as number }]]);
  expect(atBore(36).map(([code, severity]) => [code, severity])).toEqual([['driver-stops-at-flush', 'good'], ['driver-lands-narrowly', 'care']]);
  expect(atBore(35.4)).toMatchObject([['driver-lands-on-chamfer', 'care', { mouthHighMm: mouthMm, outsideLowMm: expect.closeTo(35.35, 9) as number, outsideHighMm: expect.closeTo(35.45, 9) as number }]]);
  expect(atBore(42, { bore: { ...bore, faceDiameterMm: 42 } })).toMatchObject([['driver-stops-at-flush', 'good', {}], ['driver-wider-than-face', 'care', { outsideHighMm: expect.closeTo(42.05, 9) as number, faceDiameterMm: 42 }]]);
  expect(atBore(42, { bore: { ...bore, faceDiameterMm: 43 } })).toHaveLength(1);
  expect(atBore(42, { seat: { kind: 'depth', depthMm: -1 } })).toMatchObject([['driver-stays-outside', 'good', { mouthHighMm: mouthMm }], ['driver-stop-standing-out', 'note', { outMm: 1 }]]);
  expect(atBore(42, { seat: { kind: 'depth', depthMm: 3 } })).toMatchObject([['driver-cannot-follow-to-depth', 'bad', { depthMm: 3 }]]);
  const outside = atBore(42, { seat: { kind: 'shoulder' } });
  expect(outside).toMatchObject([['driver-does-not-enter-bore', 'bad', { outsideLowMm: expect.closeTo(41.95, 9) as number }]]);
  const { boreHighMm, missMm } = outside[0]?.[2] as Record<string, number>;
  expect(missMm).toBeCloseTo(41.95 - (boreHighMm ?? NaN), 9);
  expect(atBore(35, { seat: { kind: 'shoulder' } })).toMatchObject([['driver-bore-too-close-to-call', 'unknown', {}, expect.stringMatching(/readings$/u) as string]]);
  const { depthMm: _, ...unknown } = bore;
  expect(atBore(42, { seat: { kind: 'shoulder' }, bore: unknown })).toMatchObject([['driver-wide-but-depth-unknown', 'unknown', {}, 'bore.depthMm']]);
  // 7.1 mm of bore: the seal ends 0.1 mm below the face, more or less. A wide tool may stop before the shoulder does.
  expect(atBore(42, { seat: { kind: 'shoulder' }, bore: { ...bore, depthMm: 7.1 } })).toMatchObject([['driver-may-stop-before-shoulder', 'care', { depthHighMm: expect.any(Number) as number }]]);
});
