// Generated from reference/seal/lip-fluid.csv by reference/generate.mjs: do not edit.
import type { Held } from '../held.js';

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
    material: ['NBR', 'NBR', 'NBR', 'NBR', 'NBR', 'NBR', 'NBR', 'NBR', 'NBR', 'NBR', 'NBR', 'NBR', 'NBR', 'NBR', 'NBR', 'HNBR', 'HNBR', 'HNBR', 'HNBR', 'HNBR', 'ACM', 'ACM', 'ACM', 'ACM', 'ACM', 'ACM', 'ACM', 'ACM', 'ACM', 'ACM', 'ACM', 'VMQ', 'VMQ', 'VMQ', 'VMQ', 'VMQ', 'VMQ', 'VMQ', 'VMQ', 'VMQ', 'VMQ', 'VMQ', 'VMQ', 'FKM', 'FKM', 'FKM', 'FKM', 'FKM', 'FKM', 'FKM', 'FKM', 'FKM', 'FKM', 'FKM', 'FKM', 'FKM', 'FKM', 'EPDM', 'EPDM', 'EPDM', 'EPDM', 'EPDM', 'EPDM', 'PTFE', 'PTFE', 'PTFE', 'PTFE'],
    fluid: ['mineral-oil', 'mineral-oil', 'engine-oil', 'gear-oil', 'hypoid-gear-oil', 'atf', 'grease', 'grease', 'water', 'water', 'petrol-oil-mix', 'diesel', 'brake-fluid-glycol', 'brake-fluid-glycol', 'chemical-fluids', 'mineral-oil', 'atf', 'grease', 'water', 'petrol-oil-mix', 'mineral-oil', 'mineral-oil', 'engine-oil', 'gear-oil', 'hypoid-gear-oil', 'atf', 'water', 'water', 'petrol-oil-mix', 'brake-fluid-glycol', 'chemical-fluids', 'mineral-oil', 'mineral-oil', 'engine-oil', 'gear-oil', 'hypoid-gear-oil', 'atf', 'grease', 'water', 'water', 'petrol-oil-mix', 'brake-fluid-glycol', 'chemical-fluids', 'mineral-oil', 'mineral-oil', 'engine-oil', 'gear-oil', 'hypoid-gear-oil', 'atf', 'atf', 'grease', 'water', 'hot-water', 'petrol-oil-mix', 'brake-fluid-glycol', 'brake-fluid-glycol', 'chemical-fluids', 'mineral-oil', 'atf', 'grease', 'water', 'petrol-oil-mix', 'brake-fluid-glycol', 'mineral-oil', 'water', 'petrol-oil-mix', 'brake-fluid-glycol'],
    rating: ['good', 'good', 'good', 'good', 'good', 'good', 'good', 'good', 'good', 'good', 'limited', 'good', 'poor', 'poor', 'limited', 'good', 'good', 'good', 'good', 'limited', 'good', 'good', 'good', 'good', 'good', 'good', 'poor', 'limited', 'poor', 'poor', 'limited', 'good', 'limited', 'good', 'good', 'poor', 'poor', 'poor', 'poor', 'limited', 'poor', 'limited', 'poor', 'good', 'good', 'good', 'good', 'good', 'good', 'good', 'good', 'good', 'poor', 'good', 'poor', 'poor', 'good', 'poor', 'poor', 'poor', 'good', 'poor', 'good', 'good', 'good', 'good', 'good'],
    maxMediumC: [null, null, 100, 80, 80, 100, 90, null, 90, null, null, 90, null, null, null, null, null, null, null, null, null, null, 130, 120, 120, 130, null, null, null, null, null, null, null, 150, 130, null, null, null, null, null, null, null, null, null, null, 150, 150, 140, 150, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null],
    rowSource: ['japanese-seal-handbook', 'tribology-handbook-b23', 'din-3760-1996', 'din-3760-1996', 'din-3760-1996', 'din-3760-1996', 'din-3760-1996', 'tribology-handbook-b23', 'din-3760-1996', 'japanese-seal-handbook', 'elastomer-resistance-tables', 'din-3760-1996', 'din-3760-1996', 'elastomer-resistance-tables', 'tribology-handbook-b23', 'japanese-seal-handbook', 'elastomer-resistance-tables', 'elastomer-resistance-tables', 'japanese-seal-handbook', 'elastomer-resistance-tables', 'japanese-seal-handbook', 'tribology-handbook-b23', 'din-3760-1996', 'din-3760-1996', 'din-3760-1996', 'din-3760-1996', 'din-3760-1996', 'japanese-seal-handbook', 'elastomer-resistance-tables', 'din-3760-1996', 'tribology-handbook-b23', 'japanese-seal-handbook', 'tribology-handbook-b23', 'din-3760-1996', 'din-3760-1996', 'din-3760-1996', 'din-3760-1996', 'din-3760-1996', 'din-3760-1996', 'japanese-seal-handbook', 'elastomer-resistance-tables', 'elastomer-resistance-tables', 'tribology-handbook-b23', 'japanese-seal-handbook', 'tribology-handbook-b23', 'din-3760-1996', 'din-3760-1996', 'din-3760-1996', 'din-3760-1996', 'elastomer-resistance-tables', 'elastomer-resistance-tables', 'japanese-seal-handbook', 'seal-trade-pages', 'seal-trade-pages', 'din-3760-1996', 'elastomer-resistance-tables', 'tribology-handbook-b23', 'japanese-seal-handbook', 'elastomer-resistance-tables', 'elastomer-resistance-tables', 'japanese-seal-handbook', 'elastomer-resistance-tables', 'elastomer-resistance-tables', 'elastomer-resistance-tables', 'elastomer-resistance-tables', 'elastomer-resistance-tables', 'elastomer-resistance-tables'],
    held: ['page', 'page', 'memory', 'memory', 'memory', 'memory', 'memory', 'page', 'memory', 'page', 'memory', 'memory', 'memory', 'memory', 'page', 'page', 'memory', 'memory', 'page', 'memory', 'page', 'page', 'memory', 'memory', 'memory', 'memory', 'memory', 'page', 'memory', 'memory', 'page', 'page', 'page', 'memory', 'memory', 'memory', 'memory', 'memory', 'memory', 'page', 'memory', 'memory', 'page', 'page', 'page', 'memory', 'memory', 'memory', 'memory', 'memory', 'memory', 'page', 'page', 'page', 'memory', 'memory', 'page', 'page', 'memory', 'memory', 'page', 'memory', 'memory', 'memory', 'memory', 'memory', 'memory'],
  },
  marks: {
  },
};
