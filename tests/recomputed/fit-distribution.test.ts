import { expect, test } from 'vitest';
import { fitDistribution } from '@seatwright/core/measure';
import { between, drawing, normal, oneOf } from './internal/drawn.js';

/**
 * Clearance of drawn pairs by brute force, twice: every pair of many thin slices of hole and shaft added up, and parts picked
 * one by one. Neither knows a formula for the sum of two spreads.
 */
type Spread = 'uniform' | 'triangular' | 'normal' | 'normal within limits';

interface Part {
  readonly lower: number;
  readonly upper: number;
  readonly peak: number;
  readonly spread: Spread;
  /** Standard deviations from the peak to the nearer limit. */
  readonly count: number;
}

/** Height of the spread at a size, not yet levelled to one. */
function height({ lower, upper, peak, spread, count }: Part, size: number): number {
  const isInside = size >= lower && size <= upper;
  if (spread === 'uniform') return isInside ? 1 : 0;
  if (spread === 'triangular') return !isInside ? 0 : size < peak ? (size - lower) / (peak - lower) : (upper - size) / (upper - peak);
  const sigma = Math.min(upper - peak, peak - lower) / count;
  return spread === 'normal' || isInside ? Math.exp(-(((size - peak) / sigma) ** 2) / 2) : 0;
}

const sliceCount = 300;

/** Middles of thin slices and the share of parts in each. */
function slices(part: Part): readonly { readonly size: number; readonly share: number }[] {
  const sigma = Math.min(part.upper - part.peak, part.peak - part.lower) / part.count;
  const [from, to] = part.spread === 'normal' ? [part.peak - 8 * sigma, part.peak + 8 * sigma] : [part.lower, part.upper];
  const width = (to - from) / sliceCount;
  const raw = Array.from({ length: sliceCount }, (_, i) => ({ size: from + (i + 0.5) * width, share: height(part, from + (i + 0.5) * width) }));
  const whole = raw.reduce((sum, { share }) => sum + share, 0);
  return raw.map(({ size, share }) => ({ size, share: share / whole }));
}

function picked(part: Part, draw: () => number): number {
  const { lower, upper, peak, spread, count } = part;
  if (spread === 'uniform') return between(draw, lower, upper);
  const sigma = Math.min(upper - peak, peak - lower) / count;
  if (spread === 'normal') return peak + sigma * normal(draw);
  // Under the curve or thrown away.
  for (;;) {
    const size = between(draw, lower, upper);
    if (draw() <= height(part, size)) return size;
  }
}

/** Sizes are read to the nanometre. */
const nanometre = (mm: number): number => Number(mm.toFixed(6));

const spreads = ['uniform', 'triangular', 'normal', 'normal within limits'] as const;
const draw = drawing(20_260);
const cases = spreads.flatMap((hole) =>
  spreads.flatMap((shaft) =>
    [0, 1].map((skewed) => {
      const part = (spread: Spread, from: number, to: number): Part => {
        const lower = nanometre(40 + from / 1000);
        const upper = nanometre(40 + to / 1000);
        const peak = skewed === 0 || spread === 'uniform' ? (lower + upper) / 2 : nanometre(between(draw, lower + 0.25 * (upper - lower), upper - 0.25 * (upper - lower)));
        return { lower, upper, peak, spread, count: spread.startsWith('normal') ? between(draw, 1.5, 4) : 3 };
      };
      const shaftFrom = between(draw, -15, 15);
      return { hole: part(hole, 0, between(draw, 10, 30)), shaft: part(shaft, shaftFrom, shaftFrom + between(draw, 8, 20)), over: between(draw, 0, 10) };
    }),
  ),
);

const stated = ({ lower, upper, peak, spread, count }: Part) => ({ lowerMm: lower, upperMm: upper, spread, ...(peak === (lower + upper) / 2 ? {} : { peakMm: peak }), ...(spread.startsWith('normal') ? { limitDeviationsCount: count } : {}) });

