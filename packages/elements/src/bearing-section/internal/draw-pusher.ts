import { svg, type SVGTemplateResult } from 'lit';
import { breakLine, line, outline, type Point } from '../../section/internal/path.js';
import type { SectionLayout } from '../../section/internal/section-layout.js';
import type { BearingGeometry } from './bearing-geometry.js';

/** What pushes the bearing home, on the face of the ring that takes the push; from the side that it goes in from. */
export function drawPusher({ driver, bearing }: BearingGeometry, { x, y, driverLeft, right, brokenBelowMm }: SectionLayout): SVGTemplateResult | '' {
  if (driver === null) return '';
  const isOuter = bearing.side === 'outer';
  const endX = isOuter ? x(bearing.faceMm) : x(bearing.faceMm + bearing.widthMm);
  const farX = isOuter ? driverLeft : right - 16;
  const top = y(driver.outsideRadiusMm);
  const inside = y(Math.max(driver.insideRadiusMm, brokenBelowMm));
  const edge: readonly Point[] = [[farX, inside], [endX, inside], [endX, top], [farX, top]];
  return svg`<path class="fill" d=${outline(edge)}></path>
    <path fill="url(#driver)" d=${outline(edge)}></path>
    <path class="edge" d=${line(edge)}></path>
    <path class="thin" d=${breakLine([farX, top], [farX, inside])}></path>`;
}
