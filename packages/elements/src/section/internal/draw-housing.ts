import { svg, type SVGTemplateResult } from 'lit';
import { breakLine, line, outline, type Point } from './path.js';
import type { SectionGeometry } from './section-geometry.js';
import type { SectionLayout } from './section-layout.js';

/** Bore and housing in section, hatched one way; broken off where it goes on. */
export function drawHousing(geometry: SectionGeometry, layout: SectionLayout, edge: readonly Point[] = innerEdge(geometry, layout)): SVGTemplateResult {
  const { x, y, topY, right } = layout;
  const faceX = x(0);
  const shownFaceY = geometry.faceRadiusMm === null ? topY : Math.max(topY, y(geometry.faceRadiusMm));
  const stepBack = Math.min((shownFaceY - topY) * 0.6, 14);
  const outside: readonly Point[] = shownFaceY > topY ? [[faceX, shownFaceY], [faceX + stepBack, shownFaceY], [faceX + stepBack, topY]] : [[faceX, topY]];
  const [first] = edge;
  const [lastX, lastY] = edge.at(-1) ?? [right, topY];
  return svg`<g class="housing">
    <path class="fill" d=${outline([...edge, [lastX, topY], ...[...outside].reverse()])}></path>
    <path fill="url(#housing)" d=${outline([...edge, [lastX, topY], ...[...outside].reverse()])}></path>
    <path class="edge" d=${line([...[...outside].reverse(), first ?? [faceX, topY], ...edge.slice(1)])}></path>
    <path class="thin" d=${breakLine([right, topY], [right, lastY])}></path>
    <path class="thin" d=${breakLine([outside.at(-1)?.[0] ?? faceX, topY], [right, topY])}></path>
  </g>`;
}

/** Mouth, chamfer, bore, and what ends it, from the housing face inward. */
export function innerEdge({ boreMm, chamfer, boreDepthMm, innerEnd, shoulderRadiusMm, widthMm, depthMm }: SectionGeometry, { x, y, right }: SectionLayout): readonly Point[] {
  const boreR = boreMm / 2;
  const points: Point[] = chamfer.lengthMm > 0 ? [[x(0), y(boreR + chamfer.riseMm)], [x(chamfer.lengthMm), y(boreR)]] : [[x(0), y(boreR)]];
  const endMm = boreDepthMm ?? (innerEnd === 'shoulder' ? Math.max(depthMm, 0) + widthMm : null);
  const endX = endMm === null ? right : Math.min(x(endMm), right);
  points.push([endX, y(boreR)]);
  if (endX < right) {
    const beyondR = innerEnd === 'shoulder' ? shoulderRadiusMm : boreR + Math.min(widthMm * 0.18, 2);
    points.push([endX, y(beyondR)], [right, y(beyondR)]);
  }
  return points;
}
