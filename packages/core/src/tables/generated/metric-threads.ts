// Generated from reference/handwork/metric-threads.csv by reference/generate.mjs: do not edit.
import type { Held } from '../held.js';

/** Coarse metric threads with their nuts and washers (source iso-898-1; held as: memory). */
export const metricThreads: {
  readonly id: string;
  readonly source: string;
  readonly clause: string;
  readonly held: Held;
  readonly rowCount: number;
  readonly columns: {
    readonly designation: readonly string[];
    readonly majorMm: readonly number[];
    readonly pitchMm: readonly number[];
    readonly stressAreaMm2: readonly number[];
    readonly acrossFlatsMm: readonly number[];
    readonly nutHeightMm: readonly number[];
    readonly washerOutsideMm: readonly number[];
  };
  readonly marks: Readonly<Record<never, readonly Held[]>>;
} = {
  id: 'metric-threads',
  source: 'iso-898-1',
  clause: 'coarse threads: stress area; nuts and washers of the product standards',
  held: 'memory',
  rowCount: 11,
  columns: {
    designation: ['M5', 'M6', 'M8', 'M10', 'M12', 'M14', 'M16', 'M18', 'M20', 'M22', 'M24'],
    majorMm: [5, 6, 8, 10, 12, 14, 16, 18, 20, 22, 24],
    pitchMm: [0.8, 1, 1.25, 1.5, 1.75, 2, 2, 2.5, 2.5, 2.5, 3],
    stressAreaMm2: [14.2, 20.1, 36.6, 58, 84.3, 115, 157, 192, 245, 303, 353],
    acrossFlatsMm: [8, 10, 13, 16, 18, 21, 24, 27, 30, 34, 36],
    nutHeightMm: [4.7, 5.2, 6.8, 8.4, 10.8, 12.8, 14.8, 15.8, 18, 19.4, 21.5],
    washerOutsideMm: [10, 12, 16, 20, 24, 28, 30, 34, 37, 39, 44],
  },
  marks: {
  },
};
