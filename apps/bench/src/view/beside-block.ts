import { html, nothing, type TemplateResult } from 'lit';
import { positionPath, withPlaceAlone } from '../document/places.js';
import type { JsonObject } from '../document/raw-document.js';
import { withoutUnfinished } from '../document/without-unfinished.js';
import { words } from '../words/index.js';
import { opening } from './fetched-fold.js';
import type { SheetContext } from './sheet-context.js';

/** Another seal beside that of the sheet: folded, and fetched when it is opened. */
export function besideBlock({ document, place, sealPart, seal, style, actions }: SheetContext): TemplateResult | typeof nothing {
  if (seal === null) return nothing;
  return html`<details class="another wide" @toggle=${opening(() => import('../beside/bench-beside.js'))}>
    <summary>${words.beside.heading}</summary>
    <bench-beside .workshop=${withoutUnfinished(withPlaceAlone(document, place))} .partIndex=${sealPart} .seal=${seal} .writing=${style} @beside-take=${({ detail }: CustomEvent<JsonObject>) => { actions.change([...positionPath(place), 'parts', sealPart], detail); }}></bench-beside>
  </details>`;
}
