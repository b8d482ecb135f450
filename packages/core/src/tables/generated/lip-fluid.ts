// Generated from reference/seal/lip-fluid.csv by reference/generate.mjs: do not edit.
import type { Held } from '../held.js';
import { runs } from '../runs.js';

/** Lip rubbers in fluids (source seal-handbook-reprints; held as: page). */
export const lipFluid: {
  readonly id: string;
  readonly title: string;
  readonly source: string;
  readonly clause: string;
  readonly held: Held;
  readonly sha256: string;
  readonly rowCount: number;
  readonly columns: {
    readonly material: readonly ('NBR' | 'HNBR' | 'ACM' | 'VMQ' | 'FKM' | 'EPDM' | 'PTFE')[];
    readonly fluid: readonly ('mineral-oil' | 'engine-oil' | 'gear-oil' | 'hypoid-gear-oil' | 'atf' | 'grease' | 'water' | 'hot-water' | 'petrol-oil-mix' | 'diesel' | 'brake-fluid-glycol' | 'chemical-fluids')[];
    readonly rating: readonly ('good' | 'limited' | 'poor')[];
    readonly maxMediumC: readonly (number | null)[];
    readonly rowSource: readonly string[];
    readonly held: readonly ('page' | 'memory')[];
  };
  readonly marks: Readonly<Record<never, readonly Held[]>>;
} = {
  id: 'lip-fluid',
  title: 'Lip rubbers in fluids',
  source: 'seal-handbook-reprints',
  clause: 'rubber and medium',
  held: 'page',
  sha256: '34a7ef55ce8e488d66a72244412168151cef7d22cef45e75f4e8783a99f92bdc',
  rowCount: 67,
  columns: {
    material: runs([['NBR', 15], ['HNBR', 5], ['ACM', 11], ['VMQ', 12], ['FKM', 14], ['EPDM', 6], ['PTFE', 4]]),
    fluid: ['mineral-oil', 'mineral-oil', 'engine-oil', 'gear-oil', 'hypoid-gear-oil', 'atf', 'grease', 'grease', 'water', 'water', 'petrol-oil-mix', 'diesel', 'brake-fluid-glycol', 'brake-fluid-glycol', 'chemical-fluids', 'mineral-oil', 'atf', 'grease', 'water', 'petrol-oil-mix', 'mineral-oil', 'mineral-oil', 'engine-oil', 'gear-oil', 'hypoid-gear-oil', 'atf', 'water', 'water', 'petrol-oil-mix', 'brake-fluid-glycol', 'chemical-fluids', 'mineral-oil', 'mineral-oil', 'engine-oil', 'gear-oil', 'hypoid-gear-oil', 'atf', 'grease', 'water', 'water', 'petrol-oil-mix', 'brake-fluid-glycol', 'chemical-fluids', 'mineral-oil', 'mineral-oil', 'engine-oil', 'gear-oil', 'hypoid-gear-oil', 'atf', 'atf', 'grease', 'water', 'hot-water', 'petrol-oil-mix', 'brake-fluid-glycol', 'brake-fluid-glycol', 'chemical-fluids', 'mineral-oil', 'atf', 'grease', 'water', 'petrol-oil-mix', 'brake-fluid-glycol', 'mineral-oil', 'water', 'petrol-oil-mix', 'brake-fluid-glycol'],
    rating: ['good', 'good', 'good', 'good', 'good', 'good', 'good', 'good', 'good', 'good', 'limited', 'good', 'poor', 'poor', 'limited', 'good', 'good', 'good', 'good', 'limited', 'good', 'good', 'good', 'good', 'good', 'good', 'poor', 'limited', 'poor', 'poor', 'limited', 'good', 'limited', 'good', 'good', 'poor', 'poor', 'poor', 'poor', 'limited', 'poor', 'limited', 'poor', 'good', 'good', 'good', 'good', 'good', 'good', 'good', 'good', 'good', 'poor', 'good', 'poor', 'poor', 'good', 'poor', 'poor', 'poor', 'good', 'poor', 'good', 'good', 'good', 'good', 'good'],
    maxMediumC: runs([[null, 2], [100, 1], [80, 2], [100, 1], [90, 1], [null, 1], [90, 1], [null, 2], [90, 1], [null, 10], [130, 1], [120, 2], [130, 1], [null, 7], [150, 1], [130, 1], [null, 10], [150, 2], [140, 1], [150, 1], [null, 18]]),
    rowSource: ['japanese-seal-handbook', 'tribology-handbook-b23', 'din-3760-1996', 'din-3760-1996', 'din-3760-1996', 'din-3760-1996', 'din-3760-1996', 'tribology-handbook-b23', 'din-3760-1996', 'japanese-seal-handbook', 'elastomer-resistance-tables', 'din-3760-1996', 'din-3760-1996', 'elastomer-resistance-tables', 'tribology-handbook-b23', 'japanese-seal-handbook', 'elastomer-resistance-tables', 'elastomer-resistance-tables', 'japanese-seal-handbook', 'elastomer-resistance-tables', 'japanese-seal-handbook', 'tribology-handbook-b23', 'din-3760-1996', 'din-3760-1996', 'din-3760-1996', 'din-3760-1996', 'din-3760-1996', 'japanese-seal-handbook', 'elastomer-resistance-tables', 'din-3760-1996', 'tribology-handbook-b23', 'japanese-seal-handbook', 'tribology-handbook-b23', 'din-3760-1996', 'din-3760-1996', 'din-3760-1996', 'din-3760-1996', 'din-3760-1996', 'din-3760-1996', 'japanese-seal-handbook', 'elastomer-resistance-tables', 'elastomer-resistance-tables', 'tribology-handbook-b23', 'japanese-seal-handbook', 'tribology-handbook-b23', 'din-3760-1996', 'din-3760-1996', 'din-3760-1996', 'din-3760-1996', 'elastomer-resistance-tables', 'elastomer-resistance-tables', 'japanese-seal-handbook', 'seal-trade-pages', 'seal-trade-pages', 'din-3760-1996', 'elastomer-resistance-tables', 'tribology-handbook-b23', 'japanese-seal-handbook', 'elastomer-resistance-tables', 'elastomer-resistance-tables', 'japanese-seal-handbook', 'elastomer-resistance-tables', 'elastomer-resistance-tables', 'elastomer-resistance-tables', 'elastomer-resistance-tables', 'elastomer-resistance-tables', 'elastomer-resistance-tables'],
    held: runs([['page', 2], ['memory', 5], ['page', 1], ['memory', 1], ['page', 1], ['memory', 4], ['page', 2], ['memory', 2], ['page', 1], ['memory', 1], ['page', 2], ['memory', 5], ['page', 1], ['memory', 2], ['page', 3], ['memory', 6], ['page', 1], ['memory', 2], ['page', 3], ['memory', 6], ['page', 3], ['memory', 2], ['page', 2], ['memory', 2], ['page', 1], ['memory', 6]]),
  },
  marks: {
  },
};
