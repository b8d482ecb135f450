import { allTogether, type Catalogue } from '../catalogue.js';
import { germanBearingSeatWords } from './bearing-seat.js';
import { germanBearingWorkWords } from './bearing-work.js';
import { germanCautionWords } from './cautions.js';
import { germanErrorNames } from './errors.js';
import { germanFieldNames } from './fields.js';
import { germanFitsWords } from './fits.js';
import { germanHandworkWords } from './handwork.js';
import { germanHoldAndDrawWords } from './hold-and-draw.js';
import { germanJobWords } from './job.js';
import { germanJointWords } from './joint.js';
import { germanLeakWords } from './leaks.js';
import { germanMeasuresWords } from './measures.js';
import { germanTableNames, germanUnits } from './names.js';
import { germanSealWords } from './seal.js';
import { germanSizesAndHeatWords } from './sizes-and-heat.js';
import { germanTakingApartWords } from './taking-apart.js';
import { germanWorkingNames } from './working.js';

/** German, complete. */
export const german: Catalogue = {
  language: 'de',
  decimalMark: ',',
  units: germanUnits,
  dayForm: '{day}.{month}.{year}',
  ...allTogether([germanFitsWords, germanMeasuresWords, germanJointWords, germanTakingApartWords, germanSealWords, germanSizesAndHeatWords, germanBearingSeatWords, germanBearingWorkWords, germanHandworkWords, germanHoldAndDrawWords, germanLeakWords, germanJobWords]),
  cautions: germanCautionWords,
  labels: germanJobWords.labels,
  names: { ...germanErrorNames, ...germanWorkingNames, ...germanTableNames, ...germanFieldNames },
};
