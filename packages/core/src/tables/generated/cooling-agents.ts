// Generated from reference/joint/cooling-agents.csv by reference/generate.mjs: do not edit.
import type { Held } from '../held.js';

/** How cold a part becomes in what a workshop has (source din-7190-2001; held as: memory). */
export const coolingAgents: {
  readonly id: string;
  readonly source: string;
  readonly clause: string;
  readonly held: Held;
  readonly rowCount: number;
  readonly columns: {
    readonly name: readonly string[];
    readonly lowC: readonly number[];
    readonly rowSource: readonly string[];
    readonly clause: readonly string[];
    readonly held: readonly ('memory' | 'practice')[];
  };
  readonly marks: Readonly<Record<never, readonly Held[]>>;
} = {
  id: 'cooling-agents',
  source: 'din-7190-2001',
  clause: 'cooling agents',
  held: 'memory',
  rowCount: 3,
  columns: {
    name: ['freezer', 'dry-ice', 'liquid-nitrogen'],
    lowC: [-18, -78, -196],
    rowSource: ['common-practice', 'din-7190-2001', 'din-7190-2001'],
    clause: ['', 'cooling agents', 'cooling agents'],
    held: ['practice', 'memory', 'memory'],
  },
  marks: {
  },
};
