import { standardSizes } from '../../tables/generated/standard-sizes.js';
import type { Seal } from '../seal-field.js';

/** Lists of standard sizes that hold this size, by id. */
export function standardListsOf({ shaftMm, outsideMm, widthMm }: Pick<Seal, 'shaftMm' | 'outsideMm' | 'widthMm'>): readonly string[] {
  const { columns } = standardSizes;
  const lists: string[] = [];
  for (let i = 0; i < standardSizes.rowCount; i += 1) {
    if (columns.shaftMm[i] === shaftMm && columns.outsideMm[i] === outsideMm && columns.widthMm[i] === widthMm) lists.push(columns.list[i] ?? '');
  }
  return lists;
}

/** Shaft sizes of standard seals with the same outside, larger than this one's, smallest first. Held from memory. */
export function largerSealShaftsMm(seal: Pick<Seal, 'shaftMm' | 'outsideMm'>): readonly number[] {
  return shaftsFor(seal.outsideMm).filter((shaftMm) => shaftMm > seal.shaftMm);
}

/** Shaft sizes of standard seals with the same outside, smaller than this one's, largest first. Held from memory. */
export function smallerSealShaftsMm(seal: Pick<Seal, 'shaftMm' | 'outsideMm'>): readonly number[] {
  return shaftsFor(seal.outsideMm).filter((shaftMm) => shaftMm < seal.shaftMm).toReversed();
}

function shaftsFor(outsideMm: number): readonly number[] {
  const { columns } = standardSizes;
  return [...new Set(columns.shaftMm.filter((_, i) => columns.outsideMm[i] === outsideMm))].toSorted((a, b) => a - b);
}
