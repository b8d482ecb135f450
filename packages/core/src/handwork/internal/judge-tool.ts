import { verdictOf, type Finding, type Verdict } from '../../result/index.js';
import { boreFindings, type BoreRole } from './tool-in-bore.js';
import type { DriverNeed } from './driver-need.js';
import { faceFindings } from './tool-on-face.js';
import { strengthFindings } from './tool-under-push.js';
import { lengthFindings } from './tool-over-shaft.js';
import type { ToolSize } from './tool-size.js';
import type { ToolStrength } from './tool-strength.js';

/** One tool against one need. */
export interface JudgedTool {
  readonly tool: ToolSize;
  readonly verdict: Verdict;
  readonly findings: readonly Finding[];
  readonly role: BoreRole;
  /** Diametral margins, worst case; negative where it fails. */
  readonly margins: ToolMargins;
  /** Smallest margin that counts for this role, as a radius. */
  readonly leastMarginMm: number;
  readonly strength: ToolStrength | null;
  readonly stressMpa: number | null;
  readonly reserveFactor: number | null;
}

interface ToolMargins {
  /** Radial clearance in the bore, where the tool enters it. */
  readonly toBoreMm: number | null;
  /** Radial clearance over the shaft and what stands on it. */
  readonly toShaftMm: number | null;
  /** How far the outside reaches beyond the inside of the case wall, as a radius. */
  readonly overRimMm: number;
  /** How far the inside stays inward of the edge of the face, as a radius. */
  readonly ontoFaceMm: number;
  /** How far a wide tool reaches over the mouth of the bore, as a radius. */
  readonly landingMm: number | null;
}

/** Judges a tool worst case both ways: good only if every size in its bands is, bad only if none can be. */
export function judgeTool(tool: ToolSize, need: DriverNeed, workshopTemperatureC: number | null): JudgedTool {
  const { findings: inBore, role } = boreFindings(tool, need);
  const push = strengthFindings(tool, need, workshopTemperatureC);
  const findings = [...faceFindings(tool, need), ...inBore, ...lengthFindings(tool, need), ...push.findings];
  const margins = marginsOf(tool, need, role);
  return {
    tool,
    verdict: verdictOf(findings),
    findings,
    role,
    margins,
    leastMarginMm: Math.min(...[margins.toBoreMm, margins.toShaftMm, margins.overRimMm, margins.ontoFaceMm, margins.landingMm].filter((margin) => margin !== null)),
    strength: push.strength,
    stressMpa: push.stressMpa,
    reserveFactor: push.reserveFactor,
  };
}

function marginsOf({ outsideMm, insideMm, passageMm }: ToolSize, need: DriverNeed, role: BoreRole): ToolMargins {
  return {
    toBoreMm: role === 'enters' ? (need.section.boreMm.low - outsideMm.high) / 2 : null,
    toShaftMm: need.clearOver === null ? null : (passageMm.low - need.clearOver.mm) / 2,
    overRimMm: (outsideMm.low - need.rimFromMm) / 2,
    ontoFaceMm: (need.faceUpToMm - insideMm.high) / 2,
    landingMm: role === 'stops at the face' ? (outsideMm.low - need.mouthMm.high) / 2 : null,
  };
}

const dimensionOf: Readonly<Record<string, string>> = {
  'driver-too-small': 'outside',
  'driver-inside-too-large': 'inside',
  'driver-does-not-clear-shaft': 'inside',
  'driver-reaches-lip-and-spring': 'inside',
  'driver-does-not-enter-bore': 'outside',
  'driver-cannot-follow-to-depth': 'outside',
  'driver-too-short': 'length',
  'driver-closed-end-too-near': 'length',
  'driver-gives-way': 'strength',
  'driver-end-not-square': 'end',
};

/** Which dimension a tool misses by most, and by how much; null where nothing is missed by a length. */
export function missOf({ findings }: JudgedTool): { readonly dimension: string; readonly missMm: number | null } | null {
  let worst: { readonly dimension: string; readonly missMm: number | null } | null = null;
  for (const { code, severity, parameters } of findings) {
    if (severity !== 'bad') continue;
    const miss = parameters['missMm'];
    const missMm = typeof miss === 'number' ? miss : null;
    if (worst === null || (missMm !== null && missMm > (worst.missMm ?? -1))) worst = { dimension: dimensionOf[code] ?? 'other', missMm };
  }
  return worst;
}
