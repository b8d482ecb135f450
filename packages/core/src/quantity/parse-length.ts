import { lengthKind } from './internal/kind.js';
import { readQuantity } from './internal/read-quantity.js';
import { snapMm } from './snap.js';
import type { Written } from './written.js';

export interface Length extends Written {
  readonly valueMm: number;
}

export interface LengthOptions {
  /** Unit of a number without one. Default `mm`. */
  readonly defaultUnit?: 'mm' | 'in' | 'µm' | 'thou';
}

/** Reads a length: `19.05`, `19,05 mm`, `3/4 in`, `1 3/8"`, `1' 2 1/2"`, `10 µm`, `2 thou`, `25 + 0.03`, `ø20`.
 * Comma and point alike are decimal marks (`19,050` is 19.05). Inches count exactly 25.4 mm; the value is rounded once, to 1e-6 mm.
 * A term without a unit takes the next unit to its right, else the last to its left, else the default: `1 + 1/2 in` is 1.5 in.
 * A fraction is not taken for millimetres unless it says so: `1 1/8` alone is refused where the default is mm.
 * A size before an allowance in µm or thou is in the default unit: `25 + 10 µm` is 25.01 mm.
 * @returns valueMm [mm], with what was written; scalar
 * @throws CalculationError invalid-input, pointing at the character and saying what would be understood
 * @example parseLength('3/4 in').valueMm // 19.05
 */
export function parseLength(written: string | number, { defaultUnit = 'mm' }: LengthOptions = {}): Length {
  const { value, asWritten, unit } = readQuantity(lengthKind, written, defaultUnit);
  return { valueMm: snapMm(value), asWritten, unit };
}
