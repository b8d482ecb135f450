import { html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { property, query, state } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import { asTyped } from '@seatwright/core/quantity';
import { CalculationError } from '@seatwright/core/result';
import { wordFor } from '@seatwright/core/wording';
import type { ElementWords } from '../words/element-words.js';
import { englishWords } from '../words/english.js';
import { plainNames, type NameCatalogue } from '../words/plain-names.js';
import { SpeaksPageLanguage } from '../words/speak.js';
import { fieldStyles, inlineStyles } from './field-styles.js';
import { severitySign } from './severity-sign.js';
import { signStyles } from './sign-styles.js';
import { tokens } from './tokens.js';
import type { Understood } from './understand-length.js';

export type FieldReading = { readonly kind: 'empty' } | { readonly kind: 'understood'; readonly understood: Understood } | { readonly kind: 'fault'; readonly message: string };

/** A text field for one quantity: keeps what was typed, shows what was understood, says in words what it did not understand. */
export abstract class TypedField extends LitElement {
  static formAssociated = true;
  static override shadowRootOptions: ShadowRootInit = { ...LitElement.shadowRootOptions, delegatesFocus: true };
  static override styles = [tokens, signStyles, fieldStyles, inlineStyles];

  /** Name of the field. */
  @property() label = '';
  /** Name under which the field is sent with its form. */
  @property() name = '';
  /** The text as typed. */
  @property() value = '';
  /** The entry as a document has it: a number in the base unit, or text. Setting it shows it, unless it is what was just typed here. */
  @property({ attribute: false }) stored: number | string | undefined;
  /** A line of help below the field. */
  @property() help = '';
  /** Shown while the field is empty. */
  @property() placeholder = '';
  /** A fault found elsewhere (out of range, contradicts another entry); shown when the text itself is understood. */
  @property() error = '';
  /** Says that something must be entered. */
  @property({ type: Boolean, reflect: true }) required = false;
  /** Takes no input. */
  @property({ type: Boolean, reflect: true }) disabled = false;
  /** The element's own words. */
  @property({ attribute: false }) words: ElementWords = englishWords;
  /** Names of what stands in tables and errors in English. */
  @property({ attribute: false }) catalogue: NameCatalogue = plainNames;

  /** Decimal mark of the numbers shown. */
  @property({ attribute: 'decimal-mark' }) decimalMark: '.' | ',' = '.';

  /** Whether the row of keys is out. */
  @state() private hasKeysOut = false;

  @query('input') protected input!: HTMLInputElement;

  private readonly internals = this.attachInternals();
  private sent: number | string | undefined;
  private putKeysAway: ReturnType<typeof setTimeout> | undefined;

  constructor() {
    super();
    new SpeaksPageLanguage(this, plainNames);
  }

  /** What the text means, or throws a `CalculationError` that says what would be understood. */
  protected abstract understand(text: string): Understood;
  /** Tells the world what was typed; `stored` is what a document should keep. */
  protected abstract announce(reading: FieldReading, stored: number | string | undefined): void;

  /** How an entry of a document is shown. */
  protected textOf(stored: number | string | undefined): string {
    return stored === undefined ? '' : asTyped(stored, this.decimalMark);
  }

  /** Characters that a decimal keypad lacks, offered on touch screens: what is shown, what is typed, its name. */
  protected get keys(): readonly (readonly [shown: string, typed: string, name: string])[] {
    return [];
  }

  get reading(): FieldReading {
    return this.read(this.value);
  }

  formResetCallback(): void {
    this.value = this.getAttribute('value') ?? '';
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    clearTimeout(this.putKeysAway);
  }

  override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('stored') && (this.stored !== this.sent || this.stored === undefined && this.reading.kind !== 'empty')) {
      this.sent = this.stored;
      this.value = this.textOf(this.stored);
    }
    if (changed.has('decimalMark') && typeof this.stored === 'number') this.showStored();
    if (changed.has('value') || changed.has('stored')) this.internals.setFormValue(this.value);
  }

  /** Shows the entry anew, as the document has it. */
  protected showStored(): void {
    if (this.stored !== undefined) this.value = this.textOf(this.stored);
  }

  override updated(): void {
    const fault = this.faultText();
    if (fault !== '') this.internals.setValidity({ badInput: true }, fault, this.input);
    else if (this.required && this.value.trim() === '') this.internals.setValidity({ valueMissing: true }, this.words.field.missing, this.input);
    else this.internals.setValidity({});
  }

  override render(): TemplateResult {
    const reading = this.reading;
    const fault = this.faultText();
    const describedBy = [fault === '' ? '' : 'error', reading.kind === 'understood' ? 'understood' : '', this.help === '' ? '' : 'help'].filter((id) => id !== '').join(' ');
    return html`
      <div class="entry"><label for="input">${this.label}</label>
      <div class="line ${fault === '' ? '' : 'faulty'}">
        <input
          id="input"
          type="text"
          inputmode="decimal"
          autocomplete="off"
          autocapitalize="off"
          spellcheck="false"
          enterkeyhint="next"
          .value=${live(this.value)}
          placeholder=${this.placeholder === '' ? nothing : this.placeholder}
          ?disabled=${this.disabled}
          aria-required=${this.required ? 'true' : 'false'}
          aria-invalid=${fault === '' ? 'false' : 'true'}
          aria-describedby=${describedBy === '' ? nothing : describedBy}
          @input=${this.typed}
          @focus=${this.bringKeys}
          @blur=${this.leaveKeys}
        />
        ${reading.kind === 'understood' ? html`<span class="understood" id="understood"><span class="visually-hidden">${this.words.field.understood} </span>${reading.understood.shown}</span>` : nothing}
      </div></div>
      ${this.keys.length === 0 ? nothing : html`<div class="keys ${this.hasKeysOut ? 'out' : ''}" aria-hidden="true">${this.keys.map(([shown, typed, name]) => html`<button type="button" tabindex="-1" title=${name} @pointerdown=${(event: Event) => { event.preventDefault(); }} @click=${() => { this.insert(typed); }}>${shown}</button>`)}</div>`}
      ${fault === '' ? nothing : html`<p class="error" id="error">${severitySign('bad')}<span>${fault}</span></p>`}
      ${this.help === '' ? nothing : html`<p class="help" id="help">${this.help}</p>`}
    `;
  }

  private faultText(): string {
    const reading = this.reading;
    return reading.kind === 'fault' ? reading.message : this.error;
  }

  private read(text: string): FieldReading {
    if (text.trim() === '') return { kind: 'empty' };
    try {
      return { kind: 'understood', understood: this.understand(text) };
    } catch (error) {
      if (error instanceof CalculationError) return { kind: 'fault', message: plainMessage(error, this.catalogue) };
      throw error;
    }
  }

  private typed(): void {
    this.value = this.input.value;
    // Who hears of it may read the form at once.
    this.internals.setFormValue(this.value);
    const reading = this.read(this.value);
    this.sent = reading.kind === 'empty' ? undefined : reading.kind === 'understood' ? reading.understood.stored : this.value;
    this.announce(reading, this.sent);
  }

  private bringKeys(): void {
    clearTimeout(this.putKeysAway);
    this.hasKeysOut = true;
  }

  /** The row goes only after the tap that left the field has landed: what is tapped must not move away under the thumb. */
  private leaveKeys(): void {
    clearTimeout(this.putKeysAway);
    this.putKeysAway = setTimeout(() => { this.hasKeysOut = false; }, 350);
  }

  private insert(text: string): void {
    this.input.focus();
    this.input.setRangeText(text, this.input.selectionStart ?? this.value.length, this.input.selectionEnd ?? this.value.length, 'end');
    this.typed();
  }
}

/** The message without the path in front and without what was received: the field shows both already. */
export function plainMessage(error: CalculationError, catalogue: NameCatalogue): string {
  const body = wordFor(error.message.replace(/^[\w.[\]]*: /u, '').replace(/, got .*$/su, ''), catalogue);
  return `${body.charAt(0).toUpperCase()}${body.slice(1)}.`;
}
