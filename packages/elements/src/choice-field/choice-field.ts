import { html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { property } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import { fieldStyles } from '../internal/field-styles.js';
import { severitySign } from '../internal/severity-sign.js';
import { signStyles } from '../internal/sign-styles.js';
import { tokens } from '../internal/tokens.js';
import type { ElementWords } from '../words/element-words.js';
import { englishWords } from '../words/english.js';
import { SpeaksPageLanguage } from '../words/speak.js';
import { styles } from './choice-field.styles.js';

export interface Choice {
  readonly value: string;
  readonly word: string;
  /** Heading that the choice stands under in a long list. */
  readonly group?: string;
}

/** A word was chosen; '' takes the choice back. */
export interface ChoiceChange {
  readonly value: string;
}

/**
 * One of a few words: side by side where there are up to four, a list where there are more. Nothing is chosen until somebody chooses.
 * @fires seat-change - detail `{ value }`
 */
export class SeatChoiceField extends LitElement {
  static formAssociated = true;
  static override shadowRootOptions: ShadowRootInit = { ...LitElement.shadowRootOptions, delegatesFocus: true };
  static override styles = [tokens, signStyles, fieldStyles, styles];

  /** Name of the field. */
  @property() label = '';
  /** Name under which the field is sent with its form. */
  @property() name = '';
  /** The value, as text. */
  @property() value = '';
  /** A line of help below the field. */
  @property() help = '';
  /** A fault that the page has found, in words; a fault of what was typed is found by the field. */
  @property() error = '';
  /** What can be chosen: value, word, and a heading in a long list. */
  @property({ attribute: false }) choices: readonly Choice[] = [];
  /** Says that something must be entered. */
  @property({ type: Boolean, reflect: true }) required = false;
  /** The element's own words. */
  @property({ attribute: false }) words: ElementWords = englishWords;

  private readonly internals = this.attachInternals();

  constructor() {
    super();
    new SpeaksPageLanguage(this);
  }

  override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('value')) this.internals.setFormValue(this.value);
  }

  override render(): TemplateResult {
    return html`
      ${this.choices.length > 4 ? this.list() : this.segments()}
      ${this.error === '' ? nothing : html`<p class="error" id="error">${severitySign('bad')}<span>${this.error}</span></p>`}
      ${this.help === '' ? nothing : html`<p class="help" id="help">${this.help}</p>`}
    `;
  }

  private segments(): TemplateResult {
    const segment = ({ value, word }: Choice) => html`<label><input type="radio" name="choice" .checked=${live(this.value === value)} @change=${() => { this.choose(value); }} /><span>${word}</span></label>`;
    const back = html`<label class="none" title=${this.words.field.none}><input type="radio" name="choice" aria-label=${this.words.field.none} .checked=${live(false)} @change=${() => { this.choose(''); }} /><span aria-hidden="true">✕</span></label>`;
    return html`<fieldset aria-describedby=${this.describedBy()}>
      <legend>${this.label}</legend>
      <div class="segments">${this.choices.map(segment)}${this.required || this.value === '' ? nothing : back}</div>
    </fieldset>`;
  }

  private list(): TemplateResult {
    const option = ({ value, word }: Choice) => html`<option value=${value} ?selected=${value === this.value}>${word}</option>`;
    const groups = [...new Set(this.choices.map((choice) => choice.group ?? ''))];
    return html`<label for="list">${this.label}</label>
      <div class="line choose ${this.error === '' ? '' : 'faulty'}">
        <select id="list" class=${this.value === '' ? 'none' : ''} .value=${live(this.value)} aria-describedby=${this.describedBy()} aria-required=${this.required ? 'true' : 'false'} aria-invalid=${this.error === '' ? 'false' : 'true'} @change=${(event: Event) => { this.choose((event.target as HTMLSelectElement).value); }}>
          <option value="" ?selected=${this.value === ''}>${this.words.field.none}</option>
          ${groups.map((group) => {
            const options = this.choices.filter((choice) => (choice.group ?? '') === group).map(option);
            return group === '' ? options : html`<optgroup label=${group}>${options}</optgroup>`;
          })}
        </select>
      </div>`;
  }

  private describedBy(): string | typeof nothing {
    const ids = [this.error === '' ? '' : 'error', this.help === '' ? '' : 'help'].filter((id) => id !== '').join(' ');
    return ids === '' ? nothing : ids;
  }

  private choose(value: string): void {
    this.value = value;
    // Who hears of it may read the form at once.
    this.internals.setFormValue(value);
    this.dispatchEvent(new CustomEvent<ChoiceChange>('seat-change', { detail: { value }, bubbles: true, composed: true }));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'seat-choice-field': SeatChoiceField;
  }
}
