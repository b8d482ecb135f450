// Generated from reference/handwork/twist-drills.csv by reference/generate.mjs: do not edit.
import type { Held } from '../held.js';
import { runs } from '../runs.js';

/** Twist drills: sizes and point lengths at 118° (source iso-235; held as: page). */
export const twistDrills: {
  readonly id: string;
  readonly source: string;
  readonly clause: string;
  readonly held: Held;
  readonly rowCount: number;
  readonly columns: {
    readonly diameterMm: readonly number[];
    readonly pointLength118Mm: readonly number[];
    readonly toleranceMinusMm: readonly number[];
  };
  readonly marks: Readonly<Record<never, readonly Held[]>>;
} = {
  id: 'twist-drills',
  source: 'iso-235',
  clause: 'sizes',
  held: 'page',
  rowCount: 51,
  columns: {
    diameterMm: [1, 1.05, 1.1, 1.15, 1.2, 1.25, 1.3, 1.35, 1.4, 1.45, 1.5, 1.55, 1.6, 1.65, 1.7, 1.75, 1.8, 1.85, 1.9, 1.95, 2, 2.05, 2.1, 2.15, 2.2, 2.25, 2.3, 2.35, 2.4, 2.45, 2.5, 2.55, 2.6, 2.65, 2.7, 2.75, 2.8, 2.85, 2.9, 2.95, 3, 3.1, 3.2, 3.3, 3.4, 3.5, 3.6, 3.7, 3.8, 3.9, 4],
    pointLength118Mm: [0.3, 0.315, 0.33, 0.345, 0.361, 0.376, 0.391, 0.406, 0.421, 0.436, 0.451, 0.466, 0.481, 0.496, 0.511, 0.526, 0.541, 0.556, 0.571, 0.586, 0.601, 0.616, 0.631, 0.646, 0.661, 0.676, 0.691, 0.706, 0.721, 0.736, 0.751, 0.766, 0.781, 0.796, 0.811, 0.826, 0.841, 0.856, 0.871, 0.886, 0.901, 0.931, 0.961, 0.991, 1.021, 1.052, 1.082, 1.112, 1.142, 1.172, 1.202],
    toleranceMinusMm: runs([[0.014, 41], [0.018, 10]]),
  },
  marks: {
  },
};