test.each(cases)('$hole.spread hole, $shaft.spread shaft', ({ hole, shaft, over }) => {
  const { exact } = fitDistribution.run({ nominalMm: 40, hole: stated(hole), shaft: stated(shaft), interferenceOverUm: over, quantilesAtProbability: [0.01, 0.5, 0.99] });
  const [holes, shafts] = [slices(hole), slices(shaft)];
  let [mean, square, loose, tooTight] = [0, 0, 0, 0];
  const below = exact.quantiles.map(() => 0);
  const width = (shafts[1]?.size ?? 0) - (shafts[0]?.size ?? 0);
  for (const a of holes) {
    for (const b of shafts) {
      const share = a.share * b.share;
      const clearance = 1000 * (a.size - b.size);
      mean += share * clearance;
      square += share * clearance ** 2;
      // The shaft's slice is spread over its width, so that no step stands at the limit.
      const passes = (limit: number) => Math.min(1, Math.max(0, (1000 * (a.size - b.size) - limit) / (1000 * width) + 0.5));
      loose += share * passes(0);
      tooTight += share * (1 - passes(-over));
      exact.quantiles.forEach(({ clearanceUm }, i) => (below[i] = (below[i] ?? 0) + share * (1 - passes(clearanceUm))));
    }
  }
  const deviation = Math.sqrt(square - mean ** 2);
  expect(exact.meanClearanceUm).toBeCloseTo(mean, 3);
  expect(exact.standardDeviationUm / deviation).toBeCloseTo(1, 4);
  expect(exact.clearanceProbability).toBeCloseTo(loose, 4);
  expect(exact.interferenceProbability).toBeCloseTo(1 - loose, 4);
  expect(exact.interferenceOverProbability).toBeCloseTo(tooTight, 4);
  exact.quantiles.forEach(({ atProbability }, i) => expect(below[i]).toBeCloseTo(atProbability, 4));

  const pick = drawing(1 + Math.round(over * 1e6));
  const pairs = 10_000;
  let count = 0;
  for (let i = 0; i < pairs; i += 1) if (picked(hole, pick) > picked(shaft, pick)) count += 1;
  // Five standard deviations of a count.
  expect(Math.abs(count / pairs - exact.clearanceProbability)).toBeLessThan(5 * Math.sqrt(Math.max(1e-4, exact.clearanceProbability * (1 - exact.clearanceProbability)) / pairs));
});

test('parts as measured: mean, scatter and share of loose fits, pair by pair', () => {
  const pick = drawing(77);
  for (let i = 0; i < 20; i += 1) {
    const sizes = (middle: number) => Array.from({ length: 3 + Math.floor(12 * pick()) }, () => nanometre(middle + 0.004 * normal(pick)));
    const [holes, shafts] = [sizes(30.01), sizes(30 + oneOf(pick, [0, 0.01, 0.02]))];
    const { exact } = fitDistribution.run({ nominalMm: 30, hole: { valuesMm: holes }, shaft: { valuesMm: shafts } });
    const pairs = holes.flatMap((a) => shafts.map((b) => 1000 * (a - b)));
    expect(exact.meanClearanceUm).toBeCloseTo(pairs.reduce((sum, value) => sum + value, 0) / pairs.length, 6);
    // These parts and no others: the scatter over all pairs, from their differences, so that no mean is needed.
    const squares = pairs.reduce((sum, a) => sum + pairs.reduce((inner, b) => inner + (a - b) ** 2, 0), 0);
    expect(exact.standardDeviationUm).toBeCloseTo(Math.sqrt(squares / 2) / pairs.length, 6);
    // Sizes come in nanometres: half of one more, so that equal sizes count as equal.
    expect(exact.clearanceProbability).toBeCloseTo(pairs.filter((value) => value > 5e-4).length / pairs.length, 12);
    expect(exact.interferenceProbability).toBeCloseTo(pairs.filter((value) => value < -5e-4).length / pairs.length, 12);
  }
});
