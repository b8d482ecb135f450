import { asTyped, lengthAsTyped } from '@seatwright/core/quantity';
import { understandLength } from '../../internal/understand-length.js';

/** A set of readings as a workshop file keeps it: numbers in mm, or text as typed. */
export interface RawReadings {
  readonly instrument: string;
  readonly valuesMm?: readonly (number | string)[];
  readonly points?: readonly RawPoint[];
}

interface RawPoint {
  readonly valueMm: number | string;
  readonly angleDeg?: number | string;
  readonly depthMm?: number | string;
}

/** One reading as it is shown: texts, and the value as the file had it while nobody touched it. */
export interface Row {
  readonly value: string;
  readonly angle: string;
  readonly depth: string;
  readonly raw?: number | string | undefined;
}

/** Rows to show for a set of a file. */
export function rowsOf(set: RawReadings | undefined, formUnit: 'mm' | 'in', decimalMark: '.' | ','): readonly Row[] {
  const text = (value: number | string | undefined) => (value === undefined ? '' : asTyped(value, decimalMark));
  const points: readonly RawPoint[] = set?.points ?? (set?.valuesMm ?? []).map((valueMm) => ({ valueMm }));
  return points.map(({ valueMm, angleDeg, depthMm }) => ({ value: lengthAsTyped(valueMm, formUnit, decimalMark), angle: text(angleDeg), depth: text(depthMm), raw: valueMm }));
}

/** The set for the file; undefined when no reading is left. Plain values where no angle and no depth is noted. */
export function setOf(rows: readonly Row[], instrument: string, defaultUnit: 'mm' | 'in'): RawReadings | undefined {
  const filled = rows.filter((row) => row.value.trim() !== '');
  if (filled.length === 0) return undefined;
  const stored = (row: Row) => row.raw ?? storedText(row.value, defaultUnit);
  if (filled.every((row) => row.angle.trim() === '' && row.depth.trim() === '')) return { instrument, valuesMm: filled.map(stored) };
  return {
    instrument,
    points: filled.map((row) => ({
      valueMm: stored(row),
      ...(row.angle.trim() === '' ? {} : { angleDeg: row.angle.trim() }),
      ...(row.depth.trim() === '' ? {} : { depthMm: row.depth.trim() }),
    })),
  };
}

function storedText(text: string, defaultUnit: 'mm' | 'in'): number | string {
  try {
    return understandLength(text, defaultUnit, '.').stored;
  } catch {
    return text;
  }
}
