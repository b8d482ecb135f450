// Generated from reference/measure/squares.csv by reference/generate.mjs: do not edit.
import type { Held } from '../held.js';

/** Steel squares: squareness error of a 50 mm leg (source din-875-1; held as: memory). */
export const squares: {
  readonly id: string;
  readonly source: string;
  readonly clause: string;
  readonly held: Held;
  readonly rowCount: number;
  readonly columns: {
    readonly grade: readonly string[];
    readonly legMm: readonly number[];
    readonly squarenessErrorMm: readonly number[];
  };
  readonly marks: Readonly<Record<never, readonly Held[]>>;
} = {
  id: 'squares',
  source: 'din-875-1',
  clause: 'limits of error',
  held: 'memory',
  rowCount: 3,
  columns: {
    grade: ['0', '1', '2'],
    legMm: [50, 50, 50],
    squarenessErrorMm: [0.006, 0.0125, 0.025],
  },
  marks: {
  },
};
