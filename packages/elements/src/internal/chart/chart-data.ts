import { valueInStyle, writeValue, type WritingStyle } from '@seatwright/core/wording';

/** One axis: what it measures, in which range, and how its numbers are written. */
export interface ChartAxis {
  readonly label: string;
  readonly from: number;
  readonly to: number;
  readonly write: (value: number) => string;
  /** The number as it is written, where that is another unit: a straight line of the value, on which the round numbers are looked for. */
  readonly shown?: (value: number) => number;
}

/** How the numbers of one quantity are written on an axis, in the unit of the style. */
export function writtenAs(name: string, style: WritingStyle): Pick<ChartAxis, 'write' | 'shown'> {
  return { write: (value) => writeValue(name, value, style), shown: (value) => valueInStyle(name, value, style).value };
}

type Pattern = 'first' | 'second' | 'third';

/** What a chart shows, as plain data: the drawing, its key and its table are all made from it. */
export interface ChartData {
  readonly title: string;
  /** The chart in words, for those who do not see it. */
  readonly spoken: string;
  /** Null where a number on it says nothing, as for parts that stand side by side. */
  readonly x: ChartAxis | null;
  readonly y: ChartAxis;
  /** Everything between two lines. */
  readonly bands: readonly { readonly name: string; readonly pattern: Pattern; readonly points: readonly { readonly x: number; readonly low: number; readonly high: number }[] }[];
  readonly boxes: readonly { readonly name: string; readonly pattern: Pattern; readonly x: readonly [from: number, to: number]; readonly y: readonly [from: number, to: number] }[];
  readonly lines: readonly { readonly name: string; readonly pattern: Pattern; readonly points: readonly { readonly x: number; readonly y: number }[] }[];
  /** Limits: straight across, along an axis. */
  readonly limits: readonly { readonly name: string; readonly axis: 'x' | 'y'; readonly at: number }[];
  /** Measured or given points, with the doubt of each where there is one. */
  readonly marks: readonly { readonly name: string; readonly x: number; readonly y: number; readonly yLow?: number; readonly yHigh?: number }[];
  readonly table: { readonly columns: readonly string[]; readonly rows: readonly (readonly string[])[] };
}

/** A chart of nothing says why in words. */
export type ChartOrWhy = ChartData | { readonly why: string };

/** A range with some air around its values; never empty. */
export function roomy(values: readonly number[], air = 0.08): readonly [from: number, to: number] {
  const finite = values.filter((value) => Number.isFinite(value));
  if (finite.length === 0) return [0, 1];
  const from = Math.min(...finite);
  const to = Math.max(...finite);
  const room = (to - from) * air || Math.abs(to) * air || 1;
  return [from - room, to + room];
}
