import { expect, test } from 'vitest';
import { conformanceProbability, normalProbability, normalQuantile } from '@seatwright/core/measure';

/** JCGM 106:2012, clause 7; all numbers held as: memory. */
test('7.3.3, one upper limit: breakdown voltage −5.47 V, u = 0.05 V, limit −5.40 V gives Φ(1.40) = 0.92', () => {
  const p = conformanceProbability({ lowMm: -5.47, highMm: -5.47 }, { lowerLimitMm: null, upperLimitMm: -5.4 }, 0.05);
  expect(p.toFixed(2)).toBe('0.92');
});

test('7.4, both limits: viscosity 13.6, u = 1.8, limits 12.5 and 16.3 gives Φ(1.5) − Φ(−0.61) = 0.93 − 0.27 = 0.66', () => {
  const p = conformanceProbability({ lowMm: 13.6, highMm: 13.6 }, { lowerLimitMm: 12.5, upperLimitMm: 16.3 }, 1.8);
  expect(p.toFixed(2)).toBe('0.66');
  expect(normalProbability(1.5).toFixed(2)).toBe('0.93');
  expect(normalProbability(-0.61).toFixed(2)).toBe('0.27');
});

/** Table 1: distance z from a limit for a conformance probability. */
test.each([
  [0.8, '0.84'],
  [0.9, '1.28'],
  [0.95, '1.64'],
  [0.99, '2.33'],
  [0.999, '3.09'],
])('Table 1: p = %d at z = %s', (probability, printed) => {
  expect(normalQuantile(probability).toFixed(2)).toBe(printed);
});

test('8.3.2: on the acceptance limit of a guard band U = 2u, the conformance probability is 97.7 % at least', () => {
  expect((conformanceProbability({ lowMm: 9, highMm: 9 }, { lowerLimitMm: null, upperLimitMm: 10 }, 0.5) * 100).toFixed(1)).toBe('97.7');
});
