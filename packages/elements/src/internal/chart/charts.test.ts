import fc from 'fast-check';
import { expect, test } from 'vitest';
import { serviceRecord } from '@seatwright/core/job';
import { fitDistribution } from '@seatwright/core/measure';
import { sealCheck } from '@seatwright/core/seal';
import { english, plainStyle } from '@seatwright/core/wording';
import { boreRecordData } from '../../bore-record/bore-record-data.js';
import { lipSpeedData } from '../../lip-speed/lip-speed-data.js';
import { spreadData } from '../../spread/spread-data.js';
import { warmthData } from '../../warmth/warmth-data.js';
import { englishWords } from '../../words/english.js';
import { zonesData } from '../../zones/zones-data.js';
import { writtenAs, type ChartData, type ChartOrWhy } from './chart-data.js';
import { roundNumbers } from './draw-chart.js';

/** Every number of a chart is one, lies where its axes reach, and every cell of its table says something. */
function sound(chart: ChartOrWhy): ChartData {
  if ('why' in chart) throw new Error(chart.why);
  const { x, y, bands, boxes, lines, limits, marks, table, spoken, title } = chart;
  const xs = [...bands.flatMap(({ points }) => points.map((point) => point.x)), ...lines.flatMap(({ points }) => points.map((point) => point.x)), ...marks.map((mark) => mark.x)];
  const ys = [...bands.flatMap(({ points }) => points.flatMap(({ low, high }) => [low, high])), ...boxes.flatMap((box) => [...box.y]), ...lines.flatMap(({ points }) => points.map((point) => point.y)), ...limits.filter(({ axis }) => axis === 'y').map(({ at }) => at), ...marks.flatMap((mark) => [mark.y, mark.yLow ?? mark.y, mark.yHigh ?? mark.y])];
  for (const value of [...xs, ...ys]) expect(Number.isFinite(value)).toBe(true);
  expect(y.from).toBeLessThan(y.to);
  for (const value of ys) expect(value >= y.from - 1e-9 && value <= y.to + 1e-9).toBe(true);
  if (x !== null) for (const value of xs) expect(value >= x.from - 1e-9 && value <= x.to + 1e-9).toBe(true);
  for (const row of table.rows) expect(row.length).toBe(table.columns.length);
  expect(`${title}${spoken}${JSON.stringify(table)}`).not.toMatch(/NaN|Infinity|undefined|\{\w+\}/u);
  return chart;
}

