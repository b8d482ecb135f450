import { svg, type SVGTemplateResult } from 'lit';
import { round } from '../../section/internal/path.js';
import type { SectionLayout } from '../../section/internal/section-layout.js';
import type { DrawnBearing } from './bearing-geometry.js';

/** Places on the bearing: `u` along the axis from its outer face, `r` from the axis, both in mm. */
type Place = (u: number, r: number) => string;

/** Rings hatched alike, rolling elements plain, shields as a line and seals densely hatched, with the middle of ball or roller. */
export function drawBearing(bearing: DrawnBearing, { x, y, pxPerMm }: SectionLayout): SVGTemplateResult {
  const { faceMm, widthMm, innerRaceRadiusMm, outerRaceRadiusMm } = bearing;
  const at: Place = (u, r) => `${round(x(faceMm + u))} ${round(y(r))}`;
  const elementR = (outerRaceRadiusMm - innerRaceRadiusMm) / 2;
  const middleR = innerRaceRadiusMm + elementR;
  const [inner, outer] = bearing.isRoller ? rollerRings(bearing, at) : ballRings(bearing, at, elementR, middleR, pxPerMm);
  const cx = round(x(faceMm + widthMm / 2));
  const cy = round(y(middleR));
  const half = bearing.isRoller ? (rollerLengthMm(bearing) / 2) * pxPerMm : elementR * pxPerMm;
  return svg`<g class="bearing">
    ${[inner, outer].map((ring) => svg`<path class="fill" d=${ring}></path><path class="edge" fill="url(#ring)" d=${ring}></path>`)}
    ${bearing.isRoller
      ? svg`<rect class="edge fill" x=${round(cx - half)} y=${round(cy - elementR * pxPerMm)} width=${round(2 * half)} height=${round(2 * elementR * pxPerMm)}></rect>`
      : svg`<circle class="edge fill" cx=${cx} cy=${cy} r=${round(half)}></circle>`}
    <path class="axis" d="M${round(cx - half - 5)} ${cy}H${round(cx + half + 5)}M${cx} ${round(cy - elementR * pxPerMm - 5)}V${round(cy + elementR * pxPerMm + 5)}"></path>
    ${closures(bearing, at)}
  </g>`;
}

/** Rings with a groove; the outer ring's lies above the ball, the inner ring's below. */
function ballRings({ widthMm, boreMm, outsideMm, innerRimRadiusMm, outerRimRadiusMm, cornerMm }: DrawnBearing, at: Place, elementR: number, middleR: number, pxPerMm: number): readonly [string, string] {
  const radius = round(elementR * pxPerMm);
  const half = (rimR: number) => Math.min(Math.sqrt(Math.max(elementR ** 2 - (middleR - rimR) ** 2, 0)), widthMm * 0.46);
  const groove = (rimR: number, sweep: 0 | 1) => `L${at(widthMm / 2 - half(rimR), rimR)}A${radius} ${radius} 0 0 ${sweep} ${at(widthMm / 2 + half(rimR), rimR)}L${at(widthMm, rimR)}`;
  return [
    `M${at(0, innerRimRadiusMm)}${groove(innerRimRadiusMm, 0)}${seatSide(at, widthMm, boreMm / 2, cornerMm)}Z`,
    `M${at(0, outerRimRadiusMm)}${groove(outerRimRadiusMm, 1)}${seatSide(at, widthMm, outsideMm / 2, -cornerMm)}Z`,
  ];
}

function rollerLengthMm({ widthMm }: DrawnBearing): number {
  return widthMm * 0.62;
}

/** Rings with plain raceways, and rims on the ring that keeps the rollers. */
function rollerRings(bearing: DrawnBearing, at: Place): readonly [string, string] {
  const { widthMm, boreMm, outsideMm, innerRaceRadiusMm, outerRaceRadiusMm, innerRimRadiusMm, outerRimRadiusMm, cornerMm, rims } = bearing;
  const start = (widthMm - rollerLengthMm(bearing)) / 2;
  const end = widthMm - start;
  const race = (raceR: number, rimR: number, count: number) => {
    const left = count === 2 ? `M${at(0, rimR)}L${at(start, rimR)}L${at(start, raceR)}` : `M${at(0, raceR)}`;
    return `${left}${count > 0 ? `L${at(end, raceR)}L${at(end, rimR)}L${at(widthMm, rimR)}` : `L${at(widthMm, raceR)}`}`;
  };
  return [
    `${race(innerRaceRadiusMm, innerRimRadiusMm, rims.inner)}${seatSide(at, widthMm, boreMm / 2, cornerMm)}Z`,
    `${race(outerRaceRadiusMm, outerRimRadiusMm, rims.outer)}${seatSide(at, widthMm, outsideMm / 2, -cornerMm)}Z`,
  ];
}

/** The side of a ring that sits on shaft or in housing, with its two corners; back to the outer face. */
function seatSide(at: Place, widthMm: number, seatR: number, corner: number): string {
  const c = Math.abs(corner);
  return `L${at(widthMm, seatR + corner)}Q${at(widthMm, seatR)} ${at(widthMm - c, seatR)}L${at(c, seatR)}Q${at(0, seatR)} ${at(0, seatR + corner)}`;
}

function closures({ closure, closedSideCount, widthMm, innerRimRadiusMm, outerRimRadiusMm }: DrawnBearing, at: Place): SVGTemplateResult | '' {
  if (closedSideCount === 0) return '';
  const gap = outerRimRadiusMm - innerRimRadiusMm;
  const sides = closedSideCount === 2 ? [0, 1] : [0];
  const thick = widthMm * 0.075;
  const place = (side: number, u: number, r: number) => at(side === 0 ? u : widthMm - u, r);
  return svg`${sides.map((side) => {
    const foot = closure === 'seals' ? innerRimRadiusMm : innerRimRadiusMm + gap * 0.12;
    const lines = `M${place(side, thick * 0.6, outerRimRadiusMm + gap * 0.1)}L${place(side, thick * 0.6, foot)}L${place(side, thick * 1.6, foot)}L${place(side, thick * 1.6, outerRimRadiusMm + gap * 0.1)}Z`;
    return closure === 'seals' ? svg`<path class="fill" d=${lines}></path><path class="edge" fill="url(#rubber)" d=${lines}></path>` : svg`<path class="ink" d=${lines}></path>`;
  })}`;
}
