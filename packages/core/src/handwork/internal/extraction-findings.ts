import { commonPractice, deciding, plainGeometry, plainMechanics, source, supporting, type Finding } from '../../result/index.js';
import { calliperUncertainty } from './calliper.js';
import type { Extraction } from './extraction.js';
import { tiltShare } from './final-depth.js';
import { partBehind } from './section.js';
import { atLeastMm, atMostMm, nearMm } from './workshop-length.js';

/** What is to be said about taking the old seal out; each method brings its own checks. */
export function extractionFindings(plan: Extraction): readonly Finding[] {
  return [...wayOut(plan), ...retainer(plan), ...oldPlace(plan)];
}

function wayOut(plan: Extraction): readonly Finding[] {
  const { onShaft, isBlocked, pushOut, situation, section } = plan;
  const findings: Finding[] = [];
  if (isBlocked) findings.push(deciding('extraction-shaft-part-in-the-way', 'bad', { part: onShaft.kind, partMm: onShaft.largestMm, shaftMm: situation.seal.shaftMm }, plainGeometry));
  else if (onShaft.kind !== 'shaft' && onShaft.markedMm > situation.seal.shaftMm) findings.push(supporting('extraction-seal-scrapes-shaft-part', 'note', { part: onShaft.kind, partMm: onShaft.largestMm }, plainGeometry));
  if (pushOut !== null) return [...findings, deciding('extraction-push-out', 'good', { ...pushOut }, source('us-army-tm', 'page', 'removal with tubing against the tight ring'))];
  if (situation.reachableFrom === 'inside' || situation.reachableFrom === 'both') findings.push(supporting('extraction-no-tube-from-inside', 'care', { insideOverMm: section.shaftMm.high }, plainGeometry));
  return [...findings, ...hole(plan), ...depth(plan), ...pull(plan)];
}

function hole({ face, screw, leastWallMm, drillReachMm, isPierced, section, method }: Extraction): readonly Finding[] {
  if (screw === null) {
    const numbers = { freeWidthMm: Math.max(face.freeWidthMm, 0), leastWallMm };
    if (face.innerLimitBy !== 'shaft') return [deciding('extraction-face-covered', 'care', { ...numbers, part: face.innerLimitBy, partMm: 2 * face.innerLimitRadiusMm }, plainGeometry)];
    return [deciding('extraction-face-too-narrow', 'care', numbers, commonPractice)];
  }
  const drillMm = screw.screw.pilotMm;
  const wallMm = (face.freeWidthMm - drillMm) / 2;
  const findings: Finding[] = [deciding('extraction-hole-fits', 'good', { drillMm, holeCircleRadiusMm: nearMm(face.holeCircleRadiusMm), wallMm: atMostMm(wallMm), leastWallMm }, plainGeometry)];
  if (drillReachMm !== null && method === 'drill and screw') findings.push(supporting(isPierced ? 'extraction-no-drill-so-long' : 'extraction-chuck-meets-shaft', 'care', { drillReachMm: atLeastMm(drillReachMm), drillMm }, commonPractice));
  if (!section.isLipFacingKnown) findings.push({ ...supporting('extraction-lip-facing-unknown', 'unknown', {}, commonPractice), missing: 'lipFacing' });
  return findings;
}

