import type { Catalogue } from '../catalogue.js';
import { cautionWords } from './cautions.js';
import { handworkWords } from './handwork.js';
import { jobWords } from './job.js';
import { sealWords } from './seal.js';

/** English, complete. */
export const english: Catalogue = {
  language: 'en',
  findings: { ...sealWords.findings, ...handworkWords.findings, ...jobWords.findings },
  steps: { ...handworkWords.steps, ...jobWords.steps },
  cautions: cautionWords,
  notChecked: { ...sealWords.notChecked, ...handworkWords.notChecked, ...jobWords.notChecked },
  assumed: { ...sealWords.assumed, ...handworkWords.assumed },
  effects: { ...sealWords.effects, ...handworkWords.effects, ...jobWords.effects },
  readings: { ...sealWords.readings, ...handworkWords.readings },
  labels: jobWords.labels,
  values: { ...handworkWords.values, ...jobWords.values },
};
