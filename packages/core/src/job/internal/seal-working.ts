import { explainDrivers, explainExtraction, explainSeating } from '../../handwork/index.js';
import type { WorkingStep } from '../../result/index.js';
import { explainSeal, type Situation } from '../../seal/index.js';
import type { WorkshopFile } from '../workshop-file-field.js';
import { attempt } from './attempt.js';

/** Working of a seal on a sheet: a part of it that cannot be computed is left out. */
export function sealWorking(situation: Situation, workshop: WorkshopFile): readonly WorkingStep[] {
  const withTools = workshop.toolsAtHand === undefined ? situation : { ...situation, toolsAtHand: workshop.toolsAtHand };
  return [() => explainSeal(situation), () => explainExtraction(situation), () => explainDrivers(withTools), () => explainSeating(situation)].flatMap((explain) => {
    const steps = attempt(explain);
    return 'value' in steps ? steps.value : [];
  });
}
