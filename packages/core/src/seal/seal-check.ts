import { defineCalculation } from '../result/index.js';
import { explainSeal } from './explain-seal.js';
import { judgeSeal } from './internal/judge-seal.js';
import { outputField } from './internal/seal-check-output.js';
import { situationField } from './situation-field.js';

export type { SealCheckOutput } from './internal/seal-check-output.js';

/** Does this seal suit this shaft and this bore, as measured, cold and hot, at this speed, in this fluid?
 * @returns verdict, findings with limit, source and what to do; the numbers behind them; assumptions and what was not checked
 * @throws CalculationError invalid-input | outside-table
 * @source iso-6194-1-2007 with din-3760-1996 where ISO is silent; each finding names its own
 * @example sealCheck.run({ seal: { shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' } }).verdict // 'cannot tell'
 */
export const sealCheck = defineCalculation({
  name: 'seal-check',
  summary: 'Does this seal suit this shaft and this bore, as measured, cold and hot?',
  input: situationField,
  output: outputField,
  compute: judgeSeal,
  explain: explainSeal,
});
