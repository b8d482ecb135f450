import { html, nothing, type TemplateResult } from 'lit';
import type { SectionMode } from '@seatwright/elements/seat-section.js';
import { words } from '../words/index.js';
import { drawsBearings, sectionView } from './section-view.js';
import type { SheetContext } from './sheet-context.js';

/** The drawing, which leads, and the choice of what it shows. */
export function drawingPane(context: SheetContext): TemplateResult {
  const { mode, highlight, actions, isStale, bearing, sealParts } = context;
  const button = (value: SectionMode, word: string) => html`<button type="button" aria-pressed=${mode === value ? 'true' : 'false'} @click=${() => { actions.showMode(value); }}>${word}</button>`;
  const isAlone = sealParts.length === 0 && bearing !== null;
  const ofSeal = isAlone ? nothing : html`${button('as driven', bearing === null ? words.drawing.driven : words.drawing.sealIn)}${button('taking out', bearing === null ? words.drawing.out : words.drawing.sealOut)}`;
  const ofBearing = bearing === null || !drawsBearings() ? nothing : html`${button('bearing in', isAlone ? words.drawing.driven : words.drawing.bearingIn)}${button('bearing out', isAlone ? words.drawing.out : words.drawing.bearingOut)}`;
  return html`<section class="drawing ${isStale ? 'stale' : ''}" aria-label=${words.drawing.label}>
    <div class="modes">${ofSeal}${ofBearing}</div>
    ${isAlone && !drawsBearings() ? nothing : sectionView(context, { mode, highlight, tapped: ({ path }) => { actions.goTo(path === 'seat' ? 'seat.kind' : path); } })}
  </section>`;
}

/** The drawing shrunk to a strip, which stays in view on a phone while the sheet scrolls under it. */
export function drawingStrip(context: SheetContext): TemplateResult {
  const { mode, highlight, output, isStale, bearing, sealParts } = context;
  return html`<div class="strip-place" aria-hidden="true">
    <div class="strip ${isStale ? 'stale' : ''}">
      ${sealParts.length === 0 && bearing !== null && !drawsBearings() ? nothing : sectionView(context, { mode, highlight, isCompact: true })}
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
  if (key === 'clearBehindMm') return 'room';
  if (key === 'bearing.designation') return 'bearing';
  if (/^bearing\.(?:boreMm|shaftClass|shaftReadings)/u.test(key)) return 'bearing-bore';
  if (/^bearing\.(?:outsideMm|housingClass|housingReadings)/u.test(key)) return 'bearing-outside';
  if (key === 'bearing.widthMm') return 'bearing-width';
  return '';
}
