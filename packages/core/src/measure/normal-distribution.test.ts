import { expect, test } from 'vitest';
import { normalProbability, normalDensity } from './normal-distribution.js';

// Tables of the normal distribution (widely printed; recalled, and met by an independent quadrature below).
test.each([
  [0, '0.500000'],
  [0.5, '0.691462'],
  [1, '0.841345'],
  [1.645, '0.950015'],
  [1.96, '0.975002'],
  [2, '0.977250'],
  [2.5758, '0.995000'],
  [3, '0.998650'],
  [4, '0.999968'],
])('Φ(%s) is %s as printed', (z, printed) => {
  expect(normalProbability(z).toFixed(6)).toBe(printed);
  expect((1 - normalProbability(-z)).toFixed(6)).toBe(printed);
});

test.each([
  [-5, 2.866515719e-7],
  [-6, 9.865876450e-10],
  [-8, 6.220960574e-16],
  [-10, 7.619853024e-24],
  [-20, 2.753624119e-89],
])('the tail at %s keeps its leading digits', (z, value) => expect(normalProbability(z) / value).toBeCloseTo(1, 8));

test('the two ways meet where one takes over from the other, and the slope is the density', () => {
  const step = 1e-4;
  for (const z of [-6, -3.0002, -3, -2.9998, -1, -0.2, 0, 0.7, 2.9999, 3.1]) {
    expect((normalProbability(z + step) - normalProbability(z - step)) / (2 * step) / normalDensity(z)).toBeCloseTo(1, 6);
  }
});

test('Simpson over the density gives the same', () => {
  for (const z of [-4, -2, -0.5, 1, 3]) {
    const n = 4000;
    const from = -12;
    const h = (z - from) / n;
    let sum = normalDensity(from) + normalDensity(z);
    for (let i = 1; i < n; i += 1) sum += (i % 2 === 0 ? 2 : 4) * normalDensity(from + i * h);
    expect(normalProbability(z)).toBeCloseTo((sum * h) / 3, 11);
  }
});
