import { svg, type SVGTemplateResult } from 'lit';
import type { ElementWords } from '../../words/element-words.js';
import { drawnLength, type DimensionName, type LengthStyle, type SectionDimension } from './dimensions.js';
import { round } from './path.js';
import type { SectionLayout } from './section-layout.js';

export interface CalloutOptions {
  readonly words: ElementWords['section'];
  readonly style: LengthStyle;
  readonly highlight: string;
  readonly tap: (dimension: SectionDimension) => void;
}

/** A dimension that still has to find its row under the axis: what it covers there, and the lines that come down to it. */
export interface Callout {
  readonly name: DimensionName;
  readonly from: number;
  readonly to: number;
  readonly textFrom: number;
  readonly textTo: number;
  readonly drops: readonly number[];
  draw(rowY: number): SVGTemplateResult;
}

const charPx = 7.4;
const besidePx = 7;

/** The row of each: the first one where its text meets no other, best one where no line runs through a text either. */
export function rowsOf(callouts: readonly Callout[]): readonly number[] {
  const rows: number[] = [];
  callouts.forEach((one, i) => {
    const placed = callouts.slice(0, i).map((other, at) => ({ other, row: rows[at] ?? 0 }));
    const isFree = (row: number) => placed.every((before) => before.row !== row || isApart(one, before.other));
    const isUncrossed = (row: number) => placed.every((before) => before.row === row || (before.row < row ? isClear(one, before.other) : isClear(before.other, one)));
    const free = Array.from({ length: Math.max(-1, ...rows) + 2 }, (_, row) => row).filter(isFree);
    rows.push(free.find(isUncrossed) ?? free[0] ?? 0);
  });
  return rows;
}

function isApart(one: Callout, other: Callout): boolean {
  return one.from >= other.to + besidePx || other.from >= one.to + besidePx;
}

/** No line of the lower one runs through the text of the upper one. */
function isClear(lower: Callout, upper: Callout): boolean {
  return lower.drops.every((x) => x <= upper.textFrom + 1 || x >= upper.textTo - 1);
}

interface DiameterPlace {
  readonly x: number;
  readonly surfaceY: number;
  /** The text starts no further left than this. */
  readonly textFrom?: number;
  readonly extension?: string;
}

/** Half a dimension line, from below the axis to the surface, as half views are dimensioned. */
export function diameter(dimension: SectionDimension, { x, surfaceY, textFrom = 0, extension = '' }: DiameterPlace, layout: SectionLayout, options: CalloutOptions): Callout {
  const text = `ø ${valueText(dimension, options)}`;
  const half = (text.length * charPx) / 2;
  const textX = Math.min(Math.max(x, textFrom + half, half + 2), layout.width - half - 2);
  return {
    name: dimension.name,
    from: textX - half,
    to: textX + half,
    textFrom: textX - half,
    textTo: textX + half,
    drops: [x],
    draw: (rowY) => {
      const footY = layout.isCompact ? layout.axisY + 2 : rowY - 18;
      return group(dimension, options, { x: textX, y: (surfaceY + rowY) / 2, width: Math.max(44, 2 * half), height: Math.max(rowY - surfaceY, 48) }, svg`
    <path class="line" d="${extension}M${round(x)} ${footY}V${round(surfaceY)}"></path>
    <path class="head" d=${arrow(x, surfaceY, 0, -1)}></path>
    <text x=${round(textX)} y=${layout.isCompact ? layout.axisY - 3 : rowY - 3} text-anchor="middle">${text}</text>`);
    },
  };
}

interface AlongPlace {
  readonly fromX: number;
  readonly toX: number;
  /** Height from which the extension line at either end comes down; none where the end is bare. */
  readonly fromY?: number;
  readonly toY?: number;
  /** Where the text stands if it finds no room between. */
  readonly outside?: 'left' | 'right';
}

/** A dimension along the axis; where it is too short for its text, arrows and text stand outside. */
export function along(dimension: SectionDimension, { fromX, toX, fromY, toY, outside = 'right' }: AlongPlace, layout: SectionLayout, options: CalloutOptions): Callout {
  const text = valueText(dimension, options);
  const textPx = text.length * charPx;
  const isTight = toX - fromX < textPx + 14;
  const isBetween = !isTight || toX - fromX > textPx + 2;
  const textX = isBetween ? (fromX + toX) / 2 : outside === 'left' ? fromX - 15 - textPx / 2 : toX + 15 + textPx / 2;
  const tail = isTight ? 13 : 0;
  const ends = [...(fromY === undefined ? [] : [{ x: fromX, y: fromY }]), ...(toY === undefined ? [] : [{ x: toX, y: toY }])];
  return {
    name: dimension.name,
    from: Math.min(fromX - tail, textX - textPx / 2),
    to: Math.max(toX + tail, textX + textPx / 2),
    textFrom: textX - textPx / 2,
    textTo: textX + textPx / 2,
    drops: ends.map(({ x }) => x),
    draw: (rowY) => {
      const y = layout.isCompact ? layout.axisY - 2 : rowY;
      const heads = isTight ? arrow(fromX, y, 1, 0) + arrow(toX, y, -1, 0) : arrow(fromX, y, -1, 0) + arrow(toX, y, 1, 0);
      const extensions = ends.map((end) => `M${round(end.x)} ${round(end.y)}V${rowY + 4}`).join('');
      return group(dimension, options, { x: textX, y, width: Math.max(44, textPx, toX - fromX), height: 48 }, svg`
    <path class="line" d="${extensions}M${round(fromX - tail)} ${y}H${round(toX + tail)}"></path>
    <path class="head" d=${heads}></path>
    <text x=${round(textX)} y=${isBetween ? y - 4 : y + 4} text-anchor="middle">${text}</text>`);
    },
  };
}

/** A word where there is no length to draw: flush, or not known. */
export function note(dimension: SectionDimension, rightX: number, options: CalloutOptions): Callout {
  const text = dimension.valueMm === null ? `${dimension.label} ?` : options.words.flush;
  const width = text.length * charPx;
  const x = Math.max(rightX, width + 2);
  return {
    name: dimension.name,
    from: x - width,
    to: x,
    textFrom: x - width,
    textTo: x,
    drops: [],
    draw: (rowY) => group(dimension, options, { x: x - width / 2, y: rowY - 1, width, height: 48 }, svg`<text x=${round(x)} y=${rowY - 1} text-anchor="end">${text}</text>`),
  };
}

function group(dimension: SectionDimension, { highlight, tap }: CalloutOptions, box: { readonly x: number; readonly y: number; readonly width: number; readonly height: number }, content: SVGTemplateResult): SVGTemplateResult {
  const classes = `dimension${isLit(dimension.name, highlight) ? ' lit' : ''}${dimension.valueMm === null ? ' open' : ''}${dimension.path === '' ? '' : ' tappable'}`;
  return svg`<g class=${classes} data-name=${dimension.name} @click=${() => { tap(dimension); }}>
    <rect class="hit" x=${round(box.x - box.width / 2)} y=${round(box.y - box.height / 2)} width=${round(box.width)} height=${round(box.height)}></rect>
    ${content}
  </g>`;
}

/** A dimension lights up by its name, or with all that begin so: `bearing` lights the three of a bearing. */
export function isLit(name: DimensionName, highlight: string): boolean {
  return highlight !== '' && (name === highlight || name.startsWith(`${highlight}-`) && highlight === 'bearing');
}

function valueText({ valueMm }: SectionDimension, { style }: CalloutOptions): string {
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
