// Generated from reference/seal/lip-pressure.csv by reference/generate.mjs: do not edit.
import type { Held } from '../held.js';
import { runs } from '../runs.js';

/** Pressure limits of lips (source din-3760-1996; held as: page). */
export const lipPressure: {
  readonly id: string;
  readonly source: string;
  readonly clause: string;
  readonly held: Held;
  readonly rowCount: number;
  readonly columns: {
    readonly set: readonly ('din-3760' | 'rma' | 'tribology-handbook' | 'jis' | 'gost')[];
    readonly speedOverMps: readonly (number | null)[];
    readonly speedUpToMps: readonly (number | null)[];
    readonly speedMaxRpm: readonly (number | null)[];
    readonly shaftOverMm: readonly (number | null)[];
    readonly shaftUpToMm: readonly (number | null)[];
    readonly pressureMaxMpa: readonly number[];
    readonly held: readonly ('page' | 'memory')[];
  };
  readonly marks: Readonly<Record<never, readonly Held[]>>;
} = {
  id: 'lip-pressure',
  source: 'din-3760-1996',
  clause: 'pressure table',
  held: 'page',
  rowCount: 10,
  columns: {
    set: ['din-3760', 'din-3760', 'din-3760', 'rma', 'rma', 'rma', 'tribology-handbook', 'tribology-handbook', 'jis', 'gost'],
    speedOverMps: [0, 2.8, 3.15, 0, 5.1, 10.2, null, null, null, 0],
    speedUpToMps: [2.8, 3.15, 5.6, 5.1, 10.2, 40, null, null, null, 20],
    speedMaxRpm: runs([1000, 2000, 3000, [null, 7]]),
    shaftOverMm: [null, null, null, null, null, null, 0, 75, 6, null],
    shaftUpToMm: [null, null, null, null, null, null, 75, 500, 480, null],
    pressureMaxMpa: [0.05, 0.035, 0.02, 0.048, 0.035, 0.021, 0.06, 0.03, 0.03, 0.05],
    held: runs([['memory', 3], ['page', 7]]),
  },
  marks: {
  },
};
