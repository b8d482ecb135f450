import type { Row } from './raw-readings.js';

/** Readings laid out as a pad: a line for each angle, a column for each depth; a cell without a text was not measured. */
export interface Pad {
  readonly angles: readonly string[];
  readonly depths: readonly string[];
  /** A line for each angle, in it a cell for each depth. */
  readonly cells: readonly (readonly PadCell[])[];
}

type PadCell = Pick<Row, 'value' | 'raw'>;

const noReading: PadCell = { value: '' };

/** Three angles 60° apart tell an oval from a three-cornered bore: common practice (no source). */
const usualAngles = ['0', '60', '120'] as const;

/** Lays readings out; two at the same angle and depth stand in two lines of that angle. An empty pad proposes angles, and no depth. */
export function padOf(rows: readonly Row[]): Pad {
  const filled = rows.filter(({ value, angle, depth }) => [value, angle, depth].some((text) => text.trim() !== ''));
  if (filled.length === 0) return { angles: usualAngles, depths: [''], cells: usualAngles.map(() => [noReading]) };
  const depths = [...new Set(filled.map(({ depth }) => depth))];
  const lines: { readonly angle: string; readonly cells: (PadCell | undefined)[] }[] = [];
  for (const { value, angle, depth, raw } of filled) {
    const column = depths.indexOf(depth);
    let line = lines.find((known) => known.angle === angle && known.cells[column] === undefined);
    if (line === undefined) {
      line = { angle, cells: depths.map(() => undefined) };
      lines.push(line);
    }
    line.cells[column] = { value, raw };
  }
  return { angles: lines.map(({ angle }) => angle), depths, cells: lines.map(({ cells }) => cells.map((cell) => cell ?? noReading)) };
}

/** The readings of a pad, line by line. */
export function rowsOfPad({ angles, depths, cells }: Pad): readonly Row[] {
  return cells.flatMap((line, i) => line.flatMap(({ value, raw }, j) => (value.trim() === '' ? [] : [{ value, angle: angles[i] ?? '', depth: depths[j] ?? '', raw }])));
}

/** Whether readings were taken in the manner of a pad: several angles at several depths. */
export function isLikePad(rows: readonly Row[]): boolean {
  const differing = (texts: readonly string[]) => texts.every((text) => text !== '') && new Set(texts).size > 1;
  return differing(rows.map(({ angle }) => angle)) && differing(rows.map(({ depth }) => depth));
}

export function withAngle(pad: Pad, i: number, angle: string): Pad {
  return { ...pad, angles: pad.angles.with(i, angle) };
}

export function withDepth(pad: Pad, j: number, depth: string): Pad {
  return { ...pad, depths: pad.depths.with(j, depth) };
}

/** Another text in a cell; a touched number is kept as the text that was typed. */
export function withReading(pad: Pad, i: number, j: number, value: string): Pad {
  return { ...pad, cells: pad.cells.with(i, (pad.cells[i] ?? []).with(j, { value })) };
}

export function withOneMoreAngle(pad: Pad): Pad {
  return { ...pad, angles: [...pad.angles, ''], cells: [...pad.cells, pad.depths.map(() => noReading)] };
}

export function withOneMoreDepth(pad: Pad): Pad {
  return { ...pad, depths: [...pad.depths, ''], cells: pad.cells.map((line) => [...line, noReading]) };
}
