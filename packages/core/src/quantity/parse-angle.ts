import { angleKind } from './internal/kind.js';
import { readQuantity } from './internal/read-quantity.js';
import type { Written } from './written.js';

export interface Angle extends Written {
  readonly valueDeg: number;
}

/** Reads an angle: `15`, `22,5°`.
 * @param written text as people write it, or a number in °
 * @returns valueDeg [°], with what was written; scalar
 * @throws CalculationError invalid-input, pointing at the character and saying what would be understood
 * @example parseAngle('15°').valueDeg // 15
 */
export function parseAngle(written: string | number): Angle {
  const { value, asWritten, unit } = readQuantity(angleKind, written);
  return { valueDeg: value, asWritten, unit };
}
