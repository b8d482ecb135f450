// Generated from reference/measure/instruments.csv by reference/generate.mjs: do not edit.
import type { Held } from '../held.js';
import { runs } from '../runs.js';

/** Measuring instruments: step and permissible error (source din-862; held as: page). */
export const instruments: {
  readonly id: string;
  readonly title: string;
  readonly source: string;
  readonly clause: string;
  readonly held: Held;
  readonly sha256: string;
  readonly rowCount: number;
  readonly columns: {
    readonly instrument: readonly string[];
    readonly name: readonly string[];
    readonly measures: readonly ('outside' | 'inside' | 'depth' | 'indicator')[];
    readonly overMm: readonly number[];
    readonly upToMm: readonly number[];
    readonly resolutionMm: readonly number[];
    readonly permissibleErrorMm: readonly number[];
    readonly costRank: readonly number[];
    readonly rowSource: readonly string[];
  };
  readonly marks: {
    readonly permissibleErrorMm?: readonly Held[];
    readonly costRank?: readonly Held[];
  };
} = {
  id: 'instruments',
  title: 'Measuring instruments: step and permissible error',
  source: 'din-862',
  clause: 'limits of error',
  held: 'page',
  sha256: 'add8e69008c02e2583e10b8b6e941048b1880264cb7f461d0ed0d1928ed7a299',
  rowCount: 38,
  columns: {
    instrument: runs([['vernier-calliper-outside-005', 2], ['vernier-calliper-inside-005', 2], ['vernier-calliper-depth-005', 2], ['vernier-calliper-outside-002', 2], ['vernier-calliper-inside-002', 2], ['vernier-calliper-depth-002', 2], ['digital-calliper-outside', 2], ['digital-calliper-inside', 2], ['digital-calliper-depth', 2], ['digital-depth-gauge', 2], ['outside-micrometer', 5], ['inside-micrometer-rod', 2], ['inside-micrometer-rod-300', 1], ['inside-micrometer-tubular', 2], ['inside-micrometer-tubular-interchangeable', 1], ['dial-indicator-001', 4], ['dial-indicator-0001', 3]]),
    name: runs([['Vernier calliper 0.05 mm, outside', 2], ['Vernier calliper 0.05 mm, inside', 2], ['Vernier calliper 0.05 mm, depth', 2], ['Vernier calliper 0.02 mm, outside', 2], ['Vernier calliper 0.02 mm, inside', 2], ['Vernier calliper 0.02 mm, depth', 2], ['Digital calliper, outside', 2], ['Digital calliper, inside', 2], ['Digital calliper, depth', 2], ['Digital depth gauge', 2], ['Outside micrometer', 5], ['Inside micrometer, rod and sleeve', 2], ['Inside micrometer, rod and sleeve, set to 300 mm', 1], ['Inside micrometer, tubular', 2], ['Inside micrometer, tubular, interchangeable head', 1], ['Dial indicator 0.01 mm', 4], ['Dial indicator 0.001 mm', 3]]),
    measures: runs([['outside', 2], ['inside', 2], ['depth', 2], ['outside', 2], ['inside', 2], ['depth', 2], ['outside', 2], ['inside', 2], ['depth', 4], ['outside', 5], ['inside', 6], ['indicator', 7]]),
    overMm: [0, 300, 0, 300, 0, 300, 0, 100, 0, 100, 0, 100, 0, 100, 0, 100, 0, 100, 0, 100, 0, 25, 50, 75, 100, 25, 50, 50, 50, 125, 40, 0, 1, 3, 5, 0, 1, 2],
    upToMm: [300, 400, 300, 400, 300, 400, 100, 400, 100, 400, 100, 400, 100, 400, 100, 400, 100, 400, 100, 400, 25, 50, 75, 100, 125, 50, 200, 300, 125, 300, 300, 1, 3, 5, 10, 1, 2, 5],
    resolutionMm: runs([[0.05, 6], [0.02, 6], [0.01, 23], [0.001, 3]]),
    permissibleErrorMm: [0.05, 0.06, 0.07, 0.08, 0.07, 0.08, 0.02, 0.03, 0.04, 0.05, 0.04, 0.05, 0.02, 0.03, 0.04, 0.05, 0.04, 0.05, 0.04, 0.05, 0.004, 0.004, 0.005, 0.005, 0.006, 0.0075, 0.01, 0.0125, 0.007, 0.01, 0.012, 0.008, 0.01, 0.012, 0.015, 0.005, 0.007, 0.01],
    costRank: runs([[1, 18], [2, 2], [3, 11], [2, 4], [3, 3]]),
    rowSource: runs([['din-862', 18], ['jis-b-7507-2016', 2], ['din-863-1', 5], ['tb-9-5210-207-24', 6], ['jis-b-7503-2011', 7]]),
  },
  marks: {
    permissibleErrorMm: runs([['page', 2], ['computed', 4], ['page', 2], ['computed', 4], ['page', 2], ['computed', 6], ['page', 18]]),
    costRank: runs([['practice', 38]]),
  },
};
