import { nothing, svg, type SVGTemplateResult } from 'lit';
import { writeLength } from '@seatwright/core/quantity';
import type { ElementWords } from '../../words/element-words.js';
import type { LengthStyle } from './dimensions.js';
import { rangeOf, roundMagnification, type GapMarks, type GapSide } from './gap-marks.js';
import { round } from './path.js';

interface Options {
  readonly letter: string;
  /** Hatchings of the outer and the inner part. */
  readonly hatches: readonly [outer: string, inner: string];
  readonly width: number;
  /** Twice as large, for a nearer look. */
  readonly isNear: boolean;
  /** How long a text is in the font of the labels [px]. */
  readonly measure: (text: string) => number;
  /** Scale of the section that the detail belongs to. */
  readonly sectionPxPerMm: number;
  readonly words: ElementWords['section'];
  readonly style: LengthStyle;
}

interface Label {
  readonly y: number;
  readonly text: string;
  readonly mark: 'made' | 'read' | 'doubt' | 'nominal' | 'wanted';
}

const plotTop = 30;

function plotHeightOf(isNear: boolean): number {
  return isNear ? 260 : 122;
}

export function gapHeightOf(isNear: boolean): number {
  return plotTop + plotHeightOf(isNear) + 8;
}

/** How many times the section the detail is enlarged: a round number. */
function magnificationOf(marks: GapMarks, sectionPxPerMm: number, plotHeight: number): number {
  const { lowUm, highUm } = rangeOf(marks);
  return roundMagnification((plotHeight * 2000) / ((highUm - lowUm) * sectionPxPerMm));
}

/**
 * Two parts where they meet, magnified: the outer one above on the left, the inner one below on the right, as in the section.
 * Three different marks: a dashed box for where a part may be made, a solid band for what was read, a bar with ends for the doubt.
 */
export function drawGap(marks: GapMarks, { letter, hatches, width, isNear, measure, sectionPxPerMm, words, style }: Options): SVGTemplateResult {
  const plotHeight = plotHeightOf(isNear);
  const magnification = magnificationOf(marks, sectionPxPerMm, plotHeight);
  const pxPerUm = (magnification * sectionPxPerMm) / 2000;
  const { lowUm, highUm } = rangeOf(marks);
  const middleUm = (lowUm + highUm) / 2;
  const y = (um: number) => round(plotTop + plotHeight / 2 - (um - middleUm) * pxPerUm);
  const left = 8;
  const right = Math.min(Math.round(width * (width < 340 ? 0.3 : 0.36)), 230);
  const split = Math.round(left + (right - left) * 0.5);
  return svg`
    <text class="detail" x=${left} y="17">${letter}</text>
    <text class="caption" x=${left + 18} y="17">${words.detail.replace('{times}', String(magnification))}</text>
    <rect class="paper" x=${left} y=${plotTop} width=${right - left} height=${plotHeight}></rect>
    ${drawSide(marks.outer, y, left, split, { edgeY: plotTop, hatch: hatches[0] })}
    ${drawSide(marks.inner, y, split, right, { edgeY: plotTop + plotHeight, hatch: hatches[1] })}
    <path class="axis" d="M${left - 5} ${y(0)}H${right + 6}"></path>
    ${drawDoubt(marks.outer, y, (left + split) / 2)}${drawDoubt(marks.inner, y, (split + right) / 2)}
    <rect class="frame" x=${left} y=${plotTop} width=${right - left} height=${plotHeight}></rect>
    ${drawLabels(labelsOf(marks, y, words, style), right, width, plotHeight, measure)}`;
}

/** One part from its surface to the edge of the plot that it comes from. */
function drawSide({ made, read, wanted }: GapSide, y: (um: number) => number, left: number, right: number, { edgeY, hatch }: { readonly edgeY: number; readonly hatch: string }): SVGTemplateResult | '' {
  const band = read ?? made ?? wanted;
  if (band === null) return '';
  const width = right - left;
  const isAbove = edgeY === plotTop;
  const top = read === null ? y(band.highUm) : Math.min(y(band.highUm), y(read.meanUm) - 1.5);
  const low = read === null ? Math.max(y(band.lowUm), top + 1) : Math.max(y(band.lowUm), y(read.meanUm) + 1.5);
  const surface = isAbove ? top : low;
  const body = svg`<rect fill="url(#${hatch})" x=${left} y=${isAbove ? edgeY : surface} width=${width} height=${Math.max(Math.abs(surface - edgeY), 0)} opacity=${read === null && made === null ? 0.5 : 1}></rect>`;
  if (read !== null) return svg`${body}<rect class="ink" x=${left} y=${top} width=${width} height=${low - top}></rect>`;
  if (made !== null) return svg`${body}<path class="edge" d="M${left} ${surface}H${right}"></path><rect fill="url(#doubt)" class="box" x=${left} y=${top} width=${width} height=${low - top}></rect>`;
  return svg`${body}<rect class="thin dash nofill" x=${left} y=${top} width=${width} height=${low - top}></rect>`;
}

