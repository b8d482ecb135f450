import { svg, type SVGTemplateResult } from 'lit';
import { line, outline, round, type Point } from '../../section/internal/path.js';
import type { SectionLayout } from '../../section/internal/section-layout.js';
import type { BearingGeometry } from './bearing-geometry.js';

/** The claw of the puller where the plan wants it, with heavy arrows on the face it bears on and along its pull. Schematic in its own sizes, to scale where it grips. */
export function drawPuller(geometry: BearingGeometry, { x, y, driverLeft, right, pxPerMm }: SectionLayout): SVGTemplateResult | '' {
  const { faceMm, widthMm, boreMm, outsideMm, innerRimRadiusMm, outerRimRadiusMm, shaft, housing, grip, side } = geometry.bearing;
  if (grip === null) return '';
  // Towards the side that it comes out to: left is -1.
  const way = side === 'outer' ? -1 : 1;
  const nearX = way < 0 ? x(faceMm) : x(faceMm + widthMm);
  const backX = way < 0 ? x(faceMm + widthMm) : x(faceMm);
  const farX = way < 0 ? driverLeft : right - 56;
  const middleY = (y(boreMm / 2) + y(outsideMm / 2)) / 2;
  if (grip === 'either') return pull(nearX + way * 8, middleY, way, Math.min(Math.abs(farX - nearX), 60));
  const thick = Math.min(Math.max(widthMm * 0.3 * pxPerMm, 7), 16);
  const isOutside = grip !== 'outer ring';
  const armY = isOutside ? y(outsideMm / 2) - 4 : y(boreMm / 2) + 5;
  const away = isOutside ? -thick : thick;
  // The tip reaches past the rim of the ring, as far as the shoulder beside it leaves room.
  const shoulderR = isOutside ? (side === 'outer' ? shaft.at(-1)?.radiusMm : undefined) ?? boreMm / 2 : housing.at(-1)?.radiusMm ?? outsideMm / 2;
  const rimR = isOutside ? innerRimRadiusMm : outerRimRadiusMm;
  const ringPx = Math.abs(rimR - (isOutside ? boreMm : outsideMm) / 2) * pxPerMm;
  const tipY = isOutside ? Math.min(y(shoulderR) - 1, y(rimR) + ringPx * 0.7) : Math.max(y(shoulderR) + 1, y(rimR) - ringPx * 0.7);
  const hookX = backX - way * 1;
  const claw: readonly Point[] = [[farX, armY], [hookX, armY], [hookX, tipY], [hookX - way * thick, tipY], [hookX - way * thick, armY + away], [farX, armY + away]];
  const gripY = (tipY + y(rimR)) / 2;
  return svg`<path class="fill" d=${outline(claw)}></path>
    <path fill="url(#driver)" d=${outline(claw)}></path>
    <path class="edge" d=${line(claw)}></path>
    ${pull(farX + way * 4, armY + away / 2, way, 42)}
    <path class="grip" d=${head(backX, gripY, way, 1)}></path>`;
}

/** A heavy arrow along the pull. */
function pull(fromX: number, y: number, way: number, length: number): SVGTemplateResult {
  const tipX = fromX + way * length;
  return svg`<path class="pull" d="M${round(fromX)} ${round(y)}H${round(tipX - way * 11)}"></path><path class="grip" d=${head(tipX, y, way, 1)}></path>`;
}

/** A heavy arrowhead with its point at (x, y). */
function head(x: number, y: number, way: number, size: number): string {
  return `M${round(x)} ${round(y)}l${-way * 13 * size} ${-6 * size}v${12 * size}Z`;
}
