import type { SectionGeometry } from './section-geometry.js';

/** Where millimetres land on the paper. All results are in px of the drawing. */
export interface SectionLayout {
  readonly width: number;
  readonly height: number;
  readonly pxPerMm: number;
  readonly axisY: number;
  /** Top of what is shown of the housing. */
  readonly topY: number;
  /** Left end of the driver, and of the free paper left of it where diameters are dimensioned. */
  readonly driverLeft: number;
  readonly left: number;
  readonly right: number;
  /** Radius below which the shaft is cut out of the view; 0 where it is shown whole. */
  readonly brokenBelowMm: number;
  readonly isCompact: boolean;
  x(mm: number): number;
  y(radiusMm: number): number;
}

interface Paper {
  readonly width: number;
  readonly isCompact: boolean;
}

const cutPx = 16;
const topPad = 4;

/** Chooses the largest scale at which everything that matters fits, and shows the rest of the shaft with what is left. */
export function layoutSection(geometry: SectionGeometry, { width, isCompact }: Paper): SectionLayout {
  const { shaftMm, boreMm, depthMm, widthMm, mode } = geometry;
  const ringMm = (boreMm - shaftMm) / 2;
  const below = isCompact ? 10 : mode === 'taking out' ? 64 : 40;
  const most = isCompact ? 118 : width < 520 ? width * 0.68 : Math.min(width * 0.6, 430);
  const wallPx = Math.min(Math.max(most * 0.15, 16), 54);
  const isBroken = shaftMm / 2 > 1.8 * ringMm;
  const shaftShownMm = isBroken ? 1.2 * ringMm : shaftMm / 2;
  const fixedHeight = topPad + wallPx + below + (isBroken ? cutPx : 0);
  const side = isCompact ? { left: 6, driver: 34, right: 8 } : { left: 62, driver: width < 520 ? 30 : 60, right: 58 };
  const reachMm = Math.max(depthMm, 0) + widthMm + beyondMm(geometry);
  const outMm = Math.max(-depthMm, 0);
  const pxPerMm = Math.min((most - fixedHeight) / (ringMm + shaftShownMm), (width - side.left - side.driver - side.right) / (reachMm + outMm));
  const height = Math.round(fixedHeight + pxPerMm * (ringMm + shaftShownMm));
  const spare = width - side.left - side.driver - side.right - (reachMm + outMm) * pxPerMm;
  const faceX = side.left + side.driver + outMm * pxPerMm + spare * 0.66;
  const axisY = height - below;
  const brokenBelowMm = isBroken ? shaftMm / 2 - shaftShownMm : 0;
  return {
    width,
    height,
    pxPerMm,
    axisY,
    topY: topPad,
    driverLeft: side.left,
    left: 2,
    right: width - 2,
    brokenBelowMm,
    isCompact,
    x: (mm) => faceX + mm * pxPerMm,
    y: (radiusMm) => (radiusMm <= 0 ? axisY : axisY - (isBroken ? cutPx : 0) - (radiusMm - brokenBelowMm) * pxPerMm),
  };
}

/** How much is shown behind the seal: the room there and a good part of what ends it. */
function beyondMm({ widthMm, clearBehindMm, behind, boreDepthMm, depthMm, drill }: SectionGeometry): number {
  const partMm = behind === 'bearing' || behind === 'gear' || behind === 'second seal' ? widthMm * 0.9 : widthMm * 0.3;
  const room = clearBehindMm === null ? widthMm * 0.6 : Math.min(clearBehindMm, widthMm * 1.4);
  const bore = boreDepthMm === null ? 0 : Math.min(boreDepthMm - depthMm - widthMm + widthMm * 0.25, widthMm * 1.6);
  const tip = drill === null ? 0 : drill.tipMm - depthMm - widthMm + 1;
  return Math.max(room + partMm, bore, tip, widthMm * 0.7);
}
