import { chillCautions, joiningTemperature } from '../../joint/index.js';
import { deciding, planStep, source, supporting, verdictOf, type Assumption, type Finding, type PlanStep, type SourceReference } from '../../result/index.js';
import { practiceValue } from './bearing-practice.js';
import { benchTimeS } from './bench-time.js';
import { closureOf, heatLimitC } from './heat-limit.js';
import { coldPressureMpa, interferenceOf } from './race-change.js';
import { ringsApart } from './rings-apart.js';
import { seatProblem, withHousingMaterial, type SeatPart, type SeatProblem } from './seat-parts.js';
import type { BearingFittingInput, BearingFittingOutput } from './bearing-fitting-fields.js';

type Way = BearingFittingOutput['ways'][number];

export const handbook = source('bearing-handbook-reprints', 'page', 'mounting');

/**
 * How a bearing goes in, from input that is known to be sound: what `bearingFitting` computes.
 * @throws CalculationError no-such-class | outside-table
 * @example planFitting({ designation: '6203', shaftClass: 'k5', housingClass: 'H7', housingMaterial: 'al-a380' }).pushThrough // 'inner ring'
 */
export function planFitting(input: BearingFittingInput): BearingFittingOutput {
  const problem = seatProblem(withHousingMaterial(input));
  const seats = [problem.shaft, problem.housing].filter((part) => part !== null);
  const ways = seats.map((part) => wayOf(problem, part, input));
  const tight = (where: 'shaft' | 'housing') => ways.find((way) => way.seat === where)?.way !== 'slides' && ways.some((way) => way.seat === where);
  const pushThrough = tight('shaft') && tight('housing') ? 'both rings' : tight('shaft') ? 'inner ring' : tight('housing') ? 'outer ring' : 'either';
  const push = Math.max(0, ...ways.map(({ pushForceN }) => pushForceN.high));
  const throughBallsLoadN = push === 0 ? null : push * practiceValue('axial-over-radial-static', 'Factor').low;
  const share = throughBallsLoadN === null || input.basicStaticLoadRatingN === undefined ? null : throughBallsLoadN / input.basicStaticLoadRatingN;
  const { rings } = problem;
  const findings = findingsOf(ways, pushThrough, throughBallsLoadN, share);
  return {
    verdict: verdictOf(findings),
    ways,
    pushThrough,
    innerDriver: { insideOverMm: rings.boreMm, outsideUpToMm: rings.innerRaceMm },
    outerDriver: { insideOverMm: rings.outerRaceMm, outsideUpToMm: rings.outsideMm },
    throughBallsLoadN,
    throughBallsShareRatio: share,
    steps: stepsOf(ways, pushThrough, input),
    findings,
    assumptions: assumptionsOf(problem, input, ways),
    notChecked: ['heat-lost-on-the-way', 'hardness-after-heating', 'shoulder-and-corner', 'force-to-start-and-tilt'],
  };
}

/** Contact pressure [MPa] of one interference before any smoothing: a ring that is pressed on has not smoothed its seat yet. */
export function pressingMpa(problem: SeatProblem, part: SeatPart, interferenceUm: number): number {
  return coldPressureMpa(problem, { ...part, keptRatio: 1 }, interferenceUm);
}

