import * as z from 'zod/mini';
import { measuredSize } from '../measure/index.js';
import { candourFields, choiceField, commonPractice, defineCalculation, findingField, outputNumber, plainGeometry, readWithin, source, supporting, textField, wholeNumberField, type Finding, type WorkingStep } from '../result/index.js';
import { largestUsefulBoreMm, lipSpeed } from '../seal/index.js';
import { dateField, dateOf, dayNumberOf } from './calendar-day.js';
import { findPosition } from './find-position.js';
import { medianOf, slopeConfidence, theilSen, type RobustSlope } from './internal/theil-sen.js';
import { nextDue, type NextDue } from './next-due.js';
import { readWorkshop } from './read-workshop-file.js';
import { situationOf } from './situation-of.js';
import type { Machine, Position, SealPart, WorkshopFile } from './workshop-file-field.js';

const maybe = (label: string, unit: string) => z.nullable(outputNumber(label, unit));
const reasons = ['hour meter', 'calendar', 'growth of the bore'] as const;

const inputField = z.strictObject({
  workshop: z.unknown().check(z.meta({ label: 'workshop file', unit: '', help: 'a JSON object with "format": "seatwright"; its schema is `seatwright schema workshop-file`' })),
  machine: z.optional(textField({ label: 'name of the machine' })),
  position: z.optional(textField({ label: 'name of the position' })),
  asOfDate: z.optional(dateField({ label: 'day to count from' })),
  forecastChangeCount: z.optional(wholeNumberField({ label: 'how many changes ahead to look', unit: '', from: 1, upTo: 100, typical: '20' })),
});

const entryField = z.strictObject({
  date: z.string().check(z.meta({ label: 'day of the change', unit: '' })),
  hourMeterHours: maybe('hour meter at the change', 'h'),
  sinceBeforeHours: maybe('hours since the change before', 'h'),
  sinceBeforeDays: maybe('days since the change before', 'days'),
  boreMm: maybe('bore as measured then', 'mm'),
  boreUncertaintyMm: maybe('its expanded uncertainty', 'mm'),
  shaftMm: maybe('shaft as measured then', 'mm'),
});

const trendField = z.strictObject({
  limitMm: outputNumber('largest bore that keeps the hold', 'mm'),
  levelMm: outputNumber('bore now, by the line', 'mm'),
  growthPerChangeUm: outputNumber('growth with each change', 'µm'),
  growthPerChangeLowUm: maybe('that, low end', 'µm'),
  growthPerChangeHighUm: maybe('that, high end', 'µm'),
  growthPer100HoursUm: maybe('growth in 100 hours', 'µm'),
  confidenceProbability: outputNumber('level of the interval', ''),
  changesLeftEarliestCount: maybe('changes until it leaves the limit, earliest', ''),
  changesLeftProbableCount: maybe('changes until it leaves the limit, probable', ''),
  changesLeftLatestCount: maybe('changes until it leaves the limit, latest; none: not within sight', ''),
});

const outputField = z.strictObject({
  machine: z.string().check(z.meta({ label: 'machine', unit: '' })),
  position: z.string().check(z.meta({ label: 'position', unit: '' })),
  changes: z.readonly(z.array(entryField)),
  medianIntervalHours: maybe('hours between changes, median', 'h'),
  lipTravelToDateKm: maybe('how far the lips have slid, all hours on record', 'km'),
  boreTrend: z.nullable(trendField),
  dueDate: z.nullable(z.string().check(z.meta({ label: 'day when due next', unit: '' }))),
  dueAtHours: maybe('hour meter when due next', 'h'),
  dueBy: z.nullable(choiceField(reasons, { label: 'what makes it due' })),
  overdueHours: maybe('hours over; none: not over', 'h'),
  overdueDays: maybe('days over; none: not over', 'days'),
  findings: z.readonly(z.array(findingField)),
  ...candourFields,
});

export type ServiceRecordOutput = z.infer<typeof outputField>;
type Entry = ServiceRecordOutput['changes'][number];
type Trend = ServiceRecordOutput['boreTrend'];

