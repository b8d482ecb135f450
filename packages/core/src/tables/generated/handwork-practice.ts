// Generated from reference/handwork/handwork-practice.csv by reference/generate.mjs: do not edit.
import type { Held } from '../held.js';
import { runs } from '../runs.js';

/** Single values that plans and drivers are made with (source common-practice; held as: practice). */
export const handworkPractice: {
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
  title: 'Single values that plans and drivers are made with',
  source: 'common-practice',
  clause: '',
  held: 'practice',
  sha256: '005d4fa671d6225271dd4460a933d42d532715b20007ea7e1b1a431a69a0eedf',
  rowCount: 40,
  columns: {
    name: ['wall-beside-hole', 'drill-reserve', 'drill-in-chuck', 'chuck-radius', 'short-drill-shows', 'turned-under-seal', 'turned-under-bore', 'turned-over-shaft', 'turned-landing', 'turned-spare-length', 'turned-solid-end', 'turned-handle', 'turned-relief', 'turned-wall', 'turned-face-out-of-square', 'scrapes-shaft-below', 'scrapes-bore-below', 'landing-width', 'drift-clearance', 'drift-wall', 'face-tilt', 'seat-share', 'bore-chamfer-angle-usual', 'pvc-brittle-below', 'driver-length-unknown', 'plastic-ovality', 'socket-below-its-most', 'metal-wall-share', 'plastic-wall-share', 'thread-shear-share', 'shear-ratio', 'sheet-tensile', 'pvc-compressive', 'reserve-plastic', 'reserve-metal', 'thread-friction-oiled', 'thread-friction-dry', 'rod-yield', 'rod-reserve', 'guide-foil'],
    lowMm: [1, 1, 10, null, null, 0.4, 0.2, 0.5, 3, 5, 10, 30, 3, 1, null, 0.2, 0.1, 1, 0.2, 1, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, 0.1],
    highMm: runs([[null, 3], [20, 1], [25, 1], [null, 9], [0.05, 1], [null, 9], [150, 1], [0.5, 1], [1.5, 1], [null, 13]]),
    lowDeg: runs([[null, 22], [10, 1], [null, 17]]),
    highDeg: runs([[null, 22], [30, 1], [null, 17]]),
    lowHrc: runs([[null, 40]]),
    fromMps: runs([[null, 40]]),
    lowK: runs([[null, 40]]),
    highK: runs([[null, 40]]),
    lowMpa: runs([[null, 31], [270, 1], [66, 1], [null, 4], [240, 1], [null, 2]]),
    highMpa: runs([[null, 31], [410, 1], [null, 8]]),
    lowCoefficient: runs([[null, 35], [0.08, 1], [0.16, 1], [null, 3]]),
    highCoefficient: runs([[null, 35], [0.16, 1], [0.24, 1], [null, 3]]),
    lowFactor: runs([[null, 20], [0.005, 1], [0.85, 1], [null, 7], [0.5, 1], [0.58, 1], [null, 2], [3, 1], [2, 1], [null, 3], [2, 1], [null, 1]]),
    highFactor: runs([[null, 20], [0.01, 1], [null, 6], [0.125, 1], [0.1, 1], [0.75, 1], [null, 10]]),
    lowC: runs([[null, 23], [5, 1], [null, 16]]),
    rowSource: runs([['common-practice', 5], ['workshop-manuals-1995', 1], ['common-practice', 14], ['general-memory', 1], ['din-3760-1996', 1], ['seal-handbook-reprints', 1], ['materials-handbooks', 1], ['common-practice', 3], ['asme-b36-10m', 1], ['common-practice', 2], ['plain-mechanics', 1], ['en-10130', 1], ['materials-handbooks', 1], ['common-practice', 2], ['vdi-2230', 2], ['iso-898-1', 1], ['common-practice', 2]]),
    clause: ['', '', '', '', '', 'about 0.4 mm under the seal outside', '', '', '', '', '', '', '', '', '', '', '', '', '', '', 'face tilt within 0.5 to 1 % of the outside diameter', 't1 = 0.85 b', 'bore chamfer 10 to 20 or 15 to 30°', 'unmodified PVC turns brittle near 5 °C', '', '', '', 'wall 12.5 % under nominal', '', '', '1/√3', 'DC01', 'PVC property sheets, compressive strength 65.5 to 66.2 MPa', '', '', 'friction classes oiled', 'friction classes dry', 'property class 4.6', '', ''],
    held: runs([['practice', 5], ['page', 1], ['practice', 14], ['memory', 1], ['page', 3], ['practice', 3], ['page', 1], ['practice', 2], ['computed', 1], ['memory', 1], ['page', 1], ['practice', 2], ['memory', 3], ['practice', 2]]),
  },
  marks: {
  },
};