function wayOf(problem: SeatProblem, part: SeatPart, input: BearingFittingInput): Way {
  const { leastUm, mostUm } = interferenceOf(part);
  const isShaft = part.where === 'shaft';
  const ambientC = input.ambientC ?? 20;
  const warm = isShaft ? part.ringMaterial : part.seatMaterial;
  const noGapC = mostUm <= 0 ? ambientC : ambientC + mostUm / (1000 * warm.expansionPerK.low * part.nominalMm);
  const mu = practiceValue('friction-pressing-ring', 'Coefficient');
  const force = (um: number) => mu.low * pressingMpa(problem, part, um) * Math.PI * part.nominalMm * problem.rings.widthMm;
  const pushForceN = { low: force(leastUm), high: force(mostUm) };
  const base = { seat: part.where, mostInterferenceUm: mostUm, noGapC, pushForceN };
  if (mostUm <= 0) return { ...base, way: 'slides', feasible: true, warmPartC: ambientC, coldPartC: ambientC, limitC: ambientC, gapAtLimitUm: 0 - mostUm, benchTimeS: null };
  const chilledTo = (innerLimitC: number) => joining(problem, part, input, innerLimitC);
  const heat = chilledTo(ambientC);
  // Where heat leaves less gap than wanted, cold helps only if somebody said how cold.
  const isColdAsked = !heat.feasible && (heat.gapAtLimitUm < 0 || input.coldestPartC !== undefined);
  const cold = isColdAsked ? chilledTo(Math.min(coldest(part, input).c, ambientC)) : null;
  const joined = cold?.feasible === true ? cold : heat;
  const way = joined === cold ? 'chill too' : heat.gapAtLimitUm < 0 ? 'press cold' : isShaft ? 'heat the bearing' : 'heat the case';
  const isPressed = way === 'press cold';
  const isHot = !isPressed && joined.outerPartC > noGapC + 1e-6;
  return {
    ...base, way, feasible: heat.feasible, warmPartC: isPressed ? ambientC : joined.outerPartC, coldPartC: isPressed ? ambientC : joined.innerPartC,
    limitC: heat.outerLimitC, gapAtLimitUm: heat.gapAtLimitUm,
    benchTimeS: isHot && isShaft ? benchTimeS(problem.rings, joined.outerPartC, noGapC, ambientC) : null,
  };
}

/** How the parts of one seat go together, the inner part chilled no further than this. */
function joining(problem: SeatProblem, part: SeatPart, input: BearingFittingInput, innerLimitC: number) {
  const isShaft = part.where === 'shaft';
  return joiningTemperature.compute({
    jointDiameterMm: part.nominalMm, interferenceUm: interferenceOf(part).mostUm, ambientC: input.ambientC ?? 20, innerLimitC,
    outerMaterial: isShaft ? part.given.ring : part.given.seat,
    innerMaterial: isShaft ? part.given.seat : part.given.ring,
    ...(input.slipInGapUm === undefined ? {} : { joiningClearanceUm: input.slipInGapUm }),
    outerLimitC: heatLimitC(part.where, input),
    ...(isShaft && closureOf(input) !== 'open' ? { hasSealOrGrease: true } : {}),
    materials: [...problem.materials],
  });
}

/**
 * How cold the inner part may be made: as was said, else as dry ice gives; liquid nitrogen is no tool of a small workshop.
 * A bearing that is chilled for a case stands less cold than that, whatever was said.
 */
function coldest({ where }: Pick<SeatPart, 'where'>, { coldestPartC }: BearingFittingInput): { readonly c: number; readonly source: SourceReference } {
  const limit = where === 'shaft' ? practiceValue('dry-ice', 'C') : practiceValue('cold-limit-bearing', 'C');
  const c = coldestPartC === undefined ? limit.low : where === 'shaft' ? coldestPartC : Math.max(coldestPartC, limit.low);
  return { c, source: limit.source };
}

function findingsOf(ways: readonly Way[], pushThrough: BearingFittingOutput['pushThrough'], throughBallsLoadN: number | null, share: number | null): readonly Finding[] {
  const findings: Finding[] = [];
  for (const { seat, way, feasible, warmPartC, coldPartC, noGapC, limitC, gapAtLimitUm, pushForceN } of ways) {
    const numbers = { warmPartC, coldPartC, noGapC, limitC, gapUm: Math.abs(gapAtLimitUm), forceN: pushForceN.high };
    const where = seat === 'shaft' ? 'bearing' : 'case';
    if (way === 'slides') findings.push(deciding(seat === 'shaft' ? 'inner-ring-slides-on' : 'outer-ring-slides-in', 'good', { gapUm: gapAtLimitUm }, handbook));
    else if (way === 'press cold') findings.push(deciding(`${where}-heat-is-not-enough`, 'care', numbers, handbook));
    else if (way === 'chill too') findings.push(deciding(`${where}-heat-and-chill`, 'care', numbers, handbook));
    else findings.push(deciding(feasible ? `${where}-heat-gives-the-gap` : `${where}-heat-gives-less-gap`, feasible ? 'good' : 'care', numbers, handbook));
  }
  if (pushThrough !== 'either') findings.push(supporting(`push-${pushThrough.replace(' ', '-')}`, 'note', {}, handbook));
  if (share !== null && throughBallsLoadN !== null) findings.push(supporting(share > practiceValue('brinell-load-share', 'Factor').low ? 'balls-would-dent' : 'balls-bear-the-push', 'care', { loadN: throughBallsLoadN, shareRatio: share }, source('iso-76-2006', 'memory', 'static load rating')));
  else if (throughBallsLoadN !== null) findings.push(supporting('never-through-the-balls', 'care', { loadN: throughBallsLoadN }, handbook));
  return findings;
}

