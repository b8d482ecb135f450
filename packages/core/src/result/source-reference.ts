/** How a number is held: seen on a published page, computed, remembered, or common practice. Mirrors `tables/held.ts`. */
export type HeldMark = 'page' | 'computed' | 'memory' | 'practice';

/** Where a number comes from: an id of `reference/sources.json`, the clause or table, and how it is held. */
export interface SourceReference {
  readonly id: string;
  readonly clause?: string;
  readonly held: HeldMark;
}

/**
 * Short way to write a source reference.
 * @example source('iso-286-1-2010', 'page', 'Table 1').clause // 'Table 1'
 */
export function source(id: string, held: HeldMark, clause?: string): SourceReference {
  return clause === undefined ? { id, held } : { id, clause, held };
}

/** Common practice without a published source. */
export const commonPractice: SourceReference = { id: 'common-practice', held: 'practice' };

/** Plain geometry, recomputed here. */
export const plainGeometry: SourceReference = { id: 'plain-geometry', held: 'computed' };

/** Plain strength of materials, recomputed here. */
export const plainMechanics: SourceReference = { id: 'plain-mechanics', held: 'computed' };
