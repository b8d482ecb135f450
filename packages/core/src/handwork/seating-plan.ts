import { defineCalculation } from '../result/index.js';
import { situationField } from '../seal/index.js';
import { explainSeating } from './explain-handwork.js';
import { outputField } from './internal/seating-output.js';
import { planSeating } from './internal/plan-seating.js';

export type { SeatingPlanOutput } from './internal/seating-output.js';

/** Where the new seal ends, what the gauge must read, and the work of getting it there.  h = T − b on a shoulder;  spread ≤ 0.5 % of D
 * @returns final depth, gauge, grip, room behind, steps with cautions; findings; what was assumed and not checked
 * @throws CalculationError invalid-input | outside-table
 * @source workshop-manuals-1995, din-3760-1996 (held as: page); spread general-memory (held as: memory); plain-geometry
 * @example seatingPlan.run({ seal: { shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' }, seat: { kind: 'shoulder' }, bore: { depthMm: 8.5 } }).faceDepthMm?.nominal // 1.5
 */
export const seatingPlan = defineCalculation({
  name: 'seating-plan',
  summary: 'Where the new seal ends, what the depth gauge must read, and how to get it there unharmed',
  input: situationField,
  output: outputField,
  compute: planSeating,
  explain: explainSeating,
});