function stepsOf(ways: readonly Way[], pushThrough: BearingFittingOutput['pushThrough'], input: BearingFittingInput): readonly PlanStep[] {
  const { housingMaterial } = input;
  const isMagnesium = typeof housingMaterial === 'string' && housingMaterial.startsWith('mg-');
  const steps: PlanStep[] = [planStep('bearing-in-compare', {}, handbook, ['makers-manual-first']), ...ringsApart(input)];
  const heats = ways.filter(({ way }) => way !== 'slides' && way !== 'press cold');
  steps.push(planStep('bearing-in-wash-and-dry', {}, handbook, heats.length > 0 ? ['solvents-washed-off'] : []));
  for (const { seat, way, warmPartC, coldPartC, limitC } of ways) {
    if (way === 'heat the case' || (way === 'chill too' && seat === 'housing')) steps.push(planStep('bearing-in-heat-case', { warmPartC, limitC }, handbook, ['seals-out-before-heat', 'hot-parts-gloves', 'no-flame-for-heating', 'no-food-oven', ...(isMagnesium ? ['magnesium-burns'] : [])]));
    if (way === 'heat the bearing' || (way === 'chill too' && seat === 'shaft')) steps.push(planStep(closureOf(input) !== 'open' ? 'bearing-in-heat-sealed' : 'bearing-in-heat-bearing', { warmPartC, limitC }, handbook, ['hot-parts-gloves', 'no-flame-for-heating', 'no-food-oven']));
    if (way === 'chill too') steps.push(planStep('bearing-in-chill', { coldPartC }, handbook, chillCautions(coldPartC)));
  }
  if (heats.length > 0) steps.push(planStep('bearing-in-slip-in', {}, handbook, ['join-in-one-go', 'hot-parts-gloves']));
  for (const { seat, way, pushForceN } of ways) if (way === 'press cold') steps.push(planStep(seat === 'shaft' ? 'bearing-in-press-on' : 'bearing-in-press-into', { forceN: pushForceN.high }, handbook, ['press-straight', 'push-through-the-tight-ring', 'eye-protection']));
  if (heats.length === 0 && !ways.some(({ way }) => way === 'press cold')) steps.push(planStep('bearing-in-push-by-hand', {}, handbook));
  steps.push(planStep('bearing-in-hold-while-cooling', {}, handbook, pushThrough === 'either' ? [] : ['push-through-the-tight-ring']), planStep('bearing-in-turn-cold', {}, handbook));
  return steps;
}

function assumptionsOf(problem: SeatProblem, input: BearingFittingInput, ways: readonly Way[]): readonly Assumption[] {
  const list = [...problem.assumptions];
  if (closureOf(input) === 'perhaps sealed') list.push({ name: 'suffix-may-mean-seals', value: 'sealed', unit: '', source: source('common-practice', 'practice'), effect: 'how-hot' });
  if (input.ambientC === undefined) list.push({ name: 'workshop-at-20', value: 20, unit: '°C', source: source('common-practice', 'practice'), effect: 'how-hot' });
  if (input.coldestPartC === undefined) {
    for (const { seat, way } of ways) {
      if (way !== 'chill too' && way !== 'press cold') continue;
      const { c, source: by } = coldest({ where: seat }, input);
      list.push({ name: seat === 'shaft' ? 'shaft-chilled-to' : 'bearing-chilled-to', value: c, unit: '°C', source: by, effect: 'whether-heat-is-enough' });
    }
  }
  return list;
}
