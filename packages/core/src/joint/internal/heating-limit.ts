import type { Material } from '../../material/index.js';
import { source, type SourceReference } from '../../result/index.js';
import { heatingLimits as table } from '../../tables/generated/heating-limits.js';
import { markAt } from '../../tables/table.js';

/** How hot a part may be made: the careful end and the far end. */
export interface HeatingLimit {
  readonly lowC: number;
  readonly highC: number;
  readonly source: SourceReference;
}

/** The limit of a material by its id, else by its family; null where none is at hand. */
export function heatingLimitOf({ id, family }: Pick<Material, 'id' | 'family'>): HeatingLimit | null {
  const byId = table.columns.material.indexOf(id);
  const i = byId >= 0 ? byId : table.columns.material.indexOf(family);
  const lowC = table.columns.lowC[i];
  const highC = table.columns.highC[i];
  if (lowC === undefined || highC === undefined) return null;
  return { lowC, highC, source: source(table.columns.rowSource[i] ?? table.source, markAt(table, 'lowC', i), table.columns.part[i] ?? '') };
}
