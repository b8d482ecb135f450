// Generated from reference/tolerance/iso-286-1-hole-deviations.csv by reference/generate.mjs: do not edit.
import type { Held } from '../held.js';
import { among } from '../among.js';
import { runs } from '../runs.js';

/** Fundamental deviations of holes A to ZC, with the increments delta (source iso-286-1-2010; held as: page). */
export const iso2861HoleDeviations: {
  readonly id: string;
  readonly source: string;
  readonly clause: string;
  readonly held: Held;
  readonly rowCount: number;
  readonly columns: {
    readonly overMm: readonly number[];
    readonly upToMm: readonly number[];
    readonly eiAUm: readonly (number | null)[];
    readonly eiBUm: readonly (number | null)[];
    readonly eiCUm: readonly (number | null)[];
    readonly eiCdUm: readonly (number | null)[];
    readonly eiDUm: readonly number[];
    readonly eiEUm: readonly number[];
    readonly eiEfUm: readonly (number | null)[];
    readonly eiFUm: readonly number[];
    readonly eiFgUm: readonly (number | null)[];
    readonly eiGUm: readonly number[];
    readonly eiHUm: readonly number[];
    readonly esJ6Um: readonly (number | null)[];
    readonly esJ7Um: readonly (number | null)[];
    readonly esJ8Um: readonly (number | null)[];
    readonly esKUpToIt8Um: readonly number[];
    readonly esKAboveIt8Um: readonly (number | null)[];
    readonly esMUpToIt8Um: readonly number[];
    readonly esMAboveIt8Um: readonly number[];
    readonly esNUpToIt8Um: readonly number[];
    readonly esNAboveIt8Um: readonly number[];
    readonly esPUm: readonly number[];
    readonly esRUm: readonly number[];
    readonly esSUm: readonly number[];
    readonly esTUm: readonly (number | null)[];
    readonly esUUm: readonly number[];
    readonly esVUm: readonly (number | null)[];
    readonly esXUm: readonly (number | null)[];
    readonly esYUm: readonly (number | null)[];
    readonly esZUm: readonly (number | null)[];
    readonly esZaUm: readonly (number | null)[];
    readonly esZbUm: readonly (number | null)[];
    readonly esZcUm: readonly (number | null)[];
    readonly deltaIt3Um: readonly number[];
    readonly deltaIt4Um: readonly number[];
    readonly deltaIt5Um: readonly number[];
    readonly deltaIt6Um: readonly number[];
    readonly deltaIt7Um: readonly number[];
    readonly deltaIt8Um: readonly number[];
  };
  readonly marks: {
    readonly eiCdUm?: readonly Held[];
    readonly eiEfUm?: readonly Held[];
    readonly eiFgUm?: readonly Held[];
    readonly esNAboveIt8Um?: readonly Held[];
    readonly esXUm?: readonly Held[];
    readonly deltaIt3Um?: readonly Held[];
    readonly deltaIt4Um?: readonly Held[];
    readonly deltaIt5Um?: readonly Held[];
    readonly deltaIt6Um?: readonly Held[];
    readonly deltaIt7Um?: readonly Held[];
    readonly deltaIt8Um?: readonly Held[];
  };
} = {
  id: 'iso-286-1-hole-deviations',
  source: 'iso-286-1-2010',
  clause: 'Tables 2 and 3',
  held: 'page',
  rowCount: 41,
  columns: {
    overMm: [0, 3, 6, 10, 14, 18, 24, 30, 40, 50, 65, 80, 100, 120, 140, 160, 180, 200, 225, 250, 280, 315, 355, 400, 450, 500, 560, 630, 710, 800, 900, 1000, 1120, 1250, 1400, 1600, 1800, 2000, 2240, 2500, 2800],
    upToMm: [3, 6, 10, 14, 18, 24, 30, 40, 50, 65, 80, 100, 120, 140, 160, 180, 200, 225, 250, 280, 315, 355, 400, 450, 500, 560, 630, 710, 800, 900, 1000, 1120, 1250, 1400, 1600, 1800, 2000, 2240, 2500, 2800, 3150],
    eiAUm: [270, 270, 280, 290, 290, 300, 300, 310, 320, 340, 360, 380, 410, 460, 520, 580, 660, 740, 820, 920, 1050, 1200, 1350, 1500, 1650, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null],
    eiBUm: [140, 140, 150, 150, 150, 160, 160, 170, 180, 190, 200, 220, 240, 260, 280, 310, 340, 380, 420, 480, 540, 600, 680, 760, 840, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null],
    eiCUm: [60, 70, 80, 95, 95, 110, 110, 120, 130, 140, 150, 170, 180, 200, 210, 230, 240, 260, 280, 300, 330, 360, 400, 440, 480, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null],
    eiCdUm: runs([34, 46, 56, [70, 2], [85, 2], [100, 2], [null, 32]]),
    eiDUm: [20, 30, 40, 50, 50, 65, 65, 80, 80, 100, 100, 120, 120, 145, 145, 145, 170, 170, 170, 190, 190, 210, 210, 230, 230, 260, 260, 290, 290, 320, 320, 350, 350, 390, 390, 430, 430, 480, 480, 520, 520],
    eiEUm: [14, 20, 25, 32, 32, 40, 40, 50, 50, 60, 60, 72, 72, 85, 85, 85, 100, 100, 100, 110, 110, 125, 125, 135, 135, 145, 145, 160, 160, 170, 170, 195, 195, 220, 220, 240, 240, 260, 260, 290, 290],
    eiEfUm: runs([10, 14, 18, [23, 2], [28, 2], [35, 2], [null, 32]]),
    eiFUm: [6, 10, 13, 16, 16, 20, 20, 25, 25, 30, 30, 36, 36, 43, 43, 43, 50, 50, 50, 56, 56, 62, 62, 68, 68, 76, 76, 80, 80, 86, 86, 98, 98, 110, 110, 120, 120, 130, 130, 145, 145],
    eiFgUm: runs([4, 6, 8, [10, 2], [12, 2], [15, 2], [null, 32]]),
    eiGUm: [2, 4, 5, 6, 6, 7, 7, 9, 9, 10, 10, 12, 12, 14, 14, 14, 15, 15, 15, 17, 17, 18, 18, 20, 20, 22, 22, 24, 24, 26, 26, 28, 28, 30, 30, 32, 32, 34, 34, 38, 38],
    eiHUm: runs([[0, 41]]),
    esJ6Um: among([2, 5, 6, 8, 10, 13, 16, 18, 22, 25, 29, 33, null], 'abbccddeeffgghhhiiijjkkllmmmmmmmmmmmmmmmm'),
    esJ7Um: among([4, 6, 8, 10, 12, 14, 18, 22, 26, 30, 36, 39, 43, null], 'abcddeeffgghhiiijjjkkllmmnnnnnnnnnnnnnnnn'),
    esJ8Um: among([6, 10, 12, 15, 20, 24, 28, 34, 41, 47, 55, 60, 66, null], 'abcddeeffgghhiiijjjkkllmmnnnnnnnnnnnnnnnn'),
    esKUpToIt8Um: runs([0, [-1, 4], [-2, 6], [-3, 5], [-4, 7], [-5, 2], [0, 16]]),
    esKAboveIt8Um: runs([0, [null, 40]]),
    esMUpToIt8Um: [-2, -4, -6, -7, -7, -8, -8, -9, -9, -11, -11, -13, -13, -15, -15, -15, -17, -17, -17, -20, -20, -21, -21, -23, -23, -26, -26, -30, -30, -34, -34, -40, -40, -48, -48, -58, -58, -68, -68, -76, -76],
    esMAboveIt8Um: [-2, -4, -6, -7, -7, -8, -8, -9, -9, -11, -11, -13, -13, -15, -15, -15, -17, -17, -17, -20, -20, -21, -21, -23, -23, -26, -26, -30, -30, -34, -34, -40, -40, -48, -48, -58, -58, -68, -68, -76, -76],
    esNUpToIt8Um: [-4, -8, -10, -12, -12, -15, -15, -17, -17, -20, -20, -23, -23, -27, -27, -27, -31, -31, -31, -34, -34, -37, -37, -40, -40, -44, -44, -50, -50, -56, -56, -66, -66, -78, -78, -92, -92, -110, -110, -135, -135],
    esNAboveIt8Um: [-4, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, -44, -44, -50, -50, -56, -56, -66, -66, -78, -78, -92, -92, -110, -110, -135, -135],
    esPUm: [-6, -12, -15, -18, -18, -22, -22, -26, -26, -32, -32, -37, -37, -43, -43, -43, -50, -50, -50, -56, -56, -62, -62, -68, -68, -78, -78, -88, -88, -100, -100, -120, -120, -140, -140, -170, -170, -195, -195, -240, -240],
    esRUm: [-10, -15, -19, -23, -23, -28, -28, -34, -34, -41, -43, -51, -54, -63, -65, -68, -77, -80, -84, -94, -98, -108, -114, -126, -132, -150, -155, -175, -185, -210, -220, -250, -260, -300, -330, -370, -400, -440, -460, -550, -580],
    esSUm: [-14, -19, -23, -28, -28, -35, -35, -43, -43, -53, -59, -71, -79, -92, -100, -108, -122, -130, -140, -158, -170, -190, -208, -232, -252, -280, -310, -340, -380, -430, -470, -520, -580, -640, -720, -820, -920, -1000, -1100, -1250, -1400],
    esTUm: [null, null, null, null, null, null, -41, -48, -54, -66, -75, -91, -104, -122, -134, -146, -166, -180, -196, -218, -240, -268, -294, -330, -360, -400, -450, -500, -560, -620, -680, -780, -840, -960, -1050, -1200, -1350, -1500, -1650, -1900, -2100],
    esUUm: [-18, -23, -28, -33, -33, -41, -48, -60, -70, -87, -102, -124, -144, -170, -190, -210, -236, -258, -284, -315, -350, -390, -435, -490, -540, -600, -660, -740, -840, -940, -1050, -1150, -1300, -1450, -1600, -1850, -2000, -2300, -2500, -2900, -3200],
    esVUm: [null, null, null, null, -39, -47, -55, -68, -81, -102, -120, -146, -172, -202, -228, -252, -284, -310, -340, -385, -425, -475, -530, -595, -660, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null],
    esXUm: [-20, -28, -34, -40, -45, -54, -64, -80, -97, -122, -146, -178, -210, -248, -280, -310, -350, -385, -425, -475, -525, -590, -660, -740, -820, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null],
    esYUm: [null, null, null, null, null, -63, -75, -94, -114, -144, -174, -214, -254, -300, -340, -380, -425, -470, -520, -580, -650, -730, -820, -920, -1000, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null],
    esZUm: [-26, -35, -42, -50, -60, -73, -88, -112, -136, -172, -210, -258, -310, -365, -415, -465, -520, -575, -640, -710, -790, -900, -1000, -1100, -1250, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null],
    esZaUm: [-32, -42, -52, -64, -77, -98, -118, -148, -180, -226, -274, -335, -400, -470, -535, -600, -670, -740, -820, -920, -1000, -1150, -1300, -1450, -1600, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null],
    esZbUm: [-40, -50, -67, -90, -108, -136, -160, -200, -242, -300, -360, -445, -525, -620, -700, -780, -880, -960, -1050, -1200, -1300, -1500, -1650, -1850, -2100, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null],
    esZcUm: [-60, -80, -97, -130, -150, -188, -218, -274, -325, -405, -480, -585, -690, -800, -900, -1000, -1150, -1250, -1350, -1550, -1700, -1900, -2100, -2400, -2600, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null],
    deltaIt3Um: runs([0, [1, 4], [1.5, 4], [2, 4], [3, 6], [4, 4], [5, 2], [0, 16]]),
    deltaIt4Um: runs([0, [1.5, 2], [2, 4], [3, 4], [4, 10], [5, 4], [0, 16]]),
    deltaIt5Um: runs([0, 1, 2, [3, 4], [4, 2], [5, 4], [6, 6], [7, 6], [0, 16]]),
    deltaIt6Um: [0, 3, 3, 3, 3, 4, 4, 5, 5, 6, 6, 7, 7, 7, 7, 7, 9, 9, 9, 9, 9, 11, 11, 13, 13, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0],
    deltaIt7Um: [0, 4, 6, 7, 7, 8, 8, 9, 9, 11, 11, 13, 13, 15, 15, 15, 17, 17, 17, 20, 20, 21, 21, 23, 23, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0],
    deltaIt8Um: [0, 6, 7, 9, 9, 12, 12, 14, 14, 16, 16, 19, 19, 23, 23, 23, 26, 26, 26, 29, 29, 32, 32, 34, 34, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0],
  },
  marks: {
    eiCdUm: runs([['page', 3], ['memory', 6], ['page', 32]]),
    eiEfUm: runs([['page', 3], ['computed', 6], ['page', 32]]),
    eiFgUm: runs([['page', 3], ['computed', 6], ['page', 32]]),
    esNAboveIt8Um: runs([['page', 25], ['memory', 16]]),
    esXUm: runs([['page', 22], 'computed', ['page', 18]]),
    deltaIt3Um: runs([['computed', 41]]),
    deltaIt4Um: runs([['computed', 41]]),
    deltaIt5Um: runs([['computed', 41]]),
    deltaIt6Um: runs([['computed', 41]]),
    deltaIt7Um: runs([['computed', 41]]),
    deltaIt8Um: runs([['computed', 41]]),
  },
};
