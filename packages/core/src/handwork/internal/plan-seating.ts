import { source, verdictOf, type Assumption } from '../../result/index.js';
import type { Situation } from '../../seal/index.js';
import type { SeatingPlanOutput } from './seating-output.js';
import { tiltShare } from './final-depth.js';
import { seatingOf, type Seating } from './seating.js';
import { seatingFindings, seatingNotChecked } from './seating-findings.js';
import { seatingSteps } from './seating-steps.js';

/** What `seatingPlan` answers, apart from its schemas and its working, which a sheet need not fetch. Trusts its input. @internal */
export function planSeating(situation: Situation): SeatingPlanOutput {
  const plan = seatingOf(situation);
  const findings = seatingFindings(plan);
  return {
    verdict: verdictOf(findings),
    seat: plan.final.kind,
    faceDepthMm: plan.final.depthMm,
    gauge: plan.gauge,
    engagedMm: plan.engagedMm,
    leastEngagedMm: plan.leastEngagedMm,
    boreLeftMm: plan.boreLeftMm,
    roomBehindMm: plan.roomBehindMm,
    moveMm: plan.moveMm,
    needsLipSleeve: plan.cutsLip.length > 0 || situation.shaft?.leadIn?.kind === 'none',
    steps: seatingSteps(plan),
    findings,
    assumptions: assumptionsOf(plan),
    notChecked: seatingNotChecked(plan),
  };
}

function assumptionsOf({ final, isChamferKnown, chamferLengthMm, engagedMm, situation, onShaft, section }: Seating): readonly Assumption[] {
  const list: Assumption[] = [...final.assumptions];
  if (!isChamferKnown && engagedMm !== null) list.push({ name: 'bore-chamfer-length', value: chamferLengthMm, unit: 'mm', source: source('jis-b-2402-1-2013', 'page', 'bore chamfer'), effect: 'length-that-grips' });
  if (situation.clearBehindMm !== undefined && situation.oldDepthMm === undefined) list.push({ name: 'clear-behind-at-new-place', value: situation.clearBehindMm, unit: 'mm', source: source('common-practice', 'practice'), effect: 'room-behind' });
  if (onShaft.kind !== 'shaft') list.push(...section.assumptions.shaft);
  list.push({ name: 'largest-tilt', value: tiltShare.good * 100, unit: '%', source: tiltShare.source, effect: 'gauge-limits' });
  return list;
}
