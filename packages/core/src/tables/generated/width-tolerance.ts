// Generated from reference/seal/width-tolerance.csv by reference/generate.mjs: do not edit.
import type { Held } from '../held.js';
import { runs } from '../runs.js';

/** Width of a seal: permitted deviation (source din-3760-1996; held as: page). */
export const widthTolerance: {
  readonly id: string;
  readonly source: string;
  readonly clause: string;
  readonly held: Held;
  readonly rowCount: number;
  readonly columns: {
    readonly set: readonly ('din-3760' | 'iso-6194-1')[];
    readonly overMm: readonly number[];
    readonly upToMm: readonly number[];
    readonly toleranceMm: readonly number[];
    readonly held: readonly ('page')[];
  };
  readonly marks: Readonly<Record<never, readonly Held[]>>;
} = {
  id: 'width-tolerance',
  source: 'din-3760-1996',
  clause: 'width tolerance',
  held: 'page',
  rowCount: 4,
  columns: {
    set: ['din-3760', 'din-3760', 'iso-6194-1', 'iso-6194-1'],
    overMm: [0, 10, 0, 10],
    upToMm: [10, 400, 10, 400],
    toleranceMm: [0.2, 0.3, 0.3, 0.4],
    held: runs([['page', 4]]),
  },
  marks: {
  },
};
