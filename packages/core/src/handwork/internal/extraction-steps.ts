import { commonPractice, plainGeometry, planStep, source, type PlanStep, type SourceReference } from '../../result/index.js';
import type { ScrewChoice } from './choose-screw.js';
import type { Extraction } from './extraction.js';
import type { DrillDepth } from './hole-in-face.js';
import { isFixed } from './section.js';
import { atLeastMm, atMostMm, nearMm } from './workshop-length.js';

const manuals: SourceReference = source('workshop-manuals-1995', 'page', 'oil seals');

/** The work of taking the old seal out, in order, with the cautions beside each step. */
export function extractionSteps(plan: Extraction): readonly PlanStep[] {
  const way = { 'push out from inside': pushingOut, 'drill and screw': drilling, 'pull on the rim': hooking }[plan.method];
  return [...looking(plan), ...freeing(plan), ...way(plan), ...finishing(plan)];
}

function looking({ situation, oldDepth }: Extraction): readonly PlanStep[] {
  const { seal, running, lipFacing } = situation;
  const isPetrol = running?.fluid === 'petrol-oil-mix';
  return [
    planStep('out-make-safe', {}, commonPractice, ['makers-manual-first', 'machine-cannot-start', 'hot-parts', 'spinning-parts', ...(isPetrol ? ['petrol-vapour'] : [])]),
    planStep('out-photograph', {}, commonPractice, seal.lipMaterial === 'FKM' ? ['burnt-fluoro-rubber'] : []),
    lipFacing === undefined ? planStep('out-note-lip-facing', {}, commonPractice) : planStep('out-lip-facing-noted', { lipFacing }, commonPractice),
    oldDepthStep(oldDepth),
  ];
}

function oldDepthStep(oldDepth: Extraction['oldDepth']): PlanStep {
  if (oldDepth === null) return planStep('out-measure-old-depth', {}, commonPractice);
  const { leastMm, mostMm } = oldDepth;
  return leastMm === mostMm ? planStep('out-old-depth-noted-once', { depthMm: leastMm }, commonPractice) : planStep('out-old-depth-noted', { leastDepthMm: leastMm, mostDepthMm: mostMm }, commonPractice);
}

function freeing({ situation }: Extraction): readonly PlanStep[] {
  const { retainedBy, running } = situation;
  const isTwoStroke = running?.fluid === 'petrol-oil-mix';
  const steps: PlanStep[] = [planStep('out-drain-and-clean', {}, commonPractice, isTwoStroke ? ['crankcase-stays-clean'] : [])];
  if (retainedBy === undefined) steps.push(planStep('out-look-for-retainer', {}, commonPractice));
  else if (retainedBy === 'circlip') steps.push(planStep('out-take-off-circlip', {}, commonPractice, ['eye-protection', 'circlip-flies']));
  else if (retainedBy === 'plate') steps.push(planStep('out-take-off-plate', {}, commonPractice));
  else if (retainedBy === 'staking') steps.push(planStep('out-free-staking', {}, commonPractice, ['eye-protection', 'chips-stay-out']));
  if (situation.shaft?.obstacles?.some((obstacle) => !isFixed(obstacle)) === true) steps.push(planStep('out-take-off-key', {}, commonPractice));
  steps.push(planStep('out-wrap-shaft', {}, commonPractice));
  return steps;
}

function pushingOut({ pushOut, situation }: Extraction): readonly PlanStep[] {
  if (pushOut === null) return [];
  const isPastShoulder = situation.bore?.innerEnd === 'shoulder' && situation.bore.shoulderInsideMm === undefined;
  return [planStep(isPastShoulder ? 'out-push-past-shoulder' : 'out-push-from-inside', { outsideUpToMm: atMostMm(pushOut.outsideUpToMm), insideOverMm: atLeastMm(pushOut.insideOverMm) }, source('us-army-tm', 'page', 'removal with tubing against the tight ring'), ['eye-protection', 'push-not-lever'])];
}

