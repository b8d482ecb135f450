import * as z from 'zod/mini';
import { temperatureField } from '../quantity/index.js';
import { candourFields, choiceField, deciding, defineCalculation, findingField, outputNumber, planStep, planStepField, source, spanField, supporting, verdictField, verdictOf, yesNoField, type Finding, type PlanStep, type WorkingStep } from '../result/index.js';
import { bearingFittingShape } from './bearing-fitting-shape.js';
import { bearingSeatShape } from './internal/bearing-seat-fields.js';
import { practiceValue } from './internal/bearing-practice.js';
import { heatLimitC } from './internal/heat-limit.js';
import { allAt20C, interferenceOf, ringState } from './internal/race-change.js';
import { seatProblem, type SeatPart, type SeatProblem } from './internal/seat-parts.js';

const inputField = z.strictObject({
  ...bearingSeatShape,
  isBlindBore: z.optional(yesNoField({ label: 'the bore is blind: nothing reaches behind the bearing' })),
  mustBeReused: z.optional(yesNoField({ label: 'the bearing is to be used again' })),
  isSealedOrGreased: bearingFittingShape.isSealedOrGreased,
  hasPolymerCage: bearingFittingShape.hasPolymerCage,
  caseLimitC: bearingFittingShape.caseLimitC,
  ambientC: z.optional(temperatureField({ label: 'temperature of the workshop', unit: '°C', from: -20, upTo: 50 })),
});

const seatOutField = z.strictObject({
  seat: choiceField(['shaft', 'housing'], { label: 'which seat' }),
  isTight: z.boolean().check(z.meta({ label: 'it may be tight', unit: '' })),
  pullForceN: spanField('force to draw the ring off, clean', 'N'),
  freeByHeatC: z.nullable(outputNumber('the outer of the two parts is free when it alone is as warm as this', '°C')),
  limitC: outputNumber('the outer of the two parts must not pass', '°C'),
});

const outputField = z.strictObject({
  verdict: verdictField,
  seats: z.readonly(z.array(seatOutField)),
  pullBy: choiceField(['inner ring', 'outer ring', 'both rings', 'either'], { label: 'ring that the puller must grip' }),
  steps: z.readonly(z.array(planStepField)),
  findings: z.readonly(z.array(findingField)),
  ...candourFields,
});

export type BearingRemovalInput = z.infer<typeof inputField>;
export type BearingRemovalOutput = z.infer<typeof outputField>;

const handbook = source('bearing-handbook-reprints', 'page', 'press-in and pull-off force');

/** How a bearing comes out: the force on each ring, the heat that frees it, by which ring it is gripped, and whether it may go in again.
 * F = 0.18·p·π·d·B with the interference that smoothing has left; rust and fretting ask for several times that.
 * @returns forces [N] and freeing temperatures [°C] of both seats, steps with cautions, findings
 * @throws CalculationError invalid-input | no-such-class | outside-table
 * @source bearing-handbook-reprints (held as: page)
 * @example bearingRemoval.run({ designation: '6203', shaftClass: 'k5', housingClass: 'H7', housingMaterial: 'al-a380' }).pullBy // 'inner ring'
 */
export const bearingRemoval = defineCalculation({
  name: 'bearing-removal',
  summary: 'How a bearing comes out: force, heat, by which ring, and whether it may go in again',
  input: inputField,
  output: outputField,
  compute(input): BearingRemovalOutput {
    const problem = seatProblem(input);
    const seats = [problem.shaft, problem.housing].filter((part) => part !== null).map((part) => seatOf(problem, part, input));
    const tight = (where: 'shaft' | 'housing') => seats.some(({ seat, isTight }) => seat === where && isTight);
    const pullBy = tight('shaft') && tight('housing') ? 'both rings' : tight('shaft') ? 'inner ring' : tight('housing') ? 'outer ring' : 'either';
    const findings = findingsOf(seats, pullBy, input);
    return { verdict: verdictOf(findings), seats, pullBy, steps: stepsOf(seats, pullBy, input), findings, assumptions: problem.assumptions, notChecked: ['rust-and-fretting', 'heat-soaks-into-shaft', 'force-to-start-and-tilt'] };
  },
  explain(input, output): readonly WorkingStep[] {
    const problem = seatProblem(input);
    const mu = practiceValue('friction-pulling-ring', 'Coefficient');
    return output.seats.flatMap(({ seat, pullForceN }): readonly WorkingStep[] => {
      const part = seat === 'shaft' ? problem.shaft : problem.housing;
      if (part === null || pullForceN.high === 0) return [];
      return [{ kind: 'formula', symbol: 'F', meaning: `force to draw the ring off, ${seat}`, formula: 'mu * p * pi * d * B', scope: { mu: mu.low, p: pressureAt(problem, part, interferenceOf(part).mostUm), d: part.nominalMm, B: problem.rings.widthMm }, value: pullForceN.high, unit: 'N', source: mu.source }];
    });
  },
});

