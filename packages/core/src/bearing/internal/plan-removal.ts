import { deciding, planStep, source, supporting, verdictOf, type Finding, type PlanStep } from '../../result/index.js';
import { practiceValue } from './bearing-practice.js';
import { heatLimitC } from './heat-limit.js';
import { coldPressureMpa, interferenceOf } from './race-change.js';
import { ringsApart } from './rings-apart.js';
import { seatProblem, withHousingMaterial, type SeatPart, type SeatProblem } from './seat-parts.js';
import type { BearingRemovalInput, BearingRemovalOutput } from './bearing-removal-fields.js';

const handbook = source('bearing-handbook-reprints', 'page', 'press-in and pull-off force');

/**
 * How a bearing comes out, from input that is known to be sound: what `bearingRemoval` computes.
 * @throws CalculationError no-such-class | outside-table
 * @example planRemoval({ designation: '6203', shaftClass: 'k5', housingClass: 'H7', housingMaterial: 'al-a380' }).pullBy // 'inner ring'
 */
export function planRemoval(input: BearingRemovalInput): BearingRemovalOutput {
  const problem = seatProblem(withHousingMaterial(input));
  const seats = [problem.shaft, problem.housing].filter((part) => part !== null).map((part) => seatOf(problem, part, input));
  const tight = (where: 'shaft' | 'housing') => seats.some(({ seat, isTight }) => seat === where && isTight);
  const pullBy = tight('shaft') && tight('housing') ? 'both rings' : tight('shaft') ? 'inner ring' : tight('housing') ? 'outer ring' : 'either';
  const findings = findingsOf(seats, pullBy, input);
  return { verdict: verdictOf(findings), seats, pullBy, steps: stepsOf(seats, pullBy, input), findings, assumptions: problem.assumptions, notChecked: ['rust-and-fretting', 'heat-soaks-into-shaft', 'force-to-start-and-tilt'] };
}

function seatOf(problem: SeatProblem, part: SeatPart, input: BearingRemovalInput): BearingRemovalOutput['seats'][number] {
  const { leastUm, mostUm } = interferenceOf(part);
  const mu = practiceValue('friction-pulling-ring', 'Coefficient');
  const force = (um: number) => mu.low * coldPressureMpa(problem, part, um) * Math.PI * part.nominalMm * problem.rings.widthMm;
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

function stepsOf(seats: BearingRemovalOutput['seats'], pullBy: BearingRemovalOutput['pullBy'], input: BearingRemovalInput): readonly PlanStep[] {
  const { isBlindBore } = input;
  const housing = seats.find(({ seat }) => seat === 'housing');
  const pull = Math.max(0, ...seats.map(({ pullForceN }) => pullForceN.high));
  const steps: PlanStep[] = [
    planStep('bearing-out-note', {}, handbook, ['makers-manual-first', 'machine-cannot-start']),
    ...ringsApart(input),
    planStep('bearing-out-clean-and-free', {}, handbook, ['circlip-flies', 'eye-protection']),
  ];
  if (housing?.freeByHeatC != null) steps.push(planStep(housing.freeByHeatC < housing.limitC ? 'bearing-out-heat-case' : 'bearing-out-ease-by-heat', { warmPartC: housing.freeByHeatC, limitC: housing.limitC }, handbook, ['seals-out-before-heat', 'solvents-washed-off', 'hot-parts-gloves', 'no-flame-for-heating', 'no-food-oven']));
  if (isBlindBore === true) steps.push(planStep('bearing-out-blind', {}, source('common-practice', 'practice'), ['eye-protection', 'parts-fly-when-free']));
  const by = { 'inner ring': 'bearing-out-pull-inner', 'outer ring': 'bearing-out-pull-outer', 'both rings': 'bearing-out-pull-both', either: 'bearing-out-by-hand' } as const;
  steps.push(planStep(by[pullBy], { forceN: pull }, handbook, pullBy === 'either' ? [] : ['parts-fly-when-free', 'eye-protection', 'push-through-the-tight-ring']));
  steps.push(planStep('bearing-out-look-at-seats', {}, handbook, ['cut-edges']));
  return steps;
}
