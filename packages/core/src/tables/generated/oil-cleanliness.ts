// Generated from reference/bearing/oil-cleanliness.csv by reference/generate.mjs: do not edit.
import type { Held } from '../held.js';
import { among } from '../among.js';

/** Contamination factor by cleanliness and mean diameter (source iso-281-2007; held as: memory). */
export const oilCleanliness: {
  readonly id: string;
  readonly source: string;
  readonly clause: string;
  readonly held: Held;
  readonly rowCount: number;
  readonly columns: {
    readonly level: readonly string[];
    readonly fromMm: readonly number[];
    readonly belowMm: readonly (number | null)[];
    readonly lowFactor: readonly number[];
    readonly highFactor: readonly number[];
  };
  readonly marks: Readonly<Record<never, readonly Held[]>>;
} = {
  id: 'oil-cleanliness',
  source: 'iso-281-2007',
  clause: 'table 13',
  held: 'memory',
  rowCount: 14,
  columns: {
    level: among(['extreme cleanliness', 'high cleanliness', 'normal cleanliness', 'slight contamination', 'typical contamination', 'severe contamination', 'very severe contamination'], 'aabbccddeeffgg'),
    fromMm: among([0, 100], 'ababababababab'),
    belowMm: among([100, null], 'ababababababab'),
    lowFactor: [1, 1, 0.6, 0.8, 0.5, 0.6, 0.3, 0.4, 0.1, 0.2, 0, 0, 0, 0],
    highFactor: [1, 1, 0.8, 0.9, 0.6, 0.8, 0.5, 0.6, 0.3, 0.4, 0.1, 0.1, 0, 0],
  },
  marks: {
  },
};
