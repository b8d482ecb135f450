// Generated from reference/bearing/ball-load-factors.csv by reference/generate.mjs: do not edit.
import type { Held } from '../held.js';

/** Load factors of single-row deep groove ball bearings, normal clearance (source iso-281-2007; held as: memory). */
export const ballLoadFactors: {
  readonly id: string;
  readonly source: string;
  readonly clause: string;
  readonly held: Held;
  readonly rowCount: number;
  readonly columns: {
    readonly f0FaOverC0Ratio: readonly number[];
    readonly eRatio: readonly number[];
    readonly yFactor: readonly number[];
  };
  readonly marks: Readonly<Record<never, readonly Held[]>>;
} = {
  id: 'ball-load-factors',
  source: 'iso-281-2007',
  clause: 'table 3',
  held: 'memory',
  rowCount: 9,
  columns: {
    f0FaOverC0Ratio: [0.172, 0.345, 0.689, 1.03, 1.38, 2.07, 3.45, 5.17, 6.89],
    eRatio: [0.19, 0.22, 0.26, 0.28, 0.3, 0.34, 0.38, 0.42, 0.44],
    yFactor: [2.3, 1.99, 1.71, 1.55, 1.45, 1.31, 1.15, 1.04, 1],
  },
  marks: {
  },
};
