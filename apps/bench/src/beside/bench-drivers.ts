import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { BearingDriverOutput, DriverSearchOutput } from '@seatwright/core/handwork';
import type { WritingStyle } from '@seatwright/core/wording';
import type { JsonObject } from '../document/raw-document.js';
import { wordOf } from '../form/entry.js';
import { PageElement } from '../page-element.js';
import { words } from '../words/index.js';
import { bearingDrivers, sealDrivers, type ComparableDriver } from './compare-drivers.js';
import { compareRows } from './compare-rows.js';
import { wholeSearch } from './whole-search.js';

/** A driver to be drawn, by its name. */
export interface DriverDraw {
  readonly name: string;
}

/** Two drivers beside each other, chosen from what serves and what is at hand: the same rows, what differs marked. */
@customElement('bench-drivers')
export class BenchDrivers extends PageElement {
  /** What the sheet found, and the situation that it looked for. */
  @property({ attribute: false }) search: DriverSearchOutput | BearingDriverOutput | null = null;
  @property({ attribute: false }) situation: unknown = null;
  /** The workshop file, for the tools at hand. */
  @property({ attribute: false }) workshop: JsonObject = {};
  /** Name of the driver that is drawn. */
  @property({ attribute: false }) drawn = '';
  @property({ attribute: false }) writing: WritingStyle = { lengthUnit: 'mm', decimalMark: '.' };
  private whole: DriverSearchOutput | BearingDriverOutput | null = null;
  @state() private chosen: readonly [one: string, other: string] = ['', ''];

  override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('search')) this.whole = this.search === null ? null : wholeSearch(this.search, this.situation, this.workshop);
  }

  override render(): TemplateResult | typeof nothing {
    const { whole, writing } = this;
    if (whole === null) return nothing;
    const all = 'ring' in whole ? bearingDrivers(whole, writing) : sealDrivers(whole, writing);
    const one = all.find(({ name }) => name === this.chosen[0]) ?? all.find(({ name }) => name === this.drawn) ?? all[0];
    const other = all.find(({ name }) => name === this.chosen[1]) ?? all.find((driver) => driver !== one);
    if (one === undefined || other === undefined) return html`<p>${words.drivers.tooFew}</p>`;
    return html`<p>${words.drivers.says}</p>
      <div class="fields">${this.choice(0, words.drivers.one, all, one, other)}${this.choice(1, words.drivers.other, all, other, one)}</div>
      ${this.compared(one, other)}`;
  }

  private choice(at: 0 | 1, label: string, all: readonly ComparableDriver[], { name: chosen }: ComparableDriver, { name: opposite }: ComparableDriver): TemplateResult {
    const options = (origin: ComparableDriver['origin'], heading: string) => {
      const some = all.filter((driver) => driver.origin === origin);
      return some.length === 0 ? nothing : html`<optgroup label=${heading}>${some.map(({ name, serves }) => html`<option value=${name} ?selected=${name === chosen}>${wordOf(name)}${serves ? '' : ` (${words.drivers.notServing})`}</option>`)}</optgroup>`;
    };
    return html`<label class="picker"><span>${label}</span><select @change=${(event: Event) => {
      const picked = (event.target as HTMLSelectElement).value;
      // Picking what stands on the other side swaps the two.
      const rest = picked === opposite ? chosen : opposite;
      this.chosen = at === 0 ? [picked, rest] : [rest, picked];
    }}>${options('own', words.drivers.origins.own)}${options('standard', words.drivers.origins.standard)}</select></label>`;
  }

  private compared(one: ComparableDriver, other: ComparableDriver): TemplateResult {
    const against = ({ against }: ComparableDriver) => (against.length === 0 ? words.beside.nothing : html`<ul>${against.map((text) => html`<li>${text}</li>`)}</ul>`);
    const draw = ({ name, serves }: ComparableDriver) => (serves ? html`<button type="button" class="plain" aria-pressed=${name === this.drawn ? 'true' : 'false'} @click=${() => { this.draw(name); }}>${words.drivers.draw}</button>` : '–');
    return html`<div class="beside-table"><table class="beside">
      <thead><tr><td></td><th scope="col">${wordOf(one.name)}</th><th scope="col">${wordOf(other.name)}</th></tr></thead>
      <tbody>
        <tr><th scope="row">${words.beside.verdict}</th><td><seat-verdict compact .verdict=${one.verdict}></seat-verdict></td><td><seat-verdict compact .verdict=${other.verdict}></seat-verdict></td></tr>
        ${compareRows(one.rows, other.rows).map(({ label, one: left, other: right, isDifferent }) => html`<tr class=${isDifferent ? 'different' : ''}><th scope="row">${label}${isDifferent ? html` <span class="mark">≠ ${words.beside.differs}</span>` : nothing}</th><td>${left === '' ? '–' : left}</td><td>${right === '' ? '–' : right}</td></tr>`)}
        <tr><th scope="row">${words.beside.against}</th><td>${against(one)}</td><td>${against(other)}</td></tr>
        <tr><th scope="row">${words.drivers.inDrawing}</th><td>${draw(one)}</td><td>${draw(other)}</td></tr>
      </tbody>
    </table></div>`;
  }

  private draw(name: string): void {
    this.dispatchEvent(new CustomEvent<DriverDraw>('drivers-draw', { detail: { name }, bubbles: true }));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-drivers': BenchDrivers;
  }
}
