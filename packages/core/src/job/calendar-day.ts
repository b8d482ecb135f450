import * as z from 'zod/mini';
import type { FieldMeta } from '../result/index.js';

/** A calendar day as a whole number of days since 1970-01-01; no clock, no time zone. */
export type DayNumber = number;

const form = /^(\d{4})-(\d{2})-(\d{2})$/;

/**
 * Day number of a date written YYYY-MM-DD (Gregorian), or null when there is no such day.
 * @example dayNumberOf('2026-03-02') // 20514
 */
export function dayNumberOf(date: string): DayNumber | null {
  const match = form.exec(date);
  if (match === null) return null;
  const year = Number(match[1]);
  const month = Number(match[2]);
  const day = Number(match[3]);
  const number = daysFromCivil(year, month, day);
  return dateOf(number) === date ? number : null;
}

/**
 * Date written YYYY-MM-DD of a day number.
 * @example dateOf(20514) // '2026-03-02'
 */
export function dateOf(dayNumber: DayNumber): string {
  const shifted = dayNumber + 719_468;
  const era = Math.floor(shifted / 146_097);
  const dayOfEra = shifted - era * 146_097;
  const yearOfEra = Math.floor((dayOfEra - Math.floor(dayOfEra / 1460) + Math.floor(dayOfEra / 36_524) - Math.floor(dayOfEra / 146_096)) / 365);
  const dayOfYear = dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const marchMonth = Math.floor((5 * dayOfYear + 2) / 153);
  const day = dayOfYear - Math.floor((153 * marchMonth + 2) / 5) + 1;
  const month = marchMonth < 10 ? marchMonth + 3 : marchMonth - 9;
  const year = yearOfEra + era * 400 + (month <= 2 ? 1 : 0);
  return `${String(year).padStart(4, '0')}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`;
}

/**
 * A date field, YYYY-MM-DD, that must exist in the calendar.
 * @example dateField({ label: 'day' }).safeParse('2026-02-30').success // false
 */
export function dateField(meta: FieldMeta) {
  return z.string().check(
    z.refine((text) => dayNumberOf(text) !== null, { error: 'expected a date that exists, written YYYY-MM-DD' }),
    z.meta({ ...meta, unit: '', format: 'date', beyond: ['expected a date that exists, written YYYY-MM-DD'] }),
  );
}

/** Years counted from March, so that the leap day is the last of a year. */
function daysFromCivil(year: number, month: number, day: number): DayNumber {
  const shiftedYear = month <= 2 ? year - 1 : year;
  const era = Math.floor(shiftedYear / 400);
  const yearOfEra = shiftedYear - era * 400;
  const dayOfYear = Math.floor((153 * (month > 2 ? month - 3 : month + 9) + 2) / 5) + day - 1;
  const dayOfEra = yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfYear;
  return era * 146_097 + dayOfEra - 719_468;
}
