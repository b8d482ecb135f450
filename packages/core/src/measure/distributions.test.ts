import { expect, test } from 'vitest';
import { grubbsOutlier } from './grubbs-outlier.js';
import { normalProbability, normalQuantile } from './normal-distribution.js';
import { studentProbability, studentQuantile } from './student-distribution.js';

test('both expansions of the normal distribution meet where one hands over to the other', () => {
  const below = normalProbability(-3);
  const above = normalProbability(-3.0000001);
  expect(below - above).toBeGreaterThan(0);
  expect((below - above) / below).toBeLessThan(4e-7);
  expect(normalProbability(-3)).toBeCloseTo(0.001349898031630095, 15);
  expect(normalProbability(-8) / 6.220960574271785e-16).toBeCloseTo(1, 11);
});

test('the quantiles undo the probabilities', () => {
  for (const z of [-6, -2, -0.5, 0, 0.5, 1.6448536269514722]) expect(normalQuantile(normalProbability(z))).toBeCloseTo(z, 10);
  for (const count of [1, 2, 3, 10, 33, 200]) expect(studentProbability(studentQuantile(0.9545, count), count)).toBeCloseTo(0.9545, 11);
});

test('the expansion for many degrees of freedom joins the finite sum', () => {
  const [sum, expansion] = [studentQuantile(0.9545, 200), studentQuantile(0.9545, 201)];
  expect(sum - expansion).toBeGreaterThan(0);
  expect(sum - expansion).toBeLessThan(1e-4);
  expect(studentProbability(expansion, 201)).toBeCloseTo(0.9545, 9);
});

test('one reading out of five is called an outlier only when it is more than a step away', () => {
  expect(grubbsOutlier([35, 35, 35, 35, 35.01], 0.01, 0.05)?.isOutlier).toBe(false);
  expect(grubbsOutlier([35, 35.01, 35, 35.01, 35.2], 0.01, 0.05)).toMatchObject({ index: 4, isOutlier: true });
  expect(grubbsOutlier([35, 35], 0.01, 0.05)).toBeNull();
  expect(grubbsOutlier([35, 35, 35], 0.01, 0.05)).toBeNull();
});
