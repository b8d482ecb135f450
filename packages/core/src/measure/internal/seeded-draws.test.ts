import { expect, test } from 'vitest';
import { normalProbability } from '../normal-distribution.js';
import { SeededDraws } from './seeded-draws.js';

test('a seed gives the same digits everywhere', () => {
  const draws = new SeededDraws(1);
  expect([draws.uniform(), draws.uniform(), draws.uniform(), draws.normal(), draws.normal(), draws.below(1000)]).toMatchInlineSnapshot(`
    [
      0.09156953275669366,
      0.5061978040030226,
      0.888192814658396,
      0.18272187921684235,
      1.0464923531981185,
      14,
    ]
  `);
});

test('seeds that differ by one give unlike draws, and seed 0 works', () => {
  const first = (seed: number) => new SeededDraws(seed).uniform();
  expect(new Set([0, 1, 2, 3, 4].map(first)).size).toBe(5);
});

test('uniform draws fill ten classes evenly, and the whole numbers below ten likewise', () => {
  const draws = new SeededDraws(7);
  const counts = new Uint32Array(10);
  const wholes = new Uint32Array(10);
  const n = 200_000;
  for (let i = 0; i < n; i += 1) {
    counts[Math.floor(draws.uniform() * 10)]! += 1;
    wholes[draws.below(10)]! += 1;
  }
  // Chi-square with 9 degrees of freedom: 27.9 is passed once in a thousand.
  const chiSquare = (list: Uint32Array) => list.reduce((sum, count) => sum + (count - n / 10) ** 2 / (n / 10), 0);
  expect(chiSquare(counts)).toBeLessThan(27.9);
  expect(chiSquare(wholes)).toBeLessThan(27.9);
});

test('normal draws follow the normal distribution: twenty classes, mean, variance, fourth moment and far tail', () => {
  const draws = new SeededDraws(42);
  const n = 400_000;
  const classes = 20;
  const counts = new Uint32Array(classes);
  let sum = 0;
  let squares = 0;
  let fourths = 0;
  let far = 0;
  for (let i = 0; i < n; i += 1) {
    const z = draws.normal();
    sum += z;
    squares += z * z;
    fourths += z ** 4;
    if (Math.abs(z) > 3) far += 1;
    counts[Math.min(classes - 1, Math.floor(normalProbability(z) * classes))]! += 1;
  }
  const chiSquare = counts.reduce((total, count) => total + (count - n / classes) ** 2 / (n / classes), 0);
  // 19 degrees of freedom: 43.8 is passed once in a thousand.
  expect(chiSquare).toBeLessThan(43.8);
  expect(Math.abs(sum / n)).toBeLessThan(4 / Math.sqrt(n));
  expect(Math.abs(squares / n - 1)).toBeLessThan(4 * Math.sqrt(2 / n));
  expect(Math.abs(fourths / n - 3)).toBeLessThan(4 * Math.sqrt(96 / n));
  const expectedFar = n * 2 * normalProbability(-3);
  expect(Math.abs(far - expectedFar)).toBeLessThan(4 * Math.sqrt(expectedFar));
});
