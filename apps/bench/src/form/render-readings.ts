import { html, type TemplateResult } from 'lit';
import type { OwnInstrument } from '@seatwright/core/measure';
import type { RawReadings, ReadingsChange } from '@seatwright/elements/seat-readings-field.js';
import { isObject, listAt, valueAt, withValue, type Json } from '../document/raw-document.js';
import { capitalised, keyOf, type Entry } from './entry.js';
import { faultOf, filePathOf, type SheetContext } from '../view/sheet-context.js';
import { words } from '../words/index.js';

/** Readings of one size: a set for each instrument, and a way to add one more. */
export function renderReadings(scope: Entry['scope'], path: string, label: string, measures: 'outside' | 'inside', context: SheetContext): TemplateResult {
  const { document, style, actions } = context;
  const key = keyOf({ scope, path });
  const filePath = filePathOf({ scope, path }, context);
  const sets = listAt(document, filePath);
  const own = context.same('instruments', listAt(document, ['instruments']).filter(isOwnInstrument) as unknown as readonly OwnInstrument[]);
  const change = (at: number, readings: RawReadings | undefined) => {
    const list = valueAt(document, filePath);
    const next = withValue(list, [at], readings as Json | undefined);
    actions.change(filePath, next);
  };
  const field = (set: Json | undefined, at: number) => html`<seat-readings-field class="wide" data-key=${at === 0 ? key : `${key}[${at}]`} label=${at === 0 ? capitalised(label) : words.anotherInstrument} measures=${measures} default-unit=${style.lengthUnit}
    .instruments=${own} .writing=${style} .readings=${isObject(set) ? (set) : undefined} .error=${at === 0 ? faultOf(key, context) : ''}
    @seat-change=${({ detail }: CustomEvent<ReadingsChange>) => { change(at, detail.readings); }}></seat-readings-field>`;
  // One template for all of them, so that a field keeps its place and the cursor while its set comes to be.
  const places: readonly (Json | undefined)[] = sets.length === 0 ? [undefined] : [...sets, undefined];
  return html`${places.map((set, at) => (at === 0 ? field(set, at) : html`<details class="another wide" ?open=${set !== undefined}><summary>${words.anotherInstrument}</summary>${field(set, at)}</details>`))}`;
}

function isOwnInstrument(value: Json): boolean {
  return isObject(value) && typeof value['id'] === 'string' && typeof value['resolutionMm'] === 'number' && typeof value['permissibleErrorMm'] === 'number';
}
