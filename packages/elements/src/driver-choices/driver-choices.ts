import { html, nothing, type TemplateResult } from 'lit';
import { property } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import type { DriverSearchOutput } from '@seatwright/core/handwork';
import { plainStyle, wordFor, writeFinding, writeValue, type WritingStyle } from '@seatwright/core/wording';
import { SentenceElement } from '../internal/sentence-element.js';
import { severityOfVerdict, severitySign } from '../internal/severity-sign.js';
import { signStyles } from '../internal/sign-styles.js';
import { foldStyles } from '../internal/fold-styles.js';
import { tokens } from '../internal/tokens.js';
import { styles } from './driver-choices.styles.js';

type Candidate = DriverSearchOutput['candidates'][number];

/** Another driver was chosen for the drawing, by its name. */
export interface DriverChoice {
  readonly name: string;
}

const shownAtOnce = 4;

/**
 * The best drivers side by side, with the same rows; the tightest margin of each is marked. Below: what speaks against the chosen one, and the near misses.
 * @fires seat-driver - a driver was chosen; detail `{ name }`
 */
export class SeatDriverChoices extends SentenceElement {
  static override styles = [tokens, foldStyles, signStyles, styles];

  /** What `driver-search` says. */
  @property({ attribute: false }) search: DriverSearchOutput | null = null;
  /** Name of the driver that is drawn. */
  @property() chosen = '';
  /** In which unit and with which decimal mark numbers are written. */
  @property({ attribute: false }) writing: WritingStyle = plainStyle;

  override render(): TemplateResult {
    const words = this.words.choices;
    if (this.search === null) return html`<p>${words.none}</p>`;
    const { candidates, candidateCount, nearMisses, nearMissCount, turnedDriver } = this.search;
    const shown = candidates.slice(0, shownAtOnce);
    const chosen = candidates.find(({ name }) => name === this.chosen);
    return html`
      ${shown.length === 0
        ? html`<p>${words.none}</p>`
        : html`<fieldset><legend class="visually-hidden">${words.legend}</legend><div class="cards">${shown.map((candidate) => this.card(candidate))}</div></fieldset>`}
      ${chosen === undefined ? nothing : this.reasons(chosen)}
      ${turnedDriver === null ? nothing : this.toTurn(turnedDriver, shown.length === 0)}
      ${candidateCount > shown.length ? this.more(candidates.slice(shownAtOnce), candidateCount - shown.length) : nothing}
      ${nearMissCount === 0 ? nothing : this.misses(nearMisses, nearMissCount)}
    `;
  }

  private card(candidate: Candidate): TemplateResult {
    const words = this.words.choices;
    const { name, origin, verdict, outsideMm, insideMm, role, reserveFactor, leastMarginMm } = candidate;
    const margin = (label: string, value: number | null) => {
      const isTight = value !== null && value === leastMarginMm;
      return html`<div class="row ${isTight ? 'tight' : ''}"><span>${label}</span><strong>${value === null ? '–' : this.mm(value)}</strong>${isTight ? html` <em>${words.least}</em>` : nothing}</div>`;
    };
    const span = ({ low, high }: { readonly low: number; readonly high: number }) => (low === high ? this.mm(low) : `${this.bare(low)} – ${this.mm(high)}`);
    return html`<label class="card">
      <input type="radio" name="driver" .checked=${live(name === this.chosen)} @change=${() => { this.choose(name); }} />
      <div class="name">${wordFor(name, this.catalogue)}</div>
      <div class="origin">${severitySign(severityOfVerdict(verdict))}<span>${this.catalogue.values[verdict] ?? verdict}, ${origin === 'own' ? words.own : words.standard}</span></div>
      <div class="row"><span>${words.meets}</span><strong>${words.roles[role]}</strong></div>
      <div class="row"><span>${words.outside}</span><strong>${span(outsideMm)}</strong></div>
      <div class="row"><span>${words.inside}</span><strong>${span(insideMm)}</strong></div>
      ${role === 'enters' ? margin(words.toBore, candidate.clearanceToBoreMm) : margin(words.landing, candidate.landingMm)}
      ${margin(words.toShaft, candidate.clearanceToShaftMm)}
      ${margin(words.overRim, candidate.reachOverRimMm)}
      ${margin(words.ontoFace, candidate.reachOntoFaceMm)}
      <div class="row"><span>${words.reserve}</span><strong>${reserveFactor === null ? '–' : words.times.replace('{count}', reserveFactor >= 10 ? '> 10' : writeValue('reserveFactor', Math.round(reserveFactor * 10) / 10, this.writing))}</strong></div>
    </label>`;
  }

