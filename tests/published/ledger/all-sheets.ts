import { ansiB41 } from '../ansi-b4-1/sheets.js';
import { bearings } from '../bearings/sheets.js';
import { iso2861 } from '../iso-286-1/sheets.js';
import { iso2862 } from '../iso-286-2/sheets.js';
import { pressFits } from '../press-fits/sheets.js';
import { ratingLives } from '../rating-life/sheets.js';
import { seals } from '../seals/sheets.js';
import { statistics } from '../statistics/sheets.js';
import { workshop } from '../workshop/sheets.js';
import type { Sheet } from './sheet.js';

/** Every published value that is checked, by source. */
export const allSheets: readonly Sheet[] = [...iso2861, ...iso2862, ...ansiB41, ...bearings, ...seals, ...ratingLives, ...pressFits, ...workshop, ...statistics];
