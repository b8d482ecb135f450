import * as z from 'zod/mini';
import { lengthField } from '../quantity/index.js';
import { candourFields, commonPractice, defineCalculation, findingField, outputNumber, planStepField, source, spanField, verdictField, verdictOf, type Assumption } from '../result/index.js';
import { holdsByMetal, situationShape } from '../seal/index.js';
import { extractionMethods, extractionOf, practice, type Extraction, type ExtractionInput } from './internal/extraction.js';
import { extractionFindings, extractionNotChecked } from './internal/extraction-findings.js';
import { extractionSteps } from './internal/extraction-steps.js';
import { extractionWorking } from './internal/extraction-working.js';
import { sheetTensileMpa, shearShare } from './internal/sheet-screw.js';

const inputField = z.strictObject({
  ...situationShape,
  leastWallMm: z.optional(lengthField({ label: 'least wall beside the hole, to the shaft and to the case', unit: 'mm', from: 0.3, upTo: 20, typical: '1' })),
});

const holeField = z.strictObject({
  innerLimitRadiusMm: outputNumber('inner limit of the free face, as a radius', 'mm'),
  outerLimitRadiusMm: outputNumber("inside of the case's outer wall, as a radius", 'mm'),
  freeWidthMm: outputNumber('width of the free face', 'mm'),
  holeCircleRadiusMm: outputNumber('radius of the circle that the holes lie on', 'mm'),
  leastWallMm: outputNumber('least wall beside the hole', 'mm'),
  largestDrillMm: z.nullable(outputNumber('largest drill that leaves the least wall', 'mm')),
  drillMm: z.nullable(outputNumber('drill', 'mm')),
  wallToShaftMm: outputNumber('wall between hole and shaft', 'mm'),
  wallToCaseMm: outputNumber("wall between hole and the case's outer wall", 'mm'),
  faceThicknessMm: spanField('thickness of the face', 'mm'),
  drillPointMm: z.nullable(outputNumber('length of the drill point', 'mm')),
  breakthroughMm: z.nullable(outputNumber('travel until the hole is through', 'mm')),
  drillStopFromSealFaceMm: z.nullable(outputNumber('drill past a stop that lands on the seal', 'mm')),
  drillStopFromHousingFaceMm: z.nullable(outputNumber('drill past a stop that lands on the housing face', 'mm')),
  roomInSealMm: z.nullable(outputNumber('room behind the face inside the seal itself', 'mm')),
  roomBehindMm: z.nullable(outputNumber('room behind the face up to what lies there', 'mm')),
  roomNeededMm: z.nullable(outputNumber('room that the drill needs behind the face', 'mm')),
  drillReachMm: z.nullable(outputNumber('free length of drill that passes the shaft', 'mm')),
});

const screwField = z.strictObject({
  designation: z.string().check(z.meta({ label: 'screw', unit: '' })),
  outsideMm: outputNumber('outside diameter of the thread', 'mm'),
  pitchMm: outputNumber('pitch', 'mm'),
  pilotMm: outputNumber('pilot hole', 'mm'),
  sheetMm: spanField('metal of the face', 'mm'),
  turnsOfBiteRatio: outputNumber('turns of bite', ''),
  tipFromMm: outputNumber('point below the outer face of the seal, at least', 'mm'),
  tipUpToMm: outputNumber('point below the outer face of the seal, at most', 'mm'),
  lengthFromMm: outputNumber('length under the head, at least', 'mm'),
  headUpToMm: outputNumber('largest head that clears the shaft', 'mm'),
});

const outputField = z.strictObject({
  verdict: verdictField,
  method: z.enum(extractionMethods).check(z.meta({ label: 'way out', unit: '' })),
  feasible: z.boolean().check(z.meta({ label: 'it should come out this way', unit: '' })),
  steps: z.readonly(z.array(planStepField)),
  findings: z.readonly(z.array(findingField)),
  hole: holeField,
  screw: z.nullable(screwField),
  screwCount: outputNumber('number of screws', ''),
  pullForceN: z.nullable(spanField('pull that the seal asks for', 'N')),
  stripForceN: z.nullable(spanField('pull at which the threads tear out, all screws', 'N')),
  pushOutTube: z.nullable(z.strictObject({ outsideUpToMm: outputNumber('tube from inside: outside up to', 'mm'), insideOverMm: outputNumber('tube from inside: inside over', 'mm') })),
  ...candourFields,
});

export type ExtractionPlanOutput = z.infer<typeof outputField>;

/** How the old seal comes out without harm to shaft, bore and what lies behind.  hole midway: r = (r_shaft + r_case)/2;  stop = face + drill point
 * @returns method, steps with cautions, hole, screw and forces; findings; what was assumed and not checked
 * @throws CalculationError invalid-input | outside-table
 * @source din-7975, en-iso-1478 (held as: page); forces plain-mechanics with en-10130 (held as: memory); otherwise common practice
 * @example extractionPlan.run({ seal: { shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' } }).method // 'drill and screw'
 */
