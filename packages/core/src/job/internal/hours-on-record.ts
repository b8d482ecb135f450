import { plainGeometry, supporting, type Finding } from '../../result/index.js';
import type { Machine, Position } from '../workshop-file-field.js';

/** A change as the record tells it, in the order of the days. */
interface RecordedChange {
  readonly date: string;
  readonly hourMeterHours: number | null;
}

/** Hours that the record spans, to the hour meter now or to the last change. A meter that went back is a new one: its own reading counts, at the least. */
export function hoursOnRecord(machine: Machine, changes: readonly RecordedChange[]): number | null {
  const meters = metersOf(changes).map(({ hours }) => hours);
  const [last] = meters.slice(-1);
  if (last === undefined) return null;
  const sinceLast = Math.max((machine.hourMeterHours ?? last) - last, 0);
  return meters.slice(1).reduce((sum, hours, i) => sum + ((meters[i] ?? 0) <= hours ? hours - (meters[i] ?? 0) : hours), sinceLast);
}

/** Whether one meter tells the whole record: growth over hours means nothing across two. */
export function isOneMeter(changes: readonly RecordedChange[]): boolean {
  const meters = metersOf(changes);
  return meters.every(({ hours }, i) => hours >= (meters[i - 1]?.hours ?? 0));
}

function metersOf(changes: readonly RecordedChange[]): readonly { readonly date: string; readonly hours: number }[] {
  return changes.flatMap(({ date, hourMeterHours }) => (hourMeterHours === null ? [] : [{ date, hours: hourMeterHours }]));
}

/** A meter that goes back on record was replaced, or read wrong; one in the file that stands behind the last on record was not written anew. */
export function meterFindings({ hourMeterHours }: Machine, changes: readonly RecordedChange[]): readonly Finding[] {
  const meters = metersOf(changes);
  const steps = meters.slice(1).flatMap((now, i) => {
    const before = meters[i];
    return before === undefined || now.hours >= before.hours ? [] : [supporting('hour-meter-went-back', 'care', { onDate: now.date, nowHours: now.hours, beforeHours: before.hours }, plainGeometry)];
  });
  const last = meters.at(-1)?.hours;
  if (hourMeterHours === undefined || last === undefined || hourMeterHours >= last) return steps;
  return [...steps, supporting('hour-meter-behind-record', 'note', { meterHours: hourMeterHours, recordHours: last }, plainGeometry)];
}

/** One renewal, written down twice. */
export function twiceFindings({ changes = [] }: Position): readonly Finding[] {
  const seen = new Set<string>();
  for (const { date, hourMeterHours, renewed } of changes) {
    const key = JSON.stringify([date, hourMeterHours, renewed]);
    if (hourMeterHours !== undefined && seen.has(key)) return [supporting('change-written-twice', 'note', { onDate: date, atHours: hourMeterHours }, plainGeometry)];
    seen.add(key);
  }
  return [];
}
