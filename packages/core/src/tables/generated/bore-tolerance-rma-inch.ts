// Generated from reference/seal/bore-tolerance-rma-inch.csv by reference/generate.mjs: do not edit.
import type { Held } from '../held.js';

/** Bore for a seal, inch (source rma-os-4; held as: page). */
export const boreToleranceRmaInch: {
  readonly id: string;
  readonly source: string;
  readonly clause: string;
  readonly held: Held;
  readonly rowCount: number;
  readonly columns: {
    readonly overIn: readonly number[];
    readonly upToIn: readonly number[];
    readonly lowerIn: readonly number[];
    readonly upperIn: readonly number[];
  };
  readonly marks: Readonly<Record<never, readonly Held[]>>;
} = {
  id: 'bore-tolerance-rma-inch',
  source: 'rma-os-4',
  clause: 'bore',
  held: 'page',
  rowCount: 6,
  columns: {
    overIn: [0, 3, 6, 10, 20, 40],
    upToIn: [3, 6, 10, 20, 40, 60],
    lowerIn: [-0.001, -0.0015, -0.002, -0.004, -0.006, -0.01],
    upperIn: [0.001, 0.0015, 0.002, 0.002, 0.002, 0.002],
  },
  marks: {
  },
};
