import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { sealSheet, type SealOutcome } from '@seatwright/core/job';
import { CalculationError } from '@seatwright/core/result';
import { constructions, lipMaterials } from '@seatwright/core/seal';
import { wordFor, type WritingStyle } from '@seatwright/core/wording';
import type { ChoiceChange } from '@seatwright/elements/seat-choice-field.js';
import type { LengthChange } from '@seatwright/elements/seat-length-field.js';
import { isObject, textAt, valueAt, withValue, type Json, type JsonObject } from '../document/raw-document.js';
import { wordOf } from '../form/entry.js';
import { PageElement } from '../page-element.js';
import { words } from '../words/index.js';
import { sentences } from '../words/sentences.js';
import { compareSeals, objectionsTo } from './compare-seals.js';

/** What of the seal may be another one. */
type Varied = 'outsideMm' | 'widthMm' | 'construction' | 'lipMaterial';

/** Another seal beside that of the sheet: the same rows, what differs marked; judged anew with every change of either. */
@customElement('bench-beside')
export class BenchBeside extends PageElement {
  /** The workshop file with this position alone. */
  @property({ attribute: false }) workshop: JsonObject | null = null;
  /** Which part of the position the seal of the sheet is. */
  @property({ attribute: false }) partIndex = 0;
  @property({ attribute: false }) seal: SealOutcome | null = null;
  @property({ attribute: false }) writing: WritingStyle = { lengthUnit: 'mm', decimalMark: '.' };
  @state() private other: Readonly<Partial<Record<Varied, Json>>> = {};

  override render(): TemplateResult | typeof nothing {
    const { seal, writing } = this;
    if (seal === null || this.workshop === null) return nothing;
    const candidate = this.candidate();
    const judged = Object.keys(this.other).length === 0 ? null : this.judge(candidate);
    return html`<p>${words.beside.says}</p>
      <div class="fields">
        ${this.length('outsideMm', words.beside.outside, candidate)}
        ${this.length('widthMm', words.beside.width, candidate)}
        ${this.choice('construction', words.beside.construction, constructions, candidate)}
        ${this.choice('lipMaterial', words.beside.rubber, lipMaterials, candidate)}
      </div>
      ${judged === null ? nothing : typeof judged === 'string' ? html`<p class="fault" role="alert">${judged}</p>` : this.compared(seal, judged, candidate, writing)}`;
  }

  private compared(seal: SealOutcome, other: SealOutcome, candidate: JsonObject, writing: WritingStyle): TemplateResult {
    const rows = compareSeals(seal, other, writing);
    const against = (outcome: SealOutcome) => {
      const objections = objectionsTo(outcome, writing);
      return objections.length === 0 ? words.beside.nothing : html`<ul>${objections.map((text) => html`<li>${text}</li>`)}</ul>`;
    };
    return html`<div class="beside-table"><table class="beside">
        <thead><tr><td></td><th scope="col">${words.beside.here}</th><th scope="col">${words.beside.other}</th></tr></thead>
        <tbody>
          <tr><th scope="row">${words.beside.verdict}</th><td><seat-verdict compact .verdict=${seal.verdict}></seat-verdict></td><td><seat-verdict compact .verdict=${other.verdict}></seat-verdict></td></tr>
          ${rows.map(({ label, one, other: opposite, isDifferent }) => html`<tr class=${isDifferent ? 'different' : ''}><th scope="row">${label}${isDifferent ? html` <span class="mark">≠ ${words.beside.differs}</span>` : nothing}</th><td>${one === '' ? '–' : one}</td><td>${opposite === '' ? '–' : opposite}</td></tr>`)}
          <tr><th scope="row">${words.beside.against}</th><td>${against(seal)}</td><td>${against(other)}</td></tr>
        </tbody>
      </table></div>
      <p><button type="button" class="plain" @click=${() => { this.take(candidate); }}>${words.beside.take}</button></p>`;
  }

  private length(key: 'outsideMm' | 'widthMm', label: string, candidate: JsonObject): TemplateResult {
    const stored = candidate[key];
    return html`<seat-length-field label=${label} default-unit=${this.writing.lengthUnit} decimal-mark=${this.writing.decimalMark} .stored=${typeof stored === 'number' || typeof stored === 'string' ? stored : undefined}
      @seat-change=${({ detail }: CustomEvent<LengthChange>) => { this.set(key, detail.stored); }}></seat-length-field>`;
  }

  private choice(key: 'construction' | 'lipMaterial', label: string, values: readonly string[], candidate: JsonObject): TemplateResult {
    return html`<seat-choice-field class="wide" label=${label} required .choices=${values.map((value) => ({ value, word: wordOf(value) }))} .value=${textAt(candidate, [key])}
      @seat-change=${({ detail }: CustomEvent<ChoiceChange>) => { this.set(key, detail.value); }}></seat-choice-field>`;
  }

  private set(key: Varied, value: Json | undefined): void {
    this.other = value === undefined ? Object.fromEntries(Object.entries(this.other).filter(([name]) => name !== key)) : { ...this.other, [key]: value };
  }

  /** The seal of the sheet with what is another. What was measured on the very seal stays with it. */
  private candidate(): JsonObject {
    const part = valueAt(this.workshop ?? {}, ['machines', 0, 'positions', 0, 'parts', this.partIndex]);
    const kept = Object.entries(isObject(part) ? part : {}).filter(([key]) => Object.keys(this.other).length === 0 || !['outsideReadings', 'caseThicknessMm', 'caseYieldMpa', 'faceThicknessMm', 'ratedPressureMpa', 'marking', 'name'].includes(key));
    return { ...Object.fromEntries(kept), ...this.other };
  }

  /** The sheet of the position with the other seal alone; or why it cannot be made. */
  private judge(candidate: JsonObject): SealOutcome | string | null {
    const workshop = withValue(this.workshop ?? {}, ['machines', 0, 'positions', 0, 'parts'], [candidate]);
    try {
      const [outcome] = sealSheet({ workshop }).parts;
      return outcome?.kind === 'seal' ? outcome : null;
    } catch (error) {
      if (error instanceof CalculationError) return wordFor(error.message, sentences);
      throw error;
    }
  }

  private take(candidate: JsonObject): void {
    this.other = {};
    this.dispatchEvent(new CustomEvent<JsonObject>('beside-take', { detail: candidate, bubbles: true }));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-beside': BenchBeside;
  }
}
