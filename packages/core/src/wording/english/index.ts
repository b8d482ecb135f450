import type { Catalogue } from '../catalogue.js';
import { bearingSeatWords } from './bearing-seat.js';
import { bearingWorkWords } from './bearing-work.js';
import { cautionWords } from './cautions.js';
import { fitsWords } from './fits.js';
import { handworkWords } from './handwork.js';
import { jobWords } from './job.js';
import { jointWords } from './joint.js';
import { leakWords } from './leaks.js';
import { measuresWords } from './measures.js';
import { sealWords } from './seal.js';

/** English, complete. */
export const english: Catalogue = {
  language: 'en',
  decimalMark: '.',
  units: {},
  dayForm: '{year}-{month}-{day}',
  findings: { ...fitsWords.findings, ...measuresWords.findings, ...jointWords.findings, ...sealWords.findings, ...bearingSeatWords.findings, ...bearingWorkWords.findings, ...handworkWords.findings, ...leakWords.findings, ...jobWords.findings },
  steps: { ...handworkWords.steps, ...leakWords.steps, ...bearingWorkWords.steps, ...jobWords.steps },
  cautions: cautionWords,
  notChecked: { ...fitsWords.notChecked, ...measuresWords.notChecked, ...jointWords.notChecked, ...sealWords.notChecked, ...bearingSeatWords.notChecked, ...bearingWorkWords.notChecked, ...handworkWords.notChecked, ...leakWords.notChecked, ...jobWords.notChecked },
  assumed: { ...fitsWords.assumed, ...measuresWords.assumed, ...jointWords.assumed, ...sealWords.assumed, ...bearingSeatWords.assumed, ...bearingWorkWords.assumed, ...handworkWords.assumed },
  effects: { ...fitsWords.effects, ...measuresWords.effects, ...jointWords.effects, ...sealWords.effects, ...bearingSeatWords.effects, ...bearingWorkWords.effects, ...handworkWords.effects, ...jobWords.effects },
  readings: { ...fitsWords.readings, ...measuresWords.readings, ...jointWords.readings, ...sealWords.readings, ...bearingSeatWords.readings, ...bearingWorkWords.readings, ...handworkWords.readings },
  labels: jobWords.labels,
  values: { ...measuresWords.values, ...bearingWorkWords.values, ...handworkWords.values, ...leakWords.values, ...jobWords.values },
  names: {},
};
