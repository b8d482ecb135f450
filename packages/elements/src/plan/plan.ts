import { html, nothing, type TemplateResult } from 'lit';
import { property } from 'lit/decorators.js';
import type { PlanStep } from '@seatwright/core/result';
import { fill, plainStyle, type WritingStyle } from '@seatwright/core/wording';
import { SentenceElement } from '../internal/sentence-element.js';
import { severitySign } from '../internal/severity-sign.js';
import { signStyles } from '../internal/sign-styles.js';
import { tokens } from '../internal/tokens.js';
import { styles } from './plan.styles.js';

/** Steps of work, numbered, each with its cautions beside it. */
export class SeatPlan extends SentenceElement {
  static override styles = [tokens, signStyles, styles];

  /** Steps, as a calculation gives them. */
  @property({ attribute: false }) steps: readonly PlanStep[] = [];
  /** In which unit and with which decimal mark numbers are written. */
  @property({ attribute: false }) writing: WritingStyle = plainStyle;

  override render(): TemplateResult {
    if (this.steps.length === 0) return html`<p class="empty">${this.words.plan.empty}</p>`;
    return html`<ol role="list">${this.steps.map((step) => this.one(step))}</ol>`;
  }

  private one({ code, parameters, cautions }: PlanStep): TemplateResult {
    return html`<li>
      <p class="what">${fill(this.catalogue.steps[code] ?? code, parameters, this.catalogue, this.writing)}</p>
      ${cautions.length === 0
        ? nothing
        : html`<div class="cautions">${cautions.map((caution) => html`<p>${severitySign('care')}<span><span class="visually-hidden">${this.words.plan.caution}: </span>${fill(this.catalogue.cautions[caution] ?? caution, parameters, this.catalogue, this.writing)}</span></p>`)}</div>`}
    </li>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'seat-plan': SeatPlan;
  }
}
