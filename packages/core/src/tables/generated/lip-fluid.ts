// Generated from reference/seal/lip-fluid.csv by reference/generate.mjs: do not edit.
import type { Held } from '../held.js';
import { among } from '../among.js';
import { runs } from '../runs.js';

/** Lip rubbers in fluids (source seal-handbook-reprints; held as: page). */
export const lipFluid: {
  readonly id: string;
  readonly source: string;
  readonly clause: string;
  readonly held: Held;
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
  source: 'seal-handbook-reprints',
  clause: 'rubber and medium',
  held: 'page',
  rowCount: 67,
  columns: {
    material: runs([['NBR', 15], ['HNBR', 5], ['ACM', 11], ['VMQ', 12], ['FKM', 14], ['EPDM', 6], ['PTFE', 4]]),
    fluid: among(['mineral-oil', 'engine-oil', 'gear-oil', 'hypoid-gear-oil', 'atf', 'grease', 'water', 'petrol-oil-mix', 'diesel', 'brake-fluid-glycol', 'chemical-fluids', 'hot-water'], 'aabcdeffgghijjkaefghaabcdegghjkaabcdefgghjkaabcdeefglhjjkaefghjaghj'),
    rating: among(['good', 'limited', 'poor'], 'aaaaaaaaaabaccbaaaabaaaaaacbccbabaaccccbcbcaaaaaaaaacaccacccacaaaaa'),
    maxMediumC: among([null, 100, 80, 90, 130, 120, 150, 140], 'aabccbdadaadaaaaaaaaaaeffeaaaaaaageaaaaaaaaaagghgaaaaaaaaaaaaaaaaaa'),
    rowSource: among(['japanese-seal-handbook', 'tribology-handbook-b23', 'din-3760-1996', 'elastomer-resistance-tables', 'seal-trade-pages'], 'abcccccbcadccdbaddadabcccccadcbabccccccaddbabccccddaeecdbaddadddddd'),
    held: among(['page', 'memory'], 'aabbbbbababbbbaabbabaabbbbbabbaaabbbbbbabbaaabbbbbbaaabbaabbabbbbbb'),
  },
  marks: {
  },
};
