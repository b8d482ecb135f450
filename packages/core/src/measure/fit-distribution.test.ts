import { expect, test } from 'vitest';
import { expectWorkingHolds } from '../../../../tests/laws/internal/evaluate-working.js';
import { conformanceProbability } from './conformance-probability.js';
import { fitDistribution } from './fit-distribution.js';
import { grubbsCriticalRatio, grubbsOutlier } from './grubbs-outlier.js';
import { normalProbability } from './normal-distribution.js';

const close = (value: number, digits = 9) => expect.closeTo(value, digits) as number;
/**
 * A hole from 0 to 20 µm and a shaft from 0 to 10 µm, every size as likely: clearance from −10 to 20, middle 5, variance (20² + 10²)/12.
 * Tight: where hole < shaft, a triangle of 10·10/2 of the 200; over 5 µm tight: 5·5/2 of them. A quarter lies below nothing.
 */
const even = { nominalMm: 35, hole: { lowerMm: 35, upperMm: 35.02, spread: 'uniform' }, shaft: { lowerMm: 35, upperMm: 35.01, spread: 'uniform' } } as const;
const run = (more: Record<string, unknown> = {}) => fitDistribution.run({ ...even, ...more });

test('two even spreads by hand', () => {
  const output = run({ interferenceOverUm: 5, quantilesAtProbability: [0.0625, 0.25, 0.5, 0.75] });
  expect(output.worstCase).toEqual({ minimumClearanceUm: -10, maximumClearanceUm: 20 });
  expect(output.rootSumSquare).toEqual({ minimumClearanceUm: close(5 - Math.sqrt(500) / 2), maximumClearanceUm: close(5 + Math.sqrt(500) / 2) });
  expect(output.exact).toMatchObject({ meanClearanceUm: close(5), standardDeviationUm: close(Math.sqrt(500 / 12)), clearanceProbability: close(0.75), interferenceProbability: close(0.25), interferenceOverProbability: close(0.0625) });
  // A sixteenth below −5; below nothing a quarter, and from there evenly, 1/20 a µm.
  expect(output.exact.quantiles).toEqual([[0.0625, -5], [0.25, 0], [0.5, 5], [0.75, 10]].map(([atProbability, clearanceUm]) => ({ atProbability, clearanceUm: close(clearanceUm ?? NaN, 6) })));
  expect(output).toMatchObject({ simulated: null, assumptions: [], notChecked: ['parts-picked-independently', 'fit-away-from-20-c', 'form-and-roughness'] });
  expect(run().exact.interferenceOverProbability).toBeNull();
  expect(run().exact.quantiles.map(({ atProbability }) => atProbability)).toEqual([0.00135, 0.025, 0.5, 0.975, 0.99865]);
  expect(run({ interferenceOverUm: 0 }).exact.interferenceOverProbability).toBeCloseTo(0.25, 9);
});

test('the curve goes from end to end where there are ends, else as far as 4.5 deviations', () => {
  expect(run({ curvePointCount: 4 }).exact.curve).toEqual([[-10, 0], [0, 0.25], [10, 0.75], [20, 1]].map(([clearanceUm, cumulativeProbability]) => ({ clearanceUm: close(clearanceUm ?? NaN), cumulativeProbability: close(cumulativeProbability ?? NaN) })));
  expect(run().exact.curve).toHaveLength(121);
  // Deviations of 10/5 and 5/5 µm about a middle of 5.
  const normal = run({ hole: { ...even.hole, spread: 'normal', limitDeviationsCount: 5 }, shaft: { ...even.shaft, spread: 'normal', limitDeviationsCount: 5 }, curvePointCount: 3 }).exact;
  expect(normal.standardDeviationUm).toBeCloseTo(Math.sqrt(5), 9);
  // The limits lie further out than 4.5·√5 = 10.06 µm: 15 µm.
  expect(normal.curve.map(({ clearanceUm }) => clearanceUm)).toEqual([close(-10), close(5), close(20)]);
  const wide = run({ hole: { ...even.hole, spread: 'normal', limitDeviationsCount: 1 }, shaft: { ...even.shaft, spread: 'normal', limitDeviationsCount: 1 }, curvePointCount: 3 }).exact;
  expect(wide.curve.map(({ clearanceUm }) => clearanceUm)).toEqual([close(5 - 4.5 * Math.sqrt(125)), close(5), close(5 + 4.5 * Math.sqrt(125))]);
  expect(wide.clearanceProbability).toBeCloseTo(normalProbability(5 / Math.sqrt(125)), 9);
});

