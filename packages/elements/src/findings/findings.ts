import { html, nothing, type TemplateResult } from 'lit';
import { property, state } from 'lit/decorators.js';
import type { Finding, Severity } from '@seatwright/core/result';
import { plainStyle, writeFinding, type WritingStyle } from '@seatwright/core/wording';
import { SentenceElement } from '../internal/sentence-element.js';
import { severitySign } from '../internal/severity-sign.js';
import { signStyles } from '../internal/sign-styles.js';
import { heldMark, sourceText } from '../internal/source-text.js';
import { foldStyles } from '../internal/fold-styles.js';
import { tokens } from '../internal/tokens.js';
import { styles } from './findings.styles.js';

const order: readonly Severity[] = ['bad', 'unknown', 'care', 'note', 'good'];

/** Findings, worst first: sign, sentence, what to do, where it comes from. What is in order is folded away. */
export class SeatFindings extends SentenceElement {
  static override styles = [tokens, foldStyles, signStyles, styles];

  /** Findings of any calculation. */
  @property({ attribute: false }) findings: readonly Finding[] = [];
  /** In which unit and with which decimal mark numbers are written. */
  @property({ attribute: false }) writing: WritingStyle = plainStyle;

  @state() private isSourced = false;

  override render(): TemplateResult {
    const sorted = this.distinct().sort((a, b) => order.indexOf(a.severity) - order.indexOf(b.severity));
    const open = sorted.filter(({ severity }) => severity !== 'good');
    const good = sorted.filter(({ severity }) => severity === 'good');
    const words = this.words.findings;
    if (sorted.length === 0) return html`<p class="none">${words.none}</p>`;
    return html`
      ${open.length === 0 ? nothing : this.list(open)}
      ${good.length === 0 ? nothing : html`<details ?open=${open.length === 0}><summary>${words.inOrder.replace('{count}', String(good.length))}</summary>${this.list(good)}</details>`}
      <button type="button" aria-pressed=${this.isSourced ? 'true' : 'false'} @click=${() => { this.isSourced = !this.isSourced; }}>${this.isSourced ? words.hideSources : words.showSources}</button>
    `;
  }

  /** The same sentence once, however many plans came to it. */
  private distinct(): Finding[] {
    const bySentence = new Map<string, Finding>();
    for (const finding of this.findings) {
      const { says } = writeFinding(finding, this.catalogue, this.writing);
      if (!bySentence.has(says)) bySentence.set(says, finding);
    }
    return [...bySentence.values()];
  }

  private list(findings: readonly Finding[]): TemplateResult {
    return html`<ul>${findings.map((finding) => this.one(finding))}</ul>`;
  }

  private one(finding: Finding): TemplateResult {
    const { says, todo } = writeFinding(finding, this.catalogue, this.writing);
    const isRemembered = finding.source.held === 'memory';
    return html`<li>
      ${severitySign(finding.severity)}
      <p class="says"><span class="visually-hidden">${this.words.findings.signs[finding.severity]}: </span>${says}${isRemembered ? html` <span class="held">[${heldMark('memory', this.catalogue)}]</span>` : nothing}</p>
      ${todo === null ? nothing : html`<p class="todo">${todo}</p>`}
      ${this.isSourced ? html`<p class="source">${sourceText(finding.source, this.catalogue)}</p>` : nothing}
    </li>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'seat-findings': SeatFindings;
  }
}
