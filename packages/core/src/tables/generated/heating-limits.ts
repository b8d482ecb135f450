// Generated from reference/joint/heating-limits.csv by reference/generate.mjs: do not edit.
import type { Held } from '../held.js';
import { among } from '../among.js';

/** How hot a part may be made for joining (source din-7190-2001; held as: memory). */
export const heatingLimits: {
  readonly id: string;
  readonly source: string;
  readonly clause: string;
  readonly held: Held;
  readonly rowCount: number;
  readonly columns: {
    readonly part: readonly string[];
    readonly material: readonly string[];
    readonly lowC: readonly number[];
    readonly highC: readonly number[];
    readonly rowSource: readonly string[];
    readonly held: readonly ('memory' | 'page')[];
  };
  readonly marks: Readonly<Record<never, readonly Held[]>>;
} = {
  id: 'heating-limits',
  source: 'din-7190-2001',
  clause: 'joining temperatures',
  held: 'memory',
  rowCount: 7,
  columns: {
    part: ['low-strength steel and cast steel', 'quenched and tempered steel', 'rolling bearing', 'ductile iron', 'aluminium housing', 'magnesium housing', 'part with a rubber seal or grease'],
    material: ['steel-c20', 'steel-c45', 'steel-100cr6', 'gjs500', 'aluminium', 'magnesium', 'sealed'],
    lowC: [350, 300, 120, 350, 120, 120, 80],
    highC: [350, 300, 120, 350, 170, 170, 100],
    rowSource: among(['din-7190-2001', 'bearing-maintenance-guide', 'materials-handbooks'], 'aabaccc'),
    held: among(['memory', 'page'], 'aabaaaa'),
  },
  marks: {
  },
};
