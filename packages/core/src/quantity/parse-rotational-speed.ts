import { rotationalSpeedKind } from './internal/kind.js';
import { readQuantity } from './internal/read-quantity.js';
import type { Written } from './written.js';

export interface RotationalSpeed extends Written {
  readonly valueRpm: number;
}

/** Reads a rotational speed: `7800`, `1450 1/min`, `50 Hz`. `7,800` and `7.800` are refused: they may mean 7800 or 7.8.
 * @param written text as people write it, or a number in rpm
 * @returns valueRpm [rpm], with what was written; scalar
 * @throws CalculationError invalid-input, pointing at the character and saying what would be understood
 * @example parseRotationalSpeed('7800 rpm').valueRpm // 7800
 */
export function parseRotationalSpeed(written: string | number): RotationalSpeed {
  const { value, asWritten, unit } = readQuantity(rotationalSpeedKind, written);
  return { valueRpm: value, asWritten, unit };
}
