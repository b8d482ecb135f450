import { svg, type SVGTemplateResult } from 'lit';
import type { SectionGeometry } from './section-geometry.js';
import type { SectionLayout } from './section-layout.js';

/** What lies behind the seal, as an adjacent part: its place is known, its size is not. */
export function drawBehind(geometry: SectionGeometry, { x, y, right }: SectionLayout): SVGTemplateResult | '' {
  const { behind, clearBehindMm, depthMm, widthMm, shaftMm, boreMm, boreDepthMm, innerEnd, shoulderRadiusMm } = geometry;
  if (behind === null || behind === 'open space' || behind === 'shoulder' || clearBehindMm === null) return '';
  const fromX = x(depthMm + widthMm + clearBehindMm);
  // Another seal sits in the same bore, up to its end; what else there is lies behind the shoulder.
  const isInBore = behind === 'second seal';
  const boreEndX = isInBore && innerEnd === 'shoulder' && boreDepthMm !== null ? x(boreDepthMm) : Infinity;
  const toX = Math.min(x(depthMm + widthMm * (isInBore ? 2 : 2.6) + clearBehindMm), boreEndX, right - 4);
  if (toX - fromX < 10) return '';
  const topR = innerEnd === 'shoulder' && !isInBore ? shoulderRadiusMm : boreMm / 2;
  const top = isInBore ? y(topR) : y(topR) + 3;
  const bottom = y(shaftMm / 2);
  const height = bottom - top;
  const middleX = (fromX + toX) / 2;
  if (behind === 'bearing') {
    const ring = height * 0.27;
    const ball = Math.min(height * 0.3, (toX - fromX) * 0.36);
    return svg`<g class="behind">
      <path class="phantom" d="M${fromX} ${top}H${toX}V${top + ring}H${fromX}ZM${fromX} ${bottom - ring}H${toX}V${bottom}H${fromX}Z"></path>
      <circle class="phantom" cx=${middleX} cy=${(top + bottom) / 2} r=${ball}></circle>
    </g>`;
  }
  if (behind === 'gear') {
    return svg`<g class="behind"><path class="phantom" d="M${fromX} ${top + 2}H${toX}V${bottom}H${fromX}ZM${fromX} ${top + height * 0.3}H${toX}"></path></g>`;
  }
  return svg`<g class="behind"><path class="phantom" d="M${fromX} ${top}H${toX}V${bottom}H${fromX}ZM${fromX} ${top}L${toX} ${bottom}"></path></g>`;
}