export const extractionPlan = defineCalculation({
  name: 'extraction-plan',
  summary: 'How the old seal comes out: where to drill, how deep, which screw, and what to look at first',
  input: inputField,
  output: outputField,
  compute(input: ExtractionInput): ExtractionPlanOutput {
    const plan = extractionOf(input);
    const findings = extractionFindings(plan);
    const isDrilled = plan.method === 'drill and screw';
    return {
      verdict: verdictOf(findings),
      method: plan.method,
      feasible: plan.feasible,
      steps: extractionSteps(plan),
      findings,
      hole: holeOf(plan),
      screw: isDrilled ? screwOf(plan) : null,
      screwCount: isDrilled ? (plan.screw?.screwCount ?? 0) : 0,
      pullForceN: plan.pullForceN,
      stripForceN: isDrilled ? (plan.screw?.stripForceN ?? null) : null,
      pushOutTube: plan.pushOut,
      assumptions: assumptionsOf(plan, input.leastWallMm !== undefined),
      notChecked: extractionNotChecked(plan),
    };
  },
  explain: (input: ExtractionInput) => extractionWorking(extractionOf(input)),
});

function holeOf({ face, depth, screw, section, leastWallMm, roomBehindMm, roomNeededMm, oldDepth, drillReachMm }: Extraction): ExtractionPlanOutput['hole'] {
  const drillMm = screw?.screw.pilotMm ?? null;
  const wallMm = (face.freeWidthMm - (drillMm ?? 0)) / 2;
  return {
    innerLimitRadiusMm: face.innerLimitRadiusMm,
    outerLimitRadiusMm: face.outerLimitRadiusMm,
    freeWidthMm: face.freeWidthMm,
    holeCircleRadiusMm: face.holeCircleRadiusMm,
    leastWallMm,
    largestDrillMm: face.largestDrillMm,
    drillMm,
    wallToShaftMm: wallMm,
    wallToCaseMm: wallMm,
    faceThicknessMm: section.faceThicknessMm,
    drillPointMm: depth?.drillPointMm ?? null,
    breakthroughMm: depth?.breakthroughMm ?? null,
    drillStopFromSealFaceMm: depth?.drillStopFromSealFaceMm ?? null,
    drillStopFromHousingFaceMm: depth === null || oldDepth === null ? null : depth.drillStopFromSealFaceMm + oldDepth.meanMm,
    roomInSealMm: depth?.roomInSealMm ?? null,
    roomBehindMm,
    roomNeededMm,
    drillReachMm,
  };
}

function screwOf({ screw, reach, section }: Extraction): ExtractionPlanOutput['screw'] {
  if (screw === null || reach === null) return null;
  const { designation, outsideMm, pitchMm, pilotMm } = screw.screw;
  return { designation, outsideMm, pitchMm, pilotMm, sheetMm: section.sheetMm, turnsOfBiteRatio: screw.turnsOfBiteRatio, ...reach };
}

function assumptionsOf({ section, method, pullForceN, screw, situation, leastWallMm }: Extraction, isWallGiven: boolean): readonly Assumption[] {
  const { assumptions, hold } = section;
  if (method === 'push out from inside') return [...assumptions.shaft, ...assumptions.bore];
  const list: Assumption[] = [...assumptions.shaft, ...assumptions.bore, ...assumptions.cover];
  const isInHold = hold?.assumptions.some(({ name }) => name === 'case-thickness') ?? false;
  list.push(...(isInHold ? [] : assumptions.case), ...assumptions.face, ...assumptions.lip, ...(hold?.assumptions ?? []));
  if (!isWallGiven) list.push({ name: 'least-wall', value: leastWallMm, unit: 'mm', source: commonPractice, effect: 'wall-beside-hole' });
  if (screw === null) return list;
  list.push({ name: 'drill-reserve', value: practice.drillReserveMm, unit: 'mm', source: commonPractice, effect: 'drill-depth' });
  list.push({ name: 'screw-grip', value: practice.gripMm, unit: 'mm', source: commonPractice, effect: 'screw-length' });
  if (situation.shaft?.protrusionMm !== undefined) {
    list.push({ name: 'chuck-and-drill', value: `${practice.chuckRadiusMm} / ${practice.shortDrillShowsMm}`, unit: 'mm', source: commonPractice, effect: 'which-drill' });
  }
  list.push({ name: 'thread-shear-share', value: shearShare.low, upToValue: shearShare.high, unit: '', source: commonPractice, effect: 'strip-force' });
  list.push({ name: 'case-tensile', value: sheetTensileMpa.low, upToValue: sheetTensileMpa.high, unit: 'MPa', source: source('en-10130', 'memory', 'DC01'), effect: 'strip-force' });
  if (pullForceN !== null && holdsByMetal(situation.seal.construction)) list.push({ name: 'pull-as-push', value: 1, unit: '', source: commonPractice, effect: 'pull-force' });
  return list;
}
