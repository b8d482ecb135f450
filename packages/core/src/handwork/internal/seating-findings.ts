import { commonPractice, deciding, plainGeometry, source, supporting, type Finding } from '../../result/index.js';
import { flushOrShoulder } from './final-depth.js';
import { partBehind } from './section.js';
import { nearMm, withinMm } from './workshop-length.js';
import type { Seating } from './seating.js';

/** What is to be said about the place where the new seal ends. */
export function seatingFindings(plan: Seating): readonly Finding[] {
  return [...place(plan), ...around(plan), ...lip(plan), ...wayIn(plan)];
}

function place({ final, boreLeftMm, situation }: Seating): readonly Finding[] {
  const { depthMm, kind } = final;
  if (depthMm === null) return [deciding('seating-bore-depth-missing', 'unknown', { widthMm: situation.seal.widthMm }, plainGeometry, 'bore.depthMm')];
  const numbers = { lowMm: depthMm.low, nominalMm: depthMm.nominal, highMm: depthMm.high };
  const findings: Finding[] = [];
  if (kind === 'flush') findings.push(deciding('seating-ends-flush', 'good', {}, flushOrShoulder));
  else if (depthMm.low >= 0) findings.push(deciding(kind === 'shoulder' ? 'seating-ends-on-shoulder' : 'seating-ends-at-depth', 'good', numbers, plainGeometry));
  else if (kind === 'depth') findings.push(deciding('seating-stands-out-as-asked', 'note', { outMm: -depthMm.nominal }, plainGeometry));
  else if (depthMm.high < 0) findings.push(deciding('seating-stands-out', 'care', { outLowMm: -depthMm.high, outHighMm: -depthMm.low }, plainGeometry));
  else findings.push(deciding('seating-may-stand-out', 'care', { outHighMm: -depthMm.low, highMm: depthMm.high }, plainGeometry));
  // Out of an open inner end the seal may stand: what counts is how much of it grips.
  if (boreLeftMm === null || situation.bore?.innerEnd === 'open') return findings;
  const end = situation.bore?.innerEnd ?? 'open';
  const left = { lowMm: boreLeftMm.low, highMm: boreLeftMm.high, outHighMm: Math.max(-boreLeftMm.low, 0), end };
  if (boreLeftMm.high < 0) findings.push(deciding('seating-bore-too-shallow', 'bad', left, plainGeometry));
  else if (boreLeftMm.low < 0) findings.push(deciding('seating-bore-may-be-too-shallow', 'care', left, plainGeometry));
  return findings;
}

function around({ engagedMm, leastEngagedMm, roomBehindMm, situation }: Seating): readonly Finding[] {
  const findings: Finding[] = [];
  if (engagedMm !== null) {
    // The seat length of the standard is a size of the housing, so the marked width is compared; tolerances stand beside it.
    const isLong = engagedMm.nominal >= leastEngagedMm - 1e-9;
    const numbers = { engagedMm: engagedMm.nominal, engagedLowMm: engagedMm.low, engagedHighMm: engagedMm.high, leastEngagedMm };
    findings.push(deciding(isLong ? 'seating-grips-long-enough' : 'seating-grips-short', isLong ? 'good' : 'care', numbers, source('din-3760-1996', 'page', 't1 = 0.85 b')));
  }
  const behind = partBehind(situation);
  if (roomBehindMm === null && situation.behind === 'open space') return findings;
  if (roomBehindMm === null) return [...findings, { ...supporting('seating-room-behind-unknown', 'unknown', { behind }, commonPractice), missing: 'clearBehindMm' }];
  const room = { roomLowMm: roomBehindMm.low, roomHighMm: roomBehindMm.high, behind };
  if (roomBehindMm.high < 0) findings.push(deciding('seating-meets-what-is-behind', 'bad', room, plainGeometry));
  else if (roomBehindMm.low < 0) findings.push(deciding('seating-may-meet-what-is-behind', 'care', room, plainGeometry));
  else findings.push(deciding('seating-room-behind', 'good', room, plainGeometry));
  return findings;
}

function lip(plan: Seating): readonly Finding[] {
  return [...facing(plan), ...track(plan)];
}

function facing({ situation }: Seating): readonly Finding[] {
  const { lipFacing, fluidSide } = situation;
  const from = source('workshop-manuals-1995', 'page', 'lip side toward the fluid');
  if (lipFacing === undefined) return [{ ...supporting('seating-lip-facing-unknown', 'unknown', {}, from), missing: 'lipFacing' }];
  if (fluidSide === undefined || fluidSide === 'both') return [];
  return (lipFacing === 'inward') === (fluidSide === 'inside') ? [] : [deciding('seating-lip-faces-away', 'bad', { lipFacing, fluidSide }, from)];
}

/** Plain comparison of faces: where in the seal the lip lies is not known, so only how far it moves is said. */
function track({ moveMm, moveWantedMm, oldDepth }: Seating): readonly Finding[] {
  const from = source('seal-trade-pages', 'page', 'lip moved about 1 mm off the track');
  if (moveMm === null) return moveWantedMm === null ? [] : [deciding('seating-track-old-depth-missing', 'unknown', { moveWantedMm }, from, oldDepth === null ? 'oldDepthMm' : 'bore.depthMm')];
  const by = Math.abs(moveMm);
  const numbers = { moveMm: Math.round(by * 100) / 100 };
  if (moveWantedMm === null && nearMm(moveMm) === 0) return [supporting('seating-lip-runs-as-before', 'note', {}, plainGeometry)];
  if (moveWantedMm === null) return [supporting(moveMm >= 0 ? 'seating-lip-moves-inward' : 'seating-lip-moves-outward', 'note', numbers, plainGeometry)];
  if (by >= moveWantedMm - 1e-9) return [deciding('seating-lip-leaves-track', 'good', { ...numbers, moveWantedMm }, from)];
  return [deciding('seating-lip-stays-in-track', 'care', { moveMm: withinMm(0, by).highMm, moveWantedMm }, from)];
}

function wayIn({ onShaft, isBlocked, cutsLip, situation }: Seating): readonly Finding[] {
  const findings: Finding[] = [];
  const shaftMm = situation.seal.shaftMm;
  if (isBlocked) findings.push(deciding('seating-shaft-part-in-the-way', 'bad', { part: onShaft.kind, partMm: onShaft.largestMm, shaftMm }, plainGeometry));
  else if (onShaft.kind !== 'shaft' && onShaft.markedMm > shaftMm) findings.push(supporting('seating-lip-must-stretch', 'care', { part: onShaft.kind, partMm: onShaft.largestMm, shaftMm }, plainGeometry));
  const manuals = source('workshop-manuals-1995', 'page', 'fitting sleeve over threads, splines and keyways');
  for (const part of cutsLip) findings.push(supporting('seating-lip-needs-sleeve', 'care', { ...part }, manuals));
  const leadIn = situation.shaft?.leadIn;
  if (leadIn === undefined) findings.push({ ...supporting('seating-shaft-edge-unknown', 'unknown', {}, commonPractice), missing: 'shaft.leadIn' });
  else if (leadIn.kind === 'none' && cutsLip.length === 0) findings.push(supporting('seating-shaft-edge-sharp', 'care', {}, manuals));
  return findings;
}

/** What every seating plan leaves unlooked at. */
export function seatingNotChecked({ situation, moveMm }: Seating): readonly string[] {
  const list = ['vent-hole-in-bore', 'seal-edge-chamfer', 'spring-in-place'];
  if (moveMm !== null || situation.wearTrack !== undefined) list.push('old-seal-same-design', 'lip-place-in-seal');
  return list;
}