function pressureAt(problem: SeatProblem, part: SeatPart, um: number): number {
  return ringState(problem, part, um, allAt20C, { seat: part.seatMaterial.expansionPerK.probable, ring: part.ringMaterial.expansionPerK.probable }).pressureMpa;
}

function seatOf(problem: SeatProblem, part: SeatPart, input: BearingRemovalInput): BearingRemovalOutput['seats'][number] {
  const { leastUm, mostUm } = interferenceOf(part);
  const mu = practiceValue('friction-pulling-ring', 'Coefficient');
  const force = (um: number) => mu.low * pressureAt(problem, part, um) * Math.PI * part.nominalMm * problem.rings.widthMm;
  const outer = part.where === 'shaft' ? part.ringMaterial : part.seatMaterial;
  return {
    seat: part.where,
    isTight: mostUm > 0,
    pullForceN: { low: force(leastUm), high: force(mostUm) },
    freeByHeatC: mostUm <= 0 ? null : (input.ambientC ?? 20) + mostUm / (1000 * outer.expansionPerK.low * part.nominalMm),
    // A bearing that is thrown away need not be spared for its cage and seals.
    limitC: heatLimitC(part.where, input.mustBeReused === true ? input : { caseLimitC: input.caseLimitC, ambientC: input.ambientC, isSealedOrGreased: false }),
  };
}

function findingsOf(seats: BearingRemovalOutput['seats'], pullBy: BearingRemovalOutput['pullBy'], input: BearingRemovalInput): readonly Finding[] {
  const findings: Finding[] = [];
  for (const { seat, pullForceN, freeByHeatC, limitC } of seats) {
    if (freeByHeatC === null) continue;
    const numbers = { lowForceN: pullForceN.low, highForceN: pullForceN.high, freeC: freeByHeatC, limitC };
    const ring = seat === 'shaft' ? 'inner-ring-draws-off' : 'outer-ring-draws-out';
    findings.push(deciding(freeByHeatC < limitC ? ring : `${ring}-heat-eases`, 'good', numbers, handbook));
  }
  if (input.isBlindBore === true) findings.push(supporting('blind-bore-ways', 'note', {}, source('common-practice', 'practice')));
  if (input.mustBeReused === true && pullBy !== 'either') findings.push(deciding('reuse-only-by-the-tight-ring', 'care', {}, handbook));
  else findings.push(supporting('drawn-bearing-is-scrap', 'note', {}, handbook));
  return findings;
}

function stepsOf(seats: BearingRemovalOutput['seats'], pullBy: BearingRemovalOutput['pullBy'], { isBlindBore }: BearingRemovalInput): readonly PlanStep[] {
  const housing = seats.find(({ seat }) => seat === 'housing');
  const pull = Math.max(0, ...seats.map(({ pullForceN }) => pullForceN.high));
  const steps: PlanStep[] = [
    planStep('bearing-out-note', {}, handbook, ['makers-manual-first', 'machine-cannot-start']),
    planStep('bearing-out-clean-and-free', {}, handbook, ['circlip-flies', 'eye-protection']),
  ];
  if (housing?.freeByHeatC != null) steps.push(planStep(housing.freeByHeatC < housing.limitC ? 'bearing-out-heat-case' : 'bearing-out-ease-by-heat', { warmPartC: housing.freeByHeatC, limitC: housing.limitC }, handbook, ['seals-out-before-heat', 'solvents-washed-off', 'hot-parts-gloves', 'no-flame-for-heating', 'no-food-oven']));
  if (isBlindBore === true) steps.push(planStep('bearing-out-blind', {}, source('common-practice', 'practice'), ['eye-protection', 'parts-fly-when-free']));
  const by = { 'inner ring': 'bearing-out-pull-inner', 'outer ring': 'bearing-out-pull-outer', 'both rings': 'bearing-out-pull-both', either: 'bearing-out-by-hand' } as const;
  steps.push(planStep(by[pullBy], { forceN: pull }, handbook, pullBy === 'either' ? [] : ['parts-fly-when-free', 'eye-protection', 'push-through-the-tight-ring']));
  steps.push(planStep('bearing-out-look-at-seats', {}, handbook, ['cut-edges']));
  return steps;
}
