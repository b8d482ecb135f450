import { html, type TemplateResult } from 'lit';
import type { SheetKeeping } from '../keeping/sheet-keeping.js';
import { words } from '../words/index.js';
import { currentLanguage, languages, type Language } from '../words/language.js';
import './keeping-mark.js';

interface BarState {
  readonly keeping: SheetKeeping;
  readonly canUndo: boolean;
  readonly canRedo: boolean;
  readonly isInch: boolean;
}

interface BarActions {
  leave(): void;
  step(way: 'undo' | 'redo'): void;
  showIn(units: 'mm' | 'in'): void;
  speak(language: Language): void;
  save(): void;
  share(): void;
}

/** The row above a sheet: back, what is kept, and what can be done with the sheet as a whole. */
export function sheetBar(state: BarState, actions: BarActions): TemplateResult {
  return html`<nav class="bar" aria-label=${words.name}>
    <button type="button" class="brand" @click=${() => { actions.leave(); }} aria-label="${words.name}: ${words.bar.sheets}"><span>${words.name}</span></button>
    <bench-keeping-mark class="unsaved" .keeping=${state.keeping}></bench-keeping-mark>
    ${stepButton('undo', '↶', state.canUndo, actions)}
    ${stepButton('redo', '↷', state.canRedo, actions)}
    ${unitSwitch(state, actions)}
    ${languageSwitch(actions)}
    <button type="button" @click=${() => { actions.save(); }}>${words.bar.save}</button>
    <button type="button" @click=${() => { actions.share(); }}>${words.share.button}</button>
    <button type="button" @click=${() => { window.print(); }}>${words.bar.print}</button>
  </nav>`;
}

/** One change back or forth: the word where there is room for it, its sign on a phone. */
function stepButton(way: 'undo' | 'redo', sign: string, canStep: boolean, { step }: BarActions): TemplateResult {
  const word = words.bar[way];
  return html`<button type="button" class="step" aria-label=${word} title=${word} ?disabled=${!canStep} @click=${() => { step(way); }}><span>${word}</span><span class="sign" aria-hidden="true">${sign}</span></button>`;
}

/** Everything shown in the other units; what was typed stays as typed. */
function unitSwitch({ isInch }: BarState, { showIn }: BarActions): TemplateResult {
  const word = isInch ? words.bar.inMm : words.bar.inInches;
  return html`<button type="button" aria-label=${word} title=${word} @click=${() => { showIn(isInch ? 'mm' : 'in'); }}>${isInch ? 'mm' : 'in'}</button>`;
}

/** Everything said in another language; what was typed stays as typed. */
function languageSwitch({ speak }: BarActions): TemplateResult {
  return html`<select aria-label=${words.language.choose} @change=${(event: Event) => { speak((event.target as HTMLSelectElement).value as Language); }}>${languages.map((one) => html`<option value=${one} lang=${one} .selected=${one === currentLanguage()}>${one.toUpperCase()}</option>`)}</select>`;
}
