import type { NextDue } from '../next-due.js';
import { dateOf, dayNumberOf } from '../calendar-day.js';
import type { Machine, Position } from '../workshop-file-field.js';
import type { BoreTrend } from './bore-trend.js';
import { lastRenewal } from './last-renewal.js';

/** What makes a renewal due. Without the hours of a year nobody can say whether meter or calendar runs out first. */
export const dueReasons = ['hour meter', 'lip travel', 'calendar', 'growth of the bore', 'whichever comes first'] as const;

export interface Due {
  readonly dueDate: string | null;
  readonly dueAtHours: number | null;
  readonly dueBy: (typeof dueReasons)[number] | null;
  readonly overdueHours: number | null;
  readonly overdueDays: number | null;
}

/** The earliest of hour meter (or the lip travel that stands for it), calendar and growth, counted from the last renewal on record. */
export function earliestDue(machine: Machine, position: Position, next: NextDue, trend: BoreTrend | null, asOfDate: string | undefined): Due {
  const last = lastRenewal(position);
  const lastDay = last === null ? null : dayNumberOf(last.date);
  const now = machine.hourMeterHours ?? null;
  const meter = meterOf(last?.hourMeterHours ?? null, next, trend);
  const perYear = position.running?.hoursPerYear ?? 0;
  const meterDay = lastDay === null || meter.runHours === null || perYear <= 0 ? null : lastDay + Math.floor((meter.runHours / perYear) * 365.25);
  const days = position.serviceIntervalDays ?? machine.serviceIntervalDays;
  const calendarDay = lastDay === null || days === undefined ? null : lastDay + days;
  const isGrown = trend !== null && trend.levelMm >= trend.limitMm;
  const [first] = [
    ...(isGrown && lastDay !== null ? [{ by: 'growth of the bore', day: lastDay } as const] : []),
    ...(calendarDay === null ? [] : [{ by: 'calendar', day: calendarDay } as const]),
    ...(meterDay === null ? [] : [{ by: meter.by, day: meterDay }]),
  ].toSorted((a, b) => a.day - b.day);
  const today = asOfDate === undefined ? null : dayNumberOf(asOfDate);
  const overdueHours = now !== null && meter.atHours !== null && now > meter.atHours ? now - meter.atHours : null;
  const isOpen = !isGrown && first !== undefined && meter.atHours !== null && meterDay === null;
  return {
    dueDate: first === undefined ? null : dateOf(first.day),
    dueAtHours: meter.atHours,
    dueBy: overdueHours !== null ? meter.by : isOpen ? 'whichever comes first' : (first?.by ?? (meter.atHours === null ? null : meter.by)),
    overdueHours,
    overdueDays: today !== null && first !== undefined && today > first.day ? today - first.day : null,
  };
}

/** What runs out first by the meter. Growth counts where its interval leaves no doubt that there is some, by its earliest end. */
function meterOf(lastHours: number | null, { intervalHours, intervalFrom }: NextDue, trend: BoreTrend | null) {
  const by = intervalFrom === 'lip travel' ? 'lip travel' : 'hour meter';
  const atHours = lastHours === null || intervalHours === null ? null : lastHours + intervalHours;
  const grownAt = trend !== null && (trend.growthPer100HoursLowUm ?? 0) > 0 ? trend.leavesLimitEarliestHours : null;
  if (grownAt === null || lastHours === null || (atHours !== null && atHours <= grownAt)) return { by, atHours, runHours: intervalHours } as const;
  const fromNow = Math.max(grownAt, lastHours);
  return { by: 'growth of the bore', atHours: fromNow, runHours: fromNow - lastHours } as const;
}
