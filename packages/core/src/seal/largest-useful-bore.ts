import { CalculationError } from '../result/index.js';
import { boreBandOf } from './bore-band.js';
import { pressFitAllowanceOf } from './press-fit-allowance.js';
import type { RequirementSet } from './requirement-set.js';
import type { Situation } from './situation-field.js';
import { sizesOf } from './sizes-of.js';

/**
 * [mm] The largest bore that keeps the hold the standard lets happen with this seal; null beyond its tables.
 * @example largestUsefulBoreMm({ seal: { shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' } }).toFixed(3) // '35.039'
 */
export function largestUsefulBoreMm(situation: Situation): number | null {
  const { seal, requirementSet = 'iso-6194-1' } = situation;
  try {
    return (sizesOf({ seal, requirementSet }).sealOutside?.leastMm ?? seal.outsideMm) - leastUsefulInterferenceMm(requirementSet, seal.construction, seal.outsideMm);
  } catch (error) {
    if (error instanceof CalculationError && error.code === 'outside-table') return null;
    throw error;
  }
}

/** [mm] Least interference that the standard itself lets happen: least allowance in the largest permitted bore. */
export function leastUsefulInterferenceMm(set: RequirementSet, construction: Situation['seal']['construction'], outsideMm: number): number {
  return pressFitAllowanceOf(set, construction, outsideMm).allowanceMinMm - boreBandOf(set, outsideMm).upperMm;
}