const situation = { shaft: { diameterMm: 20 }, bore: { diameterMm: 35, material: 'al-a380', readings: [{ instrument: 'inside-micrometer-rod', valuesMm: [35.012, 35.015] }] }, seal: { shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' }, running: { speedRpm: 7800, housingTemperatureC: 110 } };

test('hold against heat: both lines start at the hold at 20 °C and meet nothing where it is loose', () => {
  const check = sealCheck.run(situation);
  const { lines, limits } = sound(warmthData(check, 110, englishWords, english, plainStyle));
  const [least, most] = lines;
  expect(least?.points[0]).toEqual({ x: 20, y: check.heldUm?.low });
  expect(most?.points.at(-1)?.y).toBeCloseTo(0, 9);
  expect(limits).toMatchObject([{ axis: 'x', at: 110 }]);
  const why = (more: object) => warmthData(sealCheck.run({ ...situation, ...more }), 110, englishWords, english, plainStyle);
  const { never, nothing } = englishWords.charts.warmth;
  expect(why({ bore: { ...situation.bore, material: 'steel-c20' } })).toEqual({ why: never });
  expect(why({ seal: { ...situation.seal, construction: 'rubber-covered' } })).toEqual({ why: nothing });
  const { material: _, ...unknown } = situation.bore;
  expect(why({ bore: unknown })).toEqual({ why: nothing });
  expect(warmthData(null, null, englishWords, english, plainStyle)).toHaveProperty('why');
});

test('speed under the lip: the job stands on the line of its shaft', () => {
  const { marks, lines, table } = sound(lipSpeedData(20, 7800, [{ name: 'NBR', limitMps: 14, source: { id: 'din-3760-1996', held: 'memory' } }, { name: 'own book', limitMps: 8 }], englishWords, english, plainStyle));
  expect(table.rows[1]?.at(-1)).toMatch(/from memory \(unverified\)$/u);
  expect(table.rows[2]?.at(-1)).toBe('as given here, no source');
  expect(marks[0]?.y).toBeCloseTo(8.168, 3);
  const [, end] = lines[0]?.points ?? [];
  expect((end?.y ?? 0) / (end?.x ?? 1)).toBeCloseTo((marks[0]?.y ?? 0) / (marks[0]?.x ?? 1), 12);
  expect(lipSpeedData(null, 100, [], englishWords, english, plainStyle)).toHaveProperty('why');
});

test('zones: each part is a box, and what was read of it a mark with its doubt', () => {
  const chart = sound(zonesData(25, [{ name: 'H7', lowerUm: 0, upperUm: 21, read: { lowUm: 6, highUm: 11, uncertaintyUm: 5 } }, { name: 'p6', lowerUm: 22, upperUm: 35 }], englishWords, english, plainStyle));
  expect(chart.boxes.map(({ name, y }) => [name, ...y])).toEqual([['H7', 0, 21], ['p6', 22, 35]]);
  expect(chart.marks).toMatchObject([{ y: 8.5, yLow: 1, yHigh: 16 }]);
  expect(zonesData(25, [], englishWords, english, plainStyle)).toHaveProperty('why');
});

test('spread: what lies under the curve is the share that the calculation says', () => {
  const distribution = fitDistribution.run({ nominalMm: 25, hole: { toleranceClass: 'H7', spread: 'uniform' }, shaft: { toleranceClass: 'k6', spread: 'uniform' } });
  const chart = sound(spreadData(distribution, englishWords, plainStyle));
  const [line] = chart.lines;
  const points = line?.points ?? [];
  const step = (points[1]?.x ?? 0) - (points[0]?.x ?? 0);
  expect(points.reduce((sum, { y }) => sum + y * step, 0)).toBeCloseTo(1, 2);
  expect(chart.bands.map(({ name }) => name.replaceAll('\u00a0', ' '))).toEqual(['tight: 40.5 %', 'loose: 59.5 %']);
  expect(spreadData(null, englishWords, plainStyle)).toHaveProperty('why');
});

test('bore over its renewals: readings with their doubt, the limit, and how it goes on', () => {
  const renewal = (date: string, hourMeterHours: number, boreMm: number) => ({ date, hourMeterHours, renewed: 'seal', boreReadings: [{ instrument: 'inside-micrometer-rod', valuesMm: [boreMm] }] });
  const changes = [renewal('2022-05-02', 100, 35.004), renewal('2023-04-20', 200, 35.009), renewal('2024-05-11', 300, 35.012), renewal('2025-04-28', 400, 35.018), renewal('2026-05-06', 500, 35.021)];
  const workshop = { format: 'seatwright', version: 1, machines: [{ name: 'Bilge pump', positions: [{ name: 'drive side', parts: [{ kind: 'seal', ...situation.seal }], changes }] }] };
  const chart = sound(boreRecordData(serviceRecord.run({ workshop }), englishWords, plainStyle));
  expect(chart.marks).toHaveLength(5);
  expect(chart.limits).toHaveLength(1);
  expect(chart.bands.map(({ name }) => name.replaceAll('\u00a0', ' '))).toEqual(['95 % interval']);
  expect(boreRecordData({ changes: [], boreTrend: null }, englishWords, plainStyle)).toHaveProperty('why');
});

test('whatever is given, a chart is sound or says why there is none', () => {
  const number = fc.double({ min: -1e4, max: 1e4, noNaN: true });
  fc.assert(fc.property(number, number, fc.array(fc.record({ name: fc.string(), lowerUm: number, upperUm: number }), { maxLength: 4 }), fc.array(fc.record({ name: fc.constant('a'), limitMps: fc.double({ min: 0.1, max: 100, noNaN: true }) }), { maxLength: 3 }), (a, b, parts, limits) => {
    for (const chart of [lipSpeedData(Math.abs(a) + 1, Math.abs(b), limits, englishWords, english, plainStyle), zonesData(Math.abs(a) + 1, parts, englishWords, english, plainStyle)]) if (!('why' in chart)) sound(chart);
  }));
});

test('an axis is marked at round numbers of the unit that is written', () => {
  const marks = (name: string, from: number, to: number, lengthUnit: 'mm' | 'in') => {
    const axis = { label: '', from, to, ...writtenAs(name, { ...plainStyle, lengthUnit }) };
    return roundNumbers(axis, 4).map((value) => axis.write(value).replace('\u00a0', ' '));
  };
  expect(marks('deviationUm', -30, 160, 'mm')).toEqual(['0 µm', '50 µm', '100 µm', '150 µm']);
  // 160 µm are 6.3 thou.
  expect(marks('deviationUm', -30, 160, 'in')).toEqual(['0 thou', '2 thou', '4 thou', '6 thou']);
  expect(marks('temperatureC', 20, 120, 'in')).toEqual(['100 °F', '150 °F', '200 °F']);
  expect(marks('temperatureC', 20, 120, 'mm')).toEqual(['20 °C', '40 °C', '60 °C', '80 °C', '100 °C', '120 °C']);
});
