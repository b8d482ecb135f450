import { svg, type SVGTemplateResult } from 'lit';
import { drawHousing, innerEdge } from '../../section/internal/draw-housing.js';
import { drawShaft } from '../../section/internal/draw-shaft.js';
import { line, round, type Point } from '../../section/internal/path.js';
import type { SectionLayout } from '../../section/internal/section-layout.js';
import type { BearingGeometry, Station } from './bearing-geometry.js';

/** The housing with the seat of the bearing. Where the puller grips the inner ring, the case is off: it stands as a broken line. */
export function drawHousingOf(geometry: BearingGeometry, layout: SectionLayout): SVGTemplateResult {
  const { bearing } = geometry;
  const edge = withStations(edgeBefore(geometry, layout), bearing.housing, layout);
  if (isCaseOff(geometry)) return svg`<path class="phantom" d=${line(edge)}></path>`;
  return svg`${drawHousing(geometry, layout, edge)}${guesses(edgeBefore(geometry, layout), bearing.housing, layout)}${drawHolder(geometry, layout)}`;
}

/** The shaft with the seat of the bearing. Where hooks grip the outer ring, the shaft is out: it stands as a broken line. */
export function drawShaftOf(geometry: BearingGeometry, layout: SectionLayout): SVGTemplateResult {
  const { bearing, shaftMm } = geometry;
  const start: readonly Point[] = [[layout.left, layout.y(shaftMm / 2)]];
  if (bearing.grip === 'outer ring') return svg`<path class="phantom" d=${line(withStations(start, bearing.shaft, layout))}></path>
    <path class="axis" d="M${layout.left - 2} ${layout.axisY}H${layout.right + 2}"></path>`;
  return svg`${drawShaft(geometry, layout, bearing.shaft)}${guesses(start, bearing.shaft, layout)}`;
}

function isCaseOff({ bearing: { grip } }: BearingGeometry): boolean {
  return grip === 'inner ring' || grip === 'both rings';
}

/** The bore up to where the seat of the bearing begins. */
function edgeBefore(geometry: BearingGeometry, layout: SectionLayout): readonly Point[] {
  const first = geometry.bearing.housing[0];
  const untilX = first === undefined ? layout.right : layout.x(first.fromMm);
  const edge = innerEdge(geometry, layout).filter(([x]) => x < untilX - 0.01);
  const lastY = edge.at(-1)?.[1] ?? layout.y(geometry.boreMm / 2);
  return [...edge, [untilX, lastY]];
}

function withStations(edge: readonly Point[], stations: readonly Station[], { x, y, right }: SectionLayout): readonly Point[] {
  const points = [...edge];
  for (const { fromMm, radiusMm } of stations) points.push([x(fromMm), points.at(-1)?.[1] ?? y(radiusMm)], [x(fromMm), y(radiusMm)]);
  points.push([right, points.at(-1)?.[1] ?? 0]);
  return points;
}

/** Steps that nobody measured are overdrawn: the full line gives way to a broken one. */
function guesses(edge: readonly Point[], stations: readonly Station[], layout: SectionLayout): SVGTemplateResult | '' {
  const at = stations.findIndex(({ isGuess }) => isGuess);
  const guess = stations[at];
  if (guess === undefined) return '';
  const before = withStations(edge, stations.slice(0, at), layout).at(-1)?.[1] ?? 0;
  const path = `M${round(layout.x(guess.fromMm))} ${round(before)}V${round(layout.y(guess.radiusMm))}H${layout.right}`;
  return svg`<path class="rubbed" d=${path}></path><path class="phantom" d=${path}></path>`;
}

/** What holds the outer ring, put on after it: a broken line while it goes in, gone while it comes out. */
function drawHolder({ bearing, mode, hasSeal }: BearingGeometry, { x, y, pxPerMm, topY }: SectionLayout): SVGTemplateResult | '' {
  const { heldBy, faceMm, widthMm, outsideMm, outerRimRadiusMm } = bearing;
  const wall = outsideMm / 2 - outerRimRadiusMm;
  const faceX = x(faceMm);
  const seatY = y(outsideMm / 2);
  const thick = Math.max(widthMm * 0.09, 0.8) * pxPerMm;
  const reach = wall * 0.6 * pxPerMm;
  if (mode === 'bearing out') return '';
  const style = mode === 'bearing in' ? 'phantom' : 'edge fill';
  switch (heldBy) {
    case 'circlip':
      return svg`<path class=${style} d="M${round(faceX - thick)} ${round(seatY - reach)}H${round(faceX - 0.5)}V${round(seatY + reach)}H${round(faceX - thick)}Z"></path>`;
    case 'plate':
      return hasSeal ? '' : svg`<path class=${style} d="M${round(faceX - thick * 2)} ${topY + 8}H${round(faceX - 0.5)}V${round(seatY + reach)}H${round(faceX - thick * 2)}Z"></path>`;
    case 'staking':
      return svg`<path class="ink" d="M${round(faceX - 1)} ${round(seatY + reach * 0.5)}L${round(faceX - 1)} ${round(seatY - 2)}L${round(faceX - thick * 1.6)} ${round(seatY - 2)}Z"></path>`;
    case 'nothing':
      return '';
  }
}
