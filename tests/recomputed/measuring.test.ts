import { expect, test } from 'vitest';
import { conformanceProbability, grubbsCriticalRatio, measuredSizeCalculation, normalProbability, studentProbability, studentQuantile } from '@seatwright/core/measure';
import { between, drawing, normal } from './internal/drawn.js';

/** Measuring by trying: errors are thrown as dice and what comes out is counted; forms are fitted by walking downhill. */
const nanometre = (mm: number): number => Number(mm.toFixed(6));
const spreadOf = (values: readonly number[]): number => {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  return Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (values.length - 1));
};

test('the uncertainty of a size at 20 °C is the scatter of many measurements with every error thrown', () => {
  const draw = drawing(100);
  for (let i = 0; i < 16; i += 1) {
    const [mpe, step, uT, alpha] = [between(draw, 0.001, 0.02), between(draw, 0.001, 0.02), between(draw, 0.2, 5), between(draw, 8e-6, 120e-6)];
    const [partC, toolC, size] = [between(draw, 5, 60), between(draw, 10, 35), between(draw, 20, 200)];
    const values = Array.from({ length: 3 + Math.floor(draw() * 6) }, () => nanometre(size + between(draw, -0.004, 0.004)));
    const found = measuredSizeCalculation.run({
      measures: 'outside',
      readings: [{ instrument: 'own', valuesMm: values }],
      instruments: [{ id: 'own', measures: 'outside', resolutionMm: step, permissibleErrorMm: mpe }],
      partTemperatureC: partC,
      instrumentTemperatureC: toolC,
      temperatureUncertaintyK: uT,
      partMaterial: { youngsModulusGpa: 70, poissonRatio: 0.3, expansionPerK: alpha },
    });
    const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
    const scatter = spreadOf(values) / Math.sqrt(values.length);
    const halves = (half: number) => between(draw, -half, half);
    const sizes = Array.from({ length: 15_000 }, () => {
      const shown = mean + halves(mpe) + halves(step / 2) + scatter * normal(draw);
      return (shown * (1 + (11.5e-6 + halves(2e-6)) * (toolC + halves(uT) - 20))) / (1 + alpha * (partC + halves(uT) - 20));
    });
    expect(found.sizeAt20CMm).toBeCloseTo((mean * (1 + 11.5e-6 * (toolC - 20))) / (1 + alpha * (partC - 20)), 6);
    expect(Math.abs(found.standardUncertaintyMm / spreadOf(sizes) - 1)).toBeLessThan(0.03);
    // Flat errors have short tails: two deviations hold at least as much as of a normal error.
    const held = sizes.filter((value) => Math.abs(value - (found.sizeAt20CMm ?? 0)) <= found.expandedUncertaintyMm).length / sizes.length;
    expect(held).toBeGreaterThan(0.95);
  }
});

test('two instruments: the size leans on each by its certainty, and scatters as little as it says', () => {
  const draw = drawing(101);
  for (let i = 0; i < 10; i += 1) {
    const own = [0, 1].map((k) => ({ id: `own-${k}`, measures: 'inside', resolutionMm: between(draw, 0.001, 0.01), permissibleErrorMm: between(draw, 0.002, 0.02) }) as const);
    const shown = own.map(() => nanometre(between(draw, 49.99, 50.01)));
    const found = measuredSizeCalculation.run({ measures: 'inside', instruments: own, readings: own.map(({ id }, k) => ({ instrument: id, valuesMm: [shown[k]] })) });
    // The weight that makes the scatter least, found by trying a thousand.
    const scatter = own.map(({ resolutionMm, permissibleErrorMm }) => spreadOf(Array.from({ length: 15_000 }, () => between(draw, -permissibleErrorMm, permissibleErrorMm) + between(draw, -resolutionMm / 2, resolutionMm / 2))));
    const [a = 0, b = 0] = scatter;
    let best = { share: 0, spread: Infinity };
    for (let k = 0; k <= 1000; k += 1) {
      const spread = Math.sqrt(((k / 1000) * a) ** 2 + ((1 - k / 1000) * b) ** 2);
      if (spread < best.spread) best = { share: k / 1000, spread };
    }
    expect(found.meanMm).toBeCloseTo(best.share * (shown[0] ?? 0) + (1 - best.share) * (shown[1] ?? 0), 3);
    expect(Math.abs(found.standardUncertaintyMm / best.spread - 1)).toBeLessThan(0.03);
  }
});

