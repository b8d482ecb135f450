import { describe, expect, test } from 'vitest';
import { measuredSpread, normalSpread, normalWithin, triangularSpread, uniformSpread, type PartSpread } from './internal/part-distribution.js';
import { SeededDraws } from './internal/seeded-draws.js';

/** By Simpson's rule, between the kinks. */
function integral(spread: PartSpread, value: (x: number) => number, upTo = Infinity): number {
  const reach = 12 * Math.sqrt(spread.variance);
  const [low, high] = [Math.max(spread.low, spread.mean - reach), Math.min(spread.high, spread.mean + reach, upTo)];
  const cuts = [low, ...spread.kinks.filter((kink) => kink > low && kink < high), high];
  let total = 0;
  for (let i = 1; i < cuts.length; i += 1) {
    const [from, to] = [cuts[i - 1] ?? 0, cuts[i] ?? 0];
    const n = 2000;
    // Densities may jump at a kink: the ends are taken a hair inside.
    const at = (j: number) => { const x = from + ((to - from) * Math.min(Math.max(j, 1e-9), n - 1e-9)) / n; return value(x) * spread.density(x); };
    let sum = at(0) + at(n);
    for (let j = 1; j < n; j += 1) sum += (j % 2 === 1 ? 4 : 2) * at(j);
    total += (sum * (to - from)) / n / 3;
  }
  return total;
}

const spreads: readonly (readonly [string, PartSpread])[] = [
  ['even', uniformSpread(-4, 8)],
  ['crowded in the middle', triangularSpread(-4, 8, 2)],
  ['crowded off the middle', triangularSpread(-4, 8, -3)],
  ['crowded at the lower limit', triangularSpread(-4, 8, -4)],
  ['crowded at the upper limit', triangularSpread(-4, 8, 8)],
  ['normal', normalSpread(3, 2)],
  ['normal, sorted out', normalWithin(-4, 8, 3, 2.5)],
  ['normal, sorted out on one side of its middle', normalWithin(4, 8, 3, 2.5)],
];

describe.each(spreads)('%s', (_, spread) => {
  test('what is dense adds up to all, to the middle and to the variance', () => {
    expect(integral(spread, () => 1)).toBeCloseTo(1, 7);
    expect(integral(spread, (x) => x)).toBeCloseTo(spread.mean, 6);
    expect(integral(spread, (x) => (x - spread.mean) ** 2)).toBeCloseTo(spread.variance, 6);
  });

  test('up to a size lies what is dense up to there', () => {
    for (const x of [-3.9, -3, -1, 1.9, 2, 2.1, 3, 4.5, 6, 7.9]) if (x > spread.low && x < spread.high) expect(spread.cumulative(x)).toBeCloseTo(integral(spread, () => 1, x), 6);
    expect([spread.cumulative(-100), spread.cumulative(100)]).toEqual([expect.closeTo(0, 12), expect.closeTo(1, 12)]);
    if (Number.isFinite(spread.low)) expect([spread.density(spread.low - 1e-6), spread.density(spread.high + 1e-6), spread.cumulative(spread.low), spread.cumulative(spread.high)]).toEqual([0, 0, 0, 1]);
  });

  test('what is drawn lies as it should', () => {
    const draws = new SeededDraws(20_261_127);
    const count = 20_000;
    const drawn = Array.from({ length: count }, () => spread.draw(draws)).toSorted((a, b) => a - b);
    expect(drawn[0]).toBeGreaterThanOrEqual(spread.low);
    expect(drawn.at(-1)).toBeLessThanOrEqual(spread.high);
    // Largest distance of both curves (Kolmogorov): 1.95/√n is passed once in a thousand.
    const apart = Math.max(...drawn.map((x, i) => Math.max(Math.abs(spread.cumulative(x) - i / count), Math.abs(spread.cumulative(x) - (i + 1) / count))));
    expect(apart).toBeLessThan(1.95 / Math.sqrt(count));
  });
});

