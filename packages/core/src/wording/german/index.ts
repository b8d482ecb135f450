import type { Catalogue } from '../catalogue.js';
import { germanBearingSeatWords } from './bearing-seat.js';
import { germanBearingWorkWords } from './bearing-work.js';
import { germanCautionWords } from './cautions.js';
import { germanErrorNames } from './errors.js';
import { germanFieldNames } from './fields.js';
import { germanFitsWords } from './fits.js';
import { germanHandworkWords } from './handwork.js';
import { germanJobWords } from './job.js';
import { germanJointWords } from './joint.js';
import { germanLeakWords } from './leaks.js';
import { germanMeasuresWords } from './measures.js';
import { germanTableNames, germanUnits } from './names.js';
import { germanSealWords } from './seal.js';
import { germanWorkingNames } from './working.js';

/** German, complete. */
export const german: Catalogue = {
  language: 'de',
  decimalMark: ',',
  units: germanUnits,
  dayForm: '{day}.{month}.{year}',
  findings: { ...germanFitsWords.findings, ...germanMeasuresWords.findings, ...germanJointWords.findings, ...germanSealWords.findings, ...germanBearingSeatWords.findings, ...germanBearingWorkWords.findings, ...germanHandworkWords.findings, ...germanLeakWords.findings, ...germanJobWords.findings },
  steps: { ...germanHandworkWords.steps, ...germanLeakWords.steps, ...germanBearingWorkWords.steps, ...germanJobWords.steps },
  cautions: germanCautionWords,
  notChecked: { ...germanFitsWords.notChecked, ...germanMeasuresWords.notChecked, ...germanJointWords.notChecked, ...germanSealWords.notChecked, ...germanBearingSeatWords.notChecked, ...germanBearingWorkWords.notChecked, ...germanHandworkWords.notChecked, ...germanLeakWords.notChecked, ...germanJobWords.notChecked },
  assumed: { ...germanFitsWords.assumed, ...germanMeasuresWords.assumed, ...germanJointWords.assumed, ...germanSealWords.assumed, ...germanBearingSeatWords.assumed, ...germanBearingWorkWords.assumed, ...germanHandworkWords.assumed },
  effects: { ...germanFitsWords.effects, ...germanMeasuresWords.effects, ...germanJointWords.effects, ...germanSealWords.effects, ...germanBearingSeatWords.effects, ...germanBearingWorkWords.effects, ...germanHandworkWords.effects, ...germanJobWords.effects },
  readings: { ...germanFitsWords.readings, ...germanMeasuresWords.readings, ...germanJointWords.readings, ...germanSealWords.readings, ...germanBearingSeatWords.readings, ...germanBearingWorkWords.readings, ...germanHandworkWords.readings },
  labels: germanJobWords.labels,
  values: { ...germanMeasuresWords.values, ...germanBearingWorkWords.values, ...germanHandworkWords.values, ...germanLeakWords.values, ...germanJobWords.values },
  names: { ...germanErrorNames, ...germanWorkingNames, ...germanTableNames, ...germanFieldNames },
};
