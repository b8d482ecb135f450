// Generated from reference/bearing/bearing-practice.csv by reference/generate.mjs: do not edit.
import type { Held } from '../held.js';

/** Single values that seats and clearances of bearings are judged with (source bearing-handbook-reprints; held as: page). */
export const bearingPractice: {
  readonly id: string;
  readonly title: string;
  readonly source: string;
  readonly clause: string;
  readonly held: Held;
  readonly sha256: string;
  readonly rowCount: number;
  readonly columns: {
    readonly name: readonly string[];
    readonly lowMm: readonly (number | null)[];
    readonly highMm: readonly (number | null)[];
    readonly lowFactor: readonly (number | null)[];
    readonly highFactor: readonly (number | null)[];
    readonly lowCoefficient: readonly (number | null)[];
    readonly highCoefficient: readonly (number | null)[];
    readonly lowK: readonly (number | null)[];
    readonly highK: readonly (number | null)[];
    readonly lowMpa: readonly (number | null)[];
    readonly highMpa: readonly (number | null)[];
    readonly rowSource: readonly string[];
    readonly clause: readonly string[];
    readonly held: readonly ('page' | 'memory')[];
  };
  readonly marks: Readonly<Record<never, readonly Held[]>>;
} = {
  id: 'bearing-practice',
  title: 'Single values that seats and clearances of bearings are judged with',
  source: 'bearing-handbook-reprints',
  clause: '',
  held: 'page',
  sha256: 'b892a0adc0be6888ce492b407389fe5c8d17b8669547fbb0fae0d2708f01e029',
  rowCount: 9,
  columns: {
    name: ['race-of-ball-bearing', 'race-of-roller-bearing', 'smoothing-ground-seat', 'smoothing-turned-seat', 'interference-lost-to-load', 'interference-lost-to-heavy-load', 'inner-ring-hotter', 'ring-stress-usual', 'interference-usual'],
    lowMm: [null, null, 2, 3, null, null, null, null, null],
    highMm: [null, null, null, null, null, null, null, null, null],
    lowFactor: [0.2, 0.25, null, null, 0.08, 0.02, null, null, 0.001],
    highFactor: [null, null, null, null, null, null, null, null, null],
    lowCoefficient: [null, null, null, null, null, null, null, null, null],
    highCoefficient: [null, null, null, null, null, null, null, null, null],
    lowK: [null, null, null, null, null, null, 5, null, null],
    highK: [null, null, null, null, null, null, 10, null, null],
    lowMpa: [null, null, null, null, null, null, null, 127, null],
    highMpa: [null, null, null, null, null, null, null, 130, null],
    rowSource: ['bearing-handbook-reprints', 'bearing-handbook-reprints', 'japanese-bearing-handbook', 'japanese-bearing-handbook', 'bearing-handbook-reprints', 'japanese-bearing-handbook', 'bearing-handbook-reprints', 'bearing-handbook-reprints', 'bearing-handbook-reprints'],
    clause: ['fitting surface pressure: average groove diameters', 'average raceway diameters', '10.3.3', '10.3.3', 'fits and internal clearances, formula 9.1', '10.3.2', 'needle bearings, formula 29', 'largest hoop stress of the ring', 'largest interference'],
    held: ['page', 'memory', 'page', 'page', 'page', 'page', 'page', 'memory', 'memory'],
  },
  marks: {
  },
};