const sen = source('sen-1968', 'memory', 'slope and its interval by ranks');
const usualForecastCount = 20;

/** What the record of past renewals says: intervals, lip travel, how the bore grows, and when the next renewal is due and by what.
 * Due is the earliest of hour meter, calendar and growth of the bore. Growth by Theil–Sen, which single bad readings do not bend;
 * a forecast only with four measured changes, and only as far ahead as asked.
 * @returns the changes in order, the trend [µm per change and per 100 h] with its interval, next due
 * @throws CalculationError invalid-input
 * @source sen-1968 (held as: memory); common-practice
 */
export const serviceRecord = defineCalculation({
  name: 'service-record',
  summary: 'What the record of past renewals says: intervals, growth of the bore, and when the next one is due',
  input: inputField,
  output: outputField,
  compute(input): ServiceRecordOutput {
    const { workshop } = readWorkshop(input.workshop);
    const { machine, position, path } = findPosition(workshop, input);
    const changes = entriesOf(workshop, position, path);
    const speedMps = speedOf(workshop, position);
    const trend = trendOf(workshop, position, changes, input.forecastChangeCount ?? usualForecastCount);
    const next = nextDue(machine, position, speedMps, input.asOfDate);
    const due = dueOf(machine, position, changes, next, trend, input.asOfDate);
    const intervals = changes.flatMap(({ sinceBeforeHours }) => (sinceBeforeHours === null ? [] : [sinceBeforeHours])).toSorted((a, b) => a - b);
    const hours = hoursOnRecord(machine, changes);
    return {
      machine: machine.name,
      position: position.name,
      changes,
      medianIntervalHours: intervals.length === 0 ? null : medianOf(intervals),
      lipTravelToDateKm: speedMps === null || hours === null ? null : speedMps * hours * 3.6,
      boreTrend: trend,
      ...due,
      findings: findingsOf(changes, trend, due),
      assumptions: [],
      notChecked: ['wear-goes-on-as-before', ...(changes.some(({ boreMm }) => boreMm === null) ? ['changes-without-reading'] : [])],
    };
  },
  explain(input, output): readonly WorkingStep[] {
    const { workshop } = readWorkshop(input.workshop);
    const { machine, position } = findPosition(workshop, { machine: output.machine, position: output.position });
    const speed = speedOf(workshop, position);
    const hours = hoursOnRecord(machine, output.changes);
    const trend = output.boreTrend;
    return [
      ...(output.lipTravelToDateKm === null || speed === null || hours === null ? [] : [{ kind: 'formula', symbol: 's', meaning: 'how far the lips have slid', formula: 'v * t * 3.6', scope: { v: speed, t: hours }, value: output.lipTravelToDateKm, unit: 'km', source: plainGeometry } as const]),
      ...(trend === null ? [] : [{ kind: 'choice', symbol: 'g', meaning: 'growth of the bore with each change', value: trend.growthPerChangeUm, unit: 'µm', why: 'the median of the slopes between all pairs of measured changes', source: sen } as const]),
      ...(trend?.changesLeftProbableCount == null || trend.levelMm >= trend.limitMm ? [] : [{ kind: 'formula', symbol: 'n', meaning: 'changes until it leaves the limit', formula: 'ceil(1000 * (L - B) / g - 1e-9)', scope: { L: trend.limitMm, B: trend.levelMm, g: trend.growthPerChangeUm }, value: trend.changesLeftProbableCount, unit: '', source: sen } as const]),
    ];
  },
});

