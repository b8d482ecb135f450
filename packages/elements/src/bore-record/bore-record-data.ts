import type { ServiceRecordOutput } from '@seatwright/core/job';
import { writeDay, writeValue, type WritingStyle } from '@seatwright/core/wording';
import { roomy, writtenAs, type ChartOrWhy } from '../internal/chart/chart-data.js';
import type { ElementWords } from '../words/element-words.js';

type Record = Pick<ServiceRecordOutput, 'changes' | 'boreTrend'>;

/** The bore at each renewal with the doubt of its reading, the limit that it must not pass, and how it goes on if the wear does. */
export function boreRecordData(record: Record | null, words: ElementWords, style: WritingStyle): ChartOrWhy {
  const { boreRecord } = words.charts;
  const measured = (record?.changes ?? []).flatMap(({ boreMm, boreUncertaintyMm, date }, i) => (boreMm === null ? [] : [{ i: i + 1, boreMm, doubtMm: boreUncertaintyMm ?? 0, date: writeDay(date, words.dayForm) }]));
  if (record === null || measured.length === 0) return { why: boreRecord.nothing };
  const { boreTrend: trend } = record;
  const mm = (value: number) => writeValue('boreMm', value, style);
  const lastPlace = record.changes.length;
  const ahead = trend === null ? 0 : Math.min(Math.max(trend.changesLeftProbableCount ?? 3, 1), 10);
  const places = Array.from({ length: ahead + 1 }, (_, n) => n);
  const grown = (um: number | null, n: number) => (trend === null ? 0 : trend.levelMm + ((um ?? trend.growthPerChangeUm) * n) / 1000);
  const cone = trend === null || trend.growthPerChangeLowUm === null || trend.growthPerChangeHighUm === null ? [] : places.map((n) => ({ x: lastPlace + n, low: grown(trend.growthPerChangeLowUm, n), high: grown(trend.growthPerChangeHighUm, n) }));
  const straight = trend === null ? [] : places.map((n) => ({ x: lastPlace + n, y: grown(trend.growthPerChangeUm, n) }));
  const [from, to] = roomy([...measured.flatMap(({ boreMm, doubtMm }) => [boreMm - doubtMm, boreMm + doubtMm]), ...(trend === null ? [] : [trend.limitMm]), ...straight.map(({ y }) => y), ...cone.flatMap(({ low, high }) => [low, high])]);
  return {
    title: boreRecord.title,
    spoken: `${measured.map(({ date, boreMm }) => `${date}: ${mm(boreMm)}`).join('; ')}${trend === null ? '' : `. ${boreRecord.limit}: ${mm(trend.limitMm)}`}`,
    x: { label: boreRecord.change, from: 0.5, to: lastPlace + ahead + 0.5, write: (value) => (Number.isInteger(value) ? String(value) : '') },
    y: { label: boreRecord.bore, from, to, ...writtenAs('boreMm', style) },
    bands: cone.length === 0 || trend === null ? [] : [{ name: boreRecord.interval.replace('{sharePercent}', writeValue('sharePercent', 100 * trend.confidenceProbability, style)), pattern: 'third', points: cone }],
    boxes: [],
    lines: straight.length === 0 ? [] : [{ name: boreRecord.goesOn, pattern: 'second', points: straight }],
    limits: trend === null ? [] : [{ name: `${boreRecord.limit}, ${mm(trend.limitMm)}`, axis: 'y', at: trend.limitMm }],
    marks: measured.map(({ i, boreMm, doubtMm }) => ({ name: boreRecord.read, x: i, y: boreMm, ...(doubtMm === 0 ? {} : { yLow: boreMm - doubtMm, yHigh: boreMm + doubtMm }) })),
    table: { columns: [boreRecord.change, boreRecord.date, boreRecord.bore, boreRecord.doubt], rows: measured.map(({ i, date, boreMm, doubtMm }) => [String(i), date, mm(boreMm), doubtMm === 0 ? '' : `±\u00a0${mm(doubtMm)}`]) },
  };
}
