import { commonPractice, deciding, plainGeometry, source, supporting, type Finding } from '../../result/index.js';
import type { DriverNeed } from './driver-need.js';
import type { ToolSize } from './tool-size.js';
import { practiceValue } from './practice-value.js';

/** How a tool meets the bore: follows the seal in, lands on the housing face, or neither for certain. */
export type BoreRole = 'enters' | 'stops at the face' | 'at the edge';

/** [mm] Clearance on the diameter below which a driver may scrape the bore, and least landing of a wide one, as a radius. */
const practice = { scrapesBelowMm: practiceValue('scrapes-bore-below', 'Mm').low, landingMm: practiceValue('landing-width', 'Mm').low } as const;

/** Bore, chamfer and housing face against the outside of a tool. */
export function boreFindings(tool: ToolSize, need: DriverNeed): { readonly findings: readonly Finding[]; readonly role: BoreRole } {
  const { outsideMm } = tool;
  const { boreMm } = need.section;
  const role: BoreRole = outsideMm.high < boreMm.low ? 'enters' : outsideMm.low > need.mouthMm.high ? 'stops at the face' : 'at the edge';
  return { findings: role === 'enters' ? entering(tool, need) : notEntering(tool, need, role), role };
}

function entering({ outsideMm }: ToolSize, { section, mustEnter, final }: DriverNeed): readonly Finding[] {
  const clearanceMm = section.boreMm.low - outsideMm.high;
  const numbers = { clearanceMm, outsideHighMm: outsideMm.high, boreLowMm: section.boreMm.low };
  const findings: Finding[] = [clearanceMm < practice.scrapesBelowMm ? deciding('driver-enters-barely', 'care', numbers, commonPractice) : deciding('driver-enters-bore', 'good', numbers, source('workshop-manuals-1995', 'page', 'about 0.4 mm under the seal outside'))];
  if (mustEnter === 'no') findings.push(final.depthMm !== null && final.depthMm.nominal < 0 ? noStopOutside(final.depthMm.nominal) : supporting('driver-has-no-stop', 'note', {}, commonPractice));
  if (mustEnter === 'yes' && final.kind === 'depth') findings.push(supporting('driver-needs-depth-mark', 'note', { depthMm: final.depthMm?.nominal ?? 0 }, commonPractice));
  return findings;
}

function notEntering(tool: ToolSize, need: DriverNeed, role: BoreRole): readonly Finding[] {
  const { outsideMm, pathOf } = tool;
  const { section, mustEnter, final, mouthMm } = need;
  const surelyNot = outsideMm.low >= section.boreMm.high;
  const numbers = { outsideLowMm: outsideMm.low, outsideHighMm: outsideMm.high, boreLowMm: section.boreMm.low, boreHighMm: section.boreMm.high };
  if (mustEnter === 'no') {
    if (role === 'stops at the face') return atFace(tool, need);
    return [deciding('driver-lands-on-chamfer', 'care', { ...numbers, mouthHighMm: mouthMm.high }, plainGeometry)];
  }
  if (!surelyNot) return [deciding('driver-bore-too-close-to-call', 'unknown', numbers, plainGeometry, pathOf('readings'))];
  if (mustEnter === 'yes') {
    const missMm = outsideMm.low - section.boreMm.high;
    if (final.kind === 'depth') return [deciding('driver-cannot-follow-to-depth', 'bad', { ...numbers, missMm, depthMm: final.depthMm?.nominal ?? 0 }, plainGeometry)];
    return [deciding('driver-does-not-enter-bore', 'bad', { ...numbers, missMm }, plainGeometry)];
  }
  if (mustEnter === 'unknown') return [deciding('driver-wide-but-depth-unknown', 'unknown', numbers, plainGeometry, 'bore.depthMm')];
  return [deciding('driver-may-stop-before-shoulder', 'care', { ...numbers, depthHighMm: final.depthMm?.high ?? 0 }, plainGeometry)];
}

/** No tool stops by itself where the seal is to stand out. */
function noStopOutside(nominalMm: number): Finding {
  return supporting('driver-stop-standing-out', 'note', { outMm: -nominalMm }, commonPractice);
}

function atFace({ outsideMm }: ToolSize, { mouthMm, faceDiameterMm, final }: DriverNeed): readonly Finding[] {
  const landingMm = (outsideMm.low - mouthMm.high) / 2;
  const findings: Finding[] = [];
  const nominalMm = final.depthMm?.nominal ?? 0;
  if (nominalMm === 0) findings.push(deciding('driver-stops-at-flush', 'good', { landingMm, mouthHighMm: mouthMm.high }, plainGeometry));
  else findings.push(deciding('driver-stays-outside', 'good', { mouthHighMm: mouthMm.high }, plainGeometry), noStopOutside(nominalMm));
  if (landingMm < practice.landingMm) findings.push(supporting('driver-lands-narrowly', 'care', { landingMm }, commonPractice));
  if (faceDiameterMm !== null && outsideMm.high > faceDiameterMm) findings.push(supporting('driver-wider-than-face', 'care', { outsideHighMm: outsideMm.high, faceDiameterMm }, plainGeometry));
  return findings;
}
