import { expect, test } from 'vitest';
import { measuredSizeCalculation } from './measured-size-calculation.js';

const run = (input: Record<string, unknown>) => measuredSizeCalculation.run({ measures: 'inside', ...input });
const at = (angleDeg: number, depthMm: number, valueMm: number) => ({ angleDeg, depthMm, valueMm });
const rod = (points: readonly unknown[]) => [{ instrument: 'inside-micrometer-rod', points }];

test('one reading keeps the uncertainty of its instrument, with k = 2', () => {
  const output = run({ readings: [{ instrument: 'inside-micrometer-rod', valuesMm: [35] }] });
  expect(output.expandedUncertaintyMm).toBe(output.instrumentUncertaintyMm);
  expect(output).toMatchObject({ coverageFactor: 2, effectiveDegreesOfFreedomCount: null, repeatabilityMm: null, notChecked: ['operator-form-temperature-in-uncertainty'], findings: [] });
  expect(output.budget.map((line) => line.component)).toEqual(['permissible-error', 'step']);
});

test('diameters at four angles give mean circle, oval and its direction', () => {
  const output = run({ readings: rod([at(0, 2, 35.02), at(45, 2, 35.03), at(90, 2, 35.02), at(135, 2, 35.01)]) });
  expect(output.leastSquaresDiameterMm).toBeCloseTo(35.02, 9);
  expect(output.harmonicOvalityUm).toBeCloseTo(20, 6);
  expect(output.largestAtDeg).toBeCloseTo(45, 6);
  expect(output).toMatchObject({ ovalityUm: 20, taperUm: null, fittedTaperUm: null, isWavy: null });
  expect(output.findings.map(({ code }) => code)).toEqual(['oval-with-direction']);
  expect(output.notChecked).toContain('odd-lobes');
});

test('two directions at two depths: the oval is not mistaken for scatter', () => {
  const output = run({ readings: rod([at(0, 2, 35.02), at(90, 2, 35.04), at(0, 10, 35.02), at(90, 10, 35.04)]) });
  expect(output).toMatchObject({ repeatabilityMm: null, ovalityUm: 20, harmonicOvalityUm: null });
  expect(output.expandedUncertaintyMm).toBe(output.instrumentUncertaintyMm);
});

test('taper is the slope over depth, not the ends alone', () => {
  const output = run({ readings: rod([at(0, 0, 35), at(0, 10, 35.01), at(0, 20, 35.02), at(0, 30, 35.024)]) });
  expect(output.taperUm).toBe(24);
  expect(output.fittedTaperUm).toBeCloseTo(24.6, 6);
  expect(output.taperRatio).toBeCloseTo(0.00082, 9);
});

test('three lobes on top of an oval are called wavy when they pass two steps', () => {
  const ring = [0, 30, 60, 90, 120, 150].map((angleDeg) => at(angleDeg, 2, 35 + 0.02 * Math.cos((4 * angleDeg * Math.PI) / 180)));
  expect(run({ readings: rod(ring) })).toMatchObject({ isWavy: true });
  expect(run({ readings: rod(ring.map((point) => ({ ...point, valueMm: 35 + (point.valueMm - 35) / 10 }))) })).toMatchObject({ isWavy: false });
});

test('a three-point or V-block reading has no oval', () => {
  const output = run({ contact: 'three-point', readings: rod([at(0, 2, 35.02), at(60, 2, 35.03), at(120, 2, 35.01)]) });
  expect(output).toMatchObject({ ovalityUm: null, harmonicOvalityUm: null, leastSquaresDiameterMm: null });
  expect(output.findings.map(({ code }) => code)).toEqual(['no-ovality-from-this-contact']);
});

test('two readings at one place widen the uncertainty by the t-factor of few degrees of freedom', () => {
  const two = run({ readings: [{ instrument: 'outside-micrometer', valuesMm: [20, 20.02] }], measures: 'outside' });
  expect(two.repeatabilityMm).toBeCloseTo(0.0141421, 6);
  expect(two.coverageFactor).toBeGreaterThan(4);
  expect(two.findings.map(({ code }) => code)).toContain('too-few-readings');
});

test('a warm aluminium part is smaller at 20 °C, and temperature enters the budget', () => {
  const output = run({ readings: [{ instrument: 'inside-micrometer-rod', valuesMm: [50] }], partTemperatureC: 40, instrumentTemperatureC: 22, partMaterial: { youngsModulusGpa: 71, poissonRatio: 0.33, expansionPerK: 23e-6 } });
  expect(output.sizeAt20CMm).toBeCloseTo((50 * (1 + 11.5e-6 * 2)) / (1 + 23e-6 * 20), 12);
  expect(output.expandedUncertaintyMm).toBeGreaterThan(output.instrumentUncertaintyMm);
  expect(output.findings.map(({ code }) => code)).toEqual(['size-corrected-to-20-c']);
  expect(output.assumptions.map(({ name }) => name)).toEqual(['instrument-expansion', 'temperature-uncertainty']);
});

test('a temperature without material is refused, and the field is named', () => {
  const readings = [{ instrument: 'inside-micrometer-rod', valuesMm: [50] }];
  expect(() => run({ readings, partTemperatureC: 40 })).toThrow(/partMaterial: missing/);
  expect(() => run({ readings, instrumentTemperatureC: 40 })).toThrow(/partTemperatureC: missing/);
});

test('a reading that stands apart is named, and two instruments that do not meet', () => {
  const apart = run({ readings: [{ instrument: 'inside-micrometer-rod', valuesMm: [35.01, 35.02, 35.01, 35.02, 35.2] }] });
  expect(apart.outlier).toMatchObject({ valueMm: 35.2, isOutlier: true });
  expect(apart.findings[0]?.code).toBe('reading-stands-apart');
  const two = run({ readings: [{ instrument: 'inside-micrometer-rod', valuesMm: [35] }, { instrument: 'digital-calliper', valuesMm: [35.2] }] });
  expect(two.findings.map(({ code }) => code)).toEqual(['instruments-disagree']);
});
