import * as z from 'zod/mini';
import { candourFields, defineCalculation, findingField, outputNumber, planStepField, source, spanField, verdictField, verdictOf, type Assumption } from '../result/index.js';
import { situationField, type Situation } from '../seal/index.js';
import { tiltShare } from './internal/final-depth.js';
import { seatingOf, type Seating } from './internal/seating.js';
import { seatingFindings, seatingNotChecked } from './internal/seating-findings.js';
import { seatingSteps } from './internal/seating-steps.js';
import { seatingWorking } from './internal/seating-working.js';

const depthField = z.strictObject({
  low: outputNumber('outer face below the housing face, least', 'mm'),
  nominal: outputNumber('outer face below the housing face', 'mm'),
  high: outputNumber('outer face below the housing face, most', 'mm'),
});

const gaugeField = z.strictObject({
  targetMm: outputNumber('depth gauge should read', 'mm'),
  lowMm: outputNumber('depth gauge, at least', 'mm'),
  highMm: outputNumber('depth gauge, at most', 'mm'),
  largestSpreadMm: outputNumber('largest difference between the points', 'mm'),
  pointCount: outputNumber('points around', ''),
});

const gripField = z.strictObject({
  low: outputNumber('length that grips plain bore, least', 'mm'),
  nominal: outputNumber('length that grips plain bore', 'mm'),
  high: outputNumber('length that grips plain bore, most', 'mm'),
});

const outputField = z.strictObject({
  verdict: verdictField,
  seat: z.enum(['flush', 'shoulder', 'depth']).check(z.meta({ label: 'where the seal ends', unit: '' })),
  faceDepthMm: z.nullable(depthField),
  gauge: z.nullable(gaugeField),
  engagedMm: z.nullable(gripField),
  leastEngagedMm: outputNumber('length that should grip', 'mm'),
  boreLeftMm: z.nullable(spanField('bore left behind the seal', 'mm')),
  roomBehindMm: z.nullable(spanField('room to what lies behind', 'mm')),
  moveMm: z.nullable(outputNumber('outer face deeper than the old one by', 'mm')),
  needsLipSleeve: z.boolean().check(z.meta({ label: 'the lip needs a sleeve on its way', unit: '' })),
  steps: z.readonly(z.array(planStepField)),
  findings: z.readonly(z.array(findingField)),
  ...candourFields,
});

export type SeatingPlanOutput = z.infer<typeof outputField>;

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
  compute(situation: Situation): SeatingPlanOutput {
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
      needsLipSleeve: plan.cutsLip !== null || situation.shaft?.leadIn?.kind === 'none',
      steps: seatingSteps(plan),
      findings,
      assumptions: assumptionsOf(plan),
      notChecked: seatingNotChecked(plan),
    };
  },
  explain: (situation: Situation) => seatingWorking(seatingOf(situation)),
});

function assumptionsOf({ final, isChamferKnown, chamferLengthMm, engagedMm, situation, onShaft, section }: Seating): readonly Assumption[] {
  const list: Assumption[] = [...final.assumptions];
  if (!isChamferKnown && engagedMm !== null) list.push({ name: 'bore-chamfer-length', value: chamferLengthMm, unit: 'mm', source: source('jis-b-2402-1-2013', 'page', 'bore chamfer'), effect: 'length-that-grips' });
  if (situation.clearBehindMm !== undefined && situation.oldDepthMm === undefined) list.push({ name: 'clear-behind-at-new-place', value: situation.clearBehindMm, unit: 'mm', source: source('common-practice', 'practice'), effect: 'room-behind' });
  if (onShaft.kind !== 'shaft') list.push(...section.assumptions.shaft);
  list.push({ name: 'largest-tilt', value: tiltShare.good * 100, unit: '%', source: tiltShare.source, effect: 'gauge-limits' });
  return list;
}
