import * as z from 'zod/mini';
import { trustedSize, type TrustedSize } from '../measure/index.js';
import { candourFields, choiceField, commonPractice, defineCalculation, findingField, outputNumber, plainGeometry, readWithin, source, supporting, textField, wholeNumberField, type Finding, type WorkingStep } from '../result/index.js';
import { largestUsefulBoreMm, peripheralSpeedMps, sizesOf } from '../seal/index.js';
import { dateField, dayNumberOf } from './calendar-day.js';
import { findPosition, type FoundPosition } from './find-position.js';
import { boreTrendField, boreTrendOf, type BoreTrend } from './internal/bore-trend.js';
import { dueReasons, earliestDue, type Due } from './internal/earliest-due.js';
import { hoursOnRecord, isOneMeter, meterFindings, twiceFindings } from './internal/hours-on-record.js';
import { changeAfter } from './internal/last-renewal.js';
import { medianOf } from './internal/theil-sen.js';
import { nextDue } from './next-due.js';
import { readWorkshop } from './read-workshop-file.js';
import { situationOf } from './situation-of.js';
import type { Change, Position, SealPart, WorkshopFile } from './workshop-file-field.js';

const maybe = (label: string, unit: string) => z.nullable(outputNumber(label, unit));

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

const outputField = z.strictObject({
  machine: z.string().check(z.meta({ label: 'machine', unit: '' })),
  position: z.string().check(z.meta({ label: 'position', unit: '' })),
  changes: z.readonly(z.array(entryField)),
  medianIntervalHours: maybe('hours between changes, median', 'h'),
  lipTravelToDateKm: maybe('how far the lips have slid, all hours on record', 'km'),
  boreTrend: z.nullable(boreTrendField),
  dueDate: z.nullable(z.string().check(z.meta({ label: 'day when due next', unit: '' }))),
  dueAtHours: maybe('hour meter when due next', 'h'),
  dueBy: z.nullable(choiceField(dueReasons, { label: 'what makes it due' })),
  overdueHours: maybe('hours over; none: not over', 'h'),
  overdueDays: maybe('days over; none: not over', 'days'),
  findings: z.readonly(z.array(findingField)),
  ...candourFields,
});

export type ServiceRecordOutput = z.infer<typeof outputField>;
type Entry = ServiceRecordOutput['changes'][number];

const sen = source('sen-1968', 'memory', 'slope and its interval by ranks');
const usualForecastCount = 20;

/** What the record of past renewals says: intervals, lip travel, how the bore grows, and when the next renewal is due and by what.
 * Due is the earliest of hour meter, lip travel, calendar and growth of the bore, counted from the last renewal of the seal. Growth by
 * Theil–Sen, which single bad readings do not bend; a forecast only with five measured changes, and only as far ahead as asked.
 * @returns the changes in order, the trend [µm per change and per 100 h] with its interval, next due
 * @throws CalculationError invalid-input
 * @source sen-1968 (held as: memory); common-practice
 * @example serviceRecord.run({ workshop: { format: 'seatwright', version: 1, machines: [{ name: 'Bilge pump', hourMeterHours: 120, positions: [{ name: 'drive side', serviceIntervalHours: 100, parts: [{ kind: 'seal', shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' }] }] }] } }).dueAtHours // null
 */
