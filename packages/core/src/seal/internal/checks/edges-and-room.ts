import { snapMm } from '../../../quantity/index.js';
import { deciding, outsideTable, plainGeometry, source, supporting, type Assumption, type Finding } from '../../../result/index.js';
import { housingChamfer } from '../../../tables/generated/housing-chamfer.js';
import { shaftLeadIn } from '../../../tables/generated/shaft-lead-in.js';
import { findHalfOpenRow } from '../../../tables/half-open-range.js';
import type { Check } from '../check-report.js';
import { sealLimit } from '../seal-limit.js';

/** The edges that seal and lip pass on the way in, the depth of the bore, the run of the shaft and the old track. */
export const edgesAndRoom: Check = (context) => {
  const reports = [shaftEdge(context), boreEdge(context), room(context), alignment(context), track(context)];
  return { findings: reports.flatMap((report) => report.findings), assumptions: reports.flatMap((report) => report.assumptions ?? []), notChecked: reports.flatMap((report) => report.notChecked ?? []) };
};

const shaftEdge: Check = ({ situation }) => {
  const leadIn = situation.shaft?.leadIn;
  if (leadIn === undefined) return { findings: [], notChecked: ['shaft-lead-in'] };
  const shaftMm = situation.seal.shaftMm;
  const i = findHalfOpenRow(shaftLeadIn.columns.overMm, shaftLeadIn.columns.upToMm, shaftMm);
  const leastMm = shaftLeadIn.columns.diameterReductionMm[i];
  const table = source('jis-b-2402-1-2013', 'page', 'shaft end');
  if (leastMm === undefined) return { findings: [], notChecked: ['shaft-lead-in'] };
  const isEnough = leadIn.kind === 'chamfer' && leadIn.diameterReductionMm !== undefined && leadIn.diameterReductionMm >= leastMm;
  if (isEnough) return { findings: [supporting('shaft-lead-in-enough', 'good', { leastMm }, table)] };
  if (leadIn.kind === 'chamfer' && leadIn.diameterReductionMm === undefined) return { findings: [], notChecked: ['shaft-lead-in'] };
  const edge = sealLimit(situation.seal.hasDustLip === true ? 'edge-radius-dust-lip' : 'edge-radius', 'Mm');
  if (leadIn.kind === 'radius' && leadIn.radiusMm !== undefined && leadIn.radiusMm >= edge.low) {
    return { findings: [supporting('shaft-edge-radius-enough', 'good', { radiusMm: leadIn.radiusMm }, edge.source)] };
  }
  return { findings: [supporting('shaft-lead-in-missing', 'care', { leastMm }, table)] };
};

const boreEdge: Check = ({ situation, sizes }) => {
  const leadIn = situation.bore?.leadIn;
  const { bore, sealOutside } = sizes;
  if (leadIn === undefined || bore === null || sealOutside === null) return { findings: [], notChecked: ['bore-lead-in'] };
  const angleDeg = leadIn.angleDeg ?? chamferAngleDeg.low;
  const mouthMm = bore.meanMm - bore.expandedUncertaintyMm + 2 * leadIn.lengthMm * Math.tan((angleDeg * Math.PI) / 180);
  const numbers = { mouthMm, sealMostMm: sealOutside.mostMm };
  const assumptions: readonly Assumption[] = leadIn.angleDeg === undefined ? [{ name: 'bore-chamfer-angle', value: angleDeg, unit: '°', source: chamferAngleDeg.source, effect: 'mouth-of-bore' }] : [];
  if (mouthMm >= sealOutside.mostMm) return { findings: [supporting('bore-mouth-takes-seal', 'good', numbers, plainGeometry)], assumptions };
  return { findings: [supporting('bore-mouth-too-tight', 'care', { ...numbers, chamferLowMm: chamferLengthMm(situation.seal.widthMm) }, source('jis-b-2402-1-2013', 'page', 'bore chamfer'))], assumptions };
};

/** Bore chamfers are made at 10 to 20° (DIN 3760) or 15 to 30° (handbooks); the flattest opens the mouth least. */
const chamferAngleDeg = sealLimit('bore-chamfer-angle', 'Deg');

