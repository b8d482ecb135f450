// Generated from reference/handwork/sockets.csv by reference/generate.mjs: do not edit.
import type { Held } from '../held.js';
import { runs } from '../runs.js';

/** Hand sockets (source iso-2725-1; held as: memory). */
export const sockets: {
  readonly id: string;
  readonly source: string;
  readonly clause: string;
  readonly held: Held;
  readonly rowCount: number;
  readonly columns: {
    readonly drive: readonly string[];
    readonly hexMm: readonly number[];
    readonly outsideNutEndMaxMm: readonly number[];
    readonly lengthMaxMm: readonly (number | null)[];
    readonly acrossCornersMm: readonly number[];
  };
  readonly marks: Readonly<Record<never, readonly Held[]>>;
} = {
  id: 'sockets',
  source: 'iso-2725-1',
  clause: 'maxima',
  held: 'memory',
  rowCount: 45,
  columns: {
    drive: runs([['1/4', 13], ['3/8', 16], ['1/2', 16]]),
    hexMm: [3.2, 4, 5, 5.5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 21, 22, 24, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 21, 22, 24, 27, 30, 32],
    outsideNutEndMaxMm: [5.9, 6.9, 8.2, 8.8, 9.4, 11, 12.2, 13.5, 14.7, 16, 17.2, 18.5, 19.7, 11, 12.2, 13.5, 14.7, 16, 17.2, 18.5, 19.7, 21, 22.2, 23.5, 24.7, 26, 28.5, 29.7, 32.2, 15.5, 16.7, 18, 19.2, 20.5, 21.7, 23, 24.2, 25.5, 26.7, 29.2, 30.5, 33, 36.7, 40.5, 43],
    lengthMaxMm: runs([[25, 13], [32, 8], [null, 8], [40, 9], [null, 7]]),
    acrossCornersMm: [3.7, 4.62, 5.77, 6.35, 6.93, 8.08, 9.24, 10.39, 11.55, 12.7, 13.86, 15.01, 16.17, 8.08, 9.24, 10.39, 11.55, 12.7, 13.86, 15.01, 16.17, 17.32, 18.48, 19.63, 20.78, 21.94, 24.25, 25.4, 27.71, 11.55, 12.7, 13.86, 15.01, 16.17, 17.32, 18.48, 19.63, 20.78, 21.94, 24.25, 25.4, 27.71, 31.18, 34.64, 36.95],
  },
  marks: {
  },
};