test.each([2, 3, 5, 10])('%d readings with nothing but chance in them: the stated range holds the true size in 95.45 of 100 tries', (count) => {
  const draw = drawing(200 + count);
  const tries = 1000;
  let held = 0;
  for (let i = 0; i < tries; i += 1) {
    const values = Array.from({ length: count }, () => nanometre(30 + 0.01 * normal(draw)));
    const found = measuredSizeCalculation.run({ measures: 'outside', readings: [{ instrument: 'own', valuesMm: values }], instruments: [{ id: 'own', measures: 'outside', resolutionMm: 1e-6, permissibleErrorMm: 1e-6 }] });
    if (Math.abs(found.meanMm - 30) <= found.expandedUncertaintyMm) held += 1;
  }
  // Four standard deviations of the count.
  expect(Math.abs(held / tries - 0.9545)).toBeLessThan(4 * Math.sqrt((0.9545 * 0.0455) / tries));
});

/** Least squares by walking downhill, one unknown after the other, until nothing moves. */
function downhill(rows: readonly (readonly number[])[], values: readonly number[]): readonly number[] {
  const x = (rows[0] ?? []).map(() => 0);
  const left = [...values];
  for (let sweep = 0; sweep < 20_000; sweep += 1) {
    let moved = 0;
    x.forEach((_, j) => {
      const step = rows.reduce((sum, row, i) => sum + (row[j] ?? 0) * (left[i] ?? 0), 0) / rows.reduce((sum, row) => sum + (row[j] ?? 0) ** 2, 0);
      x[j] = (x[j] ?? 0) + step;
      rows.forEach((row, i) => (left[i] = (left[i] ?? 0) - step * (row[j] ?? 0)));
      moved = Math.max(moved, Math.abs(step));
    });
    if (moved < 1e-13) break;
  }
  return x;
}

test('mean circle, oval, its long way and the taper: drawn readings, fitted by walking downhill', () => {
  const draw = drawing(300);
  for (let i = 0; i < 120; i += 1) {
    const isTapered = draw() < 0.5;
    const [ovalMm, longWay, slope] = [between(draw, 0.005, 0.06), between(draw, 0, 180), between(draw, -0.002, 0.002)];
    const count = 4 + Math.floor(draw() * 6);
    const directions = Array.from({ length: count }, (_, k) => (k * 180) / count + between(draw, -5, 5));
    const points = (isTapered ? [2, 9, 21] : [5]).flatMap((depthMm) =>
      directions.map((angleDeg) => ({ depthMm, angleDeg: Number(angleDeg.toFixed(3)), valueMm: nanometre(40 + (ovalMm / 2) * Math.cos(((angleDeg - longWay) * Math.PI) / 90) + slope * depthMm + 0.001 * normal(draw)) })),
    );
    const found = measuredSizeCalculation.run({ measures: 'inside', readings: [{ instrument: 'inside-micrometer-rod', points }] });
    const depth = points.reduce((sum, { depthMm }) => sum + depthMm, 0) / points.length;
    const rows = points.map(({ angleDeg, depthMm }) => [1, Math.cos((angleDeg * Math.PI) / 90), Math.sin((angleDeg * Math.PI) / 90), ...(isTapered ? [(depthMm - depth) / 10] : [])]);
    const [D = 0, a = 0, b = 0, t = 0] = downhill(rows, points.map(({ valueMm }) => valueMm - 40));
    expect(found.leastSquaresDiameterMm).toBeCloseTo(40 + D, 8);
    expect(found.harmonicOvalityUm).toBeCloseTo(2000 * Math.hypot(a, b), 4);
    // The long way by looking round in thousandths of a degree about the place that was named, and nowhere is it longer.
    const length = (degrees: number) => a * Math.cos((degrees * Math.PI) / 90) + b * Math.sin((degrees * Math.PI) / 90);
    const named = length(found.largestAtDeg ?? Number.NaN);
    for (let degrees = 0; degrees < 180; degrees += 0.25) expect(length(degrees)).toBeLessThanOrEqual(named + 1e-9);
    if (isTapered) expect(found.fittedTaperUm).toBeCloseTo((t / 10) * (21 - 2) * 1000, 4);
    else expect(found.fittedTaperUm).toBeNull();
    // Every pair of readings at one depth: the widest difference.
    let widest = 0;
    for (const p of points) for (const q of points) if (p.depthMm === q.depthMm) widest = Math.max(widest, 1000 * (p.valueMm - q.valueMm));
    expect(found.ovalityUm).toBeCloseTo(widest, 6);
  }
});

