import { html, nothing, type TemplateResult } from 'lit';
import type { LengthChange } from '@seatwright/elements/seat-length-field.js';
import type { QuantityChange } from '@seatwright/elements/seat-quantity-field.js';
import type { ChoiceChange } from '@seatwright/elements/seat-choice-field.js';
import { textAt, valueAt, type Json, type Path } from '../document/raw-document.js';
import { faultOf, filePathOf, type FormContext } from '../view/sheet-context.js';
import { words } from '../words/index.js';
import { inLanguage } from '../words/sentences.js';
import { keyOf, type Entry } from './entry.js';

type Change<T> = CustomEvent<T>;

/** One field for one entry of the file. */
export function renderEntry(entry: Entry, context: FormContext): TemplateResult {
  return renderField(entry, keyOf(entry), filePathOf(entry, context), context);
}

/** One field for whatever stands at a path of the file. */
export function renderField({ label, help, entry, isRequired }: Omit<Entry, 'scope' | 'path' | 'name'>, key: string, path: Path, context: FormContext): TemplateResult {
  const { document, style, actions } = context;
  const isNamed = context.toBegin[0] === key;
  const { nameInFault = (text: string) => text } = context;
  const fault = nameInFault(faultOf(key, context));
  const set = (value: Json | undefined) => {
    actions.change(path, value);
  };
  switch (entry.kind) {
    case 'length':
      return html`<seat-length-field class=${isNamed ? 'next' : ''} data-key=${key} label=${label} help=${help} .error=${fault} ?required=${isRequired} default-unit=${style.lengthUnit} decimal-mark=${style.decimalMark}
        .stored=${storedAt(document, path)} @seat-change=${({ detail }: Change<LengthChange>) => { set(detail.stored); }}></seat-length-field>`;
    case 'quantity':
      return html`<seat-quantity-field class=${isNamed ? 'next' : ''} data-key=${key} label=${label} help=${help} .error=${fault} quantity=${entry.quantity} unit=${entry.unit} length-unit=${style.lengthUnit} decimal-mark=${style.decimalMark}
        .stored=${storedAt(document, path)} @seat-change=${({ detail }: Change<QuantityChange>) => { set(detail.stored); }}></seat-quantity-field>`;
    case 'choice':
      return html`<seat-choice-field class="wide ${isNamed ? 'next' : ''}" data-key=${key} label=${label} help=${help} .error=${fault} ?required=${isRequired} .choices=${entry.choices}
        .value=${textAt(document, path)} @seat-change=${({ detail }: Change<ChoiceChange>) => { set(detail.value === '' ? undefined : detail.value); }}></seat-choice-field>`;
    case 'yes-no': {
      const value = valueAt(document, path);
      return html`<seat-choice-field class="wide" data-key=${key} label=${label} help=${help} .error=${fault} .choices=${yesNo()} .value=${value === true ? 'yes' : value === false ? 'no' : ''}
        @seat-change=${({ detail }: Change<ChoiceChange>) => { set(detail.value === '' ? undefined : detail.value === 'yes'); }}></seat-choice-field>`;
    }
    case 'text':
      return html`<div class="text-field" data-key=${key}>
        <label for=${key}>${label}</label>
        <input id=${key} type="text" autocomplete="off" .value=${textAt(document, path)} aria-invalid=${fault === '' ? 'false' : 'true'} aria-describedby=${fault === '' ? nothing : `${key}-fault`}
          @input=${(event: Event) => { const { value } = event.target as HTMLInputElement; set(value === '' && !isRequired ? undefined : value); }} />
        ${fault === '' ? nothing : html`<p class="fault" id="${key}-fault">${fault}</p>`}
      </div>`;
  }
}

const yesNo = inLanguage(() => [
  { value: 'yes', word: words.yes },
  { value: 'no', word: words.no },
]);

function storedAt(document: Json, path: Path): number | string | undefined {
  const value = valueAt(document, path);
  return typeof value === 'number' || typeof value === 'string' ? value : undefined;
}
