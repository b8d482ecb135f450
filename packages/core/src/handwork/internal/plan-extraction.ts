import { commonPractice, source, verdictOf, type Assumption } from '../../result/index.js';
import { holdsByMetal } from '../../seal/index.js';
import type { ExtractionPlanOutput } from './extraction-output.js';
import { extractionOf, practice, type Extraction, type ExtractionInput } from './extraction.js';
import { extractionFindings, extractionNotChecked } from './extraction-findings.js';
import { extractionSteps } from './extraction-steps.js';
import { sheetTensileMpa, shearShare } from './sheet-screw.js';

/** What `extractionPlan` answers, apart from its schemas and its working, which a sheet need not fetch. Trusts its input. @internal */
export function planExtraction(input: ExtractionInput): ExtractionPlanOutput {
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
}

function holeOf({ face, depth, screw, section, leastWallMm, roomBehindMm, roomNeededMm, oldDepth, drillReachMm, isPierced, method }: Extraction): ExtractionPlanOutput['hole'] {
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
    isPierced: isPierced && method === 'drill and screw',
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
  if (method !== 'drill and screw') return list;
  list.push({ name: 'screw-grip', value: practice.gripMm, unit: 'mm', source: commonPractice, effect: 'screw-length' });
  if (situation.shaft?.protrusionMm !== undefined) {
    list.push({ name: 'chuck-and-drill', value: `${practice.chuckRadiusMm} / ${practice.shortDrillShowsMm}`, unit: 'mm', source: commonPractice, effect: 'which-drill' });
  }
  list.push({ name: 'thread-shear-share', value: shearShare.low * 100, upToValue: shearShare.high * 100, unit: '%', source: commonPractice, effect: 'strip-force' });
  list.push({ name: 'case-tensile', value: sheetTensileMpa.low, upToValue: sheetTensileMpa.high, unit: 'MPa', source: source('en-10130', 'memory', 'DC01'), effect: 'strip-force' });
  if (pullForceN !== null && holdsByMetal(situation.seal.construction)) list.push({ name: 'pull-as-push', value: 1, unit: '', source: commonPractice, effect: 'pull-force' });
  return list;
}
