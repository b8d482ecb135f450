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
    readonly lowC: readonly (number | null)[];
    readonly rowSource: readonly string[];
    readonly clause: readonly string[];
    readonly held: readonly ('page' | 'memory' | 'practice')[];
  };
  readonly marks: Readonly<Record<never, readonly Held[]>>;
} = {
  id: 'bearing-practice',
  title: 'Single values that seats and clearances of bearings are judged with',
  source: 'bearing-handbook-reprints',
  clause: '',
  held: 'page',
  sha256: '54ae77fcab3cdf00857b7a8727bc2470316ff32ba0611d807743e49607e7f799',
  rowCount: 21,
  columns: {
    name: ['race-of-ball-bearing', 'race-of-roller-bearing', 'smoothing-ground-seat', 'smoothing-turned-seat', 'interference-lost-to-load', 'interference-lost-to-heavy-load', 'inner-ring-hotter', 'ring-stress-usual', 'interference-usual', 'load-light-up-to', 'load-normal-up-to', 'friction-pressing-ring', 'friction-pulling-ring', 'brinell-load-share', 'axial-over-radial-static', 'retaining-gap-bearing', 'sleeve-wall-bearing', 'heating-limit-bearing', 'dry-ice', 'heating-limit-polymer-cage', 'cold-limit-bearing'],
    lowMm: [null, null, 2, 3, null, null, null, null, null, null, null, null, null, null, null, null, 2, null, null, null, null],
    highMm: [null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, 0.15, 3, null, null, null, null],
    lowFactor: [0.2, 0.25, null, null, 0.08, 0.02, null, null, 0.001, 0.06, 0.13, null, null, 1, 0.5, null, null, null, null, null, null],
    highFactor: [null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null],
    lowCoefficient: [null, null, null, null, null, null, null, null, null, null, null, 0.12, 0.18, null, null, null, null, null, null, null, null],
    highCoefficient: [null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null],
    lowK: [null, null, null, null, null, null, 5, null, null, null, null, null, null, null, null, null, null, null, null, null, null],
    highK: [null, null, null, null, null, null, 10, null, null, null, null, null, null, null, null, null, null, null, null, null, null],
    lowMpa: [null, null, null, null, null, null, null, 127, null, null, null, null, null, null, null, null, null, null, null, null, null],
    highMpa: [null, null, null, null, null, null, null, 130, null, null, null, null, null, null, null, null, null, null, null, null, null],
    lowC: [null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, 120, -78, 93, -54],
    rowSource: ['bearing-handbook-reprints', 'bearing-handbook-reprints', 'japanese-bearing-handbook', 'japanese-bearing-handbook', 'bearing-handbook-reprints', 'japanese-bearing-handbook', 'bearing-handbook-reprints', 'bearing-handbook-reprints', 'bearing-handbook-reprints', 'bearing-handbook-reprints', 'bearing-handbook-reprints', 'bearing-handbook-reprints', 'bearing-handbook-reprints', 'iso-76-2006', 'iso-76-2006', 'common-practice', 'common-practice', 'bearing-maintenance-guide', 'general-memory', 'bearing-handbook-reprints', 'bearing-handbook-reprints'],
    clause: ['fitting surface pressure: average groove diameters', 'average raceway diameters', '10.3.3', '10.3.3', 'fits and internal clearances, formula 9.1', '10.3.2', 'needle bearings, formula 29', 'largest hoop stress of the ring', 'largest interference', 'light: P ≤ 0.06 C', 'normal: P ≤ 0.13 C', 'press-in and pull-off force', 'press-in and pull-off force', 'largest static load of a ball bearing: 0.0001 of the ball diameter', 'axial load counted as P0 = 0.6 Fr + 0.5 Fa', '', '', 'bearings heating', 'temperature of dry ice', 'temperature guidelines for installation', 'temperature guidelines for installation'],
    held: ['page', 'memory', 'page', 'page', 'page', 'page', 'page', 'memory', 'memory', 'page', 'page', 'page', 'page', 'memory', 'memory', 'practice', 'practice', 'page', 'memory', 'page', 'page'],
  },
  marks: {
  },
};
