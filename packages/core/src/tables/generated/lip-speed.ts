// Generated from reference/seal/lip-speed.csv by reference/generate.mjs: do not edit.
import type { Held } from '../held.js';
import { among } from '../among.js';
import { runs } from '../runs.js';

/** Speed limits of lips (source tribology-handbook-b23; held as: page). */
export const lipSpeed: {
  readonly id: string;
  readonly source: string;
  readonly clause: string;
  readonly held: Held;
  readonly rowCount: number;
  readonly columns: {
    readonly material: readonly ('any' | 'NBR' | 'HNBR' | 'ACM' | 'VMQ' | 'FKM' | 'EPDM' | 'PTFE')[];
    readonly shaftOverMm: readonly (number | null)[];
    readonly shaftUpToMm: readonly (number | null)[];
    readonly speedMaxMps: readonly (number | null)[];
    readonly speedMaxRpm: readonly (number | null)[];
    readonly rowSource: readonly string[];
    readonly held: readonly ('page' | 'memory')[];
  };
  readonly marks: Readonly<Record<never, readonly Held[]>>;
} = {
  id: 'lip-speed',
  source: 'tribology-handbook-b23',
  clause: 'lip seals',
  held: 'page',
  rowCount: 10,
  columns: {
    material: ['any', 'any', 'NBR', 'FKM', 'NBR', 'HNBR', 'ACM', 'VMQ', 'EPDM', 'PTFE'],
    shaftOverMm: runs([0, null, 75, [null, 7]]),
    shaftUpToMm: runs([35, [null, 9]]),
    speedMaxMps: [null, 15, 15, 38, 14, 20, 20, 38, 15, 30],
    speedMaxRpm: runs([8000, [null, 9]]),
    rowSource: among(['tribology-handbook-b23', 'seal-selection-article-2018', 'seal-trade-pages', 'general-memory'], 'abacdddddd'),
    held: runs([['page', 4], ['memory', 6]]),
  },
  marks: {
  },
};