  /** Everything that asks for care about the chosen one. */
  private reasons({ reasons }: Candidate): TemplateResult | typeof nothing {
    const shown = reasons.filter(({ severity }) => severity !== 'good');
    if (shown.length === 0) return nothing;
    return html`<ul class="reasons">${shown.map((finding) => {
      const { says, todo } = writeFinding(finding, this.catalogue, this.writing);
      return html`<li>${severitySign(finding.severity)}<span><span class="visually-hidden">${this.words.findings.signs[finding.severity]}: </span>${says}${todo === null ? nothing : html` <b>${todo}</b>`}</span></li>`;
    })}</ul>`;
  }

  private more(candidates: readonly Candidate[], count: number): TemplateResult {
    return html`<details><summary>${this.words.choices.more.replace('{count}', String(count))}</summary>
      <ul class="misses">${candidates.map(({ name, verdict }) => html`<li><span>${wordFor(name, this.catalogue)}</span><span>${this.catalogue.values[verdict] ?? verdict}</span></li>`)}</ul>
    </details>`;
  }

  /** The measures of one to turn, and a way to see it drawn. */
  private toTurn(turned: NonNullable<DriverSearchOutput['turnedDriver']>, isOpen: boolean): TemplateResult {
    const words = this.words.choices;
    const size = (value: number, deviation: { readonly low: number; readonly high: number } | null) => (deviation === null ? this.mm(value) : `${this.mm(value)} (${this.signed(deviation.low)} / ${this.signed(deviation.high)})`);
    const rows: (readonly [string, string])[] = [
      [words.outside, size(turned.outsideMm, turned.outsideDeviationMm)],
      [words.inside, size(turned.insideMm, turned.insideDeviationMm)],
      [words.hollow, this.mm(turned.insideDepthMm)],
    ];
    if (turned.collarOutsideMm !== null) rows.push([words.collar, this.mm(turned.collarOutsideMm)]);
    if (turned.recessInsideMm !== null) rows.push([words.recess, this.mm(turned.recessInsideMm)]);
    if (turned.stepHeightMm !== null) rows.push([turned.recessInsideMm === null ? words.step : words.recessDepth, size(turned.stepHeightMm, turned.stepDeviationMm)]);
    rows.push([words.length, this.mm(turned.lengthMm)], [words.squareTo, this.mm(turned.faceOutOfSquareUpToMm)]);
    return html`<details ?open=${isOpen}><summary>${words.turn}: ${words.forms[turned.form]}</summary>
      <ul class="misses">${rows.map(([label, value]) => html`<li><span>${label}</span><strong>${value}</strong></li>`)}</ul>
      <button type="button" aria-pressed=${this.chosen === words.turned ? 'true' : 'false'} @click=${() => { this.choose(words.turned); }}>${words.drawTurned}</button>
    </details>`;
  }

  private signed(value: number): string {
    return value > 0 ? `+${this.bare(value)}` : this.bare(value);
  }

  private misses(nearMisses: DriverSearchOutput['nearMisses'], count: number): TemplateResult {
    const words = this.words.choices;
    return html`<details><summary>${words.nearMisses.replace('{shown}', String(nearMisses.length)).replace('{count}', String(count))}</summary>
      <ul class="misses">${nearMisses.map(({ name, dimension, missMm }) => html`<li><span>${wordFor(name, this.catalogue)}</span><span>${dimension === null ? '' : (words.dimensions[dimension] ?? dimension)}${missMm === null ? '' : ` ${words.missesBy} ${this.mm(missMm)}`}</span></li>`)}</ul>
    </details>`;
  }

  private mm(value: number): string {
    return writeValue('valueMm', Math.round(value * 100) / 100, this.writing);
  }

  private bare(value: number): string {
    return this.mm(value).replace(/\s*(mm|in)$/u, '');
  }

  private choose(name: string): void {
    this.dispatchEvent(new CustomEvent<DriverChoice>('seat-driver', { detail: { name }, bubbles: true, composed: true }));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'seat-driver-choices': SeatDriverChoices;
  }
  interface HTMLElementEventMap {
    'seat-driver': CustomEvent<DriverChoice>;
  }
}
