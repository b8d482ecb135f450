import { fill, writeValue, type Catalogue, type WritingStyle } from '@seatwright/core/wording';
import { roomy, writtenAs, type ChartOrWhy } from '../internal/chart/chart-data.js';
import type { ElementWords } from '../words/element-words.js';

/** One part of a fit: between which deviations from the nominal size it may lie, and what was read of it. */
export interface ZonePart {
  readonly name: string;
  readonly lowerUm: number;
  readonly upperUm: number;
  /** Smallest and largest reading, as deviations, and the doubt of them. */
  readonly read?: { readonly lowUm: number; readonly highUm: number; readonly uncertaintyUm: number };
}

/** The tolerance zones of two parts or more above and below their nominal size; readings stand as a mark with their doubt. */
export function zonesData(nominalMm: number | null, parts: readonly ZonePart[], words: ElementWords, catalogue: Catalogue, style: WritingStyle): ChartOrWhy {
  const { zones } = words.charts;
  if (nominalMm === null || parts.length === 0) return { why: zones.nothing };
  const um = (value: number) => writeValue('deviationUm', value, style);
  const [from, to] = roomy(parts.flatMap(({ lowerUm, upperUm, read }) => [lowerUm, upperUm, 0, ...(read === undefined ? [] : [read.lowUm - read.uncertaintyUm, read.highUm + read.uncertaintyUm])]));
  const wide = 1 / parts.length;
  const place = (i: number) => [wide * (i + 0.18), wide * (i + 0.62)] as const;
  return {
    title: fill(zones.title, { nominalMm }, catalogue, style),
    spoken: parts.map(({ name, lowerUm, upperUm, read }) => `${name}: ${um(lowerUm)} ${words.section.upTo} ${um(upperUm)}${read === undefined ? '' : `, ${zones.read} ${um(read.lowUm)} ${words.section.upTo} ${um(read.highUm)}`}`).join('; '),
    x: null,
    y: { label: zones.deviation, from, to, ...writtenAs('deviationUm', style) },
    bands: [],
    boxes: parts.map(({ name, lowerUm, upperUm }, i) => ({ name, pattern: i % 2 === 0 ? ('first' as const) : ('second' as const), x: place(i), y: [lowerUm, upperUm] as const })),
    lines: [],
    limits: [],
    marks: parts.flatMap(({ read }, i) => (read === undefined ? [] : [{ name: zones.read, x: wide * (i + 0.78), y: (read.lowUm + read.highUm) / 2, yLow: read.lowUm - read.uncertaintyUm, yHigh: read.highUm + read.uncertaintyUm }])),
    table: {
      columns: [zones.part, zones.lower, zones.upper, zones.read, zones.doubt],
      rows: parts.map(({ name, lowerUm, upperUm, read }) => [name, um(lowerUm), um(upperUm), read === undefined ? '' : `${um(read.lowUm)} ${words.section.upTo} ${um(read.highUm)}`, read === undefined ? '' : `±\u00a0${um(read.uncertaintyUm)}`]),
    },
  };
}
