import { normalProbability } from './normal-distribution.js';

/** Limits of a size; at least one is a number. */
export interface SizeLimits {
  readonly lowerLimitMm: number | null;
  readonly upperLimitMm: number | null;
}

/**
 * Probability that a size lies within its limits, knowing nothing of it but the reading.
 *   p = Φ((T_U − y_max)/u) − Φ((T_L − y_min)/u);  a missing limit counts as far away
 * One error, common to all readings, is taken: smallest and largest move together.
 * @param sizes.lowMm, sizes.highMm [mm] smallest and largest local size; the same number for one reading
 * @param standardUncertaintyMm [mm] over 0
 * @returns probability from 0 to 1; scalar
 * @source jcgm-106-2012, clauses 7.3 and 7.4 (held as: memory)
 * @example conformanceProbability({ lowMm: 20, highMm: 20 }, { lowerLimitMm: 19.98, upperLimitMm: 20.02 }, 0.01).toFixed(4) // '0.9545'
 */
export function conformanceProbability(sizes: { readonly lowMm: number; readonly highMm: number }, limits: SizeLimits, standardUncertaintyMm: number): number {
  const { lowerLimitMm, upperLimitMm } = limits;
  const below = lowerLimitMm === null ? null : (sizes.lowMm - lowerLimitMm) / standardUncertaintyMm;
  const above = upperLimitMm === null ? null : (upperLimitMm - sizes.highMm) / standardUncertaintyMm;
  if (below === null) return above === null ? 1 : normalProbability(above);
  if (above === null) return normalProbability(below);
  return Math.max(0, below > 0 && above > 0 ? 1 - normalProbability(-below) - normalProbability(-above) : difference(below, above));
}

/** Φ(above) − Φ(−below), taken in the tail where the digits are. */
function difference(below: number, above: number): number {
  return above <= 0 ? normalProbability(above) - normalProbability(-below) : normalProbability(below) - normalProbability(-above);
}
