import { html, nothing, type TemplateResult } from 'lit';
import { property } from 'lit/decorators.js';
import type { Finding, Verdict } from '@seatwright/core/result';
import { plainStyle, writeFinding, type WritingStyle } from '@seatwright/core/wording';
import { SentenceElement } from '../internal/sentence-element.js';
import { severityOfVerdict, severitySign } from '../internal/severity-sign.js';
import { signStyles } from '../internal/sign-styles.js';
import { tokens } from '../internal/tokens.js';
import { styles } from './verdict.styles.js';

/** Somebody asks to go to an entry; `path` as in a situation, e.g. `bore.readings`. */
export interface GoTo {
  readonly path: string;
}

/**
 * The verdict as a stamp: word, shape and colour together, with what made it and the reading to take next.
 * @fires seat-go - the next reading was asked for; detail `{ path }`
 * @csspart stamp
 */
export class SeatVerdict extends SentenceElement {
  static override styles = [tokens, signStyles, styles];

  /** The verdict. */
  @property() verdict: Verdict = 'cannot tell';
  /** Findings of any calculation. */
  @property({ attribute: false }) findings: readonly Finding[] = [];
  /** Path of the deciding reading that is missing; null when none is. */
  @property({ attribute: false }) nextReading: string | null = null;
  /** What that reading is called, where the catalogue has no word for it. */
  @property({ attribute: 'next-name' }) nextName = '';
  /** In which unit and with which decimal mark numbers are written. */
  @property({ attribute: false }) writing: WritingStyle = plainStyle;
  /** The result is older than what is typed. */
  @property({ type: Boolean, reflect: true }) stale = false;
  /** The stamp alone, small. */
  @property({ type: Boolean, reflect: true }) compact = false;

  override render(): TemplateResult {
    const severity = severityOfVerdict(this.verdict);
    const stamp = html`<strong class="stamp" part="stamp">${severitySign(severity)}<span>${this.catalogue.values[this.verdict] ?? this.verdict}</span></strong>`;
    if (this.compact) return html`<div class="verdict ${severity}">${stamp}</div>`;
    return html`<div class="verdict ${severity} ${this.stale ? 'stale' : ''}">
      ${stamp}
      ${this.stale ? html`<p class="stale-note">${this.words.verdict.stale}</p>` : nothing}
      <ul aria-label=${this.words.verdict.because}>
        ${this.because().map((says) => html`<li>${says}</li>`)}
      </ul>
      ${this.nextReading === null ? nothing : this.next(this.nextReading)}
    </div>`;
  }

  /** The one or two sentences behind the verdict; the same sentence once. */
  private because(): readonly string[] {
    return [...new Set(decisiveOf(this.findings, this.verdict).map((finding) => writeFinding(finding, this.catalogue, this.writing).says))].slice(0, 2);
  }

  private next(path: string): TemplateResult {
    return html`<p class="next"><button type="button" @click=${() => { this.go(path); }}>${this.words.verdict.next}: ${this.catalogue.readings[path] ?? (this.nextName === '' ? path : this.nextName)}</button></p>`;
  }

  private go(path: string): void {
    this.dispatchEvent(new CustomEvent<GoTo>('seat-go', { detail: { path }, bubbles: true, composed: true }));
  }
}

/** The findings that made the verdict: the worst deciding ones, else the worst there are. */
function decisiveOf(findings: readonly Finding[], verdict: Verdict): readonly Finding[] {
  const wanted = severityOfVerdict(verdict);
  const of = (severity: Finding['severity'], role?: Finding['role']) => findings.filter((finding) => finding.severity === severity && (role === undefined || finding.role === role));
  const deciding = of(wanted, 'deciding');
  return deciding.length > 0 ? deciding : findings.filter(({ severity }) => severity === 'bad' || severity === 'unknown' || severity === 'care');
}

declare global {
  interface HTMLElementTagNameMap {
    'seat-verdict': SeatVerdict;
  }
  interface HTMLElementEventMap {
    'seat-go': CustomEvent<GoTo>;
  }
}
