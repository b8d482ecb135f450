import { html, svg, type TemplateResult } from 'lit';
import type { PartKind, PositionOutline } from '../document/outline.js';

/** [px] A part seen in section, above the shaft and below it. */
const part = 12;
/** [px] From one part to the next. */
const pitch = part + 2;
/** [px] The length of the line on a narrow phone. */
const shortestLine = 330;
/** [px] What a number of two digits needs beside its neighbour. */
const numberWidth = 18;
const mostParts = 4;

/** A shaft as a line with its axis, and what sits on it: a seal as a square with a cross from corner to corner, a bearing as one with an upright cross. Where it is crowded, each position is one part, or one stroke. */
export function shaftLine(positions: readonly PositionOutline[]): TemplateResult {
  const room = shortestLine / (positions.length + 1);
  const partCount = Math.min(mostParts, Math.max(1, Math.floor(room / pitch) - 1));
  const isNumbered = positions.length > 1 && room >= numberWidth;
  return html`<svg class="shaft-line" width="100%" height=${isNumbered ? 58 : 46} aria-hidden="true">
    <rect class="shaft" x="1%" y="15" width="98%" height="14" />
    <line class="axis" x1="0" y1="22" x2="100%" y2="22" />
    ${positions.map(({ parts }, i) => svg`<svg x="${(100 * (i + 1)) / (positions.length + 1)}%" overflow="visible">
      ${room < pitch ? svg`<path class="part" d="M0 4v11M0 29v11" />` : parts.slice(0, partCount).map((kind, k, shown) => symbol(kind, (k - shown.length / 2) * pitch + 1))}
      ${isNumbered ? svg`<text x="0" y="55" text-anchor="middle">${i + 1}</text>` : ''}
    </svg>`)}
  </svg>`;
}

function symbol(kind: PartKind, x: number): TemplateResult {
  return svg`${[3, 29].map((y) => svg`<path class="part" d="M${x} ${y}h${part}v${part}h${-part}z ${kind === 'seal' ? `M${x} ${y}l${part} ${part}M${x + part} ${y}l${-part} ${part}` : `M${x + part / 2} ${y + 2}v${part - 4}M${x + 2} ${y + part / 2}h${part - 4}`}" />`)}`;
}
