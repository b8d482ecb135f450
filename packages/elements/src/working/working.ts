import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { property } from 'lit/decorators.js';
import type { WorkingStep } from '@seatwright/core/result';
import { english, type Catalogue } from '@seatwright/core/wording';
import { sourceText } from '../internal/source-text.js';
import { tokens } from '../internal/tokens.js';
import type { ElementWords } from '../words/element-words.js';
import { englishWords } from '../words/english.js';
import { styles } from './working.styles.js';

/** The working of a calculation: each formula with its numbers, each value read from a table, each choice with its reason. */
export class SeatWorking extends LitElement {
  static override styles = [tokens, styles];

  /** Steps, as a calculation gives them. */
  @property({ attribute: false }) steps: readonly WorkingStep[] = [];
  /** Sentences about findings, steps and values. */
  @property({ attribute: false }) catalogue: Catalogue = english;
  /** The element's own words. */
  @property({ attribute: false }) words: ElementWords = englishWords;
  /** Decimal mark of the numbers shown. */
  @property({ attribute: 'decimal-mark' }) decimalMark: '.' | ',' = '.';

  override render(): TemplateResult {
    if (this.steps.length === 0) return html`<p class="numbers">${this.words.working.none}</p>`;
    return html`<ol role="list">${this.steps.map((step) => this.one(step))}</ol>`;
  }

  private one(step: WorkingStep): TemplateResult {
    const value = typeof step.value === 'number' ? this.number(step.value) : (this.catalogue.values[step.value] ?? step.value);
    return html`<li>
      <p class="meaning"><span>${step.meaning}</span><span class="value">${symbol(step.symbol)} = ${value}${step.unit === '' ? nothing : ` ${step.unit}`}</span></p>
      ${this.how(step)}
      <p class="source">${sourceText(step.source, this.catalogue)}</p>
    </li>`;
  }

  private how(step: WorkingStep): TemplateResult {
    const words = this.words.working;
    switch (step.kind) {
      case 'formula': {
        const numbers = Object.entries(step.scope);
        return html`<p class="formula">${symbol(step.symbol)} = ${asPrinted(step.formula)}</p>${numbers.length === 0 ? nothing : html`<p class="numbers">${words.with} ${numbers.map(([name, number], i) => html`${i === 0 ? '' : ', '}${symbol(name)} = ${this.number(number)}`)}</p>`}`;
      }
      case 'lookup':
        return html`<p class="numbers">${words.table} ${step.table}, ${words.row} ${step.row}, ${step.column}</p>`;
      case 'choice':
        return html`<p class="numbers">${words.because} ${step.why}</p>`;
    }
  }

  private number(value: number): string {
    const text = String(Number(value.toPrecision(5))).replace('-', '−');
    return this.decimalMark === ',' ? text.replace('.', ',') : text;
  }
}

/** A name as books print it: what follows the underscore stands low. */
function symbol(name: string): TemplateResult {
  const [head = '', ...low] = name.split('_');
  return low.length === 0 ? html`${greek[head] ?? head}` : html`${greek[head] ?? head}<sub>${low.join(' ')}</sub>`;
}

const greek: Readonly<Record<string, string>> = { alpha: 'α', mu: 'μ', sigma: 'σ', tau: 'τ', pi: 'π' };

/** A formula as one would write it by hand; the text itself stays the one that is evaluated. */
function asPrinted(formula: string): readonly (string | TemplateResult)[] {
  const text = formula.replace(/\bsqrt\(/gu, '√(').replace(/\s*\^\s*2\b/gu, '²').replace(/\s*\^\s*3\b/gu, '³').replace(/\s*\*\s*/gu, ' · ').replace(/ - /gu, ' − ');
  return text.split(/([A-Za-z][A-Za-z0-9_]*)/u).map((part, i) => (i % 2 === 1 ? symbol(part) : part));
}

declare global {
  interface HTMLElementTagNameMap {
    'seat-working': SeatWorking;
  }
}
