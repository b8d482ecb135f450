// Generated from reference/bearing/bearing-practice.csv by reference/generate.mjs: do not edit.
import type { Held } from '../held.js';
import { among } from '../among.js';
import { runs } from '../runs.js';

/** Single values that seats and clearances of bearings are judged with (source bearing-handbook-reprints; held as: page). */
export const bearingPractice: {
  readonly id: string;
  readonly source: string;
  readonly clause: string;
  readonly held: Held;
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
  source: 'bearing-handbook-reprints',
  clause: '',
  held: 'page',
  rowCount: 23,
  columns: {
    name: ['race-of-ball-bearing', 'race-of-roller-bearing', 'smoothing-ground-seat', 'smoothing-turned-seat', 'interference-lost-to-load', 'interference-lost-to-heavy-load', 'inner-ring-hotter', 'ring-stress-usual', 'interference-usual', 'load-light-up-to', 'load-normal-up-to', 'friction-pressing-ring', 'friction-pulling-ring', 'brinell-load-share', 'axial-over-radial-static', 'retaining-gap-bearing', 'sleeve-wall-bearing', 'heating-limit-bearing', 'dry-ice', 'heating-limit-polymer-cage', 'cold-limit-bearing', 'seals-working-limit', 'ring-stress-refused'],
    lowMm: among([null, 2, 3], 'aabcaaaaaaaaaaaabaaaaaa'),
    highMm: runs([[null, 15], 0.15, 3, [null, 6]]),
    lowFactor: [0.2, 0.25, null, null, 0.08, 0.02, null, null, 0.001, 0.06, 0.13, null, null, 1, 0.5, null, null, null, null, null, null, null, 2],
    highFactor: runs([[null, 23]]),
    lowCoefficient: runs([[null, 11], 0.12, 0.18, [null, 10]]),
    highCoefficient: runs([[null, 23]]),
    lowK: runs([[null, 6], 5, [null, 16]]),
    highK: runs([[null, 6], 10, [null, 16]]),
    lowMpa: runs([[null, 7], 127, [null, 15]]),
    highMpa: runs([[null, 7], 130, [null, 15]]),
    lowC: runs([[null, 17], 120, -78, 93, -54, 100, null]),
    rowSource: among(['bearing-handbook-reprints', 'japanese-bearing-handbook', 'iso-76-2006', 'common-practice', 'bearing-maintenance-guide', 'general-memory', 'tribology-handbook-b23'], 'aabbabaaaaaaaccddefaagd'),
    clause: ['fitting surface pressure: average groove diameters', 'average raceway diameters', '10.3.3', '10.3.3', 'fits and internal clearances, formula 9.1', '10.3.2', 'needle bearings, formula 29', 'largest hoop stress of the ring', 'largest interference', 'light: P ≤ 0.06 C', 'normal: P ≤ 0.13 C', 'press-in and pull-off force', 'press-in and pull-off force', 'largest static load of a ball bearing: 0.0001 of the ball diameter', 'axial load counted as P0 = 0.6 Fr + 0.5 Fa', '', '', 'bearings heating', 'temperature of dry ice', 'temperature guidelines for installation', 'temperature guidelines for installation', 'NBR, working', ''],
    held: among(['page', 'memory', 'practice'], 'abaaaaabbaaaabbccabaaac'),
  },
  marks: {
  },
};
