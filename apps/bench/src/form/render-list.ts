import { html, type TemplateResult } from 'lit';
import { isFinished } from '../document/without-unfinished.js';
import { listAt, textAt, valueAt, withValue } from '../document/raw-document.js';
import { filePathOf, type FormContext } from '../view/sheet-context.js';
import { words } from '../words/index.js';
import { currentLanguage } from '../words/language.js';
import { capitalised, keyOf, wordOf } from './entry.js';
import type { ItemForm } from './groups.js';
import { lengthIn } from './length-in.js';
import { renderField } from './render-entry.js';

/** A list of things that are described field by field: what stands on the shaft, the tools at hand. */
export function renderList(form: ItemForm, addWord: string, unfinishedWord: string, context: FormContext): TemplateResult {
  const { document, actions } = context;
  const inWords: FormContext = { ...context, nameInFault: (fault) => nameInFault(form, fault) };
  const path = filePathOf(form, context);
  const items = listAt(document, path);
  const listName = String(path.at(-1));
  return html`<div class="items wide">
    ${items.map((item, i) => {
      const itemKey = `${keyOf(form)}[${i}]`;
      const title = textAt(item, ['name']) || wordOf(textAt(item, ['kind'])) || String(i + 1);
      return html`<details class="item" data-item=${itemKey}>
        <summary><span>${title}</span><span class="quiet">${itemLine(lengthIn(item, ['outsideMm'], context.style) || lengthIn(item, ['diameterMm'], context.style))}</span></summary>
        <div class="fields">${form.fields.map(({ key, entry }) => renderField(entry, `${itemKey}.${key}`, [...path, i, key], inWords))}</div>
        ${isFinished(listName, item) ? '' : html`<p class="quiet">${unfinishedWord}</p>`}
        <button type="button" class="plain" @click=${() => { actions.change(path, withValue(valueAt(document, path), [i], undefined)); }}>${words.remove}: ${title}</button>
      </details>`;
    })}
    <button type="button" class="plain" @click=${() => { actions.change([...path, items.length], form.fresh); actions.goTo(`${keyOf(form)}[${items.length}].${form.fields[0]?.key ?? ''}`); }}>+ ${addWord}</button>
  </div>`;
}

/** A fault with the names that people know in place of those of the file: "wallMm" is "wall thickness". */
function nameInFault({ fields }: ItemForm, fault: string): string {
  const named = fields.filter(({ key }) => /[A-Z]/u.test(key)).reduce((text, { key, entry }) => text.replace(new RegExp(`\\b${key}\\b`, 'giu'), currentLanguage() === 'en' ? entry.label.toLowerCase() : entry.label), fault);
  return capitalised(named);
}

function itemLine(size: string): string {
  return size === '' ? '' : `ø ${size}`;
}
