// Generated from reference/bearing/iso-492-radial.csv by reference/generate.mjs: do not edit.
import type { Held } from '../held.js';
import { among } from '../among.js';
import { runs } from '../runs.js';

/** Deviations of the mean bore and outside diameter of radial bearings (source iso-492; held as: page). */
export const iso492Radial: {
  readonly id: string;
  readonly source: string;
  readonly clause: string;
  readonly held: Held;
  readonly rowCount: number;
  readonly columns: {
    readonly ring: readonly ('inner' | 'outer')[];
    readonly toleranceClass: readonly ('Normal' | '6' | '5')[];
    readonly overMm: readonly number[];
    readonly upToMm: readonly number[];
    readonly upperUm: readonly number[];
    readonly lowerUm: readonly number[];
    readonly runoutMaxUm: readonly number[];
    readonly held: readonly ('page' | 'memory')[];
  };
  readonly marks: Readonly<Record<never, readonly Held[]>>;
} = {
  id: 'iso-492-radial',
  source: 'iso-492',
  clause: 'Normal class, classes 6 and 5',
  held: 'page',
  rowCount: 66,
  columns: {
    ring: runs([['inner', 33], ['outer', 33]]),
    toleranceClass: runs([['Normal', 11], ['6', 11], ['5', 11], ['Normal', 11], ['6', 11], ['5', 11]]),
    overMm: among([2.5, 10, 18, 30, 50, 80, 120, 180, 250, 315, 400, 150], 'abcdefghijkabcdefghijkabcdefghijkacdefglhijkacdefglhijkacdefglhijk'),
    upToMm: among([10, 18, 30, 50, 80, 120, 180, 250, 315, 400, 500, 150], 'abcdefghijkabcdefghijkabcdefghijkbcdeflghijkbcdeflghijkbcdeflghijk'),
    upperUm: runs([[0, 66]]),
    lowerUm: among([-8, -10, -12, -15, -20, -25, -30, -35, -40, -45, -7, -18, -22, -5, -6, -9, -13, -23, -28, -11, -33], 'aabcdefghijkkabcdlmfghnnoapbqdlrsaptqdlfghijkaptqdlefsunokpbtqdler'),
    runoutMaxUm: [10, 10, 13, 15, 20, 25, 30, 40, 50, 60, 65, 6, 7, 8, 10, 10, 13, 18, 20, 25, 30, 35, 4, 4, 4, 5, 5, 6, 8, 10, 13, 15, 17, 15, 15, 20, 25, 35, 40, 45, 50, 60, 70, 80, 8, 9, 10, 13, 18, 20, 23, 25, 30, 35, 40, 5, 6, 7, 8, 10, 11, 13, 15, 18, 20, 23],
    held: runs([['page', 19], ['memory', 3], ['page', 22], ['memory', 11], ['page', 11]]),
  },
  marks: {
  },
};
