// Generated from reference/bearing/life-reliability.csv by reference/generate.mjs: do not edit.
import type { Held } from '../held.js';

/** Life adjustment factor for reliability, editions 2007 and 1990 (source iso-281-2007; held as: memory). */
export const lifeReliability: {
  readonly id: string;
  readonly source: string;
  readonly clause: string;
  readonly held: Held;
  readonly rowCount: number;
  readonly columns: {
    readonly reliabilityPercent: readonly number[];
    readonly a1Factor: readonly number[];
    readonly a1Edition1990Factor: readonly (number | null)[];
  };
  readonly marks: Readonly<Record<never, readonly Held[]>>;
} = {
  id: 'life-reliability',
  source: 'iso-281-2007',
  clause: 'table 12',
  held: 'memory',
  rowCount: 14,
  columns: {
    reliabilityPercent: [90, 95, 96, 97, 98, 99, 99.2, 99.4, 99.6, 99.8, 99.9, 99.92, 99.94, 99.95],
    a1Factor: [1, 0.64, 0.55, 0.47, 0.37, 0.25, 0.22, 0.19, 0.16, 0.12, 0.093, 0.087, 0.08, 0.077],
    a1Edition1990Factor: [1, 0.62, 0.53, 0.44, 0.33, 0.21, null, null, null, null, null, null, null, null],
  },
  marks: {
  },
};
