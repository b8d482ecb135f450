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
  /** Right end of a tube that comes from inside; diameters are dimensioned beyond it. */
  readonly tubeRight: number;
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
  /** Rows of dimensions under the axis. */
  readonly rows: number;
}

/** How far what is drawn reaches: radii from the axis, and along it from the housing face outward and inward. */
export interface SectionExtent {
  readonly innerRadiusMm: number;
  readonly outerRadiusMm: number;
  readonly outMm: number;
  readonly reachMm: number;
  /** Free paper right of it, for diameters. */
  readonly rightPx: number;
}

const cutPx = 16;
const topPad = 4;
const rowPx = 26;

/** Height of a row of dimensions under the axis. */
export function rowYOf({ axisY, isCompact }: Pick<SectionLayout, 'axisY' | 'isCompact'>, row: number): number {
  return axisY + (isCompact ? 6 : 27) + row * rowPx;
}

/** Chooses the largest scale at which everything that matters fits, and shows the rest of the shaft with what is left. */
export function layoutSection({ innerRadiusMm, outerRadiusMm, outMm, reachMm, rightPx }: SectionExtent, { width, isCompact, rows }: Paper): SectionLayout {
  const ringMm = outerRadiusMm - innerRadiusMm;
  const below = isCompact ? 10 : 14 + rowPx * rows;
  const most = isCompact ? 118 : (width < 520 ? width * 0.68 : Math.min(width * 0.6, 430)) + rowPx * (rows - 1);
  const wallPx = Math.min(Math.max(most * 0.15, 16), 54);
  const isBroken = innerRadiusMm > 1.8 * ringMm;
  const shaftShownMm = isBroken ? 1.2 * ringMm : innerRadiusMm;
  const fixedHeight = topPad + wallPx + below + (isBroken ? cutPx : 0);
  const side = isCompact ? { left: 6, driver: 34, right: 8 } : { left: 62, driver: width < 520 ? 30 : 60, right: rightPx };
  const pxPerMm = Math.min((most - fixedHeight) / (ringMm + shaftShownMm), (width - side.left - side.driver - side.right) / (reachMm + outMm));
  const height = Math.round(fixedHeight + pxPerMm * (ringMm + shaftShownMm));
  const spare = width - side.left - side.driver - side.right - (reachMm + outMm) * pxPerMm;
  const faceX = side.left + side.driver + outMm * pxPerMm + spare * 0.66;
  const axisY = height - below;
  const brokenBelowMm = isBroken ? innerRadiusMm - shaftShownMm : 0;
  return {
    width,
    height,
    pxPerMm,
    axisY,
    topY: topPad,
    driverLeft: side.left,
    tubeRight: width - side.right,
    left: 2,
    right: width - 2,
    brokenBelowMm,
    isCompact,
    x: (mm) => faceX + mm * pxPerMm,
    y: (radiusMm) => (radiusMm <= 0 ? axisY : axisY - (isBroken ? cutPx : 0) - (radiusMm - brokenBelowMm) * pxPerMm),
  };
}

/** What a seal needs: its ring, and a good part of what lies behind it. */
export function extentOf(geometry: SectionGeometry): SectionExtent {
  const { shaftMm, boreMm, depthMm, widthMm } = geometry;
  return { innerRadiusMm: shaftMm / 2, outerRadiusMm: boreMm / 2, outMm: Math.max(-depthMm, 0), reachMm: Math.max(depthMm, 0) + widthMm + beyondMm(geometry), rightPx: 58 };
}

/** How much is shown behind the seal: the room there and a good part of what ends it. */
function beyondMm({ widthMm, clearBehindMm, behind, boreDepthMm, depthMm, drill, pushTube }: SectionGeometry): number {
  const partMm = behind === 'bearing' || behind === 'gear' || behind === 'second seal' ? widthMm * 0.9 : widthMm * 0.3;
  const room = clearBehindMm === null ? widthMm * 0.6 : Math.min(clearBehindMm, widthMm * 1.4);
  const bore = boreDepthMm === null ? 0 : Math.min(boreDepthMm - depthMm - widthMm + widthMm * 0.25, widthMm * 1.6);
  const tip = drill === null ? 0 : drill.tipMm - depthMm - widthMm + 1;
  const tube = pushTube === null ? 0 : widthMm * 1.6;
  return Math.max(room + partMm, bore, tip, tube, widthMm * 0.7);
}
