import { twistDrills } from '../../tables/generated/twist-drills.js';
import type { Span } from '../../result/index.js';
import type { Situation } from '../../seal/index.js';
import { largestOnShaft, type Section } from './section.js';

/** Where a hole can lie in the free face, before a drill is chosen. */
export interface FreeFace {
  readonly innerLimitRadiusMm: number;
  /** What sets the inner limit: the shaft or an obstacle on it. */
  readonly innerLimitBy: string;
  readonly outerLimitRadiusMm: number;
  readonly freeWidthMm: number;
  readonly holeCircleRadiusMm: number;
  /** Largest drill of the series that leaves the least wall on both sides; null when none does. */
  readonly largestDrillMm: number | null;
}

/** The drill in that face: how deep, and against what. */
export interface DrillDepth {
  readonly drillPointMm: number;
  readonly breakthroughMm: number;
  /** Outer face of the seal to the outside of the sheet that is drilled; zero when the closed face looks out. */
  readonly faceInSealMm: number;
  /** Length of drill past a stop that lands on the seal. */
  readonly drillStopFromSealFaceMm: number;
  /** From the inside of the face to the inner end of the seal. */
  readonly roomInSealMm: number;
  /**
   * How far past the inside of the face the drill stands at its stop: its point, and where the open side looks out also what the stop allows for
   * a seal that is wider, and a face that is thinner or thicker, than this one may be.
   */
  readonly overshootMm: number;
}

/** Half the point angle of a common twist drill. */
const halfPointRad = (59 * Math.PI) / 180;

/**
 * Free face between shaft and case: the hole midway, and the largest drill that fits.
 *   r = (r_shaft + r_case) / 2;  r_case = bore/2 − rubber − sheet
 */
export function freeFaceOf(situation: Situation, section: Section, oldDepthMm: number, leastWallMm: number): FreeFace {
  const { boreMm, coverMm, caseThicknessMm } = section;
  const inner = largestOnShaft(situation, section, oldDepthMm);
  const innerLimitRadiusMm = inner.largestMm / 2;
  const outerLimitRadiusMm = boreMm.low / 2 - coverMm.high - caseThicknessMm.high;
  const freeWidthMm = outerLimitRadiusMm - innerLimitRadiusMm;
  return {
    innerLimitRadiusMm,
    innerLimitBy: inner.kind,
    outerLimitRadiusMm,
    freeWidthMm,
    holeCircleRadiusMm: (innerLimitRadiusMm + outerLimitRadiusMm) / 2,
    largestDrillMm: largestDrill(freeWidthMm - 2 * leastWallMm),
  };
}

/** Breakthrough of a drill through the face, and what the seal itself leaves behind it. */
export function drillDepthOf({ lipFacing, widthMm, faceThicknessMm }: Pick<Section, 'lipFacing' | 'widthMm' | 'faceThicknessMm'>, drillMm: number): DrillDepth {
  const drillPointMm = drillMm / 2 / Math.tan(halfPointRad);
  const breakthroughMm = faceThicknessMm.high + drillPointMm;
  const faceInSealMm = lipFacing === 'inward' ? 0 : Math.max(widthMm.high - faceThicknessMm.low, 0);
  const drillStopFromSealFaceMm = faceInSealMm + breakthroughMm;
  const roomInSealMm = lipFacing === 'inward' ? Math.max(widthMm.low - faceThicknessMm.high, 0) : 0;
  return { drillPointMm, breakthroughMm, faceInSealMm, drillStopFromSealFaceMm, roomInSealMm, overshootMm: drillStopFromSealFaceMm - widthMm.low + roomInSealMm };
}

function largestDrill(upToMm: number): number | null {
  let largest: number | null = null;
  for (const drillMm of twistDrills.columns.diameterMm) {
    if (drillMm != null && drillMm <= upToMm + 1e-9 && (largest === null || drillMm > largest)) largest = drillMm;
  }
  return largest;
}

/** Middle of a span. */
export function middle({ low, high }: Span): number {
  return (low + high) / 2;
}
