import { pressureKind } from './internal/kind.js';
import { readQuantity } from './internal/read-quantity.js';
import type { Written } from './written.js';

export interface Pressure extends Written {
  readonly valueMpa: number;
}

/** Reads a pressure above the surroundings: `0.05 MPa`, `0.5 bar`, `7 psi`, `-0.3 bar`.
 * @param written text as people write it, or a number in MPa
 * @returns valueMpa [MPa], with what was written; scalar
 * @throws CalculationError invalid-input, pointing at the character and saying what would be understood
 * @example parsePressure('0.3 bar').valueMpa // 0.03
 */
export function parsePressure(written: string | number): Pressure {
  const { value, asWritten, unit } = readQuantity(pressureKind, written);
  return { valueMpa: value, asWritten, unit };
}
