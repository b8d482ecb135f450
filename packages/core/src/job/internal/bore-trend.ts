import * as z from 'zod/mini';
import { outputNumber } from '../../result/index.js';
import { slopeConfidence, theilSen, type RobustSlope } from './theil-sen.js';

const maybe = (label: string, unit: string) => z.nullable(outputNumber(label, unit));

export const boreTrendField = z.strictObject({
  limitMm: outputNumber('largest bore that keeps the hold', 'mm'),
  levelMm: outputNumber('bore now, by the line', 'mm'),
  growthPerChangeUm: outputNumber('growth with each change', 'µm'),
  growthPerChangeLowUm: maybe('that, low end', 'µm'),
  growthPerChangeHighUm: maybe('that, high end', 'µm'),
  growthPer100HoursUm: maybe('growth in 100 hours', 'µm'),
  growthPer100HoursLowUm: maybe('that, low end', 'µm'),
  growthPer100HoursHighUm: maybe('that, high end', 'µm'),
  confidenceProbability: outputNumber('level of the interval', ''),
  changesLeftEarliestCount: maybe('changes until it leaves the limit, earliest', ''),
  changesLeftProbableCount: maybe('changes until it leaves the limit, probable', ''),
  changesLeftLatestCount: maybe('changes until it leaves the limit, latest; none: not within sight', ''),
  leavesLimitEarliestHours: maybe('hour meter when it leaves the limit, earliest', 'h'),
  leavesLimitProbableHours: maybe('hour meter when it leaves the limit, probable', 'h'),
  leavesLimitLatestHours: maybe('hour meter when it leaves the limit, latest; none: not within sight', 'h'),
});

export type BoreTrend = z.infer<typeof boreTrendField>;

/** One change with its bore: its place in the record counts, also where others between were not measured. */
export interface MeasuredChange {
  readonly i: number;
  readonly boreMm: number;
  readonly hourMeterHours: number | null;
}

/** How the bore grows with changes and with hours, and when it meets its limit.
 * @param sight how many changes ahead, and how many hours; nothing is said beyond
 */
export function boreTrendOf(measured: readonly MeasuredChange[], limitMm: number, sight: { readonly changeCount: number; readonly hours: number | null }): BoreTrend | null {
  const byChange = theilSen(measured.map(({ i, boreMm }) => ({ x: i, y: boreMm * 1000 })));
  if (byChange === null) return null;
  const withHours = measured.flatMap(({ boreMm, hourMeterHours }) => (hourMeterHours === null ? [] : [{ x: hourMeterHours / 100, y: boreMm * 1000 }]));
  const byHours = withHours.length === measured.length ? theilSen(withHours) : null;
  const limitUm = limitMm * 1000;
  const changes = crossing(byChange, limitUm, sight.changeCount, (count) => Math.ceil(count - 1e-9) + 0);
  const lastHours = (withHours.at(-1)?.x ?? 0) * 100;
  const hours = byHours === null || sight.hours === null ? notInSight : crossing(byHours, limitUm, sight.hours / 100, (hundreds) => lastHours + hundreds * 100);
  return {
    limitMm,
    levelMm: byChange.levelAtLast / 1000,
    growthPerChangeUm: byChange.slope,
    growthPerChangeLowUm: byChange.interval?.low ?? null,
    growthPerChangeHighUm: byChange.interval?.high ?? null,
    growthPer100HoursUm: byHours?.slope ?? null,
    growthPer100HoursLowUm: byHours?.interval?.low ?? null,
    growthPer100HoursHighUm: byHours?.interval?.high ?? null,
    confidenceProbability: slopeConfidence,
    changesLeftEarliestCount: changes.earliest,
    changesLeftProbableCount: changes.probable,
    changesLeftLatestCount: changes.latest,
    leavesLimitEarliestHours: hours.earliest,
    leavesLimitProbableHours: hours.probable,
    leavesLimitLatestHours: hours.latest,
  };
}

const notInSight = { earliest: null, probable: null, latest: null };

/** Where the line and the ends of its interval meet the limit, counted on from its last point; no forecast without an interval. */
function crossing({ slope, interval, levelAtLast }: RobustSlope, limitUm: number, sight: number, written: (ahead: number) => number): { earliest: number | null; probable: number | null; latest: number | null } {
  if (interval === null) return notInSight;
  const roomUm = limitUm - levelAtLast;
  const at = (um: number): number | null => {
    const ahead = roomUm <= 0 ? 0 : um > 0 ? roomUm / um : Infinity;
    return ahead <= sight ? written(ahead) : null;
  };
  return { earliest: at(interval.high), probable: at(slope), latest: at(interval.low) };
}
