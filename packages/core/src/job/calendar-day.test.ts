import fc from 'fast-check';
import { expect, test } from 'vitest';
import { dateOf, dayNumberOf } from './calendar-day.js';

test('the first day of the count is 1970-01-01', () => expect(dayNumberOf('1970-01-01')).toBe(0));
test('leap days by the Gregorian rule', () => {
  expect(dayNumberOf('2024-02-29')).toBe(19_782);
  expect(dayNumberOf('2000-02-29')).toBe(11_016);
  expect(dayNumberOf('1900-02-29')).toBeNull();
  expect(dayNumberOf('2025-02-29')).toBeNull();
});
test('days that do not exist or are written otherwise are refused', () => {
  for (const text of ['2025-13-01', '2025-04-31', '2025-00-10', '2025-1-1', '01.02.2025', '', '2025-01-01T00:00']) expect(dayNumberOf(text)).toBeNull();
});
test('every day comes back as it went in, and as the platform counts it', () => {
  fc.assert(
    fc.property(fc.integer({ min: -100_000, max: 100_000 }), (day) => {
      expect(dayNumberOf(dateOf(day))).toBe(day);
      expect(dateOf(day)).toBe(new Date(day * 86_400_000).toISOString().slice(0, 10));
    }),
  );
});
