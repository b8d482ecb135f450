// Generated from reference/measure/squares.csv by reference/generate.mjs: do not edit.
import type { Held } from '../held.js';

/** Steel squares: squareness error of a 50 mm leg (source din-875-1; held as: memory). */
export const squares: {
  readonly id: string;
  readonly title: string;
  readonly source: string;
  readonly clause: string;
  readonly held: Held;
  readonly sha256: string;
  readonly rowCount: number;
  readonly columns: {
    readonly grade: readonly string[];
    readonly legMm: readonly number[];
    readonly squarenessErrorMm: readonly number[];
  };
  readonly marks: Readonly<Record<never, readonly Held[]>>;
} = {
  id: 'squares',
  title: 'Steel squares: squareness error of a 50 mm leg',
  source: 'din-875-1',
  clause: 'limits of error',
  held: 'memory',
  sha256: 'c6a2d2346d33335b02f08c5b92c38aba7c648ddca3ab5767ba0f27118821c828',
  rowCount: 3,
  columns: {
    grade: ['0', '1', '2'],
    legMm: [50, 50, 50],
    squarenessErrorMm: [0.006, 0.0125, 0.025],
  },
  marks: {
  },
};
