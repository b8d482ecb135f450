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
