import { hoursKind } from './internal/kind.js';
import { readQuantity } from './internal/read-quantity.js';
import type { Written } from './written.js';

export interface Hours extends Written {
  readonly valueHours: number;
}

/** Reads a time: `100`, `100 h`, `2 days`, `1 h + 30 min`.
 * @param written text as people write it, or a number in h
 * @returns valueHours [h], with what was written; scalar
 * @throws CalculationError invalid-input, pointing at the character and saying what would be understood
 * @example parseHours('5 min').valueHours.toFixed(4) // '0.0833'
 */
export function parseHours(written: string | number): Hours {
  const { value, asWritten, unit } = readQuantity(hoursKind, written);
  return { valueHours: value, asWritten, unit };
}
