import { svg, type SVGTemplateResult } from 'lit';
import type { ElementWords } from '../../words/element-words.js';
import { drawnLength, type DimensionName, type LengthStyle, type SectionDimension } from './dimensions.js';
import { round } from './path.js';
import type { SectionGeometry } from './section-geometry.js';
import type { SectionLayout } from './section-layout.js';

interface Options {
  readonly words: ElementWords['section'];
  readonly style: LengthStyle;
  readonly highlight: string;
  readonly tap: (dimension: SectionDimension) => void;
}

/** Where the dimension lines lie, chosen so that no text meets another. */
interface Places {
  readonly shaftX: number;
  readonly boreX: number;
  /** The bore is dimensioned inside, beyond the seal; else out in front, with an extension line from its mouth. */
  readonly isBoreInside: boolean;
  /** The text of the bore starts no further left than this. */
  readonly boreTextFrom: number;
  readonly holeX: number;
  readonly rowY: number;
  readonly secondRowY: number;
}

const charPx = 7.4;

/** Dimension lines and their texts: thin lines, arrowheads, texts upright. On the shrunken drawing only the one that is lit. */
export function drawDimensions(geometry: SectionGeometry, layout: SectionLayout, dimensions: readonly SectionDimension[], options: Options): SVGTemplateResult {
  const places = placesOf(geometry, layout);
  const shown = layout.isCompact ? dimensions.filter(({ name }) => name === options.highlight) : dimensions;
  return svg`<g class="dimensions">${shown.map((dimension) => drawOne(dimension, geometry, layout, places, options))}</g>`;
}

function placesOf({ depthMm, widthMm, boreDepthMm, clearBehindMm, behind, drill }: SectionGeometry, { x, width, axisY, driverLeft, isCompact }: SectionLayout): Places {
  const sealEnd = x(depthMm + widthMm);
  const isBlocked = behind !== null && behind !== 'open space' && clearBehindMm !== null;
  const freeEnd = Math.min(boreDepthMm === null ? Infinity : x(boreDepthMm), isBlocked ? x(depthMm + widthMm + clearBehindMm) : Infinity, width - 30);
  const isBoreInside = freeEnd - sealEnd >= 22;
  const rowY = axisY + (isCompact ? 6 : 27);
  return {
    shaftX: isBoreInside ? 26 : width - 28,
    boreX: isBoreInside ? Math.min(Math.max((sealEnd + freeEnd) / 2, sealEnd + 14), width - 26) : 26,
    isBoreInside,
    boreTextFrom: isBoreInside ? sealEnd + 6 : 0,
    holeX: drill === null ? driverLeft : Math.min(driverLeft + 22, x(drill.stopMm) - 70),
    rowY,
    secondRowY: rowY + 27,
  };
}

function drawOne(dimension: SectionDimension, geometry: SectionGeometry, layout: SectionLayout, places: Places, options: Options): SVGTemplateResult | '' {
  const { x, y, axisY } = layout;
  const { shaftMm, boreMm, depthMm, widthMm, drill, chamfer } = geometry;
  const ringMm = (boreMm - shaftMm) / 2;
  switch (dimension.name) {
    case 'shaft':
      return diameter(dimension, { x: places.shaftX, surfaceY: y(shaftMm / 2) }, layout, places, options);
    case 'bore': {
      const extension = places.isBoreInside ? '' : `M${round(x(0) - 3)} ${round(y(boreMm / 2))}H${places.boreX - 5}${chamfer.lengthMm > 0 ? `M${round(x(0))} ${round(y(boreMm / 2))}H${round(x(chamfer.lengthMm))}` : ''}`;
      return diameter(dimension, { x: places.boreX, surfaceY: y(boreMm / 2), textFrom: places.boreTextFrom, extension }, layout, places, options);
    }
    case 'hole-circle':
      return drill === null ? '' : diameter(dimension, { x: places.holeX, surfaceY: y(drill.radiusMm), textY: places.secondRowY, extension: `M${round(places.holeX - 5)} ${round(y(drill.radiusMm))}H${round(x(drill.stopMm) - 20)}` }, layout, places, options);
    case 'width': {
      const extensions = `M${round(x(depthMm))} ${round(y(shaftMm / 2 + ringMm * 0.25) + 2)}V${places.rowY + 4}M${round(x(depthMm + widthMm))} ${round(y(boreMm / 2) + 8)}V${places.rowY + 4}`;
      return along(dimension, x(depthMm), x(depthMm + widthMm), places.rowY, layout, options, extensions);
    }
    case 'depth':
      if (layout.isCompact && Math.abs(depthMm) < 0.05) return '';
      if (dimension.valueMm === null || Math.abs(depthMm) < 0.05) return note(dimension, x(Math.min(depthMm, 0)) - 8, places.rowY - 1, options);
      return along(dimension, x(Math.min(0, depthMm)), x(Math.max(0, depthMm)), places.rowY, layout, options, `M${round(x(0))} ${round(y(boreMm / 2) + 3)}V${places.rowY + 4}`, 'left');
    case 'drill-stop':
      return drill === null ? '' : along(dimension, x(drill.stopMm), x(drill.tipMm), places.secondRowY, layout, options, `M${round(x(drill.stopMm))} ${axisY + 6}V${places.secondRowY + 4}M${round(x(drill.tipMm))} ${round(y(drill.radiusMm) + 4)}V${places.secondRowY + 4}`);
    case 'drill':
    case 'driver-outside':
    case 'driver-inside':
    case 'room':
      return '';
  }
}

