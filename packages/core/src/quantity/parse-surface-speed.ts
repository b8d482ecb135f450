import { surfaceSpeedKind } from './internal/kind.js';
import { readQuantity } from './internal/read-quantity.js';
import type { Written } from './written.js';

export interface SurfaceSpeed extends Written {
  readonly valueMps: number;
}

/** Reads a surface speed: `8.17 m/s`, `1600 ft/min`.
 * @param written text as people write it, or a number in m/s
 * @returns valueMps [m/s], with what was written; scalar
 * @throws CalculationError invalid-input, pointing at the character and saying what would be understood
 * @example parseSurfaceSpeed('480 ft/min').valueMps.toFixed(4) // '2.4384'
 */
export function parseSurfaceSpeed(written: string | number): SurfaceSpeed {
  const { value, asWritten, unit } = readQuantity(surfaceSpeedKind, written);
  return { valueMps: value, asWritten, unit };
}
