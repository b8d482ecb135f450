import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { CalculationError } from '@seatwright/core/result';
import type { ShelfCandidate, ShelfMatchOutput, Situation } from '@seatwright/core/seal';
import { fill, markedFinding, wordFor, writeValue, type WritingStyle } from '@seatwright/core/wording';
import { PageElement } from '../page-element.js';
import { words } from '../words/index.js';
import { sentences } from '../words/sentences.js';
import type { SealList } from './rank-list.js';

/** A row of the list was chosen as the seal of the sheet. */
export type ShelfChoice = ShelfCandidate;

/** A list of seals, by file or pasted, ranked for the open position; judged anew when a reading changes. */
@customElement('bench-shelf')
export class BenchShelf extends PageElement {
  /** The place that the seals are judged for; null while it cannot be judged. */
  @property({ attribute: false }) situation: Situation | null = null;
  @property({ attribute: false }) writing: WritingStyle = { lengthUnit: 'mm', decimalMark: '.' };
  @state() private list: SealList | null = null;
  @state() private fault = '';
  @state() private result: ShelfMatchOutput | null = null;
  private turn = 0;

  override updated(changed: PropertyValues<this>): void {
    if (changed.has('situation') && this.list !== null) void this.rank();
  }

  override render(): TemplateResult {
    const { result } = this;
    return html`<p>${words.shelf.says}</p>
      <p class="shelf-in"><label for="shelf-text">${words.shelf.paste}</label><textarea id="shelf-text" rows="4" spellcheck="false" placeholder=${words.shelf.example} @change=${(event: Event) => void this.take((event.target as HTMLTextAreaElement).value)}></textarea>
      <label class="plain file">${words.shelf.file}<input type="file" accept=".csv,.txt,.tsv,text/csv,text/plain" @change=${(event: Event) => { const [file] = (event.target as HTMLInputElement).files ?? []; if (file !== undefined) void file.text().then((text) => this.take(text)); }} /></label></p>
      ${this.fault === '' ? nothing : html`<p class="fault" role="alert">${wordFor(this.fault, sentences)}</p>`}
      ${result === null ? nothing : this.ranked(result)}`;
  }

  private ranked(result: ShelfMatchOutput): TemplateResult {
    const { rowCount, suitsCount, suitsWithCareCount, cannotTellCount, doesNotSuitCount, badRowCount } = result;
    const counts = { rowCount, suitsCount, suitsWithCareCount, cannotTellCount, doesNotSuitCount, badRowCount };
    return html`<p role="status">${fill(words.shelf.counts, counts, sentences, this.writing)}</p>
      ${result.candidates.length === 0 ? html`<p>${words.shelf.none}</p>` : html`<ul class="shelf-rows">${result.candidates.map((row) => this.candidate(row))}</ul>`}
      ${result.nearMisses.length === 0 ? nothing : html`<h4>${words.shelf.near}</h4><ul class="shelf-near">${result.nearMisses.map((miss) => html`<li>${nameOf(miss)}: ${words.shelf.shaft} ${this.off(miss.shaftOffMm)}, ${words.shelf.outside} ${this.off(miss.outsideOffMm)}</li>`)}</ul>`}
      ${result.badRows.length === 0 ? nothing : html`<h4>${words.shelf.skipped}</h4><ul class="shelf-near">${result.badRows.map(({ code, line, column, received }) => html`<li>${(sentences.findings[code]?.says ?? code).replace(/\{(\w+)\}/gu, (whole, name: string) => String({ line, column: wordFor(column, sentences), received }[name] ?? whole))}</li>`)}</ul>`}
      <p>${words.shelf.hint}</p>`;
  }

  private candidate(row: ShelfCandidate): TemplateResult {
    return html`<li><seat-verdict compact .verdict=${row.verdict}></seat-verdict>
      <p><strong>${nameOf(row)}</strong> ${sizeOf(row, this.writing)}</p>
      ${row.reasons.map((reason) => html`<p class="reason">${markedFinding(reason, sentences, this.writing)}</p>`)}
      <button type="button" class="plain" @click=${() => { this.dispatchEvent(new CustomEvent<ShelfChoice>('shelf-choose', { detail: row, bubbles: true })); }}>${words.shelf.take}</button></li>`;
  }

  private off(mm: number): string {
    return mm === 0 ? words.shelf.right : `${mm > 0 ? '+' : '−'}${writeValue('offMm', Math.abs(Math.round(mm * 1000) / 1000), this.writing)}`;
  }

  /** Takes a list as text, and ranks it. */
  private async take(text: string): Promise<void> {
    this.result = null;
    this.fault = '';
    this.list = null;
    if (text.trim() === '') return;
    const { readList } = await import('./rank-list.js');
    const list = readList(text);
    if (list === null || list === 'too long') this.fault = list === null ? words.shelf.empty : words.shelf.tooLong;
    else {
      this.list = list;
      await this.rank();
    }
  }

  private async rank(): Promise<void> {
    const { list, situation } = this;
    this.turn += 1;
    const mine = this.turn;
    if (list === null || situation === null) return;
    const { rankList } = await import('./rank-list.js');
    try {
      const result = await rankList(list, situation, this.writing.lengthUnit, () => this.turn !== mine);
      if (result !== null) this.result = result;
    } catch (error) {
      if (!(error instanceof CalculationError)) throw error;
      this.result = null;
      this.fault = error.message;
    }
  }
}

function nameOf({ id, line }: { readonly id: string; readonly line: number }): string {
  return id === '' ? words.shelf.line.replace('{line}', String(line)) : id;
}

function sizeOf({ shaftMm, outsideMm, widthMm, construction, lipMaterial, pieceCount, place }: ShelfCandidate, writing: WritingStyle): string {
  const sizes = [shaftMm, outsideMm, widthMm].map((mm) => writeValue('sizeMm', mm, writing)).join(' × ');
  const more = [construction === null ? '' : wordFor(construction, sentences), lipMaterial ?? '', pieceCount === null ? '' : fill(words.shelf.pieces, { pieceCount }, sentences, writing), place];
  return [sizes, ...more.filter((text) => text !== '')].join(', ');
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-shelf': BenchShelf;
  }
}