function drilling(plan: Extraction): readonly PlanStep[] {
  const { screw, depth, reach, face, pullForceN, isPierced } = plan;
  if (screw === null || depth === null || reach === null) return [];
  const steps: PlanStep[] = [
    planStep('out-mark-hole', { holeCircleRadiusMm: nearMm(face.holeCircleRadiusMm), fromShaftMm: nearMm(face.holeCircleRadiusMm - face.innerLimitRadiusMm) }, plainGeometry),
    ...(isPierced ? piercing(plan, depth, screw) : throughTheFace(plan, depth, screw)),
  ];
  steps.push(
    reach.tipFromMm <= reach.tipUpToMm
      ? planStep('out-turn-in-screws', { designation: screw.screw.designation, screwCount: screw.screwCount, tipUpToMm: atMostMm(reach.tipUpToMm), lengthFromMm: atLeastMm(reach.lengthFromMm), headUpToMm: atMostMm(reach.headUpToMm) }, plainGeometry)
      : planStep('out-turn-in-blunt-screws', { designation: screw.screw.designation, screwCount: screw.screwCount, lengthFromMm: atLeastMm(reach.lengthFromMm), headUpToMm: atMostMm(reach.headUpToMm) }, plainGeometry),
  );
  steps.push(
    pullForceN === null
      ? planStep('out-pull-straight', { screwCount: screw.screwCount }, commonPractice, ['eye-protection', 'never-lever-on-shaft-or-bore'])
      : planStep('out-pull-straight-force', { screwCount: screw.screwCount, pullLowN: pullForceN.low, pullHighN: pullForceN.high }, commonPractice, ['eye-protection', 'never-lever-on-shaft-or-bore']),
  );
  steps.push(planStep('out-if-screws-strip', {}, commonPractice, ['no-flame-at-seal']));
  return steps;
}

function throughTheFace({ situation, oldDepth, drillReachMm }: Extraction, { drillStopFromSealFaceMm }: DrillDepth, { screw, screwCount }: ScrewChoice): readonly PlanStep[] {
  const drillMm = screw.pilotMm;
  const isPetrol = situation.running?.fluid === 'petrol-oil-mix';
  const isMagnesium = situation.bore?.material?.startsWith('mg-') === true;
  const fromSealMm = atMostMm(drillStopFromSealFaceMm);
  const fromHousingMm = oldDepth === null ? null : atMostMm(drillStopFromSealFaceMm + oldDepth.meanMm);
  return [
    planStep('out-catch-chips', {}, commonPractice, ['chips-stay-out']),
    ...(drillReachMm === null ? [] : [planStep('out-long-drill', { drillMm, drillReachMm: atLeastMm(drillReachMm) }, commonPractice)]),
    fromHousingMm === null || fromHousingMm === fromSealMm
      ? planStep('out-set-drill-stop', { drillMm, drillStopFromSealFaceMm: fromSealMm }, plainGeometry, ['drill-stop-before-drilling'])
      : planStep('out-set-drill-stop-both', { drillMm, drillStopFromSealFaceMm: fromSealMm, drillStopFromHousingFaceMm: fromHousingMm }, plainGeometry, ['drill-stop-before-drilling']),
    planStep(screwCount === 1 ? 'out-drill-one' : 'out-drill-two', { drillMm }, commonPractice, ['eye-protection', 'spinning-parts', 'drill-must-not-plunge', ...(isPetrol ? ['petrol-vapour'] : []), ...(isMagnesium ? ['magnesium-burns'] : [])]),
    planStep('out-clear-chips', {}, commonPractice, ['nothing-blown-in']),
  ];
}

/** A punch in place of the drill, held back by a collar as the drill is by its stop. */
function piercing({ situation, drillReachMm }: Extraction, { drillStopFromSealFaceMm }: DrillDepth, { screwCount }: ScrewChoice): readonly PlanStep[] {
  return [
    planStep('out-close-the-gap', {}, commonPractice, ['chips-stay-out']),
    planStep('out-pierce-face', { punchReachMm: atLeastMm(drillReachMm ?? 0), punchStopMm: atMostMm(drillStopFromSealFaceMm), holeCount: screwCount }, commonPractice, ['eye-protection', ...(situation.running?.fluid === 'petrol-oil-mix' ? ['petrol-vapour'] : [])]),
  ];
}

function hooking({ face, screw, situation }: Extraction): readonly PlanStep[] {
  const isCovered = screw === null && face.innerLimitBy !== 'shaft';
  const isOutward = situation.lipFacing === 'outward';
  return [
    ...(isCovered ? [planStep('out-clear-the-face', { part: face.innerLimitBy }, commonPractice)] : []),
    planStep('out-close-the-gap', {}, commonPractice, ['chips-stay-out']),
    planStep(isOutward ? 'out-hook-open-side' : 'out-hook-the-rim', {}, source('general-memory', 'memory', 'hook or screw into the case only'), ['eye-protection', 'cut-edges', 'never-lever-on-shaft-or-bore']),
  ];
}

function finishing({ situation }: Extraction): readonly PlanStep[] {
  return [
    planStep('out-count-the-parts', {}, commonPractice, ['nothing-blown-in']),
    planStep('out-look-at-seats', {}, commonPractice, situation.running?.fluid === 'petrol-oil-mix' ? ['crankcase-stays-clean'] : []),
    planStep('out-scrap-old-seal', {}, manuals, ['never-refit-old-seal', 'cut-edges']),
  ];
}
