import { svg, type SVGTemplateResult } from 'lit';
import { breakLine, line, outline, type Point } from './path.js';
import type { SectionGeometry } from './section-geometry.js';
import type { SectionLayout } from './section-layout.js';

/** The driver at its end position, in section, hatched against the housing; broken off on the left. */
export function drawDriver({ driver }: SectionGeometry, { x, y, driverLeft, brokenBelowMm }: SectionLayout): SVGTemplateResult | '' {
  if (driver === null) return '';
  const endX = x(driver.endMm);
  const top = y(driver.outsideRadiusMm);
  const inside = y(Math.max(driver.insideRadiusMm, brokenBelowMm));
  const collar: readonly Point[] = driver.collarRadiusMm === null ? [[driverLeft, top]] : [[x(0), top], [x(0), y(driver.collarRadiusMm)], [driverLeft, y(driver.collarRadiusMm)]];
  return hatched([[driverLeft, inside], [endX, inside], [endX, top], ...collar]);
}

/** The tube that pushes the old seal out from inside, in section; broken off on the right. */
export function drawPushTube({ pushTube }: SectionGeometry, { x, y, tubeRight, brokenBelowMm }: SectionLayout): SVGTemplateResult | '' {
  if (pushTube === null) return '';
  const endX = x(pushTube.endMm);
  const top = y(pushTube.outsideRadiusMm);
  const inside = y(Math.max(pushTube.insideRadiusMm, brokenBelowMm));
  return hatched([[tubeRight, inside], [endX, inside], [endX, top], [tubeRight, top]]);
}

/** A tool in section, from the inner end of its break round to the outer one. */
function hatched(edge: readonly Point[]): SVGTemplateResult | '' {
  const [inner, outer] = [edge[0], edge.at(-1)];
  if (inner === undefined || outer === undefined) return '';
  return svg`<g class="driver">
    <path class="fill" d=${outline(edge)}></path>
    <path fill="url(#driver)" d=${outline(edge)}></path>
    <path class="edge" d=${line(edge)}></path>
    <path class="thin" d=${breakLine(outer, inner)}></path>
  </g>`;
}
