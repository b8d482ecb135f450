import { commonPractice, planStep, type PlanStep } from '../../result/index.js';
import type { SealOutcome } from './sheet-output.js';

/** Done once for the machine, before the first seal of several comes out. */
const beforeTheFirst: readonly string[] = ['out-make-safe', 'out-take-off-circlip', 'out-take-off-plate', 'out-free-staking', 'out-take-off-key'];
/** Done once for the machine, when the last seal of several is in. */
const afterTheLast: readonly string[] = ['in-refit-circlip', 'in-refit-plate', 'in-stake-again', 'in-pressure-test-crankcase', 'in-look-for-leaks'];

/** The seals come out from the outside inward; each is named where there are several. */
export function takeOutSteps(outermostFirst: readonly SealOutcome[]): readonly PlanStep[] {
  return outermostFirst.flatMap((seal, i) => named('out-now-the-seal', seal, outermostFirst, (seal.extraction?.steps ?? []).filter(({ code }) => i === 0 || !beforeTheFirst.includes(code))));
}

/** The seals go in from the inside outward. */
export function putInSteps(outermostFirst: readonly SealOutcome[]): readonly PlanStep[] {
  const innermostFirst = [...outermostFirst].reverse();
  return innermostFirst.flatMap((seal, i) => named(i === 0 ? 'in-now-the-seal' : 'in-now-the-next-seal', seal, outermostFirst, (seal.seating?.steps ?? []).filter(({ code }) => i === innermostFirst.length - 1 || !afterTheLast.includes(code))));
}

function named(code: string, { name }: SealOutcome, all: readonly SealOutcome[], steps: readonly PlanStep[]): readonly PlanStep[] {
  if (all.length < 2 || steps.length === 0) return steps;
  return [planStep(code, { name }, commonPractice), ...steps];
}
