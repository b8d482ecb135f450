import { expect, test } from 'vitest';
import { grubbsCriticalRatio } from '@seatwright/core/measure';

/** Grubbs 1969, Table I: upper 2.5 % points, that is 5 % either side; three digits (held as: memory). The same column as ISO 5725-2, 5 %. */
const printed: Readonly<Record<number, string>> = {
  3: '1.155', 4: '1.481', 5: '1.715', 6: '1.887', 7: '2.020', 8: '2.126', 9: '2.215', 10: '2.290',
  11: '2.355', 12: '2.412', 13: '2.462', 14: '2.507', 15: '2.549', 16: '2.585', 17: '2.620', 18: '2.651', 19: '2.681', 20: '2.709',
};

/** ISO 5725-2, critical values of Grubbs' test for one outlier, 1 % either side (held as: memory). */
const onePercent: Readonly<Record<number, string>> = { 3: '1.155', 4: '1.496', 5: '1.764', 6: '1.973', 7: '2.139', 8: '2.274', 9: '2.387', 10: '2.482' };

/**
 * Printed digits that are off by one in the last place. The table was made from rounded t values; the relation to t that the
 * paper itself gives, worked with full digits, is right (for three readings no distance above 2/√3 = 1.1547 exists at all).
 */
const offByOne: Readonly<Record<number, string>> = { 3: '1.154', 8: '2.127', 15: '2.548', 16: '2.586', 18: '2.652', 20: '2.708' };

test.each(Object.entries(printed))('%s readings, 5 %%: %s', (count, value) => {
  const computed = grubbsCriticalRatio(Number(count), 0.05).toFixed(3);
  expect(computed).toBe(offByOne[Number(count)] ?? value);
  expect(Math.abs(Number(computed) - Number(value))).toBeLessThan(0.0015);
});

test.each(Object.entries(onePercent))('%s readings, 1 %%: %s', (count, value) => {
  expect(grubbsCriticalRatio(Number(count), 0.01).toFixed(3)).toBe(value);
});
