import { driverSearch, extractionPlan, seatingPlan } from '../../handwork/index.js';
import type { WorkingStep } from '../../result/index.js';
import { sealCheck, type Situation } from '../../seal/index.js';
import type { WorkshopFile } from '../workshop-file-field.js';
import { attempt } from './attempt.js';

/** Working of a seal on a sheet. */
export function sealWorking(situation: Situation, workshop: WorkshopFile): readonly WorkingStep[] {
  const steps: WorkingStep[] = [];
  const withTools = workshop.toolsAtHand === undefined ? situation : { ...situation, toolsAtHand: workshop.toolsAtHand };
  const add = <I, O>(calculation: { compute(input: I): O; explain(input: I, output: O): readonly WorkingStep[] }, input: I) => {
    const output = attempt(() => calculation.compute(input));
    if ('value' in output) steps.push(...calculation.explain(input, output.value));
  };
  add(sealCheck, situation);
  add(extractionPlan, situation);
  add(driverSearch, withTools);
  add(seatingPlan, situation);
  return steps;
}
