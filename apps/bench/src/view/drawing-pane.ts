import { html, type TemplateResult } from 'lit';
import type { SectionMode, SectionTap } from '@seatwright/elements/seat-section.js';
import { words } from '../words.js';
import type { SheetContext } from './sheet-context.js';

/** The drawing, which leads, and the choice of what it shows. */
export function drawingPane(context: SheetContext): TemplateResult {
  const { situation, seal, driver, mode, highlight, style, actions, isStale } = context;
  const button = (value: SectionMode, word: string) => html`<button type="button" aria-pressed=${mode === value ? 'true' : 'false'} @click=${() => { actions.showMode(value); }}>${word}</button>`;
  return html`<section class="drawing ${isStale ? 'stale' : ''}" aria-label=${words.drawing.label}>
    <div class="modes">${button('as driven', words.drawing.driven)}${button('taking out', words.drawing.out)}</div>
    <seat-section .situation=${situation} .check=${seal?.check ?? null} .extraction=${seal?.extraction ?? null} .seating=${seal?.seating ?? null} .driver=${driver} mode=${mode}
      highlight=${highlight} length-unit=${style.lengthUnit} decimal-mark=${style.decimalMark}
      @seat-dimension=${({ detail }: CustomEvent<SectionTap>) => { actions.goTo(detail.path === 'seat' ? 'seat.kind' : detail.path); }}></seat-section>
  </section>`;
}

/** The drawing shrunk to a strip, which stays in view on a phone while the sheet scrolls under it. */
export function drawingStrip({ situation, seal, driver, mode, highlight, style, output, isStale }: SheetContext): TemplateResult {
  return html`<div class="strip-place" aria-hidden="true">
    <div class="strip ${isStale ? 'stale' : ''}">
      <seat-section compact .situation=${situation} .check=${seal?.check ?? null} .extraction=${seal?.extraction ?? null} .seating=${seal?.seating ?? null} .driver=${driver} mode=${mode} highlight=${highlight} length-unit=${style.lengthUnit} decimal-mark=${style.decimalMark}></seat-section>
      ${output === null ? '' : html`<seat-verdict compact .verdict=${output.verdict}></seat-verdict>`}
    </div>
  </div>`;
}

/** Which dimension lights up while an entry is being made. */
export function dimensionOfKey(key: string): string {
  if (/^(?:seal\.shaftMm|shaft\.(?:readings|diameterMm))/u.test(key)) return 'shaft';
  if (/^(?:seal\.outside|bore\.(?:readings|diameterMm))/u.test(key)) return 'bore';
  if (key === 'seal.widthMm') return 'width';
  if (/^(?:seat|oldDepthMm|bore\.depthMm)/u.test(key)) return 'depth';
  return '';
}
