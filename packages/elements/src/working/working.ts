import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { property, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import type { WorkingStep } from '@seatwright/core/result';
import { wordFor } from '@seatwright/core/wording';
import { SentenceElement } from '../internal/sentence-element.js';
import { sourceText } from '../internal/source-text.js';
import { tokens } from '../internal/tokens.js';
import { parseFormula } from './internal/formula.js';
import { triedValues, type Tried } from './internal/tried-numbers.js';
import { symbolInMath, typesetFormula } from './internal/typeset-formula.js';
import { workingAsText } from './internal/working-as-text.js';
import { styles } from './working.styles.js';

type FormulaStep = Extract<WorkingStep, { kind: 'formula' }>;

/**
 * The working of a calculation: each formula set as books do, with its numbers; each value read from a table; each choice with its reason.
 * A number of a formula can be replaced to see what follows; the whole can be copied as text.
 */
export class SeatWorking extends SentenceElement {
  static override styles = [tokens, styles];

  /** Steps, as a calculation gives them. */
  @property({ attribute: false }) steps: readonly WorkingStep[] = [];
  /** Decimal mark of the numbers shown. */
  @property({ attribute: 'decimal-mark' }) decimalMark: '.' | ',' = '.';
  @state() private tried: Tried = new Map();

  override willUpdate(changed: PropertyValues<this>): void {
    // Other steps, other numbers: what was tried belonged to the old ones.
    if (changed.has('steps')) this.tried = new Map();
  }

  override render(): TemplateResult {
    const words = this.words.working;
    if (this.steps.length === 0) return html`<p class="numbers">${words.none}</p>`;
    const values = triedValues(this.steps, this.tried);
    return html`<p class="ways"><button type="button" @click=${(event: Event) => void this.copy(event.currentTarget as HTMLButtonElement)}>${words.copy}</button>
        ${this.tried.size === 0 ? nothing : html`<span role="status">${words.trying}</span> <button type="button" @click=${() => { this.tried = new Map(); }}>${words.back}</button>`}</p>
      <ol role="list">${repeat(this.steps, keysOf(this.steps), (step, i) => this.one(step, i, values[i]))}</ol>`;
  }

  private one(step: WorkingStep, i: number, tried: number | null | undefined): TemplateResult {
    const value = typeof step.value === 'number' ? this.number(step.value) : wordFor(step.value, this.catalogue);
    const unit = step.unit === '' ? nothing : ` ${step.unit}`;
    return html`<li>
      <p class="meaning"><span>${wordFor(step.meaning, this.catalogue)}</span><span class="value"><math>${symbolInMath(step.symbol)}</math> = ${value}${unit}</span></p>
      ${tried === undefined ? nothing : html`<p class="tried">${this.words.working.tried} ${tried === null ? this.words.working.noValue : html`${this.number(tried)}${unit}`}</p>`}
      ${this.how(step, i)}
      <p class="source">${sourceText(step.source, this.catalogue)}</p>
    </li>`;
  }

  private how(step: WorkingStep, i: number): TemplateResult {
    const words = this.words.working;
    switch (step.kind) {
      case 'formula': {
        const formula = parseFormula(step.formula);
        return html`<p class="formula">${formula === null ? html`${step.symbol} = ${step.formula}` : html`<math>${symbolInMath(step.symbol)}<mo>=</mo></math> ${typesetFormula(formula, { decimalMark: this.decimalMark, if: words.if })}`}</p>${this.numbers(step, i)}`;
      }
      case 'lookup':
        return html`<p class="numbers">${words.table} ${step.table}, ${words.row} ${step.row}, ${step.column}</p>`;
      case 'choice':
        return html`<p class="numbers">${words.because} ${wordFor(step.why, this.catalogue)}</p>`;
    }
  }

  /** The numbers of a formula, each of which can be replaced. */
  private numbers(step: FormulaStep, i: number): TemplateResult | typeof nothing {
    const entries = Object.entries(step.scope);
    if (entries.length === 0) return nothing;
    const words = this.words.working;
    return html`<p class="numbers">${words.with} ${entries.map(([name, number], at) => html`${at === 0 ? '' : ', '}<span class="number"><math>${symbolInMath(name)}</math> = ${this.number(number)}</span>`)}</p>
      <details><summary>${words.try}</summary><div class="try">${entries.map(([name, number]) => html`<label><math>${symbolInMath(name)}</math><input type="text" inputmode="decimal" autocomplete="off" aria-label="${words.try}: ${name}" .value=${this.number(this.tried.get(i)?.[name] ?? number)} @change=${(event: Event) => { this.replace(i, name, number, (event.target as HTMLInputElement).value); }} /></label>`)}</div></details>`;
  }

  /** Tries another number in one formula; an empty or unreadable entry brings the job's own back. */
  private replace(i: number, name: string, own: number, text: string): void {
    const value = Number(text.trim().replace(',', '.').replace('−', '-'));
    const others = Object.entries(this.tried.get(i) ?? {}).filter(([known]) => known !== name);
    const isOwn = text.trim() === '' || !Number.isFinite(value) || text.trim() === this.number(own);
    const next = new Map(this.tried);
    if (isOwn && others.length === 0) next.delete(i);
    else next.set(i, Object.fromEntries(isOwn ? others : [...others, [name, value]]));
    this.tried = next;
  }

  private async copy(button: HTMLButtonElement): Promise<void> {
    const text = workingAsText(this.steps, (text) => wordFor(text, this.catalogue), (source) => sourceText(source, this.catalogue));
    try {
      await navigator.clipboard.writeText(text);
      button.textContent = this.words.working.copied;
    } catch {
      getSelection()?.selectAllChildren(this.renderRoot.querySelector('ol') ?? this);
    }
  }

  private number(value: number): string {
    const text = String(Number(value.toPrecision(5))).replace('-', '−');
    return this.decimalMark === ',' ? text.replace('.', ',') : text;
  }
}

/** A key of each step: a step that comes in between leaves the others where they are, as far as they have been drawn. */
function keysOf(steps: readonly WorkingStep[]): (step: WorkingStep, i: number) => string {
  const counts = new Map<string, number>();
  const keys = steps.map(({ kind, symbol, meaning }) => {
    const name = `${kind} ${symbol} ${meaning}`;
    const count = (counts.get(name) ?? 0) + 1;
    counts.set(name, count);
    return `${name} ${count}`;
  });
  return (_step, i) => keys[i] ?? '';
}

declare global {
  interface HTMLElementTagNameMap {
    'seat-working': SeatWorking;
  }
}