test('measured parts: each of one side with each of the other', () => {
  const sizes = { nominalMm: 35, hole: { valuesMm: [35, 35.01] }, shaft: { valuesMm: [34.995, 35.005] } };
  // 5, −5, 15, 5 µm.
  const output = fitDistribution.run({ ...sizes, quantilesAtProbability: [0.25, 0.5, 0.75, 0.99], interferenceOverUm: 4 });
  expect(output.exact).toMatchObject({ meanClearanceUm: close(5), standardDeviationUm: close(Math.sqrt(50)), clearanceProbability: close(0.75), interferenceProbability: close(0.25), interferenceOverProbability: close(0.25) });
  expect(fitDistribution.run({ ...sizes, interferenceOverUm: 5 }).exact.interferenceOverProbability).toBeCloseTo(0, 9);
  expect(output.exact.quantiles.map(({ clearanceUm }) => Math.round(clearanceUm))).toEqual([-5, 5, 5, 15]);
  // What fits exactly is neither loose nor tight.
  const exact = fitDistribution.run({ nominalMm: 35, hole: { valuesMm: [35, 35.01] }, shaft: { valuesMm: [35, 35.01] } }).exact;
  expect([exact.clearanceProbability, exact.interferenceProbability]).toEqual([close(0.25), close(0.25)]);
  // One side measured, the other even from 0 to 10 µm: half of the shafts are over 5 µm.
  const mixed = fitDistribution.run({ nominalMm: 35, hole: { valuesMm: [35.005, 35.02] }, shaft: even.shaft }).exact;
  expect([mixed.clearanceProbability, mixed.interferenceProbability, mixed.meanClearanceUm]).toEqual([close(0.75), close(0.25), close(7.5)]);
  const other = fitDistribution.run({ nominalMm: 35, hole: even.hole, shaft: { valuesMm: [35.005, 35.01] } }).exact;
  expect([other.interferenceProbability, other.meanClearanceUm]).toEqual([close(0.375), close(2.5)]);
});

test('drawn pairs lie about the exact answer, and count what they count', () => {
  const drawCount = 2000;
  const { simulated, exact } = run({ drawCount, seed: 7, interferenceOverUm: 5, quantilesAtProbability: [0.0001, 0.25, 0.5, 0.9999] });
  if (simulated === null) throw new Error('nothing was drawn');
  expect(simulated).toMatchObject({ drawCount, seed: 7 });
  // Four deviations of each share and of the mean.
  for (const [key, share] of [['clearanceProbability', 0.75], ['interferenceProbability', 0.25], ['interferenceOverProbability', 0.0625]] as const) {
    expect(Math.abs((simulated[key] ?? NaN) - share)).toBeLessThan(4 * Math.sqrt((share * (1 - share)) / drawCount));
    expect(Number.isInteger(Math.round((simulated[key] ?? NaN) * drawCount * 1e6) / 1e6)).toBe(true);
  }
  expect(simulated.clearanceProbability + simulated.interferenceProbability).toBeCloseTo(1, 12);
  expect(Math.abs(simulated.meanClearanceUm - 5)).toBeLessThan((4 * exact.standardDeviationUm) / Math.sqrt(drawCount));
  expect(Math.abs(simulated.standardDeviationUm / exact.standardDeviationUm - 1)).toBeLessThan(0.06);
  const [least, quarter, half, most] = simulated.quantiles.map(({ clearanceUm }) => clearanceUm);
  expect(least).toBeGreaterThan(-10);
  expect(least).toBeLessThan(-8);
  expect(Math.abs(quarter ?? NaN)).toBeLessThan(1);
  expect(Math.abs((half ?? NaN) - 5)).toBeLessThan(1);
  expect(most).toBeGreaterThan(18);
  expect(most).toBeLessThan(20);
  expect(run({ drawCount: 1000 }).simulated).toMatchObject({ seed: 1, interferenceOverProbability: null });
  expect(run({ drawCount: 1000, seed: 1 }).simulated).toEqual(run({ drawCount: 1000 }).simulated);
  expect(run({ drawCount: 1000, seed: 0 }).simulated).not.toEqual(run({ drawCount: 1000 }).simulated);
});

test('one drawn pair is its own mean, every quantile and no spread; parts that fit exactly count on neither side', () => {
  const one = fitDistribution.compute({ ...even, drawCount: 1, quantilesAtProbability: [0.01, 0.5, 0.99] }).simulated;
  expect(one?.standardDeviationUm).toBe(0);
  expect(one?.quantiles.map(({ clearanceUm }) => clearanceUm)).toEqual([one?.meanClearanceUm, one?.meanClearanceUm, one?.meanClearanceUm]);
  const same = fitDistribution.run({ nominalMm: 35, hole: { valuesMm: [35, 35] }, shaft: { valuesMm: [35, 35] }, drawCount: 1000, interferenceOverUm: 0 }).simulated;
  expect(same).toMatchObject({ clearanceProbability: 0, interferenceProbability: 0, interferenceOverProbability: 0, meanClearanceUm: 0, standardDeviationUm: 0 });
  // All tight by 10 µm: not over 10, but over 9.
  const tight = (interferenceOverUm: number) => fitDistribution.run({ nominalMm: 35, hole: { valuesMm: [35, 35] }, shaft: { valuesMm: [35.01, 35.01] }, drawCount: 1000, interferenceOverUm }).simulated;
  expect(tight(9)).toMatchObject({ interferenceProbability: 1, clearanceProbability: 0, interferenceOverProbability: 1, meanClearanceUm: close(-10) });
  expect(tight(10)?.interferenceOverProbability).toBe(0);
});

