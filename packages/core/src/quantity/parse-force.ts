import { forceKind } from './internal/kind.js';
import { readQuantity } from './internal/read-quantity.js';
import type { Written } from './written.js';

export interface Force extends Written {
  readonly valueN: number;
}

/** Reads a force: `800 N`, `1.2 kN`, `200 lbf`.
 * @param written text as people write it, or a number in N
 * @returns valueN [N], with what was written; scalar
 * @throws CalculationError invalid-input, pointing at the character and saying what would be understood
 * @example parseForce('4.5 kN').valueN // 4500
 */
export function parseForce(written: string | number): Force {
  const { value, asWritten, unit } = readQuantity(forceKind, written);
  return { valueN: value, asWritten, unit };
}
