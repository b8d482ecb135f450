import { allTogether, type Catalogue } from '../catalogue.js';
import { bearingSeatWords } from './bearing-seat.js';
import { bearingWorkWords } from './bearing-work.js';
import { cautionWords } from './cautions.js';
import { fitsWords } from './fits.js';
import { handworkWords } from './handwork.js';
import { holdAndDrawWords } from './hold-and-draw.js';
import { jobWords } from './job.js';
import { jointWords } from './joint.js';
import { leakWords } from './leaks.js';
import { measuresWords } from './measures.js';
import { sealWords } from './seal.js';
import { sizesAndHeatWords } from './sizes-and-heat.js';
import { takingApartWords } from './taking-apart.js';

/** English, complete. */
export const english: Catalogue = {
  language: 'en',
  decimalMark: '.',
  units: {},
  dayForm: '{year}-{month}-{day}',
  ...allTogether([fitsWords, measuresWords, jointWords, takingApartWords, sealWords, sizesAndHeatWords, bearingSeatWords, bearingWorkWords, handworkWords, holdAndDrawWords, leakWords, jobWords]),
  cautions: cautionWords,
  labels: jobWords.labels,
  names: {},
};
