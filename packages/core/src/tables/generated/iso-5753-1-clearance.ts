// Generated from reference/bearing/iso-5753-1-clearance.csv by reference/generate.mjs: do not edit.
import type { Held } from '../held.js';
import { among } from '../among.js';
import { runs } from '../runs.js';

/** Radial internal clearance before mounting (source iso-5753-1; held as: page). */
export const iso57531Clearance: {
  readonly id: string;
  readonly source: string;
  readonly clause: string;
  readonly held: Held;
  readonly rowCount: number;
  readonly columns: {
    readonly bearingType: readonly ('deep-groove-ball' | 'cylindrical-roller')[];
    readonly overMm: readonly number[];
    readonly upToMm: readonly number[];
    readonly clearanceGroup: readonly ('2' | 'N' | '3' | '4' | '5')[];
    readonly minimumUm: readonly number[];
    readonly maximumUm: readonly number[];
    readonly held: readonly ('page' | 'memory')[];
  };
  readonly marks: Readonly<Record<never, readonly Held[]>>;
} = {
  id: 'iso-5753-1-clearance',
  source: 'iso-5753-1',
  clause: 'groove ball and cylindrical roller bearings with cylindrical bore',
  held: 'page',
  rowCount: 183,
  columns: {
    bearingType: runs([['cylindrical-roller', 100], ['deep-groove-ball', 83]]),
    overMm: among([0, 24, 30, 40, 50, 65, 80, 100, 120, 140, 160, 180, 200, 225, 250, 280, 315, 355, 400, 450, 2.5, 6, 10, 18], 'abcdefghijklmnopqrstabcdefghijklmnopqrstabcdefghijklmnopqrstabcdefghijklmnopqrstabcdefghijklmnopqrstuvwxbcdefghijklmnuvwxbcdefghijklmnuvwxbcdefghijklmnvwxbcdefghijklmnvwxbcdefghijklmn'),
    upToMm: among([24, 30, 40, 50, 65, 80, 100, 120, 140, 160, 180, 200, 225, 250, 280, 315, 355, 400, 450, 500, 6, 10, 18], 'abcdefghijklmnopqrstabcdefghijklmnopqrstabcdefghijklmnopqrstabcdefghijklmnopqrstabcdefghijklmnopqrstuvwabcdefghijklmnuvwabcdefghijklmnuvwabcdefghijklmnvwabcdefghijklmnvwabcdefghijklmn'),
    clearanceGroup: runs([['2', 20], ['N', 20], ['3', 20], ['4', 20], ['5', 20], ['2', 17], ['N', 17], ['3', 17], ['4', 16], ['5', 16]]),
    minimumUm: [0, 0, 5, 5, 10, 10, 15, 15, 15, 20, 25, 35, 45, 45, 55, 55, 65, 100, 110, 110, 20, 20, 25, 30, 40, 40, 50, 50, 60, 70, 75, 90, 105, 110, 125, 130, 145, 190, 210, 220, 35, 35, 45, 50, 60, 65, 75, 85, 100, 115, 120, 140, 160, 170, 190, 200, 225, 280, 310, 330, 50, 50, 60, 70, 80, 90, 105, 125, 145, 165, 170, 195, 220, 235, 260, 275, 305, 370, 410, 440, 65, 70, 80, 95, 110, 130, 155, 180, 200, 225, 250, 275, 305, 330, 370, 410, 455, 510, 565, 625, 0, 0, 0, 0, 1, 1, 1, 1, 1, 1, 2, 2, 2, 2, 2, 2, 2, 2, 2, 3, 5, 5, 6, 6, 8, 10, 12, 15, 18, 18, 20, 25, 25, 30, 8, 8, 11, 13, 13, 15, 18, 23, 25, 30, 36, 41, 46, 53, 63, 75, 85, 14, 18, 20, 23, 28, 30, 38, 46, 53, 61, 71, 81, 91, 107, 125, 145, 20, 25, 28, 30, 40, 45, 55, 65, 75, 90, 105, 120, 135, 150, 175, 205],
    maximumUm: [25, 25, 30, 35, 40, 45, 50, 55, 60, 70, 75, 90, 105, 110, 125, 130, 145, 190, 210, 220, 45, 45, 50, 60, 70, 75, 85, 90, 105, 120, 125, 145, 165, 175, 195, 205, 225, 280, 310, 330, 60, 60, 70, 80, 90, 100, 110, 125, 145, 165, 170, 195, 220, 235, 260, 275, 305, 370, 410, 440, 75, 75, 85, 100, 110, 125, 140, 165, 190, 215, 220, 250, 280, 300, 330, 350, 385, 460, 510, 550, 90, 95, 105, 125, 140, 165, 190, 220, 245, 275, 300, 330, 365, 395, 440, 485, 535, 600, 665, 735, 7, 7, 9, 10, 11, 11, 11, 15, 15, 18, 20, 23, 23, 25, 30, 35, 40, 13, 13, 18, 20, 20, 20, 23, 28, 30, 36, 41, 48, 53, 61, 71, 85, 95, 23, 23, 25, 28, 28, 33, 36, 43, 51, 58, 66, 81, 91, 102, 117, 140, 160, 29, 33, 36, 41, 46, 51, 61, 71, 84, 97, 114, 130, 147, 163, 195, 225, 37, 45, 48, 53, 64, 73, 90, 105, 120, 140, 160, 180, 200, 230, 265, 300],
    held: runs([['page', 114], ['memory', 3], ['page', 14], ['memory', 3], ['page', 14], ['memory', 3], ['page', 13], ['memory', 3], ['page', 9], ['memory', 7]]),
  },
  marks: {
  },
};
