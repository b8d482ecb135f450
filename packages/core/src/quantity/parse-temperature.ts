import { temperatureKind } from './internal/kind.js';
import { readQuantity } from './internal/read-quantity.js';
import type { Written } from './written.js';

export interface Temperature extends Written {
  readonly valueC: number;
}

/** Reads a temperature: `80`, `80 °C`, `180 °F`, `350 K`.
 * @param written text as people write it, or a number in °C
 * @returns valueC [°C], with what was written; scalar
 * @throws CalculationError invalid-input, pointing at the character and saying what would be understood
 * @example parseTemperature('180 °F').valueC.toFixed(2) // '82.22'
 */
export function parseTemperature(written: string | number): Temperature {
  const { value, asWritten, unit } = readQuantity(temperatureKind, written);
  return { valueC: value, asWritten, unit };
}
