import { html, LitElement, type TemplateResult } from 'lit';
import { customElement, query, state } from 'lit/decorators.js';
import type { BenchSheet } from './bench-sheet.js';
import { emptyWorkshop } from './document/places.js';
import type { JsonObject } from './document/raw-document.js';
import { sampleAddress, type Sample } from './samples.js';
import { KeptSheets, type KeptSheet } from './keeping/kept-sheets.js';
import { startView } from './view/start-view.js';
import { words } from './words.js';
import { whenIdle } from './when-idle.js';

/** Everything that computes and draws; fetched while the first screen is read. */
const loadSheet = () => Promise.all([import('./bench-sheet.js'), import('./sheet/open-workshop.js')]);

/** The page: the first screen, and the sheet once one is open. */
@customElement('bench-app')
export class BenchApp extends LitElement {
  @state() private isAtStart = true;
  @state() private hasSheet = false;
  @state() private fault = '';
  @state() private isOpening = false;
  @state() private kept: readonly KeptSheet[] = [];
  @state() private keepsNothing = false;
  private readonly sheets = KeptSheets.open();
  @query('bench-sheet') private sheet!: BenchSheet | null;

  /** The page is the sheet: its style sheet, its print sheet and its anchors work on plain elements. */
  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    whenIdle(() => void loadSheet().catch(() => undefined));
    void this.lookAtKept();
  }

  override render(): TemplateResult {
    const start = this.isAtStart
      ? startView({ openTitle: this.hasSheet ? (this.sheet?.heading ?? '') : null, fault: this.fault, isOpening: this.isOpening, kept: this.kept, keepsNothing: this.keepsNothing }, {
          openSample: (sample) => void this.opening(() => sampleText(sample)),
          openFile: (file) => void this.opening(() => file.text()),
          startEmpty: () => void this.opening(() => Promise.resolve(JSON.stringify(emptyWorkshop()))),
          openKept: (sheet) => void this.openKept(sheet),
          removeKept: (sheet) => void this.removeKept(sheet),
          goBack: () => { this.isAtStart = false; },
        })
      : '';
    return html`${start}<bench-sheet ?hidden=${this.isAtStart} @bench-leave=${() => { this.isAtStart = true; void this.lookAtKept(); }}></bench-sheet>`;
  }

  private async opening(read: () => Promise<string>): Promise<void> {
    this.isOpening = true;
    try {
      const [, { openWorkshop }] = await loadSheet();
      const opened = openWorkshop(await read());
      if ('fault' in opened) this.fault = opened.fault;
      else this.open(opened.file, await this.sheets);
    } catch {
      this.fault = words.start.notLoaded;
    }
    this.isOpening = false;
  }

  /** What this device keeps, newest first. */
  private async lookAtKept(): Promise<void> {
    const sheets = await this.sheets;
    this.keepsNothing = sheets === null;
    this.kept = sheets === null ? [] : await sheets.list();
  }

  private async openKept({ id }: KeptSheet): Promise<void> {
    const sheets = await this.sheets;
    const sheet = await sheets?.read(id);
    if (sheets === null || sheet === undefined) return this.lookAtKept();
    await loadSheet();
    this.open(sheet.file, sheets, sheet);
  }

  private async removeKept({ id, title }: KeptSheet): Promise<void> {
    if (!globalThis.confirm(words.start.removeAsk.replace('{title}', title))) return;
    await (await this.sheets)?.remove(id);
    await this.lookAtKept();
  }

  private open(file: JsonObject, sheets: KeptSheets | null, known?: KeptSheet): void {
    this.fault = '';
    this.isAtStart = false;
    this.hasSheet = true;
    this.sheet?.open(file, sheets, known);
  }
}

async function sampleText(sample: Sample): Promise<string> {
  const answer = await fetch(sampleAddress(sample));
  if (!answer.ok) throw new Error(answer.statusText);
  return answer.text();
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-app': BenchApp;
  }
}
