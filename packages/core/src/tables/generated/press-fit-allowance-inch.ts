// Generated from reference/seal/press-fit-allowance-inch.csv by reference/generate.mjs: do not edit.
import type { Held } from '../held.js';
import { runs } from '../runs.js';

/** Allowance of the seal outside over the nominal bore, inch (source rma-os-4; held as: page). */
export const pressFitAllowanceInch: {
  readonly id: string;
  readonly source: string;
  readonly clause: string;
  readonly held: Held;
  readonly rowCount: number;
  readonly columns: {
    readonly construction: readonly ('metal-case' | 'rubber-covered' | 'rubber-covered-ribbed')[];
    readonly overIn: readonly number[];
    readonly upToIn: readonly number[];
    readonly allowanceMinIn: readonly number[];
    readonly allowanceMaxIn: readonly number[];
    readonly outOfRoundMaxIn: readonly (number | null)[];
    readonly held: readonly ('page')[];
  };
  readonly marks: Readonly<Record<never, readonly Held[]>>;
} = {
  id: 'press-fit-allowance-inch',
  source: 'rma-os-4',
  clause: 'press-fit allowance',
  held: 'page',
  rowCount: 18,
  columns: {
    construction: runs([['metal-case', 8], ['rubber-covered', 8], ['rubber-covered-ribbed', 2]]),
    overIn: [0, 1, 2, 3, 4, 6, 8, 10, 0, 1, 2, 3, 4, 6, 8, 10, 0, 1],
    upToIn: [1, 2, 3, 4, 6, 8, 10, 20, 1, 2, 3, 4, 6, 8, 10, 20, 1, 2],
    allowanceMinIn: [0.002, 0.002, 0.002, 0.003, 0.003, 0.004, 0.006, 0.006, 0.003, 0.004, 0.005, 0.006, 0.008, 0.008, 0.01, 0.011, 0.007, 0.008],
    allowanceMaxIn: [0.006, 0.006, 0.006, 0.007, 0.008, 0.009, 0.012, 0.014, 0.009, 0.01, 0.011, 0.014, 0.016, 0.016, 0.018, 0.021, 0.013, 0.016],
    outOfRoundMaxIn: [0.005, 0.006, 0.006, 0.007, 0.009, 0.012, 0.015, null, 0.01, 0.01, 0.014, 0.02, 0.02, 0.025, 0.032, 0.04, 0.01, null],
    held: runs([['page', 18]]),
  },
  marks: {
  },
};
