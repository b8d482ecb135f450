import type { fitDistribution } from '@seatwright/core/measure';
import { writeValue, type WritingStyle } from '@seatwright/core/wording';
import { writtenAs, type ChartOrWhy } from '../internal/chart/chart-data.js';
import type { ElementWords } from '../words/element-words.js';

type Spread = Pick<ReturnType<typeof fitDistribution.compute>, 'exact'>;

/** How a fit comes out over many parts: how likely each clearance is, with interference below nothing. */
export function spreadData(distribution: Spread | null, words: ElementWords, style: WritingStyle): ChartOrWhy {
  const { spread } = words.charts;
  const curve = distribution?.exact.curve ?? [];
  const [first] = curve;
  const last = curve.at(-1);
  if (distribution === null || first === undefined || last === undefined || curve.length < 3) return { why: spread.nothing };
  const { exact } = distribution;
  const um = (value: number) => writeValue('clearanceUm', value, style);
  const percent = (value: number) => writeValue('sharePercent', 100 * value, style);
  // Likelihood of a clearance: how fast the share of parts below it grows.
  const points = curve.slice(1).map((point, i) => {
    const before = curve[i] ?? first;
    const width = point.clearanceUm - before.clearanceUm;
    return { x: (point.clearanceUm + before.clearanceUm) / 2, low: 0, high: width <= 0 ? 0 : Math.max(0, (point.cumulativeProbability - before.cumulativeProbability) / width) };
  });
  const tight = points.filter(({ x }) => x <= 0);
  const loose = points.filter(({ x }) => x >= 0);
  const most = Math.max(...points.map(({ high }) => high), 1e-9);
  return {
    title: spread.title,
    spoken: `${spread.tight}: ${percent(exact.interferenceProbability)}. ${spread.loose}: ${percent(exact.clearanceProbability)}. ${spread.mean}: ${um(exact.meanClearanceUm)}.`,
    x: { label: spread.clearance, from: first.clearanceUm, to: last.clearanceUm, ...writtenAs('clearanceUm', style) },
    y: { label: spread.likelihood, from: 0, to: 1.1 * most, write: (value) => writeValue('densityRatio', value / most, style), shown: (value) => value / most },
    bands: [
      ...(tight.length < 2 ? [] : [{ name: `${spread.tight}: ${percent(exact.interferenceProbability)}`, pattern: 'first' as const, points: tight }]),
      ...(loose.length < 2 ? [] : [{ name: `${spread.loose}: ${percent(exact.clearanceProbability)}`, pattern: 'third' as const, points: loose }]),
    ],
    boxes: [],
    lines: [{ name: spread.curve, pattern: 'first', points: points.map(({ x, high }) => ({ x, y: high })) }],
    limits: first.clearanceUm < 0 && last.clearanceUm > 0 ? [{ name: spread.zero, axis: 'x', at: 0 }] : [],
    marks: [],
    table: { columns: [spread.share, spread.clearance], rows: exact.quantiles.map(({ atProbability, clearanceUm }) => [percent(atProbability), um(clearanceUm)]) },
  };
}
