import { commonPractice, source, type SourceReference } from '../result/index.js';
import { dateOf, dayNumberOf } from './calendar-day.js';
import { changeAfter, lastRenewal } from './internal/last-renewal.js';
import type { Machine, Position } from './workshop-file-field.js';

/** When the part is due again, counted from a renewal now, and how the last interval stands. */
export interface NextDue {
  readonly intervalHours: number | null;
  /** Interval by the calendar, where one is given. */
  readonly intervalDays: number | null;
  readonly intervalFrom: 'position' | 'machine' | 'lip travel' | 'common practice' | 'not known';
  readonly source: SourceReference;
  /** Hour meter at which it is due again when renewed now. */
  readonly dueAtHours: number | null;
  /** Hours run since the last renewal on record. */
  readonly sinceLastHours: number | null;
  /** Hours until the present part is due by its last renewal; negative when overdue. */
  readonly remainingHours: number | null;
  /** Days until the present part is due by the calendar; negative when overdue. */
  readonly remainingDays: number | null;
  /** Day on which it is due again when renewed on `asOfDate`: by running hours a year or by the calendar, whichever comes first. */
  readonly dueDate: string | null;
  /** How far the lip slides in one interval. */
  readonly lipTravelKm: number | null;
  readonly lipTravelSinceLastKm: number | null;
}

const asGiven = source('common-practice', 'practice', 'stated in the workshop file');

/** [h] Usual interval for shaft seals of small two-strokes. */
export const smallTwoStrokeIntervalHours = 100;

/**
 * Next due from a renewal now: the position's interval, else the machine's, else 100 h on small two-strokes, else unknown; or a lip travel
 * permitted by the position, where that is run sooner. Hours since the last renewal count from the last one of the seal, if there is one.
 * @param asOfDate YYYY-MM-DD; without it no day is given, since there is no clock here, nor from a day before the last change on record
 * @source engine-service-practice (held as: practice)
 * @example positionsOf(readWorkshop({ format: 'seatwright', version: 1, machines: [{ name: 'Bilge pump', hourMeterHours: 120, positions: [{ name: 'drive side', serviceIntervalHours: 100, parts: [{ kind: 'seal', shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' }] }] }] }).workshop).map(({ machine, position }) => nextDue(machine, position, null).intervalHours)[0] // 100
 */
export function nextDue(machine: Machine, position: Position, peripheralSpeedMps: number | null, asOfDate?: string): NextDue {
  const { intervalHours, intervalFrom, source: from } = intervalOf(machine, position, peripheralSpeedMps);
  const now = machine.hourMeterHours ?? null;
  const last = lastRenewal(position);
  const lastHours = last?.hourMeterHours ?? null;
  const lastDay = last === null ? null : dayNumberOf(last.date);
  const sinceLastHours = now !== null && lastHours !== null && now >= lastHours ? now - lastHours : null;
  const hoursPerYear = position.running?.hoursPerYear;
  const intervalDays = position.serviceIntervalDays ?? machine.serviceIntervalDays;
  const today = asOfDate === undefined || changeAfter(position, asOfDate) !== null ? null : dayNumberOf(asOfDate);
  const travel = (hours: number | null) => (hours === null || peripheralSpeedMps === null ? null : peripheralSpeedMps * hours * 3.6);
  return {
    intervalHours,
    intervalDays: intervalDays ?? null,
    intervalFrom,
    source: from,
    dueAtHours: now === null || intervalHours === null ? null : now + intervalHours,
    sinceLastHours,
    remainingHours: sinceLastHours === null || intervalHours === null ? null : intervalHours - sinceLastHours,
    remainingDays: today === null || lastDay === null || intervalDays === undefined ? null : lastDay + intervalDays - today,
    dueDate: dueDateOf(today, [
      ...(intervalHours === null || hoursPerYear === undefined || hoursPerYear <= 0 ? [] : [Math.floor((intervalHours / hoursPerYear) * 365.25)]),
      ...(intervalDays === undefined ? [] : [intervalDays]),
    ]),
    lipTravelKm: travel(intervalHours),
    lipTravelSinceLastKm: travel(sinceLastHours),
  };
}

/** The earliest of several intervals in days, counted from today. */
function dueDateOf(today: number | null, days: readonly number[]): string | null {
  return today === null || days.length === 0 ? null : dateOf(today + Math.min(...days));
}

type Interval = Pick<NextDue, 'intervalHours' | 'intervalFrom' | 'source'>;

/** The interval by hours, or the lip travel permitted where the lip has slid that far sooner. */
function intervalOf(machine: Machine, position: Position, peripheralSpeedMps: number | null): Interval {
  const byHours = hoursIntervalOf(machine, position);
  if (position.serviceLipTravelKm === undefined || peripheralSpeedMps === null || peripheralSpeedMps <= 0) return byHours;
  const intervalHours = position.serviceLipTravelKm / (peripheralSpeedMps * 3.6);
  return byHours.intervalHours !== null && byHours.intervalHours <= intervalHours ? byHours : { intervalHours, intervalFrom: 'lip travel', source: asGiven };
}

function hoursIntervalOf(machine: Machine, position: Position): Interval {
  if (position.serviceIntervalHours !== undefined) return { intervalHours: position.serviceIntervalHours, intervalFrom: 'position', source: asGiven };
  if (machine.serviceIntervalHours !== undefined) return { intervalHours: machine.serviceIntervalHours, intervalFrom: 'machine', source: asGiven };
  if (machine.kind === 'small two-stroke') {
    return { intervalHours: smallTwoStrokeIntervalHours, intervalFrom: 'common practice', source: source('engine-service-practice', 'practice') };
  }
  return { intervalHours: null, intervalFrom: 'not known', source: commonPractice };
}