/** The changes in the order of their days, each with what was measured. */
function entriesOf(workshop: WorkshopFile, { changes = [] }: Position, path: string): readonly Entry[] {
  const inOrder = changes.map((change, i) => ({ change, i })).toSorted((a, b) => (a.change.date < b.change.date ? -1 : a.change.date > b.change.date ? 1 : a.i - b.i));
  return inOrder.map(({ change, i }, at) => {
    const before = inOrder[at - 1]?.change;
    const [now, then] = [change.hourMeterHours, before?.hourMeterHours];
    const [day, dayBefore] = [dayNumberOf(change.date), before === undefined ? null : dayNumberOf(before.date)];
    const bore = readWithin(`${path}.changes[${i}].boreReadings`, () => measuredSize(change.boreReadings ?? [], 'inside', workshop.instruments));
    const shaft = readWithin(`${path}.changes[${i}].shaftReadings`, () => measuredSize(change.shaftReadings ?? [], 'outside', workshop.instruments));
    return {
      date: change.date,
      hourMeterHours: now ?? null,
      sinceBeforeHours: now !== undefined && then !== undefined && now >= then ? now - then : null,
      sinceBeforeDays: day === null || dayBefore === null ? null : day - dayBefore,
      boreMm: bore?.meanMm ?? null,
      boreUncertaintyMm: bore?.expandedUncertaintyMm ?? null,
      shaftMm: shaft?.meanMm ?? null,
    };
  });
}

function speedOf(workshop: WorkshopFile, position: Position): number | null {
  const part = sealOf(position);
  const speedRpm = position.running?.speedRpm;
  if (part === null || speedRpm === undefined) return null;
  const { shaft, seal } = situationOf(workshop, position, part);
  const measured = measuredSize(shaft?.readings ?? [], 'outside', workshop.instruments);
  return lipSpeed.compute({ shaftDiameterMm: measured?.meanMm ?? seal.shaftMm, speedRpm }).peripheralSpeedMps;
}

function sealOf({ parts }: Position): SealPart | null {
  return parts.find((part): part is SealPart => part.kind === 'seal') ?? null;
}

/** Hours that the record spans: to the hour meter now, or to the last change. */
function hoursOnRecord(machine: Machine, changes: readonly Entry[]): number | null {
  const meters = changes.flatMap(({ hourMeterHours }) => (hourMeterHours === null ? [] : [hourMeterHours]));
  const [first] = meters;
  const last = machine.hourMeterHours ?? meters.at(-1);
  return first === undefined || last === undefined || last < first ? null : last - first;
}

function trendOf(workshop: WorkshopFile, position: Position, changes: readonly Entry[], aheadCount: number): Trend {
  const part = sealOf(position);
  const measured = changes.map((entry, i) => ({ ...entry, i })).filter((entry): entry is typeof entry & { boreMm: number } => entry.boreMm !== null);
  const limitMm = part === null ? null : largestUsefulBoreMm(situationOf(workshop, position, part));
  const byChange = theilSen(measured.map(({ i, boreMm }) => ({ x: i, y: boreMm * 1000 })));
  if (limitMm === null || byChange === null) return null;
  const withHours = measured.flatMap(({ boreMm, hourMeterHours }) => (hourMeterHours === null ? [] : [{ x: hourMeterHours / 100, y: boreMm * 1000 }]));
  const levelMm = byChange.levelAtLast / 1000;
  const left = changesLeft(byChange, limitMm * 1000 - byChange.levelAtLast, aheadCount);
  return {
    limitMm,
    levelMm,
    growthPerChangeUm: byChange.slope,
    growthPerChangeLowUm: byChange.interval?.low ?? null,
    growthPerChangeHighUm: byChange.interval?.high ?? null,
    growthPer100HoursUm: withHours.length === measured.length ? (theilSen(withHours)?.slope ?? null) : null,
    confidenceProbability: slopeConfidence,
    ...left,
  };
}

/** Whole changes until the line meets the limit; nothing beyond how far one looks ahead, and no forecast without an interval. */
function changesLeft({ slope, interval }: RobustSlope, roomUm: number, aheadCount: number) {
  const at = (um: number): number | null => {
    if (roomUm <= 0) return 0;
    const count = um > 0 ? Math.ceil(roomUm / um - 1e-9) : Infinity;
    return count <= aheadCount ? count : null;
  };
  if (interval === null) return { changesLeftEarliestCount: null, changesLeftProbableCount: null, changesLeftLatestCount: null };
  return { changesLeftEarliestCount: at(interval.high), changesLeftProbableCount: at(slope), changesLeftLatestCount: at(interval.low) };
}

type Due = Pick<ServiceRecordOutput, 'dueDate' | 'dueAtHours' | 'dueBy' | 'overdueHours' | 'overdueDays'>;

