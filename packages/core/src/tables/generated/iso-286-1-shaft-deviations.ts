// Generated from reference/tolerance/iso-286-1-shaft-deviations.csv by reference/generate.mjs: do not edit.
import type { Held } from '../held.js';
import { among } from '../among.js';
import { runs } from '../runs.js';

/** Fundamental deviations of shafts a to zc (source iso-286-1-2010; held as: page). */
export const iso2861ShaftDeviations: {
  readonly id: string;
  readonly source: string;
  readonly clause: string;
  readonly held: Held;
  readonly rowCount: number;
  readonly columns: {
    readonly overMm: readonly number[];
    readonly upToMm: readonly number[];
    readonly esAUm: readonly (number | null)[];
    readonly esBUm: readonly (number | null)[];
    readonly esCUm: readonly (number | null)[];
    readonly esCdUm: readonly (number | null)[];
    readonly esDUm: readonly number[];
    readonly esEUm: readonly number[];
    readonly esEfUm: readonly (number | null)[];
    readonly esFUm: readonly number[];
    readonly esFgUm: readonly (number | null)[];
    readonly esGUm: readonly number[];
    readonly esHUm: readonly number[];
    readonly eiJ5J6Um: readonly (number | null)[];
    readonly eiJ7Um: readonly (number | null)[];
    readonly eiJ8Um: readonly (number | null)[];
    readonly eiK4ToK7Um: readonly number[];
    readonly eiKOtherUm: readonly number[];
    readonly eiMUm: readonly number[];
    readonly eiNUm: readonly number[];
    readonly eiPUm: readonly number[];
    readonly eiRUm: readonly number[];
    readonly eiSUm: readonly number[];
    readonly eiTUm: readonly (number | null)[];
    readonly eiUUm: readonly number[];
    readonly eiVUm: readonly (number | null)[];
    readonly eiXUm: readonly (number | null)[];
    readonly eiYUm: readonly (number | null)[];
    readonly eiZUm: readonly (number | null)[];
    readonly eiZaUm: readonly (number | null)[];
    readonly eiZbUm: readonly (number | null)[];
    readonly eiZcUm: readonly (number | null)[];
  };
  readonly marks: {
    readonly esCdUm?: readonly Held[];
    readonly esEfUm?: readonly Held[];
    readonly esFgUm?: readonly Held[];
    readonly eiJ7Um?: readonly Held[];
    readonly eiJ8Um?: readonly Held[];
    readonly eiXUm?: readonly Held[];
  };
} = {
  id: 'iso-286-1-shaft-deviations',
  source: 'iso-286-1-2010',
  clause: 'Tables 4 and 5',
  held: 'page',
  rowCount: 41,
  columns: {
    overMm: [0, 3, 6, 10, 14, 18, 24, 30, 40, 50, 65, 80, 100, 120, 140, 160, 180, 200, 225, 250, 280, 315, 355, 400, 450, 500, 560, 630, 710, 800, 900, 1000, 1120, 1250, 1400, 1600, 1800, 2000, 2240, 2500, 2800],
    upToMm: [3, 6, 10, 14, 18, 24, 30, 40, 50, 65, 80, 100, 120, 140, 160, 180, 200, 225, 250, 280, 315, 355, 400, 450, 500, 560, 630, 710, 800, 900, 1000, 1120, 1250, 1400, 1600, 1800, 2000, 2240, 2500, 2800, 3150],
    esAUm: [-270, -270, -280, -290, -290, -300, -300, -310, -320, -340, -360, -380, -410, -460, -520, -580, -660, -740, -820, -920, -1050, -1200, -1350, -1500, -1650, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null],
    esBUm: [-140, -140, -150, -150, -150, -160, -160, -170, -180, -190, -200, -220, -240, -260, -280, -310, -340, -380, -420, -480, -540, -600, -680, -760, -840, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null],
    esCUm: [-60, -70, -80, -95, -95, -110, -110, -120, -130, -140, -150, -170, -180, -200, -210, -230, -240, -260, -280, -300, -330, -360, -400, -440, -480, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null],
    esCdUm: runs([-34, -46, -56, [-70, 2], [-85, 2], [-100, 2], [null, 32]]),
    esDUm: [-20, -30, -40, -50, -50, -65, -65, -80, -80, -100, -100, -120, -120, -145, -145, -145, -170, -170, -170, -190, -190, -210, -210, -230, -230, -260, -260, -290, -290, -320, -320, -350, -350, -390, -390, -430, -430, -480, -480, -520, -520],
    esEUm: [-14, -20, -25, -32, -32, -40, -40, -50, -50, -60, -60, -72, -72, -85, -85, -85, -100, -100, -100, -110, -110, -125, -125, -135, -135, -145, -145, -160, -160, -170, -170, -195, -195, -220, -220, -240, -240, -260, -260, -290, -290],
    esEfUm: runs([-10, -14, -18, [-23, 2], [-28, 2], [-35, 2], [null, 32]]),
    esFUm: [-6, -10, -13, -16, -16, -20, -20, -25, -25, -30, -30, -36, -36, -43, -43, -43, -50, -50, -50, -56, -56, -62, -62, -68, -68, -76, -76, -80, -80, -86, -86, -98, -98, -110, -110, -120, -120, -130, -130, -145, -145],
    esFgUm: runs([-4, -6, -8, [-10, 2], [-12, 2], [-15, 2], [null, 32]]),
    esGUm: [-2, -4, -5, -6, -6, -7, -7, -9, -9, -10, -10, -12, -12, -14, -14, -14, -15, -15, -15, -17, -17, -18, -18, -20, -20, -22, -22, -24, -24, -26, -26, -28, -28, -30, -30, -32, -32, -34, -34, -38, -38],
    esHUm: runs([[0, 41]]),
    eiJ5J6Um: among([-2, -3, -4, -5, -7, -9, -11, -13, -16, -18, -20, null], 'aaabbccddeeffggghhhiijjkkllllllllllllllll'),
    eiJ7Um: among([-4, -5, -6, -8, -10, -12, -15, -18, -21, -26, -28, -32, null], 'aabccddeeffgghhhiiijjkkllmmmmmmmmmmmmmmmm'),
    eiJ8Um: runs([-6, [null, 40]]),
    eiK4ToK7Um: runs([0, [1, 4], [2, 6], [3, 5], [4, 7], [5, 2], [0, 16]]),
    eiKOtherUm: runs([[0, 41]]),
    eiMUm: [2, 4, 6, 7, 7, 8, 8, 9, 9, 11, 11, 13, 13, 15, 15, 15, 17, 17, 17, 20, 20, 21, 21, 23, 23, 26, 26, 30, 30, 34, 34, 40, 40, 48, 48, 58, 58, 68, 68, 76, 76],
    eiNUm: [4, 8, 10, 12, 12, 15, 15, 17, 17, 20, 20, 23, 23, 27, 27, 27, 31, 31, 31, 34, 34, 37, 37, 40, 40, 44, 44, 50, 50, 56, 56, 66, 66, 78, 78, 92, 92, 110, 110, 135, 135],
    eiPUm: [6, 12, 15, 18, 18, 22, 22, 26, 26, 32, 32, 37, 37, 43, 43, 43, 50, 50, 50, 56, 56, 62, 62, 68, 68, 78, 78, 88, 88, 100, 100, 120, 120, 140, 140, 170, 170, 195, 195, 240, 240],
    eiRUm: [10, 15, 19, 23, 23, 28, 28, 34, 34, 41, 43, 51, 54, 63, 65, 68, 77, 80, 84, 94, 98, 108, 114, 126, 132, 150, 155, 175, 185, 210, 220, 250, 260, 300, 330, 370, 400, 440, 460, 550, 580],
    eiSUm: [14, 19, 23, 28, 28, 35, 35, 43, 43, 53, 59, 71, 79, 92, 100, 108, 122, 130, 140, 158, 170, 190, 208, 232, 252, 280, 310, 340, 380, 430, 470, 520, 580, 640, 720, 820, 920, 1000, 1100, 1250, 1400],
    eiTUm: [null, null, null, null, null, null, 41, 48, 54, 66, 75, 91, 104, 122, 134, 146, 166, 180, 196, 218, 240, 268, 294, 330, 360, 400, 450, 500, 560, 620, 680, 780, 840, 960, 1050, 1200, 1350, 1500, 1650, 1900, 2100],
    eiUUm: [18, 23, 28, 33, 33, 41, 48, 60, 70, 87, 102, 124, 144, 170, 190, 210, 236, 258, 284, 315, 350, 390, 435, 490, 540, 600, 660, 740, 840, 940, 1050, 1150, 1300, 1450, 1600, 1850, 2000, 2300, 2500, 2900, 3200],
    eiVUm: runs([[null, 4], 39, 47, 55, 68, 81, 102, 120, 146, 172, 202, 228, 252, 284, 310, 340, 385, 425, 475, 530, 595, 660, [null, 16]]),
    eiXUm: [20, 28, 34, 40, 45, 54, 64, 80, 97, 122, 146, 178, 210, 248, 280, 310, 350, 385, 425, 475, 525, 590, 660, 740, 820, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null],
    eiYUm: runs([[null, 5], 63, 75, 94, 114, 144, 174, 214, 254, 300, 340, 380, 425, 470, 520, 580, 650, 730, 820, 920, 1000, [null, 16]]),
    eiZUm: [26, 35, 42, 50, 60, 73, 88, 112, 136, 172, 210, 258, 310, 365, 415, 465, 520, 575, 640, 710, 790, 900, 1000, 1100, 1250, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null],
    eiZaUm: [32, 42, 52, 64, 77, 98, 118, 148, 180, 226, 274, 335, 400, 470, 535, 600, 670, 740, 820, 920, 1000, 1150, 1300, 1450, 1600, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null],
    eiZbUm: [40, 50, 67, 90, 108, 136, 160, 200, 242, 300, 360, 445, 525, 620, 700, 780, 880, 960, 1050, 1200, 1300, 1500, 1650, 1850, 2100, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null],
    eiZcUm: [60, 80, 97, 130, 150, 188, 218, 274, 325, 405, 480, 585, 690, 800, 900, 1000, 1150, 1250, 1350, 1550, 1700, 1900, 2100, 2400, 2600, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null],
  },
  marks: {
    esCdUm: runs([['page', 3], ['memory', 6], ['page', 32]]),
    esEfUm: runs([['page', 3], ['computed', 6], ['page', 32]]),
    esFgUm: runs([['page', 3], ['computed', 6], ['page', 32]]),
    eiJ7Um: runs([['memory', 16], ['page', 25]]),
    eiJ8Um: runs(['memory', ['page', 40]]),
    eiXUm: runs([['page', 22], 'computed', ['page', 18]]),
  },
};