interface DiameterPlace {
  readonly x: number;
  readonly surfaceY: number;
  readonly textY?: number;
  readonly textFrom?: number;
  readonly extension?: string;
}

/** Half a dimension line, from below the axis to the surface, as half views are dimensioned. */
function diameter(dimension: SectionDimension, place: DiameterPlace, layout: SectionLayout, places: Places, options: Options): SVGTemplateResult {
  const { x, surfaceY, textY = places.rowY, textFrom = 0, extension = '' } = place;
  const text = `ø ${valueText(dimension, options)}`;
  const half = (text.length * charPx) / 2;
  const footY = layout.isCompact ? layout.axisY + 2 : textY - 18;
  const textX = Math.min(Math.max(x, textFrom + half, half + 2), layout.width - half - 2);
  return group(dimension, options, { x: textX, y: (surfaceY + textY) / 2, width: Math.max(44, 2 * half), height: Math.max(textY - surfaceY, 48) }, svg`
    <path class="line" d="${extension}M${round(x)} ${footY}V${round(surfaceY)}"></path>
    <path class="head" d=${arrow(x, surfaceY, 0, -1)}></path>
    <text x=${round(textX)} y=${layout.isCompact ? layout.axisY - 3 : textY - 3} text-anchor="middle">${text}</text>`);
}

/** A dimension along the axis; where it is too short for its text, arrows and text stand outside. */
function along(dimension: SectionDimension, fromX: number, toX: number, rowY: number, layout: SectionLayout, options: Options, extensions: string, outside: 'left' | 'right' = 'right'): SVGTemplateResult {
  const text = valueText(dimension, options);
  const textPx = text.length * charPx;
  const isTight = toX - fromX < textPx + 14;
  const y = layout.isCompact ? layout.axisY - 2 : rowY;
  const heads = isTight ? arrow(fromX, y, 1, 0) + arrow(toX, y, -1, 0) : arrow(fromX, y, -1, 0) + arrow(toX, y, 1, 0);
  const tail = isTight ? `M${round(fromX - 13)} ${y}H${round(toX + 13)}` : `M${round(fromX)} ${y}H${round(toX)}`;
  const textX = !isTight || toX - fromX > textPx + 2 ? (fromX + toX) / 2 : outside === 'left' ? fromX - 15 - textPx / 2 : toX + 15 + textPx / 2;
  const textY = !isTight || toX - fromX > textPx + 2 ? y - 4 : y + 4;
  return group(dimension, options, { x: textX, y, width: Math.max(44, textPx, toX - fromX), height: 48 }, svg`
    <path class="line" d="${extensions}${tail}"></path>
    <path class="head" d=${heads}></path>
    <text x=${round(textX)} y=${textY} text-anchor="middle">${text}</text>`);
}

/** A word where there is no length to draw: flush, or not known. */
function note(dimension: SectionDimension, rightX: number, y: number, options: Options): SVGTemplateResult {
  const text = dimension.valueMm === null ? `${dimension.label} ?` : options.words.flush;
  return group(dimension, options, { x: rightX - (text.length * charPx) / 2, y, width: text.length * charPx, height: 48 }, svg`<text x=${round(rightX)} y=${y} text-anchor="end">${text}</text>`);
}

function group(dimension: SectionDimension, { highlight, tap }: Options, box: { readonly x: number; readonly y: number; readonly width: number; readonly height: number }, content: SVGTemplateResult): SVGTemplateResult {
  const classes = `dimension${highlight === dimension.name ? ' lit' : ''}${dimension.valueMm === null ? ' open' : ''}${dimension.path === '' ? '' : ' tappable'}`;
  return svg`<g class=${classes} data-name=${dimension.name satisfies DimensionName} @click=${() => { tap(dimension); }}>
    <rect class="hit" x=${round(box.x - box.width / 2)} y=${round(box.y - box.height / 2)} width=${round(box.width)} height=${round(box.height)}></rect>
    ${content}
  </g>`;
}

function valueText({ valueMm }: SectionDimension, { style }: Options): string {
  return valueMm === null ? '?' : drawnLength(Math.abs(valueMm), style);
}

/** An arrowhead with its point at (x, y), pointing along (dx, dy). */
function arrow(x: number, y: number, dx: number, dy: number): string {
  const length = 8;
  const half = 2.1;
  const backX = x - dx * length;
  const backY = y - dy * length;
  return `M${round(x)} ${round(y)}L${round(backX - dy * half)} ${round(backY + dx * half)}L${round(backX + dy * half)} ${round(backY - dx * half)}Z`;
}