function chamferLengthMm(widthMm: number): number {
  const { columns } = housingChamfer;
  for (let i = 0; i < housingChamfer.rowCount; i += 1) {
    const length = columns.chamferLengthMinMm[i];
    if (length == null || String(columns.set[i]) !== 'jis-b-2402-1') continue;
    if (widthMm > (columns.overMm[i] ?? 0) && widthMm <= (columns.upToMm[i] ?? Infinity)) return length;
  }
  throw outsideTable('the bore chamfers of JIS B 2402-1', 'seal.widthMm', widthMm, { over: 0, upTo: 60, unit: 'mm' });
}

const room: Check = ({ situation }) => {
  const { bore, seal, seat } = situation;
  if (bore?.depthMm === undefined) return { findings: [], notChecked: ['bore-depth'] };
  const seatDepthMm = seat?.kind === 'depth' ? seat.depthMm : 0;
  // Settled to a millionth: 7.3 less 7 is 0.3, and 9.1 less 7 less 2.1 nothing.
  const spareMm = snapMm(bore.depthMm - seal.widthMm - seatDepthMm);
  const numbers = { depthMm: bore.depthMm, widthMm: seal.widthMm, spareMm };
  const { low: leastSpareMm, source: rule } = sealLimit('bore-spare-depth', 'Mm');
  if (numbers.spareMm < 0 && bore.innerEnd === 'open') return { findings: [supporting('bore-shorter-than-seal', 'note', { ...numbers, outMm: -spareMm }, plainGeometry)] };
  if (numbers.spareMm < 0) return { findings: [deciding('bore-too-shallow', 'care', numbers, plainGeometry)] };
  if (numbers.spareMm < leastSpareMm && seat?.kind !== 'flush') return { findings: [supporting('bore-depth-tight', 'note', { ...numbers, leastSpareMm }, rule)] };
  return { findings: [supporting('bore-deep-enough', 'good', numbers, rule)] };
};

const alignment: Check = ({ situation }) => {
  const { shaft } = situation;
  const findings: Finding[] = [];
  const notChecked: string[] = [];
  const runout = { most: sealLimit('runout', 'Mm'), recommended: sealLimit('runout-recommended', 'Mm') };
  const offset = sealLimit('offset', 'Mm');
  if (shaft?.runoutMm === undefined) notChecked.push('shaft-runout');
  else {
    const code = shaft.runoutMm > runout.most.high ? 'runout-over' : shaft.runoutMm > runout.recommended.high ? 'runout-over-recommended' : 'runout-within';
    const limit = code === 'runout-over-recommended' ? runout.recommended : runout.most;
    findings.push(supporting(code, code === 'runout-within' ? 'good' : 'care', { runoutMm: shaft.runoutMm, limitMm: limit.high }, limit.source));
    if (code !== 'runout-over') notChecked.push('runout-by-speed');
  }
  if (shaft?.offsetMm === undefined) notChecked.push('shaft-offset');
  else {
    const code = shaft.offsetMm > offset.high ? 'offset-over' : 'offset-within';
    findings.push(supporting(code, code === 'offset-over' ? 'care' : 'good', { offsetMm: shaft.offsetMm, limitMm: offset.high }, offset.source));
    if (code === 'offset-within') notChecked.push('offset-by-diameter');
  }
  return { findings, notChecked };
};

const track: Check = ({ situation }) => {
  const { wearTrack } = situation;
  if (wearTrack === undefined) return { findings: [], notChecked: ['wear-track'] };
  if (wearTrack.catchesNail === true) return { findings: [deciding('track-catches-nail', 'care', {}, source('seal-handbook-reprints', 'page', 'worn track'))], notChecked: ['lip-position-against-track'] };
  if (wearTrack.catchesNail === false) return { findings: [supporting('track-smooth', 'good', {}, source('seal-handbook-reprints', 'page', 'worn track'))] };
  return { findings: [], notChecked: ['wear-track'] };
};
