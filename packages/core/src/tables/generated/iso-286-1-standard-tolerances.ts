// Generated from reference/tolerance/iso-286-1-standard-tolerances.csv by reference/generate.mjs: do not edit.
import type { Held } from '../held.js';
import { among } from '../among.js';
import { runs } from '../runs.js';

/** Standard tolerance grades IT01 to IT18 (source iso-286-1-2010; held as: page). */
export const iso2861StandardTolerances: {
  readonly id: string;
  readonly source: string;
  readonly clause: string;
  readonly held: Held;
  readonly rowCount: number;
  readonly columns: {
    readonly overMm: readonly number[];
    readonly upToMm: readonly number[];
    readonly it01Um: readonly (number | null)[];
    readonly it0Um: readonly (number | null)[];
    readonly it1Um: readonly number[];
    readonly it2Um: readonly number[];
    readonly it3Um: readonly number[];
    readonly it4Um: readonly number[];
    readonly it5Um: readonly number[];
    readonly it6Um: readonly number[];
    readonly it7Um: readonly number[];
    readonly it8Um: readonly number[];
    readonly it9Um: readonly number[];
    readonly it10Um: readonly number[];
    readonly it11Um: readonly number[];
    readonly it12Um: readonly number[];
    readonly it13Um: readonly number[];
    readonly it14Um: readonly number[];
    readonly it15Um: readonly number[];
    readonly it16Um: readonly number[];
    readonly it17Um: readonly number[];
    readonly it18Um: readonly number[];
  };
  readonly marks: {
    readonly it1Um?: readonly Held[];
    readonly it2Um?: readonly Held[];
    readonly it3Um?: readonly Held[];
    readonly it4Um?: readonly Held[];
    readonly it14Um?: readonly Held[];
    readonly it15Um?: readonly Held[];
    readonly it17Um?: readonly Held[];
    readonly it18Um?: readonly Held[];
  };
} = {
  id: 'iso-286-1-standard-tolerances',
  source: 'iso-286-1-2010',
  clause: 'Table 1',
  held: 'page',
  rowCount: 21,
  columns: {
    overMm: [0, 3, 6, 10, 18, 30, 50, 80, 120, 180, 250, 315, 400, 500, 630, 800, 1000, 1250, 1600, 2000, 2500],
    upToMm: [3, 6, 10, 18, 30, 50, 80, 120, 180, 250, 315, 400, 500, 630, 800, 1000, 1250, 1600, 2000, 2500, 3150],
    it01Um: [0.3, 0.4, 0.4, 0.5, 0.6, 0.6, 0.8, 1, 1.2, 2, 2.5, 3, 4, null, null, null, null, null, null, null, null],
    it0Um: [0.5, 0.6, 0.6, 0.8, 1, 1, 1.2, 1.5, 2, 3, 4, 5, 6, null, null, null, null, null, null, null, null],
    it1Um: [0.8, 1, 1, 1.2, 1.5, 1.5, 2, 2.5, 3.5, 4.5, 6, 7, 8, 9, 10, 11, 13, 15, 18, 22, 26],
    it2Um: [1.2, 1.5, 1.5, 2, 2.5, 2.5, 3, 4, 5, 7, 8, 9, 10, 11, 13, 15, 18, 21, 25, 30, 36],
    it3Um: [2, 2.5, 2.5, 3, 4, 4, 5, 6, 8, 10, 12, 13, 15, 16, 18, 21, 24, 29, 35, 41, 50],
    it4Um: [3, 4, 4, 5, 6, 7, 8, 10, 12, 14, 16, 18, 20, 22, 25, 28, 33, 39, 46, 55, 68],
    it5Um: [4, 5, 6, 8, 9, 11, 13, 15, 18, 20, 23, 25, 27, 32, 36, 40, 47, 55, 65, 78, 96],
    it6Um: [6, 8, 9, 11, 13, 16, 19, 22, 25, 29, 32, 36, 40, 44, 50, 56, 66, 78, 92, 110, 135],
    it7Um: [10, 12, 15, 18, 21, 25, 30, 35, 40, 46, 52, 57, 63, 70, 80, 90, 105, 125, 150, 175, 210],
    it8Um: [14, 18, 22, 27, 33, 39, 46, 54, 63, 72, 81, 89, 97, 110, 125, 140, 165, 195, 230, 280, 330],
    it9Um: [25, 30, 36, 43, 52, 62, 74, 87, 100, 115, 130, 140, 155, 175, 200, 230, 260, 310, 370, 440, 540],
    it10Um: [40, 48, 58, 70, 84, 100, 120, 140, 160, 185, 210, 230, 250, 280, 320, 360, 420, 500, 600, 700, 860],
    it11Um: [60, 75, 90, 110, 130, 160, 190, 220, 250, 290, 320, 360, 400, 440, 500, 560, 660, 780, 920, 1100, 1350],
    it12Um: [100, 120, 150, 180, 210, 250, 300, 350, 400, 460, 520, 570, 630, 700, 800, 900, 1050, 1250, 1500, 1750, 2100],
    it13Um: [140, 180, 220, 270, 330, 390, 460, 540, 630, 720, 810, 890, 970, 1100, 1250, 1400, 1650, 1950, 2300, 2800, 3300],
    it14Um: [250, 300, 360, 430, 520, 620, 740, 870, 1000, 1150, 1300, 1400, 1550, 1750, 2000, 2300, 2600, 3100, 3700, 4400, 5400],
    it15Um: [400, 480, 580, 700, 840, 1000, 1200, 1400, 1600, 1850, 2100, 2300, 2500, 2800, 3200, 3600, 4200, 5000, 6000, 7000, 8600],
    it16Um: [600, 750, 900, 1100, 1300, 1600, 1900, 2200, 2500, 2900, 3200, 3600, 4000, 4400, 5000, 5600, 6600, 7800, 9200, 11000, 13500],
    it17Um: [1000, 1200, 1500, 1800, 2100, 2500, 3000, 3500, 4000, 4600, 5200, 5700, 6300, 7000, 8000, 9000, 10500, 12500, 15000, 17500, 21000],
    it18Um: [1400, 1800, 2200, 2700, 3300, 3900, 4600, 5400, 6300, 7200, 8100, 8900, 9700, 11000, 12500, 14000, 16500, 19500, 23000, 28000, 33000],
  },
  marks: {
    it1Um: runs([['page', 17], ['memory', 2], 'computed', 'memory']),
    it2Um: runs([['page', 16], ['computed', 5]]),
    it3Um: among(['page', 'computed', 'memory'], 'aaaaaaaaaaaaaaaabbcbc'),
    it4Um: runs([['page', 16], ['computed', 4], 'memory']),
    it14Um: runs([['page', 16], ['computed', 5]]),
    it15Um: runs([['page', 16], ['computed', 5]]),
    it17Um: runs([['page', 16], ['computed', 5]]),
    it18Um: runs([['page', 16], ['computed', 5]]),
  },
};
