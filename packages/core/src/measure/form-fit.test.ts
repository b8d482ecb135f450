import fc from 'fast-check';
import { expect, test } from 'vitest';
import { directionDeg, formFit, type FormPoint } from './internal/form-fit.js';
import { repeatability } from './internal/repeatability.js';

/** A part of that form: D = mean + oval/2·cos 2(φ − long) + slope·z. */
const part = (meanMm: number, ovalUm: number, longDeg: number, slope: number) => (angleDeg: number, depthMm: number): FormPoint => ({
  angleDeg, depthMm, valueMm: meanMm + (ovalUm / 2000) * Math.cos((2 * (angleDeg - longDeg) * Math.PI) / 180) + slope * depthMm,
});
const angles = (list: readonly number[], make = part(35, 20, 30, 0)) => list.map((angle) => make(angle, 0));

test('the form that is in it comes out, wherever it lies and however it was read', () => {
  fc.assert(fc.property(fc.integer({ min: 1, max: 200 }), fc.integer({ min: 0, max: 179 }), fc.integer({ min: -50, max: 50 }), fc.integer({ min: 1, max: 60 }), (oval, long, slopeUm, deep) => {
    const make = part(35, oval, long, slopeUm / 10_000);
    const fit = formFit([0, 40, 100, 160].flatMap((angle) => [make(angle, 0), make(angle + 180, deep)]));
    expect(fit?.oval?.ovalityUm).toBeCloseTo(oval, 4);
    const apart = Math.abs((fit?.oval?.largestAtDeg ?? NaN) - long);
    expect(Math.min(apart, 180 - apart)).toBeLessThan(1e-3);
    expect(fit?.taper).toMatchObject({ spanMm: deep, taperUm: expect.closeTo((slopeUm / 10) * deep, 4) as number, taperRatio: expect.closeTo(slopeUm / 10_000, 8) as number });
    // The constant is the size at the middle of the depths read.
    expect(fit?.diameterMm).toBeCloseTo(35 + ((slopeUm / 10_000) * deep) / 2, 8);
    expect(fit?.degreesOfFreedomCount).toBe(4);
    for (const residual of fit?.residualsMm ?? [NaN]) expect(residual).toBeCloseTo(0, 9);
  }));
});

test('an oval needs three directions and no gap over 120°; a direction is the same from either end', () => {
  const told = (list: readonly number[]) => formFit(angles(list))?.oval != null;
  expect(told([0, 60])).toBe(false);
  expect(told([0, 90, 180])).toBe(false);
  expect(told([0, 60, 120])).toBe(true);
  expect(told([0, 60, 61])).toBe(true);
  expect(told([0, 30, 60])).toBe(true);
  expect(told([0, 30, 59])).toBe(false);
  expect(told([0, 10, 130])).toBe(true);
  expect(told([0, 10, 131])).toBe(false);
  expect(told([100, 130, 159])).toBe(false);
  expect(told([100, 130, 160])).toBe(true);
  expect(told([360, 420, -60])).toBe(true);
});

test('where one reading has no angle there is no oval, where one has no depth no taper; with neither there is no form', () => {
  const make = part(35, 20, 30, 0.001);
  const all = [0, 60, 120].flatMap((angle) => [make(angle, 0), make(angle, 10)]);
  const without = (key: 'angleDeg' | 'depthMm') => all.map((point, i) => (i === 2 ? { ...point, [key]: undefined } : point));
  expect(formFit(without('angleDeg'))).toMatchObject({ oval: null, taper: { spanMm: 10 } });
  expect(formFit(without('depthMm'))).toMatchObject({ taper: null, oval: { largestAtDeg: expect.any(Number) as number } });
  expect(formFit([{ valueMm: 35 }, { valueMm: 35.01 }])).toBeNull();
  expect(formFit([{ valueMm: 35, depthMm: 4 }, { valueMm: 35.01, depthMm: 4 }])).toBeNull();
});

test('direction and depth that change together cannot be parted', () => {
  const make = part(35, 20, 30, 0.001);
  expect(formFit([make(0, 0), make(60, 5), make(120, 10)])).toBeNull();
});

test('a round part has no direction', () => {
  expect(formFit(angles([0, 60, 120], part(35, 0, 0, 0)))).toMatchObject({ diameterMm: 35, oval: { ovalityUm: 0, largestAtDeg: null }, taper: null, degreesOfFreedomCount: 0 });
});

test.each([[0, 0], [180, 0], [-60, 120], [179.9999999, 0], [540.5, 0.5], [-0.0000001, 0]])('%d° is the direction %d°', (angle, direction) => {
  expect(directionDeg(angle)).toBe(direction);
});

test('scatter: pooled over places read again; about the form where nothing was read twice; none where form is left over', () => {
  const point = (valueMm: number, angleDeg?: number, depthMm?: number): FormPoint => ({ valueMm, angleDeg, depthMm });
  // Two places read twice, one once: squares 2·(0.01² + 0.02²) over two repeats, five readings.
  const pooled = repeatability([point(35, 0), point(35.02, 180), point(35.1, 90), point(35.14, 90), point(36, 45)], null);
  expect(pooled).toMatchObject({ degreesOfFreedomCount: 2, readingCount: 5, kind: 'same-place', deviationMm: expect.closeTo(Math.sqrt(0.001 / 2), 9) as number, meanUncertaintyMm: expect.closeTo(Math.sqrt(0.001 / 2 / 5), 9) as number });
  expect(repeatability([point(35), point(35.02)], null)).toMatchObject({ kind: 'unplaced', deviationMm: expect.closeTo(0.02 / Math.SQRT2, 9) as number });
  expect(repeatability([point(35, undefined, 3), point(35.02, undefined, 3)], null)?.kind).toBe('same-place');
  expect(repeatability([point(35, 0), point(35.02)], null)).toBeNull();
  // Four depths on a line but for one: residuals ±0.001, ±0.003 about the line leave two degrees of freedom.
  const depths = [point(35.001, undefined, 0), point(34.997, undefined, 1), point(35.003, undefined, 2), point(34.999, undefined, 3)];
  const fit = formFit(depths);
  expect(fit?.residualsMm.map((residual) => Math.round(residual * 1e6))).toEqual([1000, -3000, 3000, -1000]);
  expect(repeatability(depths, fit)).toMatchObject({ kind: 'about-fit', degreesOfFreedomCount: 2, deviationMm: expect.closeTo(Math.sqrt(20e-6 / 2), 9) as number, meanUncertaintyMm: expect.closeTo(Math.sqrt(20e-6 / 2 / 4), 9) as number });
  // Two directions at those depths: an oval cannot be fitted, and is no scatter.
  const turned = depths.map((one, i) => ({ ...one, angleDeg: i % 2 === 0 ? 0 : 90 }));
  expect(repeatability(turned, formFit(turned))).toBeNull();
  const oneWay = depths.map((one, i) => ({ ...one, angleDeg: i % 2 === 0 ? 0 : 180 }));
  expect(repeatability(oneWay, formFit(oneWay))?.kind).toBe('about-fit');
  // Two depths are a line: nothing is left over.
  expect(repeatability(depths.slice(0, 2), formFit(depths.slice(0, 2)))).toBeNull();
});
