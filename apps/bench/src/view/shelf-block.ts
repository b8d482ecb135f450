import { html, nothing, type TemplateResult } from 'lit';
import { positionPath } from '../document/places.js';
import { valueAt, type Path } from '../document/raw-document.js';
import { sealFromRow } from '../shelf/seal-from-row.js';
import type { ShelfChoice } from '../shelf/bench-shelf.js';
import { words } from '../words/index.js';
import { opening } from './fetched-fold.js';
import { situationOfSeal, type SheetContext } from './sheet-context.js';

/** Which seal of a list would suit here: folded, and fetched when it is opened. */
export function shelfBlock({ document, place, sealPart, seal, style, actions }: SheetContext): TemplateResult | typeof nothing {
  if (seal === null) return nothing;
  const path: Path = [...positionPath(place), 'parts', sealPart];
  return html`<details class="another wide" @toggle=${opening(() => import('../shelf/bench-shelf.js'))}>
    <summary>${words.shelf.heading}</summary>
    <bench-shelf .situation=${situationOfSeal(seal)} .writing=${style} @shelf-choose=${({ detail }: CustomEvent<ShelfChoice>) => { actions.change(path, sealFromRow(valueAt(document, path), detail)); }}></bench-shelf>
  </details>`;
}
