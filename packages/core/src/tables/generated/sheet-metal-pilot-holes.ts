// Generated from reference/handwork/sheet-metal-pilot-holes.csv by reference/generate.mjs: do not edit.
import type { Held } from '../held.js';
import { runs } from '../runs.js';

/** Pilot holes of sheet-metal screws (source din-7975; held as: page). */
export const sheetMetalPilotHoles: {
  readonly id: string;
  readonly title: string;
  readonly source: string;
  readonly clause: string;
  readonly held: Held;
  readonly sha256: string;
  readonly rowCount: number;
  readonly columns: {
    readonly designation: readonly string[];
    readonly set: readonly ('din-7975' | 'hole-group-1b')[];
    readonly sheetOverMm: readonly number[];
    readonly sheetUpToMm: readonly number[];
    readonly pilotMm: readonly number[];
    readonly held: readonly ('page')[];
  };
  readonly marks: Readonly<Record<never, readonly Held[]>>;
} = {
  id: 'sheet-metal-pilot-holes',
  title: 'Pilot holes of sheet-metal screws',
  source: 'din-7975',
  clause: 'pilot holes',
  held: 'page',
  sha256: '98fcd2096decae65aa736d4e7fc13758039764474f3b782eaa738ae1116f0d18',
  rowCount: 69,
  columns: {
    designation: runs([['ST 2.2', 6], ['ST 2.9', 8], ['ST 3.5', 7], ['ST 4.2', 5], ['ST 4.8', 5], ['ST 2.2', 8], ['ST 2.9', 10], ['ST 3.5', 8], ['ST 4.2', 7], ['ST 4.8', 5]]),
    set: runs([['hole-group-1b', 31], ['din-7975', 38]]),
    sheetOverMm: [0, 0.56, 0.75, 0.88, 1.13, 1.38, 0, 0.56, 0.63, 0.75, 0.88, 1.25, 1.38, 1.75, 0, 0.56, 0.75, 0.88, 1.25, 1.38, 1.75, 0.5, 0.63, 0.88, 1.13, 1.38, 0.5, 0.75, 1.13, 1.38, 1.75, 0.8, 0.9, 1, 1.1, 1.2, 1.3, 1.4, 1.5, 1.1, 1.2, 1.3, 1.4, 1.5, 1.6, 1.7, 1.8, 1.9, 2, 1.3, 1.4, 1.5, 1.6, 1.7, 1.8, 1.9, 2, 1.4, 1.5, 1.6, 1.7, 1.8, 1.9, 2, 1.6, 1.7, 1.8, 1.9, 2],
    sheetUpToMm: [0.56, 0.75, 0.88, 1.13, 1.38, 1.5, 0.56, 0.63, 0.75, 0.88, 1.25, 1.38, 1.75, 2.5, 0.56, 0.75, 0.88, 1.25, 1.38, 1.75, 2.5, 0.63, 0.88, 1.13, 1.38, 2.5, 0.75, 1.13, 1.38, 1.75, 2.5, 0.8, 0.9, 1, 1.1, 1.2, 1.3, 1.4, 1.5, 1.1, 1.2, 1.3, 1.4, 1.5, 1.6, 1.7, 1.8, 1.9, 2, 1.3, 1.4, 1.5, 1.6, 1.7, 1.8, 1.9, 2, 1.4, 1.5, 1.6, 1.7, 1.8, 1.9, 2, 1.6, 1.7, 1.8, 1.9, 2],
    pilotMm: [1.6, 1.7, 1.8, 1.8, 1.9, 1.9, 2.2, 2.3, 2.3, 2.4, 2.4, 2.4, 2.5, 2.6, 2.6, 2.7, 2.7, 2.8, 2.8, 2.9, 3, 3.2, 3.2, 3.2, 3.3, 3.5, 3.7, 3.7, 3.9, 3.9, 4, 1.7, 1.7, 1.7, 1.7, 1.7, 1.7, 1.8, 1.8, 2.2, 2.2, 2.2, 2.2, 2.3, 2.3, 2.3, 2.4, 2.4, 2.4, 2.6, 2.7, 2.7, 2.7, 2.7, 2.8, 2.8, 2.9, 3.1, 3.2, 3.2, 3.2, 3.3, 3.3, 3.4, 3.6, 3.7, 3.8, 3.8, 3.9],
    held: runs([['page', 69]]),
  },
  marks: {
  },
};
