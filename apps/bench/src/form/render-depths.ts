import { html, type TemplateResult } from 'lit';
import type { LengthChange } from '@seatwright/elements/seat-length-field.js';
import { listAt, valueAt, withValue, type Json } from '../document/raw-document.js';
import { faultOf, filePathOf, type SheetContext } from '../view/sheet-context.js';
import { words } from '../words/index.js';

/** Depths of the old seal around its rim: as many as are noted, and one more, at least four places in all. */
export function renderOldDepths(label: string, context: SheetContext): TemplateResult {
  const { document, style, actions } = context;
  const path = filePathOf({ scope: 'position', path: 'oldDepthMm' }, context);
  const depths = listAt(document, path);
  const shown: readonly (Json | undefined)[] = depths.length >= 12 ? depths : [...depths, undefined];
  const fault = faultOf('oldDepthMm', context);
  return html`<fieldset class="wide">
    <legend>${label}</legend>
    <div class="fields narrow">
      ${shown.map((depth, i) => html`<seat-length-field data-key=${i === 0 ? 'oldDepthMm' : `oldDepthMm[${i}]`} label="${words.point} ${i + 1}" .error=${i === 0 ? fault : ''} default-unit=${style.lengthUnit} decimal-mark=${style.decimalMark}
        .stored=${typeof depth === 'number' || typeof depth === 'string' ? depth : undefined}
        @seat-change=${({ detail }: CustomEvent<LengthChange>) => { actions.change(path, withValue(valueAt(document, path), [i], detail.stored)); }}></seat-length-field>`)}
    </div>
  </fieldset>`;
}
