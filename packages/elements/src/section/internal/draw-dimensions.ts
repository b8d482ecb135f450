import { svg, type SVGTemplateResult } from 'lit';
import { along, diameter, isLit, note, rowsOf, type Callout, type CalloutOptions } from './callouts.js';
import type { SectionDimension } from './dimensions.js';
import { round } from './path.js';
import type { SectionGeometry } from './section-geometry.js';
import { layoutSection, rowYOf, type SectionExtent, type SectionLayout } from './section-layout.js';

const mostRows = 6;

/** A layout with as many rows of dimensions as keep their texts apart, and the dimensions in them. */
export interface SettledDimensions {
  readonly layout: SectionLayout;
  readonly callouts: readonly Callout[];
  readonly rows: readonly number[];
}

/** Chooses the scale and the rows together: more rows leave less for the section. On the shrunken drawing only what is lit is dimensioned. */
export function settleDimensions(extent: SectionExtent, paper: { readonly width: number; readonly isCompact: boolean }, highlight: string, calloutsOf: (layout: SectionLayout) => readonly Callout[]): SettledDimensions {
  for (let rowCount = 1; ; rowCount += 1) {
    const layout = layoutSection(extent, { ...paper, rows: rowCount });
    const all = calloutsOf(layout);
    const callouts = paper.isCompact ? all.filter(({ name }) => isLit(name, highlight)).slice(0, 1) : all;
    const rows = rowsOf(callouts);
    if (Math.max(0, ...rows) < rowCount || rowCount === mostRows) return { layout, callouts, rows };
  }
}

/** Dimension lines and their texts: thin lines, arrowheads, texts upright. The lowest row first: a line that must come past an upper text breaks behind it. */
export function drawDimensions({ layout, callouts, rows }: SettledDimensions): SVGTemplateResult {
  const placed = callouts.map((callout, i) => ({ callout, row: rows[i] ?? 0 })).sort((a, b) => b.row - a.row);
  return svg`<g class="dimensions">${placed.map(({ callout, row }) => callout.draw(rowYOf(layout, row)))}</g>`;
}

/** The dimensions of a seal in its place, each where a drawing would look for it; the shaft at `shaftX` where the bore takes the place in front. */
export function sealCallouts(geometry: SectionGeometry, layout: SectionLayout, dimensions: readonly SectionDimension[], options: CalloutOptions, shaftX = layout.width - 28): readonly Callout[] {
  return dimensions.flatMap((dimension) => sealCallout(dimension, geometry, layout, options, shaftX) ?? []);
}

function sealCallout(dimension: SectionDimension, geometry: SectionGeometry, layout: SectionLayout, options: CalloutOptions, shaftX: number): Callout | null {
  const { x, y, axisY, driverLeft } = layout;
  const { shaftMm, boreMm, depthMm, widthMm, drill, chamfer } = geometry;
  const ringMm = (boreMm - shaftMm) / 2;
  const inside = boreInside(geometry, layout);
  switch (dimension.name) {
    case 'shaft':
      return diameter(dimension, { x: inside === null ? shaftX : 26, surfaceY: y(shaftMm / 2) }, layout, options);
    case 'bore': {
      if (inside !== null) return diameter(dimension, { x: inside.x, surfaceY: y(boreMm / 2), textFrom: inside.textFrom }, layout, options);
      const extension = `M${round(x(0) - 3)} ${round(y(boreMm / 2))}H21${chamfer.lengthMm > 0 ? `M${round(x(0))} ${round(y(boreMm / 2))}H${round(x(chamfer.lengthMm))}` : ''}`;
      return diameter(dimension, { x: 26, surfaceY: y(boreMm / 2), extension }, layout, options);
    }
    case 'hole-circle': {
      if (drill === null) return null;
      const holeX = Math.min(driverLeft + 22, x(drill.stopMm) - 70);
      return diameter(dimension, { x: holeX, surfaceY: y(drill.radiusMm), extension: `M${round(holeX - 5)} ${round(y(drill.radiusMm))}H${round(x(drill.stopMm) - 20)}` }, layout, options);
    }
    case 'width':
      return along(dimension, { fromX: x(depthMm), toX: x(depthMm + widthMm), fromY: y(shaftMm / 2 + ringMm * 0.25) + 2, toY: y(boreMm / 2) + 8 }, layout, options);
    case 'depth':
      if (layout.isCompact && Math.abs(depthMm) < 0.05) return null;
      if (dimension.valueMm === null || Math.abs(depthMm) < 0.05) return note(dimension, x(Math.min(depthMm, 0)) - 8, options);
      return along(dimension, { fromX: x(Math.min(0, depthMm)), toX: x(Math.max(0, depthMm)), ...(depthMm > 0 ? { fromY: y(boreMm / 2) + 3 } : { toY: y(boreMm / 2) + 3 }), outside: 'left' }, layout, options);
    case 'drill-stop':
      return drill === null ? null : along(dimension, { fromX: x(drill.stopMm), toX: x(drill.tipMm), fromY: axisY + 6, toY: y(drill.radiusMm) + 4 }, layout, options);
    default:
      return null;
  }
}

/** The bore is dimensioned inside, beyond the seal, where there is room; else out in front, with an extension line from its mouth. */
function boreInside({ depthMm, widthMm, boreDepthMm, clearBehindMm, behind, pushTube }: SectionGeometry, { x, width }: SectionLayout): { readonly x: number; readonly textFrom: number } | null {
  if (pushTube !== null) return null;
  const sealEnd = x(depthMm + widthMm);
  const isBlocked = behind !== null && behind !== 'open space' && clearBehindMm !== null;
  const freeEnd = Math.min(boreDepthMm === null ? Infinity : x(boreDepthMm), isBlocked ? x(depthMm + widthMm + clearBehindMm) : Infinity, width - 30);
  return freeEnd - sealEnd < 22 ? null : { x: Math.min(Math.max((sealEnd + freeEnd) / 2, sealEnd + 14), width - 26), textFrom: sealEnd + 6 };
}