/** Area under a curve by Simpson's rule. */
function area(curve: (x: number) => number, from: number, to: number, count = 2000): number {
  const h = (to - from) / count;
  let sum = curve(from) + curve(to);
  for (let i = 1; i < count; i += 1) sum += (i % 2 === 1 ? 4 : 2) * curve(from + i * h);
  return (sum * h) / 3;
}

test('normal and Student distributions are the areas under their curves, the latter counted on both sides', () => {
  for (let x = -6; x <= 6; x += 0.37) expect(normalProbability(x)).toBeCloseTo(0.5 + area((t) => Math.exp((-t * t) / 2) / Math.sqrt(2 * Math.PI), 0, x), 12);
  for (const degrees of [1, 2, 3, 4, 7, 12, 30, 100]) {
    // The height is what makes the whole area one; x = tan(turn) brings both ends near.
    const curve = (turn: number) => Math.cos(turn) ** -2 * (1 + Math.tan(turn) ** 2 / degrees) ** (-(degrees + 1) / 2);
    const end = Math.PI / 2 - 1e-9;
    const whole = 2 * area(curve, 0, end, 40_000);
    for (const t of [0.3, 1, 2.2, 5]) expect(studentProbability(t, degrees)).toBeCloseTo(area(curve, 0, Math.atan(t), 4000) / (whole / 2), 7);
    const quantile = studentQuantile(0.9545, degrees);
    expect(area(curve, 0, Math.atan(quantile), 4000) / (whole / 2)).toBeCloseTo(0.9545, 7);
  }
});

test('the chance that a size keeps its limits, by throwing the true sizes', () => {
  const draw = drawing(400);
  for (let i = 0; i < 40; i += 1) {
    const [low, u] = [between(draw, 19.98, 20.02), between(draw, 0.002, 0.02)];
    const high = low + (i % 2) * between(draw, 0, 0.01);
    const found = conformanceProbability({ lowMm: low, highMm: high }, { lowerLimitMm: 19.99, upperLimitMm: 20.02 }, u);
    let kept = 0;
    for (let k = 0; k < 20_000; k += 1) {
      const error = u * normal(draw);
      if (low - error >= 19.99 && high - error <= 20.02) kept += 1;
    }
    expect(Math.abs(found - kept / 20_000)).toBeLessThan(0.015);
  }
});

test.each([3, 5, 10, 20])('of %d readings with nothing wrong, the furthest passes the outlier limit once in twenty', (count) => {
  const draw = drawing(500 + count);
  const limit = grubbsCriticalRatio(count, 0.05);
  let passed = 0;
  for (let i = 0; i < 10_000; i += 1) {
    const values = Array.from({ length: count }, () => normal(draw));
    const mean = values.reduce((sum, value) => sum + value, 0) / count;
    if (Math.max(...values.map((value) => Math.abs(value - mean))) > limit * spreadOf(values)) passed += 1;
  }
  expect(Math.abs(passed / 10_000 - 0.05)).toBeLessThan(0.009);
});