/** The earliest of hour meter, calendar and growth, counted from the last change on record. */
function dueOf(machine: Machine, position: Position, changes: readonly Entry[], next: NextDue, trend: Trend, asOfDate: string | undefined): Due {
  const last = changes.at(-1);
  const lastDay = last === undefined ? null : dayNumberOf(last.date);
  const now = machine.hourMeterHours ?? null;
  const dueAtHours = last?.hourMeterHours == null || next.intervalHours === null ? null : last.hourMeterHours + next.intervalHours;
  const perYear = position.running?.hoursPerYear;
  const hourDay = lastDay === null || next.intervalHours === null || perYear === undefined || perYear <= 0 ? null : lastDay + Math.floor((next.intervalHours / perYear) * 365.25);
  const days = position.serviceIntervalDays ?? machine.serviceIntervalDays;
  const calendarDay = lastDay === null || days === undefined ? null : lastDay + days;
  const isGrown = trend !== null && trend.levelMm >= trend.limitMm;
  const candidates = [
    ...(isGrown && lastDay !== null ? [{ by: 'growth of the bore', day: lastDay } as const] : []),
    ...(calendarDay === null ? [] : [{ by: 'calendar', day: calendarDay } as const]),
    ...(hourDay === null ? [] : [{ by: 'hour meter', day: hourDay } as const]),
  ].toSorted((a, b) => a.day - b.day);
  const today = asOfDate === undefined ? null : dayNumberOf(asOfDate);
  const overdueHours = now !== null && dueAtHours !== null && now > dueAtHours ? now - dueAtHours : null;
  const first = candidates[0];
  return {
    dueDate: first === undefined ? null : dateOf(first.day),
    dueAtHours,
    dueBy: overdueHours !== null ? 'hour meter' : (first?.by ?? (dueAtHours === null ? null : 'hour meter')),
    overdueHours,
    overdueDays: today !== null && first !== undefined && today > first.day ? today - first.day : null,
  };
}

function findingsOf(changes: readonly Entry[], trend: Trend, due: Due): readonly Finding[] {
  const findings: Finding[] = [];
  if (changes.length === 0) findings.push(supporting('record-is-empty', 'note', {}, commonPractice));
  if (due.overdueHours !== null) findings.push(supporting('overdue-by-hours', 'care', { overHours: due.overdueHours }, commonPractice));
  else if (due.overdueDays !== null) findings.push(supporting('overdue-by-days', 'care', { overDayCount: due.overdueDays }, commonPractice));
  if (trend === null) return findings;
  const measured = changes.filter(({ boreMm }) => boreMm !== null);
  const numbers = { levelMm: trend.levelMm, limitMm: trend.limitMm, growthUm: trend.growthPerChangeUm, measuredCount: measured.length };
  const grownUm = 1000 * ((measured.at(-1)?.boreMm ?? 0) - (measured[0]?.boreMm ?? 0));
  const uncertaintyUm = 1000 * Math.hypot(measured.at(-1)?.boreUncertaintyMm ?? 0, measured[0]?.boreUncertaintyMm ?? 0);
  if (trend.levelMm >= trend.limitMm) findings.push(supporting('bore-is-over-limit', 'care', numbers, sen));
  else if (trend.growthPerChangeLowUm === null) findings.push(supporting('bore-trend-too-short', 'note', numbers, sen));
  else if (Math.abs(grownUm) <= uncertaintyUm) findings.push(supporting('bore-growth-not-proven', 'note', { ...numbers, uncertaintyUm }, sen));
  else if (trend.changesLeftEarliestCount === null) findings.push(supporting('bore-lasts', 'good', numbers, sen));
  else if (trend.changesLeftLatestCount === null) findings.push(supporting('bore-may-leave-limit', 'note', { ...numbers, earliestCount: trend.changesLeftEarliestCount }, sen));
  else findings.push(supporting('bore-leaves-limit', 'care', { ...numbers, earliestCount: trend.changesLeftEarliestCount, latestCount: trend.changesLeftLatestCount }, sen));
  return findings;
}
