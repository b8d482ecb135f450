// Generated from reference/measure/instruments.csv by reference/generate.mjs: do not edit.
import type { Held } from '../held.js';
import { among } from '../among.js';
import { runs } from '../runs.js';

/** Measuring instruments: step and permissible error (source din-862; held as: page). */
export const instruments: {
  readonly id: string;
  readonly source: string;
  readonly clause: string;
  readonly held: Held;
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
  source: 'din-862',
  clause: 'limits of error',
  held: 'page',
  rowCount: 46,
  columns: {
    instrument: among(['vernier-calliper-outside-005', 'vernier-calliper-inside-005', 'vernier-calliper-depth-005', 'vernier-calliper-outside-002', 'vernier-calliper-inside-002', 'vernier-calliper-depth-002', 'digital-calliper-outside', 'digital-calliper-inside', 'digital-calliper-depth', 'digital-depth-gauge', 'outside-micrometer', 'inside-micrometer-rod', 'inside-micrometer-rod-300', 'inside-micrometer-tubular', 'inside-micrometer-tubular-interchangeable', 'dial-indicator-001', 'dial-indicator-0001'], 'aabbccddeeffgghhiijjkkkkkkkkkkkkkllmnnoppppqqq'),
    name: among(['Vernier calliper 0.05 mm, outside', 'Vernier calliper 0.05 mm, inside', 'Vernier calliper 0.05 mm, depth', 'Vernier calliper 0.02 mm, outside', 'Vernier calliper 0.02 mm, inside', 'Vernier calliper 0.02 mm, depth', 'Digital calliper, outside', 'Digital calliper, inside', 'Digital calliper, depth', 'Digital depth gauge', 'Outside micrometer', 'Inside micrometer, rod and sleeve', 'Inside micrometer, rod and sleeve, set to 300 mm', 'Inside micrometer, tubular', 'Inside micrometer, tubular, interchangeable head', 'Dial indicator 0.01 mm', 'Dial indicator 0.001 mm'], 'aabbccddeeffgghhiijjkkkkkkkkkkkkkllmnnoppppqqq'),
    measures: among(['outside', 'inside', 'depth', 'indicator'], 'aabbccaabbccaabbccccaaaaaaaaaaaaabbbbbbddddddd'),
    overMm: [0, 300, 0, 300, 0, 300, 0, 100, 0, 100, 0, 100, 0, 100, 0, 100, 0, 100, 0, 100, 0, 25, 50, 75, 100, 125, 150, 200, 250, 300, 350, 400, 450, 25, 50, 50, 50, 125, 40, 0, 1, 3, 5, 0, 1, 2],
    upToMm: [300, 400, 300, 400, 300, 400, 100, 400, 100, 400, 100, 400, 100, 400, 100, 400, 100, 400, 100, 400, 25, 50, 75, 100, 125, 150, 200, 250, 300, 350, 400, 450, 500, 50, 200, 300, 125, 300, 300, 1, 3, 5, 10, 1, 2, 5],
    resolutionMm: runs([[0.05, 6], [0.02, 6], [0.01, 31], [0.001, 3]]),
    permissibleErrorMm: [0.05, 0.06, 0.07, 0.08, 0.07, 0.08, 0.02, 0.03, 0.04, 0.05, 0.04, 0.05, 0.02, 0.03, 0.04, 0.05, 0.04, 0.05, 0.04, 0.05, 0.004, 0.004, 0.005, 0.005, 0.006, 0.006, 0.007, 0.008, 0.009, 0.01, 0.011, 0.012, 0.013, 0.0075, 0.01, 0.0125, 0.007, 0.01, 0.012, 0.008, 0.01, 0.012, 0.015, 0.005, 0.007, 0.01],
    costRank: runs([[1, 18], [2, 2], [3, 19], [2, 4], [3, 3]]),
    rowSource: runs([['din-862', 18], ['jis-b-7507-2016', 2], ['din-863-1', 13], ['tb-9-5210-207-24', 6], ['jis-b-7503-2011', 7]]),
  },
  marks: {
    permissibleErrorMm: among(['page', 'computed', 'memory'], 'aabbbbaabbbbaabbbbbbaaaaaccccccccaaaaaaaaaaaaa'),
    costRank: runs([['practice', 46]]),
  },
};
