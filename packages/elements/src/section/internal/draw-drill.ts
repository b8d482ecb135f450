import { svg, type SVGTemplateResult } from 'lit';
import { breakLine, line, outline, type Point } from './path.js';
import type { SectionGeometry } from './section-geometry.js';
import type { SectionLayout } from './section-layout.js';

/** The drill midway in the face, through it, with its stop on the outer face of the seal; or a punch with its collar there. */
export function drawDrill({ drill }: SectionGeometry, { x, y, pxPerMm, driverLeft }: SectionLayout): SVGTemplateResult | '' {
  if (drill === null) return '';
  const middle = y(drill.radiusMm);
  const half = (drill.diameterMm / 2) * pxPerMm;
  const left = Math.max(driverLeft, x(drill.stopMm) - Math.max(drill.stopLengthMm * pxPerMm * 2.4, 40));
  const tip = x(drill.tipMm);
  // A punch is as thick as the hole where its collar lands, and thins out to its point.
  const shoulder = drill.isPunch ? x(drill.stopMm) : tip - drill.pointMm * pxPerMm;
  const stop = x(drill.stopMm);
  const stopLeft = Math.max(stop - drill.stopLengthMm * pxPerMm, left + 6);
  const stopHalf = Math.min(half * 2.4, (drill.freeWidthMm / 2) * pxPerMm * 0.92);
  const body: readonly Point[] = [[left, middle - half], [shoulder, middle - half], [tip, middle], [shoulder, middle + half], [left, middle + half]];
  return svg`<g class="drill">
    <path class="fill" d=${outline(body)}></path>
    <path class="edge" d=${line(body)}></path>
    <path class="edge" d="M${shoulder} ${middle - half}V${middle + half}"></path>
    ${drill.isPunch ? '' : flutes(left, shoulder, middle, half)}
    <path class="thin" d=${breakLine([left, middle - half], [left, middle + half])}></path>
    <path class="fill edge" d="M${stopLeft} ${middle - stopHalf}H${stop}V${middle + stopHalf}H${stopLeft}Z"></path>
    <path fill="url(#driver)" d="M${stopLeft} ${middle - stopHalf}H${stop}V${middle + stopHalf}H${stopLeft}Z"></path>
    <path class="axis" d="M${left - 10} ${middle}H${tip + 10}"></path>
  </g>`;
}

function flutes(left: number, right: number, middle: number, half: number): SVGTemplateResult {
  const pitch = Math.max(half * 3.2, 7);
  const lines: string[] = [];
  for (let at = right; at > left + pitch * 0.5; at -= pitch) {
    lines.push(`M${at} ${middle + half}Q${at - pitch * 0.3} ${middle} ${Math.max(at - pitch * 0.55, left)} ${middle - half}`);
  }
  return svg`<path class="thin" d=${lines.join('')}></path>`;
}
