import { commonPractice, plainGeometry, plainMechanics, source, type Span, type WorkingStep } from '../../result/index.js';
import { practice, type Extraction } from './extraction.js';
import { middle } from './hole-in-face.js';
import { sheetTensileMpa, shearRatio, shearShare } from './sheet-screw.js';

/** The working of an extraction plan: hole, drill, screw, pull. */
export function extractionWorking(plan: Extraction): readonly WorkingStep[] {
  return [...holeSteps(plan), ...depthSteps(plan), ...screwSteps(plan)];
}

function holeSteps({ face, section, leastWallMm }: Extraction): readonly WorkingStep[] {
  const { innerLimitRadiusMm: ri, outerLimitRadiusMm: ro } = face;
  const steps: WorkingStep[] = [
    { kind: 'choice', symbol: 'd', meaning: 'largest diameter on the shaft at the seal or outside it', value: 2 * ri, unit: 'mm', why: face.innerLimitBy, source: plainGeometry },
    { kind: 'formula', symbol: 'r_i', meaning: 'inner limit of the free face', formula: 'd / 2', scope: { d: 2 * ri }, value: ri, unit: 'mm', source: plainGeometry },
    { kind: 'formula', symbol: 'r_o', meaning: "inside of the case's outer wall", formula: 'B / 2 - c - t', scope: { B: section.boreMm.low, c: section.coverMm.high, t: section.caseThicknessMm.high }, value: ro, unit: 'mm', source: plainGeometry },
    { kind: 'formula', symbol: 'r', meaning: 'radius of the circle that the holes lie on', formula: '(r_i + r_o) / 2', scope: { r_i: ri, r_o: ro }, value: face.holeCircleRadiusMm, unit: 'mm', source: plainGeometry },
    { kind: 'formula', symbol: 'd_limit', meaning: 'largest hole that leaves the least wall on both sides', formula: 'r_o - r_i - 2 * w', scope: { r_i: ri, r_o: ro, w: leastWallMm }, value: ro - ri - 2 * leastWallMm, unit: 'mm', source: commonPractice },
  ];
  if (face.largestDrillMm !== null) steps.push({ kind: 'lookup', symbol: 'd_max', meaning: 'largest drill of the series up to that', table: 'twist-drills', row: String(face.largestDrillMm), column: 'diameterMm', value: face.largestDrillMm, unit: 'mm', source: source('iso-235', 'computed') });
  return steps;
}

function depthSteps({ screw, depth, section, roomBehindMm, roomNeededMm, situation, oldDepth }: Extraction): readonly WorkingStep[] {
  if (screw === null || depth === null || roomNeededMm === null) return [];
  const d = screw.screw.pilotMm;
  const f = section.faceThicknessMm.high;
  const steps: WorkingStep[] = [
    { kind: 'lookup', symbol: 'd_p', meaning: `pilot hole for ${screw.screw.designation}`, table: 'sheet-metal-pilot-holes', row: screw.screw.pilotSource.clause ?? screw.screw.designation, column: 'pilotMm', value: d, unit: 'mm', source: screw.screw.pilotSource },
    { kind: 'formula', symbol: 'p', meaning: 'length of the drill point (118°)', formula: 'd_p / 2 / tan(59 * pi / 180)', scope: { d_p: d }, value: depth.drillPointMm, unit: 'mm', source: plainGeometry },
    { kind: 'formula', symbol: 'g', meaning: 'travel until the hole is through at full size', formula: 'f + p', scope: { f, p: depth.drillPointMm }, value: depth.breakthroughMm, unit: 'mm', source: plainGeometry },
    { kind: 'formula', symbol: 's', meaning: 'drill past a stop that lands on the seal', formula: 'q + g', scope: { q: depth.faceInSealMm, g: depth.breakthroughMm }, value: depth.drillStopFromSealFaceMm, unit: 'mm', source: plainGeometry },
    { kind: 'formula', symbol: 'n', meaning: 'room that the drill needs behind the face, reserve included', formula: 's - b + k + v', scope: { s: depth.drillStopFromSealFaceMm, b: section.widthMm.low, k: depth.roomInSealMm, v: practice.drillReserveMm }, value: roomNeededMm, unit: 'mm', source: commonPractice },
  ];
  if (oldDepth !== null) steps.push({ kind: 'formula', symbol: 's_h', meaning: 'drill past a stop that lands on the housing face', formula: 's + h', scope: { s: depth.drillStopFromSealFaceMm, h: oldDepth.meanMm }, value: depth.drillStopFromSealFaceMm + oldDepth.meanMm, unit: 'mm', source: plainGeometry });
  if (roomBehindMm !== null) steps.push({ kind: 'formula', symbol: 'm', meaning: 'room behind the face', formula: 'k + c', scope: { k: depth.roomInSealMm, c: situation.clearBehindMm ?? 0 }, value: roomBehindMm, unit: 'mm', source: plainGeometry });
  return steps;
}

function screwSteps({ screw, section, pullForceN }: Extraction): readonly WorkingStep[] {
  if (screw === null) return [];
  const { screw: one, screwCount, oneStripsN, turnsOfBiteRatio } = screw;
  const steps: WorkingStep[] = [
    { kind: 'lookup', symbol: 'P', meaning: `pitch of ${one.designation}`, table: 'sheet-metal-screw-threads', row: one.designation, column: 'pitchMm', value: one.pitchMm, unit: 'mm', source: one.threadSource },
    { kind: 'formula', symbol: 'z', meaning: 'turns of bite', formula: 't / P', scope: { t: middle(section.sheetMm), P: one.pitchMm }, value: turnsOfBiteRatio, unit: '', source: plainGeometry },
  ];
  for (const [end, D] of [['low', one.outsideMinMm], ['high', one.outsideMm]] as const) {
    steps.push({ kind: 'formula', symbol: `S_${end}`, meaning: `one screw tears out of the sheet, ${end}`, formula: 'k * pi * D * t * tau * R', scope: { k: shearShare[end], D, t: section.sheetMm[end], tau: shearRatio, R: sheetTensileMpa[end] }, value: oneStripsN[end], unit: 'N', source: plainMechanics });
    steps.push({ kind: 'formula', symbol: `S_all_${end}`, meaning: `all screws together, ${end}`, formula: 'n * S', scope: { n: screwCount, S: oneStripsN[end] }, value: screw.stripForceN[end], unit: 'N', source: plainMechanics });
  }
  if (pullForceN !== null) steps.push(...pullSteps(pullForceN));
  return steps;
}

function pullSteps(pull: Span): readonly WorkingStep[] {
  const why = 'as much as a new seal takes going in; one that is stuck takes more';
  return [
    { kind: 'choice', symbol: 'F_low', meaning: 'pull, low', value: pull.low, unit: 'N', why, source: plainMechanics },
    { kind: 'choice', symbol: 'F_high', meaning: 'pull, high', value: pull.high, unit: 'N', why, source: plainMechanics },
  ];
}
