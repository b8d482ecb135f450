import { expect, test } from 'vitest';
import { combineBudget, effectiveDegreesOfFreedom, measuredSizeCalculation, normalProbability, studentQuantile } from '@seatwright/core/measure';

/** JCGM 100:2008 Table G.2 (held as: memory). Its columns 68.27, 95.45 and 99.73 % stand for one, two and three standard deviations. */
const within = (deviations: number) => 2 * normalProbability(deviations) - 1;
const levels = [within(1), 0.9, 0.95, within(2), 0.99, within(3)] as const;
const tableG2: Readonly<Record<number, string>> = {
  1: '1.84 6.31 12.71 13.97 63.66 235.80',
  2: '1.32 2.92 4.30 4.53 9.92 19.21',
  3: '1.20 2.35 3.18 3.31 5.84 9.22',
  4: '1.14 2.13 2.78 2.87 4.60 6.62',
  5: '1.11 2.02 2.57 2.65 4.03 5.51',
  6: '1.09 1.94 2.45 2.52 3.71 4.90',
  8: '1.07 1.86 2.31 2.37 3.36 4.28',
  10: '1.05 1.81 2.23 2.28 3.17 3.96',
  20: '1.03 1.72 2.09 2.13 2.85 3.42',
  50: '1.01 1.68 2.01 2.05 2.68 3.16',
};

test.each(Object.entries(tableG2))('Table G.2: %s degrees of freedom', (count, printed) => {
  expect(levels.map((level) => studentQuantile(level, Number(count)).toFixed(2)).join(' ')).toBe(printed);
});

/** H.1: calibration of a 50 mm end gauge; standard uncertainties in nm with their degrees of freedom (held as: memory). */
const endGauge = [
  { mm: 25, count: 18 },
  { mm: 9.7, count: 25.6 },
  { mm: 2.9, count: 50 },
  { mm: 16.6, count: 2 },
] as const;

test('H.1.4: the end gauge has a combined standard uncertainty of 32 nm', () => {
  const lines = endGauge.map(({ mm, count }) => ({ component: 'stated', instrument: null, standardUncertaintyMm: mm, distribution: 'normal', sensitivityFactor: 1, degreesOfFreedomCount: count }) as const);
  const { standardUncertaintyMm, effectiveDegreesOfFreedomCount } = combineBudget(lines);
  expect(standardUncertaintyMm.toFixed(0)).toBe('32');
  expect(effectiveDegreesOfFreedomCount).toBe(16);
});

/**
 * Printed: 16.7. From the components as printed here comes 16.76, since they are rounded to two digits and 25 nm alone moves the result
 * by 0.5 within its rounding; the whole number below, which is what the example goes on with, is the same.
 */
test('H.1.6: 16.7 effective degrees of freedom, t(99 %, 16) = 2.92, U = 93 nm', () => {
  expect(Math.abs((effectiveDegreesOfFreedom(endGauge) ?? 0) - 16.7)).toBeLessThan(0.1);
  expect(studentQuantile(0.99, 16.7).toFixed(2)).toBe('2.92');
  expect((studentQuantile(0.99, 16.7) * 32).toFixed(0)).toBe('93');
});

/** 4.4.5 Table 1: twenty temperatures, mean 100.145 °C, s = 1.489, s/√20 = 0.333 (held as: memory). Read here as sizes in mm. */
test('4.4.3: mean, standard deviation and standard deviation of the mean of twenty readings', () => {
  const values = [96.9, 98.18, 98.25, 98.61, 99.03, 99.49, 99.56, 99.74, 99.89, 100.07, 100.33, 100.42, 100.68, 100.95, 101.11, 101.2, 101.57, 101.84, 102.36, 102.72];
  const output = measuredSizeCalculation.run({ measures: 'outside', readings: [{ instrument: 'outside-micrometer', valuesMm: values }] });
  expect(output.meanMm.toFixed(3)).toBe('100.145');
  expect(output.repeatabilityMm?.toFixed(3)).toBe('1.489');
  expect(output.budget.find(({ component }) => component === 'repeatability')?.standardUncertaintyMm.toFixed(3)).toBe('0.333');
});

