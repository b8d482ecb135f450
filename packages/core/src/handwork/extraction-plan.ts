import * as z from 'zod/mini';
import { lengthField } from '../quantity/index.js';
import { defineCalculation } from '../result/index.js';
import { situationShape } from '../seal/index.js';
import { explainExtraction } from './explain-handwork.js';
import { outputField } from './internal/extraction-output.js';
import { planExtraction } from './internal/plan-extraction.js';

export type { ExtractionPlanOutput } from './internal/extraction-output.js';

const inputField = z.strictObject({
  ...situationShape,
  leastWallMm: z.optional(lengthField({ label: 'least wall beside the hole, to the shaft and to the case', unit: 'mm', from: 0.3, upTo: 20, typical: '1' })),
});

/** How the old seal comes out without harm to shaft, bore and what lies behind.  hole midway: r = (r_shaft + r_case)/2;  stop = face + drill point
 * @returns method, steps with cautions, hole, screw and forces; findings; what was assumed and not checked
 * @throws CalculationError invalid-input | outside-table
 * @source din-7975, en-iso-1478 (held as: page); forces plain-mechanics with en-10130 (held as: memory); otherwise common practice
 * @example extractionPlan.run({ seal: { shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' } }).method // 'drill and screw'
 */
export const extractionPlan = defineCalculation({
  name: 'extraction-plan',
  summary: 'How the old seal comes out: where to drill, how deep, which screw, and what to look at first',
  input: inputField,
  output: outputField,
  compute: planExtraction,
  explain: explainExtraction,
});