test('measured sizes: each counts once', () => {
  const spread = measuredSpread([3, 1, 2, 2, 7]);
  expect(spread).toMatchObject({ mean: 3, variance: (0 + 4 + 1 + 1 + 16) / 5, low: 1, high: 7, sizes: [1, 2, 2, 3, 7], kinks: [1, 2, 2, 3, 7], scale: 0 });
  expect([0.9, 1, 1.5, 2, 2.5, 3, 6.9, 7, 8].map((x) => spread.cumulative(x))).toEqual([0, 0.2, 0.2, 0.6, 0.6, 0.8, 0.8, 1, 1]);
  expect(spread.density(2)).toBe(0);
  const draws = new SeededDraws(7);
  const seen = new Map<number, number>();
  for (let i = 0; i < 10_000; i += 1) { const size = spread.draw(draws); seen.set(size, (seen.get(size) ?? 0) + 1); }
  expect([...seen.keys()].toSorted((a, b) => a - b)).toEqual([1, 2, 3, 7]);
  // A fifth of ten thousand, four deviations of 40 on either side; twice that for the size measured twice.
  for (const [size, share] of [[1, 2000], [2, 4000], [3, 2000], [7, 2000]] as const) expect(Math.abs((seen.get(size) ?? 0) - share)).toBeLessThan(200);
});

test('kinks, and the finest length over which a density changes', () => {
  expect(uniformSpread(-4, 8)).toMatchObject({ kinks: [-4, 8], scale: 12, sizes: null });
  expect(triangularSpread(-4, 8, 2)).toMatchObject({ kinks: [-4, 2, 8], scale: 12, sizes: null });
  expect(normalSpread(3, 2)).toMatchObject({ kinks: [], scale: 2, low: -Infinity, high: Infinity, sizes: null });
  expect(normalWithin(-4, 8, 3, 2.5)).toMatchObject({ kinks: [-4, 8], scale: 2.5, sizes: null });
  expect(normalWithin(2, 3, 3, 2.5).scale).toBe(1);
});

/** xoshiro128** and its seeding in whole numbers without bounds, each cut to 32 bits. */
function* secondWay(seed: number): Generator<number> {
  const cut = (word: bigint) => word & 0xffffffffn;
  const turned = (word: bigint, by: bigint) => cut((word << by) | (word >> (32n - by)));
  let state = BigInt(seed);
  const mixed = () => {
    state = cut(state + 0x9e3779b9n);
    let word = state ^ (state >> 16n);
    word = cut(word * 0x21f0aaadn);
    word ^= word >> 15n;
    word = cut(word * 0x735a2d97n);
    return word ^ (word >> 15n);
  };
  let [a, b, c, d] = [mixed(), mixed(), mixed(), mixed() | 1n];
  for (;;) {
    const result = cut(turned(cut(b * 5n), 7n) * 9n);
    const shifted = cut(b << 9n);
    c ^= a;
    d ^= b;
    b ^= c;
    a ^= d;
    c ^= shifted;
    d = turned(d, 11n);
    yield (Number(result) + 0.5) / 2 ** 32;
  }
}

test.each([0, 1, 42, 20_261_127, 4_294_967_295])('seed %d draws what the published steps give in whole numbers', (seed) => {
  const [draws, second] = [new SeededDraws(seed), secondWay(seed)];
  for (let i = 0; i < 500; i += 1) expect(draws.uniform()).toBe(second.next().value);
});

test('normal draws: middle, width and how many lie within one, two and three deviations', () => {
  const draws = new SeededDraws(3);
  const count = 40_000;
  const drawn = Array.from({ length: count }, () => draws.normal());
  const moment = (power: number) => drawn.reduce((sum, z) => sum + z ** power, 0) / count;
  // Four deviations of each mean: √(1, 2, 15 and 96 over the count).
  for (const [power, expected, variance] of [[1, 0, 1], [2, 1, 2], [3, 0, 15], [4, 3, 96]] as const) expect(Math.abs(moment(power) - expected)).toBeLessThan(4 * Math.sqrt(variance / count));
  for (const [within, share] of [[1, 0.682689], [2, 0.9545], [3, 0.9973]] as const) {
    expect(Math.abs(drawn.filter((z) => Math.abs(z) < within).length / count - share)).toBeLessThan(4 * Math.sqrt((share * (1 - share)) / count));
  }
});
