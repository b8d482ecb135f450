import { html, svg, type TemplateResult } from 'lit';
import type { PartKind, PositionOutline } from '../document/outline.js';

/** [px] A part seen in section, above the shaft and below it. */
const part = 12;
/** More than these are one mark, and bear no number: they would run into each other on a phone. */
const mostPositions = 12;
const mostParts = 4;

/** A shaft as a line with its axis, and what sits on it: a seal as a square with a cross from corner to corner, a bearing as one with an upright cross. */
export function shaftLine(positions: readonly PositionOutline[]): TemplateResult {
  const isCrowded = positions.length > mostPositions;
  const isNumbered = positions.length > 1 && !isCrowded;
  return html`<svg class="shaft-line" width="100%" height=${isNumbered ? 58 : 46} aria-hidden="true">
    <rect class="shaft" x="1%" y="15" width="98%" height="14" />
    <line class="axis" x1="0" y1="22" x2="100%" y2="22" />
    ${positions.map(({ parts }, i) => svg`<svg x="${(100 * (i + 1)) / (positions.length + 1)}%" overflow="visible">
      ${(isCrowded ? parts.slice(0, 1) : parts.slice(0, mostParts)).map((kind, k, shown) => symbol(kind, (k - shown.length / 2) * (part + 2) + 1))}
      ${!isNumbered ? '' : svg`<text x="0" y="55" text-anchor="middle">${i + 1}</text>`}
    </svg>`)}
  </svg>`;
}

function symbol(kind: PartKind, x: number): TemplateResult {
  return svg`${[3, 29].map((y) => svg`<path class="part" d="M${x} ${y}h${part}v${part}h${-part}z ${kind === 'seal' ? `M${x} ${y}l${part} ${part}M${x + part} ${y}l${-part} ${part}` : `M${x + part / 2} ${y + 2}v${part - 4}M${x + 2} ${y + part / 2}h${part - 4}`}" />`)}`;
}
