// Generated from reference/handwork/handwork-practice.csv by reference/generate.mjs: do not edit.
import type { Held } from '../held.js';
import { among } from '../among.js';
import { runs } from '../runs.js';

/** Single values that plans and drivers are made with (source common-practice; held as: practice). */
export const handworkPractice: {
  readonly id: string;
  readonly source: string;
  readonly clause: string;
  readonly held: Held;
  readonly rowCount: number;
  readonly columns: {
    readonly name: readonly string[];
    readonly lowMm: readonly (number | null)[];
    readonly highMm: readonly (number | null)[];
    readonly lowDeg: readonly (number | null)[];
    readonly highDeg: readonly (number | null)[];
    readonly lowHrc: readonly (number | null)[];
    readonly fromMps: readonly (number | null)[];
    readonly lowK: readonly (number | null)[];
    readonly highK: readonly (number | null)[];
    readonly lowMpa: readonly (number | null)[];
    readonly highMpa: readonly (number | null)[];
    readonly lowCoefficient: readonly (number | null)[];
    readonly highCoefficient: readonly (number | null)[];
    readonly lowFactor: readonly (number | null)[];
    readonly highFactor: readonly (number | null)[];
    readonly lowC: readonly (number | null)[];
    readonly rowSource: readonly string[];
    readonly clause: readonly string[];
    readonly held: readonly ('page' | 'computed' | 'memory' | 'practice')[];
  };
  readonly marks: Readonly<Record<never, readonly Held[]>>;
} = {
  id: 'handwork-practice',
  source: 'common-practice',
  clause: '',
  held: 'practice',
  rowCount: 41,
  columns: {
    name: ['wall-beside-hole', 'drill-reserve', 'longest-drill-share', 'drill-in-chuck', 'chuck-radius', 'short-drill-shows', 'turned-under-seal', 'turned-under-bore', 'turned-over-shaft', 'turned-landing', 'turned-spare-length', 'turned-solid-end', 'turned-handle', 'turned-relief', 'turned-wall', 'turned-face-out-of-square', 'scrapes-shaft-below', 'scrapes-bore-below', 'landing-width', 'drift-clearance', 'drift-wall', 'face-tilt', 'seat-share', 'bore-chamfer-angle-usual', 'pvc-brittle-below', 'driver-length-unknown', 'plastic-ovality', 'socket-below-its-most', 'metal-wall-share', 'plastic-wall-share', 'thread-shear-share', 'shear-ratio', 'sheet-tensile', 'pvc-compressive', 'reserve-plastic', 'reserve-metal', 'thread-friction-oiled', 'thread-friction-dry', 'rod-yield', 'rod-reserve', 'guide-foil'],
    lowMm: among([1, null, 10, 0.4, 0.2, 0.5, 3, 5, 30, 0.1], 'aabcbbdefghcigabejaeabbbbbbbbbbbbbbbbbbbj'),
    highMm: runs([[null, 4], 20, 25, [null, 9], 0.05, [null, 9], 150, 0.5, 1.5, [null, 13]]),
    lowDeg: runs([[null, 23], 10, [null, 17]]),
    highDeg: runs([[null, 23], 30, [null, 17]]),
    lowHrc: runs([[null, 41]]),
    fromMps: runs([[null, 41]]),
    lowK: runs([[null, 41]]),
    highK: runs([[null, 41]]),
    lowMpa: runs([[null, 32], 270, 66, [null, 4], 240, [null, 2]]),
    highMpa: runs([[null, 32], 410, [null, 8]]),
    lowCoefficient: runs([[null, 36], 0.08, 0.16, [null, 3]]),
    highCoefficient: runs([[null, 36], 0.16, 0.24, [null, 3]]),
    lowFactor: among([null, 60, 0.005, 0.85, 0.5, 0.58, 3, 2], 'aabaaaaaaaaaaaaaaaaaacdaaaaaaaefaaghaaaha'),
    highFactor: runs([[null, 21], 0.01, [null, 6], 0.125, 0.1, 0.75, [null, 10]]),
    lowC: runs([[null, 24], 5, [null, 16]]),
    rowSource: among(['common-practice', 'workshop-manuals-1995', 'general-memory', 'din-3760-1996', 'seal-handbook-reprints', 'materials-handbooks', 'asme-b36-10m', 'plain-mechanics', 'en-10130', 'vdi-2230', 'iso-898-1'], 'aaaaaabaaaaaaaaaaaaaacdefaaagaahifaajjkaa'),
    clause: ['', '', '', '', '', '', 'about 0.4 mm under the seal outside', '', '', '', '', '', '', '', '', '', '', '', '', '', '', 'face tilt within 0.5 to 1 % of the outside diameter', 't1 = 0.85 b', 'bore chamfer 10 to 20 or 15 to 30°', 'unmodified PVC turns brittle near 5 °C', '', '', '', 'wall 12.5 % under nominal', '', '', '1/√3', 'DC01', 'PVC property sheets, compressive strength 65.5 to 66.2 MPa', '', '', 'friction classes oiled', 'friction classes dry', 'property class 4.6', '', ''],
    held: among(['practice', 'page', 'memory', 'computed'], 'aaaaaabaaaaaaaaaaaaaacbbbaaabaadcbaacccaa'),
  },
  marks: {
  },
};
