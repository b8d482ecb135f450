// Generated from reference/handwork/sheet-metal-screw-threads.csv by reference/generate.mjs: do not edit.
import type { Held } from '../held.js';

/** Threads of sheet-metal screws (source en-iso-1478; held as: page). */
export const sheetMetalScrewThreads: {
  readonly id: string;
  readonly source: string;
  readonly clause: string;
  readonly held: Held;
  readonly rowCount: number;
  readonly columns: {
    readonly designation: readonly string[];
    readonly outsideMm: readonly number[];
    readonly outsideMinMm: readonly number[];
    readonly rootMaxMm: readonly number[];
    readonly rootMinMm: readonly number[];
    readonly pitchMm: readonly number[];
  };
  readonly marks: Readonly<Record<never, readonly Held[]>>;
} = {
  id: 'sheet-metal-screw-threads',
  source: 'en-iso-1478',
  clause: 'thread table',
  held: 'page',
  rowCount: 6,
  columns: {
    designation: ['ST 2.2', 'ST 2.9', 'ST 3.5', 'ST 3.9', 'ST 4.2', 'ST 4.8'],
    outsideMm: [2.24, 2.9, 3.53, 3.91, 4.22, 4.8],
    outsideMinMm: [2.1, 2.76, 3.35, 3.73, 4.04, 4.62],
    rootMaxMm: [1.63, 2.18, 2.64, 2.92, 3.1, 3.58],
    rootMinMm: [1.52, 2.08, 2.51, 2.77, 2.95, 3.43],
    pitchMm: [0.8, 1.1, 1.3, 1.3, 1.4, 1.6],
  },
  marks: {
  },
};
