// Generated from reference/bearing/iso-15-wide-series.csv by reference/generate.mjs: do not edit.
import type { Held } from '../held.js';
import { runs } from '../runs.js';

/** Boundary dimensions of the wide series 22 and 23 (source iso-15; held as: memory). */
export const iso15WideSeries: {
  readonly id: string;
  readonly source: string;
  readonly clause: string;
  readonly held: Held;
  readonly rowCount: number;
  readonly columns: {
    readonly dimensionSeries: readonly ('22' | '23')[];
    readonly boreCode: readonly string[];
    readonly boreMm: readonly number[];
    readonly outsideMm: readonly number[];
    readonly widthMm: readonly number[];
  };
  readonly marks: Readonly<Record<never, readonly Held[]>>;
} = {
  id: 'iso-15-wide-series',
  source: 'iso-15',
  clause: 'dimension series 22 and 23',
  held: 'memory',
  rowCount: 21,
  columns: {
    dimensionSeries: runs([['22', 11], ['23', 10]]),
    boreCode: ['02', '03', '04', '05', '06', '07', '08', '09', '10', '11', '12', '03', '04', '05', '06', '07', '08', '09', '10', '11', '12'],
    boreMm: [15, 17, 20, 25, 30, 35, 40, 45, 50, 55, 60, 17, 20, 25, 30, 35, 40, 45, 50, 55, 60],
    outsideMm: [35, 40, 47, 52, 62, 72, 80, 85, 90, 100, 110, 47, 52, 62, 72, 80, 90, 100, 110, 120, 130],
    widthMm: [14, 16, 18, 18, 20, 23, 23, 23, 23, 25, 28, 19, 21, 24, 27, 31, 33, 36, 40, 43, 46],
  },
  marks: {
  },
};
