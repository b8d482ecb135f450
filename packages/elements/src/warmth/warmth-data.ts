import type { SealCheckOutput } from '@seatwright/core/seal';
import { fill, writeValue, type Catalogue, type WritingStyle } from '@seatwright/core/wording';
import { roomy, writtenAs, type ChartOrWhy } from '../internal/chart/chart-data.js';
import type { ElementWords } from '../words/element-words.js';

type Hold = Pick<SealCheckOutput, 'heldUm' | 'looseFromC' | 'findings'>;

/** What holds a metal case against the temperature of its housing. The hold goes down by a straight line from 20 °C to where it is loose: that is how it is computed. */
export function warmthData(hold: Hold | null, temperatureC: number | null, words: ElementWords, catalogue: Catalogue, style: WritingStyle): ChartOrWhy {
  const { warmth } = words.charts;
  if (hold?.heldUm == null) return { why: warmth.nothing };
  const { heldUm, looseFromC } = hold;
  // No temperature is told as well where rubber holds the seal, or where nobody knows what the housing is made of.
  if (looseFromC === null) return { why: hold.findings.some(({ code }) => code === 'heat-does-not-loosen') ? warmth.never : warmth.nothing };
  const endC = Math.max(looseFromC.latest, temperatureC ?? 0);
  const at = (um: number, looseC: number, c: number) => (looseC === 20 ? um : (um * (looseC - c)) / (looseC - 20));
  const [from, to] = roomy([20, endC], 0.05);
  const temperatures = Array.from({ length: 9 }, (_, i) => 20 + ((endC - 20) * i) / 8);
  const points = temperatures.map((c) => ({ x: c, low: at(heldUm.low, looseFromC.earliest, c), high: at(heldUm.high, looseFromC.latest, c) }));
  const [least, most] = roomy(points.flatMap(({ low, high }) => [low, high, 0]));
  const um = (value: number) => writeValue('holdUm', value, style);
  const c = (value: number) => writeValue('temperatureC', value, style);
  return {
    title: warmth.title,
    spoken: fill(warmth.spoken, { lowUm: heldUm.low, highUm: heldUm.high, earliestC: looseFromC.earliest, latestC: looseFromC.latest }, catalogue, style),
    x: { label: warmth.temperature, from, to, ...writtenAs('temperatureC', style) },
    y: { label: warmth.hold, from: least, to: most, ...writtenAs('holdUm', style) },
    bands: [{ name: warmth.between, pattern: 'first', points }],
    boxes: [],
    lines: [
      { name: warmth.least, pattern: 'second', points: points.map(({ x, low }) => ({ x, y: low })) },
      { name: warmth.most, pattern: 'first', points: points.map(({ x, high }) => ({ x, y: high })) },
    ],
    limits: temperatureC === null ? [] : [{ name: fill(warmth.running, { temperatureC }, catalogue, style), axis: 'x', at: temperatureC }],
    marks: [],
    table: { columns: [warmth.temperature, warmth.least, warmth.most], rows: points.map(({ x, low, high }) => [c(x), um(low), um(high)]) },
  };
}
