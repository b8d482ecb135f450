// Generated from reference/bearing/seat-classes.csv by reference/generate.mjs: do not edit.
import type { Held } from '../held.js';
import { runs } from '../runs.js';

/** Recommended tolerance classes of bearing seats (source ansi-abma-7; held as: page). */
export const seatClasses: {
  readonly id: string;
  readonly title: string;
  readonly source: string;
  readonly clause: string;
  readonly held: Held;
  readonly sha256: string;
  readonly rowCount: number;
  readonly columns: {
    readonly set: readonly ('abma-7' | 'handbook')[];
    readonly seat: readonly ('housing' | 'shaft')[];
    readonly bearingKind: readonly ('any' | 'cylindrical-roller' | 'deep-groove-ball')[];
    readonly ringLoad: readonly ('axial' | 'indeterminate' | 'rotating' | 'stationary')[];
    readonly magnitude: readonly ('heavy' | 'light' | 'normal' | 'shock')[];
    readonly overMm: readonly (number | null)[];
    readonly upToMm: readonly (number | null)[];
    readonly toleranceClass: readonly string[];
    readonly condition: readonly ('any' | 'heat-through-shaft' | 'need-not-slide' | 'not-split' | 'plummer-block' | 'slides-easily' | 'split' | 'thin-wall')[];
    readonly rowSource: readonly string[];
    readonly held: readonly ('memory' | 'page')[];
  };
  readonly marks: Readonly<Record<never, readonly Held[]>>;
} = {
  id: 'seat-classes',
  title: 'Recommended tolerance classes of bearing seats',
  source: 'ansi-abma-7',
  clause: 'shaft and housing fits',
  held: 'page',
  sha256: 'f19fcbeda941afe11b37b204ef12d609466c93d8359548808df2795cae7c321d',
  rowCount: 129,
  columns: {
    set: runs([['abma-7', 82], ['handbook', 47]]),
    seat: runs([['housing', 18], ['shaft', 64], ['housing', 17], ['shaft', 30]]),
    bearingKind: runs([['any', 18], ['cylindrical-roller', 43], ['deep-groove-ball', 21], ['any', 17], ['deep-groove-ball', 30]]),
    ringLoad: runs([['indeterminate', 4], ['rotating', 4], ['stationary', 10], ['axial', 3], ['indeterminate', 17], ['rotating', 17], ['stationary', 6], ['axial', 3], ['indeterminate', 6], ['rotating', 6], ['stationary', 6], ['indeterminate', 4], ['rotating', 4], ['stationary', 9], ['indeterminate', 15], ['rotating', 15]]),
    magnitude: ['heavy', 'light', 'normal', 'shock', 'heavy', 'heavy', 'light', 'normal', 'heavy', 'heavy', 'heavy', 'light', 'light', 'light', 'normal', 'normal', 'normal', 'shock', 'heavy', 'light', 'normal', 'heavy', 'heavy', 'heavy', 'heavy', 'heavy', 'heavy', 'light', 'light', 'light', 'light', 'light', 'normal', 'normal', 'normal', 'normal', 'normal', 'normal', 'heavy', 'heavy', 'heavy', 'heavy', 'heavy', 'heavy', 'light', 'light', 'light', 'light', 'light', 'normal', 'normal', 'normal', 'normal', 'normal', 'normal', 'heavy', 'heavy', 'light', 'light', 'normal', 'normal', 'heavy', 'light', 'normal', 'heavy', 'heavy', 'light', 'light', 'normal', 'normal', 'heavy', 'heavy', 'light', 'light', 'normal', 'normal', 'heavy', 'heavy', 'light', 'light', 'normal', 'normal', 'heavy', 'light', 'normal', 'shock', 'heavy', 'heavy', 'light', 'normal', 'heavy', 'heavy', 'light', 'light', 'light', 'normal', 'normal', 'normal', 'shock', 'heavy', 'heavy', 'heavy', 'heavy', 'heavy', 'heavy', 'light', 'light', 'light', 'normal', 'normal', 'normal', 'normal', 'normal', 'normal', 'heavy', 'heavy', 'heavy', 'heavy', 'heavy', 'heavy', 'light', 'light', 'light', 'normal', 'normal', 'normal', 'normal', 'normal', 'normal'],
    overMm: [null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, 0, 0, 0, 0, 40, 65, 140, 200, 500, 0, 40, 140, 320, 500, 0, 40, 100, 140, 320, 500, 0, 40, 65, 140, 200, 500, 0, 40, 140, 320, 500, 0, 40, 100, 140, 320, 500, 0, 0, 0, 0, 0, 0, 0, 0, 0, 18, 100, 0, 18, 0, 18, 18, 100, 0, 18, 0, 18, 0, 0, 0, 0, 0, 0, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, 0, 10, 17, 100, 140, 200, 0, 17, 100, 0, 10, 17, 100, 140, 200, 0, 10, 17, 100, 140, 200, 0, 17, 100, 0, 10, 17, 100, 140, 200],
    upToMm: [null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, 40, 65, 140, 200, 500, null, 40, 140, 320, 500, null, 40, 100, 140, 320, 500, null, 40, 65, 140, 200, 500, null, 40, 140, 320, 500, null, 40, 100, 140, 320, 500, null, null, null, null, null, null, null, null, null, null, 100, null, 18, null, 18, null, 100, null, 18, null, 18, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, 10, 17, 100, 140, 200, 500, 17, 100, 140, 10, 17, 100, 140, 200, 500, 10, 17, 100, 140, 200, 500, 17, 100, 140, 10, 17, 100, 140, 200, 500],
    toleranceClass: ['K6', 'J6', 'K6', 'M6', 'N6', 'P6', 'M6', 'N6', 'G7', 'H6', 'H7', 'G7', 'H6', 'H7', 'G7', 'H6', 'H7', 'J6', 'j6', 'j6', 'j6', 'm5', 'm6', 'n6', 'p6', 'r6', 'r7', 'j6', 'k6', 'm6', 'n6', 'p6', 'k5', 'm5', 'm6', 'n6', 'p6', 'r6', 'm5', 'm6', 'n6', 'p6', 'r6', 'r7', 'j6', 'k6', 'm6', 'n6', 'p6', 'k5', 'm5', 'm6', 'n6', 'p6', 'r6', 'h6', 'g6', 'h6', 'g6', 'h6', 'g6', 'j6', 'j6', 'j6', 'k5', 'm5', 'h5', 'j6', 'j5', 'k5', 'k5', 'm5', 'h5', 'j6', 'j5', 'k5', 'h6', 'g6', 'h6', 'g6', 'h6', 'g6', 'K7', 'JS7', 'K7', 'M7', 'N7', 'P7', 'M7', 'N7', 'H7', 'G7', 'H7', 'G7', 'H8', 'H7', 'G7', 'H8', 'H7', 'js5', 'j5', 'k5', 'm5', 'm6', 'n6', 'js5', 'j6', 'k6', 'js5', 'j5', 'k5', 'm5', 'm6', 'n6', 'js5', 'j5', 'k5', 'm5', 'm6', 'n6', 'js5', 'j6', 'k6', 'js5', 'j5', 'k5', 'm5', 'm6', 'n6'],
    condition: ['any', 'any', 'any', 'any', 'any', 'thin-wall', 'any', 'any', 'heat-through-shaft', 'not-split', 'split', 'heat-through-shaft', 'not-split', 'split', 'heat-through-shaft', 'not-split', 'split', 'any', 'any', 'any', 'any', 'any', 'any', 'any', 'any', 'any', 'any', 'any', 'any', 'any', 'any', 'any', 'any', 'any', 'any', 'any', 'any', 'any', 'any', 'any', 'any', 'any', 'any', 'any', 'any', 'any', 'any', 'any', 'any', 'any', 'any', 'any', 'any', 'any', 'any', 'need-not-slide', 'slides-easily', 'need-not-slide', 'slides-easily', 'need-not-slide', 'slides-easily', 'any', 'any', 'any', 'any', 'any', 'any', 'any', 'any', 'any', 'any', 'any', 'any', 'any', 'any', 'any', 'need-not-slide', 'slides-easily', 'need-not-slide', 'slides-easily', 'need-not-slide', 'slides-easily', 'any', 'any', 'any', 'any', 'any', 'thin-wall', 'any', 'any', 'any', 'heat-through-shaft', 'any', 'heat-through-shaft', 'plummer-block', 'any', 'heat-through-shaft', 'plummer-block', 'any', 'any', 'any', 'any', 'any', 'any', 'any', 'any', 'any', 'any', 'any', 'any', 'any', 'any', 'any', 'any', 'any', 'any', 'any', 'any', 'any', 'any', 'any', 'any', 'any', 'any', 'any', 'any', 'any', 'any', 'any'],
    rowSource: runs([['ansi-abma-7', 82], ['bearing-handbook-reprints', 47]]),
    held: runs([['page', 1], ['memory', 1], ['page', 83], ['memory', 1], ['page', 1], ['memory', 2], ['page', 2], ['memory', 1], ['page', 1], ['memory', 1], ['page', 2], ['memory', 1], ['page', 2], ['memory', 30]]),
  },
  marks: {
  },
};
