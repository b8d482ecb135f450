import { svg, type SVGTemplateResult } from 'lit';
import { breakLine, line, outline, type Point } from './path.js';
import type { SectionGeometry } from './section-geometry.js';
import type { SectionLayout } from './section-layout.js';

/** From there inward the shaft has another radius. */
export interface ShaftStep {
  readonly fromMm: number;
  readonly radiusMm: number;
}

type Obstacle = SectionGeometry['obstacles'][number];

/** The shaft, unhatched, from the axis up; what stands on it; the old lip track; the axis. */
export function drawShaft(geometry: SectionGeometry, layout: SectionLayout, steps: readonly ShaftStep[] = []): SVGTemplateResult {
  const { x, y, axisY, left, right, brokenBelowMm } = layout;
  const shaftR = geometry.shaftMm / 2;
  const endX = geometry.protrusionMm === null ? -Infinity : x(-geometry.protrusionMm);
  const isEndShown = endX > left + 4;
  const startX = isEndShown ? endX : left;
  const surface = steppedInward(surfaceOf(geometry, layout, startX, isEndShown), steps, layout);
  const innerY = surface.at(-1)?.[1] ?? y(shaftR);
  const bottomY = axisY + 4;
  return svg`<g class="shaft">
    <path class="fill" d=${outline([...surface, [right, bottomY], [startX, bottomY]])}></path>
    ${brokenBelowMm > 0 ? cutOut(layout, startX, y(brokenBelowMm)) : ''}
    <path class="edge" d=${line(isEndShown ? [[startX, bottomY], ...surface] : surface)}></path>
    ${isEndShown ? '' : svg`<path class="thin" d=${breakLine([left, y(shaftR)], [left, bottomY])}></path>`}
    <path class="thin" d=${breakLine([right, innerY], [right, bottomY])}></path>
    ${geometry.obstacles.map((obstacle) => drawObstacle(obstacle, geometry, layout))}
    ${wearTrack(geometry, layout)}
    <path class="axis" d="M${left - 2} ${axisY}H${right + 2}"></path>
    ${[left + 3, right - 3].map((end) => svg`<path class="thin" d="M${end - 3} ${axisY - 5}V${axisY + 5}M${end + 1} ${axisY - 5}V${axisY + 5}"></path>`)}
  </g>`;
}

/** The surface with its steps further in. */
function steppedInward(surface: readonly Point[], steps: readonly ShaftStep[], { x, y, right }: SectionLayout): readonly Point[] {
  if (steps.length === 0) return surface;
  const points = surface.slice(0, -1);
  for (const { fromMm, radiusMm } of steps) points.push([x(fromMm), points.at(-1)?.[1] ?? y(radiusMm)], [x(fromMm), y(radiusMm)]);
  return [...points, [right, points.at(-1)?.[1] ?? 0]];
}

/** Outline of the surface from the outer end inward: parts turned smaller than the shaft step down. */
function surfaceOf({ shaftMm, shaftEnd, obstacles, protrusionMm }: SectionGeometry, { x, y, right }: SectionLayout, startX: number, isEndShown: boolean): readonly Point[] {
  const shaftR = shaftMm / 2;
  const smaller = obstacles.filter((obstacle) => obstacle.diameterMm < shaftMm && ['thread', 'spline', 'step'].includes(obstacle.kind));
  const points: Point[] = [];
  let radius = shaftR;
  const stations = smaller.map((obstacle) => ({ fromMm: obstacle.fromMm, radius: obstacle.diameterMm / 2 })).sort((a, b) => b.fromMm - a.fromMm);
  for (const station of stations) {
    const stationX = x(-station.fromMm);
    if (stationX <= startX) continue;
    radius = station.radius;
    if (points.length === 0) points.push([startX, y(radius)]);
    points.push([stationX, y(radius)], [stationX, y(shaftR)]);
  }
  if (points.length === 0) {
    if (isEndShown && shaftEnd.dropMm > 0 && protrusionMm !== null) points.push([startX, y(shaftR - shaftEnd.dropMm)], [x(-protrusionMm + shaftEnd.lengthMm), y(shaftR)]);
    else points.push([startX, y(shaftR)]);
  }
  points.push([right, y(shaftR)]);
  return points;
}

/** A large shaft is cut out between its surface and the axis. */
function cutOut({ axisY, right }: SectionLayout, startX: number, topY: number): SVGTemplateResult {
  const lower = axisY - 5;
  return svg`<path class="paper" d="M${startX - 3} ${topY}H${right + 3}V${lower}H${startX - 3}Z"></path>
    <path class="thin" d=${breakLine([startX, topY], [right, topY])}></path>
    <path class="thin" d=${breakLine([startX, lower], [right, lower])}></path>`;
}

function drawObstacle({ kind, diameterMm, fromMm, lengthMm }: Obstacle, { shaftMm }: SectionGeometry, { x, y, left, axisY }: SectionLayout): SVGTemplateResult | '' {
  const innerX = x(-fromMm);
  if (innerX <= left) return '';
  const outerX = Math.max(lengthMm === undefined ? left : x(-fromMm - lengthMm), left);
  const top = y(Math.max(diameterMm, 0) / 2);
  const surface = y(shaftMm / 2);
  switch (kind) {
    case 'thread':
    case 'spline':
      return svg`<path class="thin" d="M${outerX} ${y((diameterMm / 2) * 0.87)}H${innerX}"></path>`;
    case 'keyway':
      return svg`<path class="thin dash" d="M${outerX} ${surface}V${y(shaftMm * 0.34)}H${innerX}V${surface}"></path>`;
    case 'circlip groove':
      return svg`<path class="edge" d="M${outerX} ${surface}V${y(diameterMm / 2)}H${innerX}V${surface}"></path>`;
    case 'cross hole':
      return svg`<path class="thin dash" d="M${outerX} ${surface}V${axisY}M${innerX} ${surface}V${axisY}"></path>`;
    // Keys and sleeves are taken off first.
    case 'key':
    case 'sleeve':
      return diameterMm > shaftMm ? svg`<path class="phantom" d="M${outerX} ${surface}V${top}H${innerX}V${surface}"></path>` : '';
    case 'collar':
    case 'step':
      return diameterMm > shaftMm ? svg`<path class="edge fill" d="M${outerX} ${surface}V${top}H${innerX}V${surface}"></path>` : '';
  }
}

function wearTrack({ wearTrack: track, shaftMm }: SectionGeometry, { x, y, pxPerMm }: SectionLayout): SVGTemplateResult | '' {
  if (track === null) return '';
  const half = Math.max((track.widthMm / 2) * pxPerMm, 3);
  const middle = x(track.fromFaceMm);
  const surface = y(shaftMm / 2);
  return svg`<path class="paper" d="M${middle - half} ${surface - 1.5}H${middle + half}L${middle} ${surface + 3.5}Z"></path>
    <path class="edge" d="M${middle - half} ${surface}L${middle} ${surface + 3}L${middle + half} ${surface}"></path>`;
}
