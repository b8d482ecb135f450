// Generated from reference/seal/shaft-lead-in.csv by reference/generate.mjs: do not edit.
import type { Held } from '../held.js';

/** Chamfer at the shaft end: least reduction of the diameter (source jis-b-2402-1-2013; held as: page). */
export const shaftLeadIn: {
  readonly id: string;
  readonly source: string;
  readonly clause: string;
  readonly held: Held;
  readonly rowCount: number;
  readonly columns: {
    readonly overMm: readonly number[];
    readonly upToMm: readonly number[];
    readonly diameterReductionMm: readonly number[];
  };
  readonly marks: Readonly<Record<never, readonly Held[]>>;
} = {
  id: 'shaft-lead-in',
  source: 'jis-b-2402-1-2013',
  clause: 'shaft end',
  held: 'page',
  rowCount: 10,
  columns: {
    overMm: [0, 10, 20, 30, 40, 50, 70, 95, 130, 240],
    upToMm: [10, 20, 30, 40, 50, 70, 95, 130, 240, 480],
    diameterReductionMm: [1.5, 2, 2.5, 3, 3.5, 4, 4.5, 5.5, 7, 11],
  },
  marks: {
  },
};
