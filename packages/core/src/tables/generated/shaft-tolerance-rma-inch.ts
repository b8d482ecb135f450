// Generated from reference/seal/shaft-tolerance-rma-inch.csv by reference/generate.mjs: do not edit.
import type { Held } from '../held.js';

/** Shaft for a seal, RMA inch (source rma-os-4; held as: page). */
export const shaftToleranceRmaInch: {
  readonly id: string;
  readonly source: string;
  readonly clause: string;
  readonly held: Held;
  readonly rowCount: number;
  readonly columns: {
    readonly overIn: readonly number[];
    readonly upToIn: readonly number[];
    readonly toleranceIn: readonly number[];
  };
  readonly marks: Readonly<Record<never, readonly Held[]>>;
} = {
  id: 'shaft-tolerance-rma-inch',
  source: 'rma-os-4',
  clause: 'shaft',
  held: 'page',
  rowCount: 4,
  columns: {
    overIn: [0, 4, 6, 10],
    upToIn: [4, 6, 10, 20],
    toleranceIn: [0.003, 0.004, 0.005, 0.006],
  },
  marks: {
  },
};
