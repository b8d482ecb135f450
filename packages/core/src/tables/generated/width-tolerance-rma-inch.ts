// Generated from reference/seal/width-tolerance-rma-inch.csv by reference/generate.mjs: do not edit.
import type { Held } from '../held.js';

/** Width of a seal: permitted deviation, inch (source rma-os-4; held as: page). */
export const widthToleranceRmaInch: {
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
  id: 'width-tolerance-rma-inch',
  source: 'rma-os-4',
  clause: 'width tolerance',
  held: 'page',
  rowCount: 1,
  columns: {
    overIn: [0],
    upToIn: [16],
    toleranceIn: [0.015],
  },
  marks: {
  },
};
