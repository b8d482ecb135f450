import { temperatureDifferenceKind } from './internal/kind.js';
import { readQuantity } from './internal/read-quantity.js';
import type { Written } from './written.js';

export interface TemperatureDifference extends Written {
  readonly valueK: number;
}

/** Reads a temperature difference: `50 K`, `90 °F`.
 * @param written text as people write it, or a number in K
 * @returns valueK [K], with what was written; scalar
 * @throws CalculationError invalid-input, pointing at the character and saying what would be understood
 * @example parseTemperatureDifference('90 °F').valueK // 50
 */
export function parseTemperatureDifference(written: string | number): TemperatureDifference {
  const { value, asWritten, unit } = readQuantity(temperatureDifferenceKind, written);
  return { valueK: value, asWritten, unit };
}