function depth({ depth: drill, roomBehindMm, roomNeededMm, reach, situation, method }: Extraction): readonly Finding[] {
  if (drill === null || roomNeededMm === null || reach === null) return [];
  const behind = partBehind(situation);
  const findings: Finding[] = [];
  if (roomBehindMm === null && situation.behind === 'open space') {
    findings.push(supporting('extraction-open-space-behind', 'note', {}, commonPractice));
  } else if (roomBehindMm === null) {
    const numbers = { roomInSealMm: drill.roomInSealMm, roomNeededMm, drillStopMm: atMostMm(drill.drillStopFromSealFaceMm), behind };
    findings.push(
      drill.roomInSealMm >= roomNeededMm
        ? { ...supporting('extraction-room-behind-unknown-seal-is-wide', 'unknown', numbers, plainGeometry), missing: 'clearBehindMm' }
        : deciding('extraction-room-behind-unknown', 'unknown', numbers, plainGeometry, 'clearBehindMm'),
    );
  } else if (roomBehindMm < roomNeededMm) {
    findings.push(deciding('extraction-drill-reaches-behind', 'care', { roomBehindMm, roomNeededMm, behind }, plainGeometry));
  } else {
    findings.push(deciding('extraction-drill-stays-clear', 'good', { roomBehindMm, roomNeededMm, drillStopMm: atMostMm(drill.drillStopFromSealFaceMm), behind }, plainGeometry));
  }
  if (method === 'drill and screw' && reach.tipFromMm > reach.tipUpToMm) {
    findings.push(supporting('extraction-screw-point-meets-behind', 'care', { tipFromMm: atLeastMm(reach.tipFromMm), tipUpToMm: atMostMm(Math.max(reach.tipUpToMm, 0)), behind }, plainGeometry));
  }
  return findings;
}

function pull({ screw, pullForceN, section, method }: Extraction): readonly Finding[] {
  if (screw === null || method !== 'drill and screw') return [];
  const findings: Finding[] = [];
  const { screwCount, stripForceN, turnsOfBiteRatio } = screw;
  const numbers = { designation: screw.screw.designation, screwCount, stripLowN: stripForceN.low, stripHighN: stripForceN.high };
  if (pullForceN === null) {
    const isEstimable = section.hold === null;
    if (isEstimable) findings.push({ ...supporting('extraction-pull-unknown', 'unknown', numbers, plainMechanics), missing: section.sizes.bore === null ? 'bore.readings' : 'seal.outsideReadings' });
    else findings.push(supporting('extraction-pull-no-estimate', 'care', numbers, plainMechanics));
  } else {
    const all = { ...numbers, pullLowN: pullForceN.low, pullHighN: pullForceN.high };
    if (screw.enough === 'surely') findings.push(deciding('extraction-screws-hold', 'good', all, plainMechanics));
    else if (screw.enough === 'probably') findings.push(deciding('extraction-screws-probably-hold', 'care', all, plainMechanics));
    else findings.push(deciding('extraction-screws-fall-short', screw.enough === 'no' ? 'bad' : 'care', all, plainMechanics));
  }
  if (turnsOfBiteRatio < 1) {
    findings.push(supporting('extraction-sheet-thinner-than-pitch', 'care', { sheetMm: turnsOfBiteRatio * screw.screw.pitchMm, pitchMm: screw.screw.pitchMm, designation: screw.screw.designation }, source('din-7975', 'page', 'sheet at least one pitch thick')));
  }
  return findings;
}

function retainer({ situation }: Extraction): readonly Finding[] {
  const { retainedBy } = situation;
  if (retainedBy === undefined) return [{ ...supporting('extraction-retainer-unknown', 'unknown', {}, commonPractice), missing: 'retainedBy' }];
  return retainedBy === 'nothing' ? [] : [supporting('extraction-retainer-first', 'note', { retainedBy }, commonPractice)];
}

function oldPlace({ oldDepth, situation }: Extraction): readonly Finding[] {
  if (oldDepth === null) return [{ ...supporting('extraction-old-depth-missing', 'unknown', {}, commonPractice), missing: 'oldDepthMm' }];
  const spreadMm = oldDepth.mostMm - oldDepth.leastMm;
  const limitMm = tiltShare.good * situation.seal.outsideMm;
  const readingMm = calliperUncertainty('depth', Math.abs(oldDepth.meanMm)).uncertaintyMm;
  return spreadMm - readingMm > limitMm ? [supporting('extraction-old-seal-was-tilted', 'care', { spreadMm, limitMm }, tiltShare.source)] : [];
}

/** What every extraction plan leaves unlooked at. */
export function extractionNotChecked({ method }: Extraction): readonly string[] {
  return method === 'drill and screw' ? ['stuck-seal-needs-more', 'drill-wander', 'rubber-on-back-of-face'] : ['stuck-seal-needs-more'];
}

