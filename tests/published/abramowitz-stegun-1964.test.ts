import { expect, test } from 'vitest';
import { normalProbability, normalQuantile, studentQuantile } from '@seatwright/core/measure';

/** Abramowitz and Stegun 1964, Table 26.1: P(x), fifteen digits printed (held as: memory). */
const normal: readonly (readonly [z: number, printed: string])[] = [
  [0, '0.500000000000000'],
  [0.5, '0.691462461274013'],
  [1, '0.841344746068543'],
  [1.5, '0.933192798731142'],
  [2, '0.977249868051821'],
  [3, '0.998650101968370'],
];

/** Table 26.5: x for the upper tail Q, five digits (held as: memory). */
const quantiles: readonly (readonly [upperTail: number, printed: string])[] = [
  [0.1, '1.28155'],
  [0.05, '1.64485'],
  [0.025, '1.95996'],
  [0.01, '2.32635'],
  [0.005, '2.57583'],
  [0.001, '3.09023'],
];

/** Table 26.10: t for the two-sided levels 0.5, 0.9, 0.95, 0.98, 0.99, 0.999; three digits (held as: memory). */
const levels = [0.5, 0.9, 0.95, 0.98, 0.99, 0.999] as const;
const student: Readonly<Record<number, string>> = {
  1: '1.000 6.314 12.706 31.821 63.657 636.619',
  2: '0.816 2.920 4.303 6.965 9.925 31.599',
  3: '0.765 2.353 3.182 4.541 5.841 12.924',
  4: '0.741 2.132 2.776 3.747 4.604 8.610',
  5: '0.727 2.015 2.571 3.365 4.032 6.869',
  6: '0.718 1.943 2.447 3.143 3.707 5.959',
  7: '0.711 1.895 2.365 2.998 3.499 5.408',
  8: '0.706 1.860 2.306 2.896 3.355 5.041',
  9: '0.703 1.833 2.262 2.821 3.250 4.781',
  10: '0.700 1.812 2.228 2.764 3.169 4.587',
  20: '0.687 1.725 2.086 2.528 2.845 3.850',
  30: '0.683 1.697 2.042 2.457 2.750 3.646',
  60: '0.679 1.671 2.000 2.390 2.660 3.460',
  120: '0.677 1.658 1.980 2.358 2.617 3.373',
};

test.each(normal)('Table 26.1: P(%d) = %s', (z, printed) => {
  expect(normalProbability(z).toFixed(15)).toBe(printed);
  expect(normalProbability(-z)).toBeCloseTo(1 - Number(printed), 14);
});

test.each(quantiles)('Table 26.5: upper tail %d at x = %s', (upperTail, printed) => {
  expect(normalQuantile(1 - upperTail).toFixed(5)).toBe(printed);
});

test.each(Object.entries(student))('Table 26.10: %s degrees of freedom', (count, printed) => {
  expect(levels.map((level) => studentQuantile(level, Number(count)).toFixed(3)).join(' ')).toBe(printed);
});
