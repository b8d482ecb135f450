import { html, nothing, type TemplateResult } from 'lit';
import { withPlaceAlone } from '../document/places.js';
import { withoutUnfinished } from '../document/without-unfinished.js';
import { words } from '../words/index.js';
import { opening } from './fetched-fold.js';
import type { SheetContext } from './sheet-context.js';

/** The numbers of the sheet as drawings: folded, and fetched when they are opened. */
export function chartsBlock({ document, place, seal, style }: SheetContext): TemplateResult | typeof nothing {
  if (seal === null) return nothing;
  return html`<details class="another wide" @toggle=${opening(() => import('../charts/bench-charts.js'))}>
    <summary>${words.charts.heading}</summary>
    <bench-charts .seal=${seal} .workshop=${withoutUnfinished(withPlaceAlone(document, place))} .writing=${style}></bench-charts>
  </details>`;
}
