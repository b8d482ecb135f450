import { commonPractice, planStep, type PlanStep } from '../../result/index.js';
import type { SealOutcome } from './sheet-output.js';

/** Done once for the machine, before the first seal of several comes out. */
const beforeTheFirst: readonly string[] = ['out-make-safe', 'out-take-off-circlip', 'out-take-off-plate', 'out-free-staking', 'out-take-off-key'];
/** Done once for the machine, when the last seal of several is in; in this order. */
const afterTheLast: readonly string[] = ['in-refit-circlip', 'in-refit-plate', 'in-stake-again', 'in-pressure-test-crankcase', 'in-look-for-leaks'];

/** The seals come out from the outside inward; each is named where there are several. */
export function takeOutSteps(outermostFirst: readonly SealOutcome[]): readonly PlanStep[] {
  const plans = outermostFirst.map((seal) => ({ seal, steps: seal.extraction?.steps ?? [] })).filter(({ steps }) => steps.length > 0);
  if (outermostFirst.length < 2) return plans.flatMap(({ steps }) => steps);
  const shared = sharedSteps(plans.flatMap(({ steps }) => steps), beforeTheFirst);
  // What is done once stands where the first seal has it, with what every seal says to beware of.
  return plans.flatMap(({ seal, steps }, i) => [now('out-now-the-seal', seal), ...steps.flatMap((step) => (beforeTheFirst.includes(step.code) ? (i === 0 ? shared.filter(({ code }) => code === step.code) : []) : [step]))]);
}

/** The seals go in from the inside outward. */
export function putInSteps(outermostFirst: readonly SealOutcome[]): readonly PlanStep[] {
  const plans = [...outermostFirst].reverse().map((seal) => ({ seal, steps: seal.seating?.steps ?? [] })).filter(({ steps }) => steps.length > 0);
  if (outermostFirst.length < 2) return plans.flatMap(({ steps }) => steps);
  const all = plans.flatMap(({ steps }) => steps);
  const next = nextSealCode(all);
  return [...plans.flatMap(({ seal, steps }, i) => [now(i === 0 ? 'in-now-the-seal' : next, seal), ...steps.filter(({ code }) => !afterTheLast.includes(code))]), ...sharedSteps(all, afterTheLast)];
}

function now(code: string, { name }: SealOutcome): PlanStep {
  return planStep(code, { name }, commonPractice);
}

/** Of the steps those of these codes, each once, with the cautions of all: one seal may keep petrol in, the other water out. */
function sharedSteps(steps: readonly PlanStep[], codes: readonly string[]): readonly PlanStep[] {
  return codes.flatMap((code) => {
    const alike = steps.filter((step) => step.code === code);
    const [first] = alike;
    return first === undefined ? [] : [{ ...first, cautions: [...new Set(alike.flatMap(({ cautions }) => cautions))] }];
  });
}

/** What fills the space between two seals goes by what their rubbers bear: no grease where brake fluid is, silicone where one swells in oil. */
function nextSealCode(steps: readonly PlanStep[]): string {
  const has = (wanted: string) => steps.some(({ code }) => code === wanted);
  if (has('in-wet-with-brake-fluid')) return 'in-now-the-next-seal-dry';
  return has('in-wet-without-oil') ? 'in-now-the-next-seal-silicone' : 'in-now-the-next-seal';
}