test('what was not said of a spread is assumed of each part; the working holds', () => {
  const input = fitDistribution.input.parse({ nominalMm: 35, hole: { toleranceClass: 'H7' }, shaft: { toleranceClass: 'k6', spread: 'normal', limitDeviationsCount: 3 } });
  const output = fitDistribution.run(input);
  expect(output.assumptions.map(({ name }) => name)).toEqual(['spread-of-hole', 'deviations-to-limit-of-hole']);
  const steps = fitDistribution.explain(input, output);
  expectWorkingHolds(steps);
  expect(steps.map(({ symbol }) => symbol)).toEqual(['c_min', 'c_max', 'c_rss_min', 'c_rss_max', 'mu', 'sigma', 'P']);
  expect(steps.at(-1)).toMatchObject({ kind: 'choice', value: output.exact.clearanceProbability });
  // H7 0/25, k6 +2/+18 µm.
  expect(steps.slice(0, 2)).toMatchObject([{ value: -18, scope: { EI: 0, es: 18 } }, { value: 23, scope: { ES: 25, ei: 2 } }]);
});

test('how likely a size conforms: one limit, two, far outside, and both ends of an oval part', () => {
  const at = (lowMm: number, highMm: number, lowerLimitMm: number | null, upperLimitMm: number | null) => conformanceProbability({ lowMm, highMm }, { lowerLimitMm, upperLimitMm }, 0.01);
  expect(at(20, 20, null, null)).toBe(1);
  expect(at(20, 20, 20, null)).toBeCloseTo(0.5, 12);
  expect(at(20.01, 20.01, 20, null)).toBeCloseTo(normalProbability(1), 12);
  expect(at(19.98, 19.98, null, 20)).toBeCloseTo(normalProbability(2), 12);
  expect(at(20, 20, 19.99, 20.02)).toBeCloseTo(normalProbability(2) - normalProbability(-1), 12);
  // On a limit, and beyond one: Φ of one end less Φ of the other.
  expect(at(20, 20, 20, 20.02)).toBeCloseTo(normalProbability(2) - 0.5, 12);
  expect(at(20.02, 20.02, 20, 20.02)).toBeCloseTo(0.5 - normalProbability(-2), 12);
  expect(at(19.98, 19.98, 20, 20.02)).toBeCloseTo(normalProbability(4) - normalProbability(2), 12);
  expect(at(20.05, 20.05, 20, 20.02)).toBeCloseTo(normalProbability(-3) - normalProbability(-5), 12);
  expect(at(20.09, 20.09, 20, 20.02) / (normalProbability(-7) - normalProbability(-9))).toBeCloseTo(1, 9);
  expect(at(19.93, 19.93, 20, 20.02) / (normalProbability(-7) - normalProbability(-9))).toBeCloseTo(1, 6);
  // An oval wider than the tolerance never conforms.
  expect(at(19.9, 20.1, 19.99, 20.01)).toBe(0);
  expect(at(20, 20.01, 19.99, 20.03)).toBeCloseTo(normalProbability(2) - normalProbability(-1), 12);
});

test('the furthest reading: which, how far, and whether it is more than a step away (Grubbs, 5 %: 1.154 for 3, 1.481 for 4, 1.715 for 5)', () => {
  expect([3, 4, 5].map((count) => Number(grubbsCriticalRatio(count, 0.05).toFixed(3)))).toEqual([1.154, 1.481, 1.715]);
  const found = grubbsOutlier([10, 10.02, 10.01], 0.001, 0.05);
  // Mean 10.01, deviation 0.01: the first of two as far is named.
  expect(found).toMatchObject({ index: 0, distanceRatio: close(1), isOutlier: false });
  expect(grubbsOutlier([10.01, 10, 10.01, 10.01, 10.01], 0.001, 0.05)).toMatchObject({ index: 1, isOutlier: true, distanceRatio: close(4 / Math.sqrt(5)) });
  // 0.008 mm from the mean of five: more than a step of 0.007, not of 0.008.
  expect(grubbsOutlier([10.01, 10, 10.01, 10.01, 10.01], 0.007, 0.05)?.isOutlier).toBe(true);
  expect(grubbsOutlier([10.01, 10, 10.01, 10.01, 10.01], 0.008, 0.05)?.isOutlier).toBe(false);
  expect(grubbsOutlier([10, 11], 0.001, 0.05)).toBeNull();
  expect(grubbsOutlier([10, 10, 10, 10], 0.001, 0.05)).toBeNull();
});
