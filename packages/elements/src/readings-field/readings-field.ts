import { html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { property, state } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import { instrumentCatalogue, measuredSize, trustedSize, type OwnInstrument } from '@seatwright/core/measure';
import { parseAngle, parseLength } from '@seatwright/core/quantity';
import { CalculationError } from '@seatwright/core/result';
import { plainStyle, wordFor, writeValue, type WritingStyle } from '@seatwright/core/wording';
import { fieldStyles } from '../internal/field-styles.js';
import { severitySign } from '../internal/severity-sign.js';
import { signStyles } from '../internal/sign-styles.js';
import { tokens } from '../internal/tokens.js';
import { plainMessage } from '../internal/typed-field.js';
import { understandLength } from '../internal/understand-length.js';
import type { ElementWords } from '../words/element-words.js';
import { englishWords } from '../words/english.js';
import { plainNames, type NameCatalogue } from '../words/plain-names.js';
import { SpeaksPageLanguage } from '../words/speak.js';
import { isLikePad, padOf, rowsOfPad, type Pad } from './internal/pad.js';
import { renderPad, type Shown } from './internal/render-pad.js';
import { rowsOf, setOf, type RawReadings, type Row } from './internal/raw-readings.js';
import { styles } from './readings-field.styles.js';

/** The field says what is doubtful in words of its own. */
const nameless = { measured: 'measured-shaft', path: '' } as const;

export type { RawReadings } from './internal/raw-readings.js';

/** A set of readings was typed; undefined when nothing is left of it. */
export interface ReadingsChange {
  readonly readings: RawReadings | undefined;
}

/**
 * Readings of one size with one instrument: as many as one likes, each as typed; mean, ovality and doubt beside them.
 * An empty place follows the last reading; clearing a reading takes it away. Angle and depth can be noted with each, or the readings laid out as a pad.
 * @fires seat-change - at each keystroke; detail `{ readings }`, as a workshop file keeps them
 */
export class SeatReadingsField extends LitElement {
  static override shadowRootOptions: ShadowRootInit = { ...LitElement.shadowRootOptions, delegatesFocus: true };
  static override styles = [tokens, signStyles, fieldStyles, styles];

  /** Name of the field. */
  @property() label = '';
  /** Whether an outside or an inside is measured. */
  @property() measures: 'outside' | 'inside' = 'outside';
  /** The set as the document has it; undefined for none yet. */
  @property({ attribute: false }) readings: RawReadings | undefined;
  /** Instruments of the workshop's own, beside the catalogue. */
  @property({ attribute: false }) instruments: readonly OwnInstrument[] = [];
  /** Unit of a length that is typed without one. */
  @property({ attribute: 'default-unit' }) defaultUnit: 'mm' | 'in' = 'mm';
  /** A line of help below the field. */
  @property() help = '';
  /** A fault that the page has found, in words; a fault of what was typed is found by the field. */
  @property() error = '';
  /** The element's own words. */
  @property({ attribute: false }) words: ElementWords = englishWords;
  /** Names of what stands in tables and errors in English. */
  @property({ attribute: false }) catalogue: NameCatalogue = plainNames;
  /** In which unit and with which decimal mark numbers are written. */
  @property({ attribute: false }) writing: WritingStyle = plainStyle;

  @state() private rows: readonly Row[] = [];
  @state() private instrument = '';
  @state() private layout: Layout = 'list';
  @state() private pad: Pad = padOf([]);
  private sent: RawReadings | undefined;

  constructor() {
    super();
    new SpeaksPageLanguage(this, plainNames);
  }

  override willUpdate(changed: PropertyValues<this>): void {
    const isWrittenAnew = changed.has('defaultUnit') || (changed.has('writing') && changed.get('writing')?.decimalMark !== this.writing.decimalMark);
    if (!isWrittenAnew && (!changed.has('readings') || (this.readings === this.sent && this.hasUpdated))) return;
    this.rows = rowsOf(this.readings, this.defaultUnit, this.writing.decimalMark);
    this.instrument = this.readings?.instrument ?? this.instrument;
    if (this.rows.length > 0 && this.layout !== 'pad') this.layout = isLikePad(this.rows) ? 'pad' : this.rows.some(({ angle, depth }) => angle !== '' || depth !== '') ? 'places' : 'list';
    this.pad = padOf(this.rows);
    this.sent = this.readings;
  }

  override render(): TemplateResult {
    const words = this.words.field;
    const result = this.result();
    const fault = result.kind === 'fault' ? result.message : this.hasFaultyCell(this.rows) ? '' : this.error;
    return html`<fieldset class=${this.layout === 'places' ? 'where' : ''} aria-describedby=${fault === '' ? nothing : 'error'}>
      <legend>${this.label}</legend>
      <label for="instrument">${words.instrument}</label>
      <div class="line choose">
        <select id="instrument" class=${this.instrument === '' ? 'none' : ''} .value=${live(this.instrument)} @change=${(event: Event) => { this.pick((event.target as HTMLSelectElement).value); }}>
          <option value="" ?selected=${this.instrument === ''}>${words.chooseInstrument}</option>
          ${this.choices().map(({ id, name }) => html`<option value=${id} ?selected=${id === this.instrument}>${name}</option>`)}
        </select>
      </div>
      ${this.layout === 'pad' ? this.padView() : html`<div class="grid">${[...this.rows, { value: '', angle: '', depth: '' }].map((row, i) => this.row(row, i))}</div>`}
      <label for="layout" class="layout">${words.layout}</label>
      <div class="line choose">
        <select id="layout" .value=${live(this.layout)} @change=${(event: Event) => { this.lay((event.target as HTMLSelectElement).value as Layout); }}>
          ${layouts.map((layout) => html`<option value=${layout} ?selected=${layout === this.layout}>${words.layouts[layout]}</option>`)}
        </select>
      </div>
      ${result.kind === 'size' ? html`<p class="result">${result.text}</p>` : nothing}
      ${fault === '' ? nothing : html`<p class="error" id="error">${severitySign('bad')}<span>${fault}</span></p>`}
      ${this.help === '' ? nothing : html`<p class="help">${this.help}</p>`}
    </fieldset>`;
  }

  private row(row: Row, i: number): TemplateResult {
    const words = this.words.field;
    const shown = this.understood(row.value);
    return html`<div class="row">
      ${this.cell(`value-${i}`, `${words.reading} ${i + 1}`, row.value, shown, (value) => { this.change(i, { value }); })}
      ${this.layout === 'places'
        ? html`${this.cell(`angle-${i}`, words.angle, row.angle, readOr(() => parseAngle(row.angle), row.angle, this.catalogue), (angle) => { this.change(i, { angle }); })}
          ${this.cell(`depth-${i}`, words.depth, row.depth, readOr(() => parseLength(row.depth), row.depth, this.catalogue), (depth) => { this.change(i, { depth }); })}`
        : nothing}
    </div>`;
  }

  private padView(): TemplateResult {
    return renderPad({
      pad: this.pad,
      words: this.words.field,
      reading: (text) => this.understood(text),
      angle: (text) => readOr(() => parseAngle(text), text, this.catalogue),
      depth: (text) => readOr(() => parseLength(text), text, this.catalogue),
      change: (pad) => {
        this.pad = pad;
        this.rows = rowsOfPad(pad);
        this.send();
      },
    });
  }

  /** Shows the same readings another way; nothing of them changes. */
  private lay(layout: Layout): void {
    this.layout = layout;
    this.pad = padOf(this.rows);
  }

  private cell(id: string, label: string, value: string, { text, fault }: Shown, typed: (value: string) => void): TemplateResult {
    return html`<div>
      <label for=${id}>${label}</label>
      <div class="line ${fault === '' ? '' : 'faulty'}">
        <input id=${id} type="text" inputmode="decimal" autocomplete="off" spellcheck="false" enterkeyhint="next" .value=${live(value)} aria-invalid=${fault === '' ? 'false' : 'true'} aria-describedby=${fault === '' ? nothing : `${id}-error`}
          @input=${(event: Event) => { typed((event.target as HTMLInputElement).value); }} @change=${() => { this.tidy(); }} />
        ${text === '' ? nothing : html`<span class="understood">${text}</span>`}
      </div>
      ${fault === '' ? nothing : html`<p class="error" id="${id}-error">${severitySign('bad')}<span>${fault}</span></p>`}
    </div>`;
  }

  private choices(): readonly { readonly id: string; readonly name: string }[] {
    const byId = new Map<string, string>();
    for (const { id, name, measures } of this.instruments) if (measures === this.measures) byId.set(id, name ?? id);
    for (const { id, name, measures } of instrumentCatalogue()) if (measures === this.measures && !byId.has(id)) byId.set(id, name);
    if (this.instrument !== '' && !byId.has(this.instrument)) byId.set(this.instrument, familyName(this.instrument, byId, this.measures));
    return [...byId].map(([id, name]) => ({ id, name: wordFor(name, this.catalogue) }));
  }

  private understood(text: string): Shown {
    return readOr(() => undefined, text, this.catalogue, () => understandLength(text, this.defaultUnit, this.writing.decimalMark).shown);
  }

  private result(): { readonly kind: 'size'; readonly text: TemplateResult } | { readonly kind: 'fault'; readonly message: string } | { readonly kind: 'none' } {
    const filled = this.rows.filter((row) => row.value.trim() !== '');
    if (filled.length === 0 || this.hasFaultyCell(filled)) return { kind: 'none' };
    try {
      const points = filled.map((row) => ({
        valueMm: understandLength(row.value, this.defaultUnit, '.').value,
        ...(row.angle.trim() === '' ? {} : { angleDeg: parseAngle(row.angle).valueDeg }),
        ...(row.depth.trim() === '' ? {} : { depthMm: parseLength(row.depth).valueMm }),
      }));
      if (this.instrument === '') return { kind: 'fault', message: this.words.field.instrumentMissing };
      const readings = [{ instrument: this.instrument, points }];
      const { doubts } = trustedSize(readings, this.measures, nameless, this.instruments);
      if (doubts.some(({ code }) => code === 'readings-contradict')) return { kind: 'fault', message: this.words.field.contradict };
      const size = measuredSize(readings, this.measures, this.instruments);
      if (size === null) return { kind: 'none' };
      const mm = (value: number) => writeValue('valueMm', value, this.writing);
      const um = (value: number) => writeValue('valueUm', value, this.writing);
      const words = this.words.field;
      return {
        kind: 'size',
        text: html`${words.mean} <strong>${mm(size.meanMm)}</strong> ±\u00a0${mm(size.expandedUncertaintyMm)}${size.ovalityUm === null || size.ovalityUm === 0 ? '' : `, ${words.oval} ${um(size.ovalityUm)}`}${size.taperUm === null ? '' : `, ${words.taper} ${um(size.taperUm)}`}${doubts.length === 0 ? '' : `; ${words.far}`}`,
      };
    } catch (error) {
      if (error instanceof CalculationError) return { kind: 'fault', message: plainMessage(error, this.catalogue) };
      throw error;
    }
  }

  private hasFaultyCell(rows: readonly Row[]): boolean {
    return rows.some((row) => this.understood(row.value).fault !== '' || readOr(() => parseAngle(row.angle), row.angle, this.catalogue).fault !== '' || readOr(() => parseLength(row.depth), row.depth, this.catalogue).fault !== '');
  }

  private pick(instrument: string): void {
    this.instrument = instrument;
    this.send();
  }

  private change(i: number, part: Partial<Row>): void {
    const rows = [...this.rows];
    const before = rows[i] ?? { value: '', angle: '', depth: '' };
    // A touched number is kept as the text that was typed; the others stay as the file had them.
    rows[i] = { ...before, ...part, raw: 'value' in part ? undefined : before.raw };
    this.rows = rows;
    this.send();
  }

  /** Takes cleared readings away, once a person has left them. */
  private tidy(): void {
    if (this.rows.some((row) => row.value.trim() === '')) this.rows = this.rows.filter((row) => row.value.trim() !== '');
  }

  private send(): void {
    this.sent = setOf(this.rows, this.instrument, this.defaultUnit);
    this.dispatchEvent(new CustomEvent<ReadingsChange>('seat-change', { detail: { readings: this.sent }, bubbles: true, composed: true }));
  }
}

const layouts = ['list', 'places', 'pad'] as const;
type Layout = (typeof layouts)[number];

function readOr(check: () => unknown, text: string, catalogue: NameCatalogue, shown: () => string = () => ''): Shown {
  if (text.trim() === '') return { text: '', fault: '' };
  try {
    check();
    return { text: shown(), fault: '' };
  } catch (error) {
    if (error instanceof CalculationError) return { text: '', fault: plainMessage(error, catalogue) };
    throw error;
  }
}

/** A family name, `digital-calliper`, stands for the instrument that measures this way. */
function familyName(id: string, byId: ReadonlyMap<string, string>, measures: string): string {
  return byId.get(`${id}-${measures}`) ?? id;
}

declare global {
  interface HTMLElementTagNameMap {
    'seat-readings-field': SeatReadingsField;
  }
}
