import { ringCompliance } from '../../joint/index.js';
import { findMaterial } from '../../material/index.js';
import type { Situation } from '../situation-field.js';

/** How much a housing gives under the seal. */
export interface HousingGive {
  /** Growth of the bore for each MPa, on the diameter. */
  readonly mmPerMpa: number;
  readonly isWallKnown: boolean;
}

/** A wall this many times the bore gives as an endless one within 1 %. */
const endlessShare = 10;

/**
 * Give of the housing bore by Lamé: of the ring around it, or of an endless wall where its outside is not known.
 * Without a material nothing is known, and the bore is taken as stiff.
 * @source timoshenko-strength-2, thick-walled cylinders (held as: memory)
 */
export function housingGive({ bore, seal, materials }: Situation): HousingGive | null {
  if (bore?.material === undefined) return null;
  const { youngsModulusGpa, poissonRatio } = findMaterial(bore.material, materials, 'bore.material');
  const insideMm = seal.outsideMm;
  const isWallKnown = bore.housingOutsideMm !== undefined && bore.housingOutsideMm > insideMm;
  const outsideMm = isWallKnown ? (bore.housingOutsideMm ?? insideMm) : endlessShare * insideMm;
  return { mmPerMpa: ringCompliance({ insideMm, outsideMm, youngsMpa: youngsModulusGpa * 1000, poissonRatio }).insideByInner, isWallKnown };
}
