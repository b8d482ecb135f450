// Generated from reference/seal/lip-temperature.csv by reference/generate.mjs: do not edit.
import type { Held } from '../held.js';
import { among } from '../among.js';
import { runs } from '../runs.js';

/** Temperatures of lip rubbers (source tribology-handbook-b23; held as: page). */
export const lipTemperature: {
  readonly id: string;
  readonly source: string;
  readonly clause: string;
  readonly held: Held;
  readonly rowCount: number;
  readonly columns: {
    readonly material: readonly ('NBR' | 'HNBR' | 'ACM' | 'VMQ' | 'FKM' | 'EPDM' | 'PTFE')[];
    readonly kind: readonly ('working' | 'rubber-limit')[];
    readonly minC: readonly number[];
    readonly maxC: readonly (number | null)[];
    readonly rowSource: readonly string[];
    readonly held: readonly ('page' | 'memory')[];
  };
  readonly marks: Readonly<Record<never, readonly Held[]>>;
} = {
  id: 'lip-temperature',
  source: 'tribology-handbook-b23',
  clause: 'sealing lip materials',
  held: 'page',
  rowCount: 12,
  columns: {
    material: ['NBR', 'NBR', 'HNBR', 'ACM', 'ACM', 'VMQ', 'VMQ', 'FKM', 'FKM', 'EPDM', 'EPDM', 'PTFE'],
    kind: among(['rubber-limit', 'working'], 'abaababababb'),
    minC: [-40, -40, -25, -25, -20, -60, -70, -20, -30, -40, -40, -70],
    maxC: [125, 100, 140, 150, 130, 225, 200, 250, 200, null, 150, 200],
    rowSource: among(['japanese-seal-handbook', 'tribology-handbook-b23', 'general-memory'], 'abaabababacc'),
    held: runs([['page', 10], ['memory', 2]]),
  },
  marks: {
  },
};