export const serviceRecord = defineCalculation({
  name: 'service-record',
  summary: 'What the record of past renewals says: intervals, growth of the bore, and when the next one is due',
  input: inputField,
  output: outputField,
  compute(input): ServiceRecordOutput {
    const { workshop } = readWorkshop(input.workshop);
    return recordOf(workshop, findPosition(workshop, input), input);
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

/** The record of a position in a file that is read already. */
export function recordOf(workshop: WorkshopFile, { machine, position, path }: FoundPosition, { asOfDate, forecastChangeCount = usualForecastCount }: Pick<z.infer<typeof inputField>, 'asOfDate' | 'forecastChangeCount'>): ServiceRecordOutput {
  const changes = entriesOf(workshop, position, path);
  const speedMps = speedOf(workshop, position);
  const trend = trendOf(workshop, position, changes, forecastChangeCount);
  const next = nextDue(machine, position, speedMps, asOfDate);
  const due = earliestDue(machine, position, next, trend, asOfDate);
  const hours = hoursOnRecord(machine, changes);
  return {
    machine: machine.name,
    position: position.name,
    changes,
    medianIntervalHours: medianIntervalOf(changes),
    lipTravelToDateKm: speedMps === null || hours === null ? null : speedMps * hours * 3.6,
    boreTrend: trend,
    ...due,
    findings: [...findingsOf(changes, trend, due), ...meterFindings(machine, changes), ...twiceFindings(position), ...dayFindings(position, asOfDate), ...doubtsOf(workshop, position, path)],
    assumptions: [],
    notChecked: ['wear-goes-on-as-before', ...(changes.some(({ boreMm }) => boreMm === null) ? ['changes-without-reading'] : [])],
  };
}

/** The changes in the order of their days, each with what was measured. */
function entriesOf(workshop: WorkshopFile, { changes = [] }: Position, path: string): readonly Entry[] {
  const inOrder = changes.map((change, i) => ({ change, i })).toSorted((a, b) => (a.change.date < b.change.date ? -1 : a.change.date > b.change.date ? 1 : a.i - b.i));
  return inOrder.map(({ change, i }, at) => {
    const before = inOrder[at - 1]?.change;
    const [now, then] = [change.hourMeterHours, before?.hourMeterHours];
    const [day, dayBefore] = [dayNumberOf(change.date), before === undefined ? null : dayNumberOf(before.date)];
    const bore = readOnce(workshop, change, `${path}.changes[${i}]`, 'bore').size;
    const shaft = readOnce(workshop, change, `${path}.changes[${i}]`, 'shaft').size;
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

function readOnce({ instruments }: WorkshopFile, { boreReadings, shaftReadings }: Change, path: string, where: 'bore' | 'shaft'): TrustedSize {
  const at = `${path}.${where}Readings`;
  const part = { measured: `measured-${where}`, path: at } as const;
  return readWithin(at, () => (where === 'bore' ? trustedSize(boreReadings ?? [], 'inside', part, instruments) : trustedSize(shaftReadings ?? [], 'outside', part, instruments)));
}

/** What is doubtful about readings on record; none of it decides here. */
function doubtsOf(workshop: WorkshopFile, { changes = [] }: Position, path: string): readonly Finding[] {
  const doubts = changes.flatMap((change, i) => (['bore', 'shaft'] as const).flatMap((where) => readOnce(workshop, change, `${path}.changes[${i}]`, where).doubts));
  return doubts.map(({ code, severity, parameters, source: from }) => supporting(code, severity, parameters, from));
}

function speedOf(workshop: WorkshopFile, position: Position): number | null {
  const part = sealOf(position);
  const speedRpm = position.running?.speedRpm;
  if (part === null || speedRpm === undefined) return null;
  const situation = situationOf(workshop, position, part);
  return peripheralSpeedMps(sizesOf(situation).shaft?.meanMm ?? situation.seal.shaftMm, speedRpm);
}

function sealOf({ parts }: Position): SealPart | null {
  return parts.find((part): part is SealPart => part.kind === 'seal') ?? null;
}

function medianIntervalOf(changes: readonly Entry[]): number | null {
  const intervals = changes.flatMap(({ sinceBeforeHours }) => (sinceBeforeHours === null ? [] : [sinceBeforeHours])).toSorted((a, b) => a - b);
  return intervals.length === 0 ? null : medianOf(intervals);
}

function trendOf(workshop: WorkshopFile, position: Position, changes: readonly Entry[], aheadCount: number): BoreTrend | null {
  const part = sealOf(position);
  const limitMm = part === null ? null : largestUsefulBoreMm(situationOf(workshop, position, part));
  if (limitMm === null) return null;
  const hasHours = isOneMeter(changes);
  const measured = changes.flatMap(({ boreMm, hourMeterHours }, i) => (boreMm === null ? [] : [{ i, boreMm, hourMeterHours: hasHours ? hourMeterHours : null }]));
  const intervalHours = medianIntervalOf(changes);
  return boreTrendOf(measured, limitMm, { changeCount: aheadCount, hours: intervalHours === null ? null : intervalHours * aheadCount });
}

/** A day of the work before its own record comes from a clock set wrong. */
function dayFindings(position: Position, asOfDate: string | undefined): readonly Finding[] {
  const lastDate = changeAfter(position, asOfDate);
  return asOfDate === undefined || lastDate === null ? [] : [supporting('day-before-record', 'care', { workDate: asOfDate, lastDate }, plainGeometry)];
}

function findingsOf(changes: readonly Entry[], trend: BoreTrend | null, due: Due): readonly Finding[] {
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
