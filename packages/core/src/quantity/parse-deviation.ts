import { deviationKind } from './internal/kind.js';
import { readQuantity } from './internal/read-quantity.js';
import type { Written } from './written.js';

export interface Deviation extends Written {
  readonly valueUm: number;
}

/** Reads a deviation: `+35`, `-12 µm`, `0.03 mm`, `1.5 thou`.
 * @param written text as people write it, or a number in µm
 * @returns valueUm [µm], with what was written; scalar
 * @throws CalculationError invalid-input, pointing at the character and saying what would be understood
 * @example parseDeviation('1.5 thou').valueUm // 38.1
 */
export function parseDeviation(written: string | number): Deviation {
  const { value, asWritten, unit } = readQuantity(deviationKind, written);
  return { valueUm: value, asWritten, unit };
}
