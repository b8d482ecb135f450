// Generated from reference/seal/shaft-tolerance-rma.csv by reference/generate.mjs: do not edit.
import type { Held } from '../held.js';

/** Shaft for a seal, RMA metric (source rma-metric; held as: page). */
export const shaftToleranceRma: {
  readonly id: string;
  readonly source: string;
  readonly clause: string;
  readonly held: Held;
  readonly rowCount: number;
  readonly columns: {
    readonly overMm: readonly number[];
    readonly upToMm: readonly number[];
    readonly toleranceUm: readonly number[];
  };
  readonly marks: Readonly<Record<never, readonly Held[]>>;
} = {
  id: 'shaft-tolerance-rma',
  source: 'rma-metric',
  clause: 'shaft',
  held: 'page',
  rowCount: 4,
  columns: {
    overMm: [0, 100, 150, 250],
    upToMm: [100, 150, 250, 500],
    toleranceUm: [80, 100, 130, 150],
  },
  marks: {
  },
};