function drawDoubt({ read }: GapSide, y: (um: number) => number, x: number): SVGTemplateResult | '' {
  if (read === null) return '';
  const top = y(read.meanUm + read.uncertaintyUm);
  const low = y(read.meanUm - read.uncertaintyUm);
  const path = `M${x} ${top}V${low}M${x - 9} ${top}H${x + 9}M${x - 9} ${low}H${x + 9}`;
  return svg`<path class="halo" d=${path}></path><path class="whisker" d=${path}></path>`;
}

function labelsOf({ outer, inner, nominalMm }: GapMarks, y: (um: number) => number, words: ElementWords['section'], style: LengthStyle): readonly Label[] {
  const size = (um: number) => bare(writeLength(nominalMm + um / 1000, sizeStyle(style)));
  const span = (low: number, high: number) => (size(low) === size(high) ? size(low) : `${size(low)} ${words.upTo} ${size(high)}`);
  const labels: Label[] = [{ y: y(0), mark: 'nominal', text: `ø ${bare(writeLength(nominalMm, sizeStyle(style))).replace(/[.,]?0+$/, '')}` }];
  for (const { made, read, wanted } of [outer, inner]) {
    if (made !== null) labels.push({ y: y((made.lowUm + made.highUm) / 2), mark: 'made', text: `${made.label} ${span(made.lowUm, made.highUm)}` });
    if (read !== null) {
      labels.push({ y: y(read.meanUm), mark: 'read', text: `${read.label} ${span(read.lowUm, read.highUm)}` });
      labels.push({ y: y(read.meanUm - read.uncertaintyUm), mark: 'doubt', text: `${words.doubt} ± ${bare(writeLength(read.uncertaintyUm / 1000, sizeStyle(style)))}` });
    }
    if (wanted !== null) labels.push({ y: y((wanted.lowUm + wanted.highUm) / 2), mark: 'wanted', text: `${wanted.label} ${span(wanted.lowUm, wanted.highUm)}` });
  }
  return labels.sort((a, b) => a.y - b.y);
}

/** Labels to the right, in the order of their marks, never closer than a line. */
function drawLabels(labels: readonly Label[], right: number, width: number, plotHeight: number, measure: (text: string) => number): SVGTemplateResult {
  const step = 19;
  const places: number[] = [];
  for (const label of labels) places.push(Math.max(label.y, (places.at(-1) ?? -Infinity) + step));
  const over = Math.max(0, (places.at(-1) ?? 0) - (plotTop + plotHeight - 6));
  let ceiling = Infinity;
  const settled = places.map((place) => place - over);
  for (let i = settled.length - 1; i >= 0; i -= 1) {
    settled[i] = Math.min(settled[i] ?? 0, ceiling);
    ceiling = (settled[i] ?? 0) - step;
  }
  const x = right + 30;
  return svg`${labels.map((label, i) => {
    const at = round(settled[i] ?? label.y);
    return svg`<path class="leader" d="M${right + 2} ${label.y}L${right + 10} ${at}H${x - 13}"></path>
      ${key(label.mark, x - 6, at)}
      <text class="label" x=${x + 6} y=${at + 4} textLength=${fit(measure(label.text), width - x - 10)} lengthAdjust="spacingAndGlyphs">${label.text}</text>`;
  })}`;
}

/** Squeezes a label that would leave the paper; others keep their natural length. */
function fit(length: number, room: number): string | typeof nothing {
  return length > room ? String(Math.max(room, 40)) : nothing;
}

function key(mark: Label['mark'], x: number, y: number): SVGTemplateResult {
  switch (mark) {
    case 'made':
      return svg`<rect class="box" fill="url(#doubt)" x=${x - 6} y=${y - 5} width="12" height="10"></rect>`;
    case 'read':
      return svg`<rect class="ink" x=${x - 6} y=${y - 2.5} width="12" height="5"></rect>`;
    case 'doubt':
      return svg`<path class="whisker" d="M${x} ${y - 6}V${y + 6}M${x - 4} ${y - 6}H${x + 4}M${x - 4} ${y + 6}H${x + 4}"></path>`;
    case 'wanted':
      return svg`<rect class="thin dash nofill" x=${x - 6} y=${y - 5} width="12" height="10"></rect>`;
    case 'nominal':
      return svg`<path class="axis" d="M${x - 7} ${y}H${x + 7}"></path>`;
  }
}

function sizeStyle({ lengthUnit, decimalMark }: LengthStyle): { readonly unit: 'mm' | 'in'; readonly decimalMark: '.' | ',' } {
  return { unit: lengthUnit, decimalMark };
}

function bare(text: string): string {
  return text.replace(/\s*(mm|in)$/u, '');
}
