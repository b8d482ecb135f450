import { html, LitElement, type TemplateResult } from 'lit';
import { customElement, query, state } from 'lit/decorators.js';
import type { BenchSheet } from './bench-sheet.js';
import { emptyWorkshop, placesIn } from './document/places.js';
import type { JsonObject } from './document/raw-document.js';
import { sampleAddress, type Sample } from './samples.js';
import { KeptSheets, type KeptSheet } from './keeping/kept-sheets.js';
import { carriesJob, saysBackup } from './sharing/marks.js';
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
  @state() private due: ReadonlyMap<string, string> = new Map();
  @state() private keepsNothing = false;
  /** What was done, where there is something to say. */
  @state() private news = '';
  /** A job that came with the address, until it is opened or left. */
  @state() private arrived: JsonObject | null = null;
  @state() private isDraggedOver = false;
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
    void this.lookAtAddress();
    window.addEventListener('hashchange', this.addressChanged);
    this.addEventListener('dragover', this.dragOver);
    this.addEventListener('dragleave', this.dragLeave);
    this.addEventListener('drop', this.dropped);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    window.removeEventListener('hashchange', this.addressChanged);
    this.removeEventListener('dragover', this.dragOver);
    this.removeEventListener('dragleave', this.dragLeave);
    this.removeEventListener('drop', this.dropped);
  }

  override render(): TemplateResult {
    const start = this.isAtStart
      ? startView({ openTitle: this.hasSheet ? (this.sheet?.heading ?? '') : null, fault: this.fault, news: this.news, arrivedTitle: this.arrived === null ? null : titleOfFirst(this.arrived), isOpening: this.isOpening, kept: this.kept, due: this.due, keepsNothing: this.keepsNothing }, {
          openSample: (sample) => void this.opening(() => sampleText(sample)),
          openFile: (file) => void this.takeFile(file),
          openArrived: () => void this.openArrived(),
          leaveArrived: () => { this.dropAddress(); },
          backUp: () => void this.backUp(),
          startEmpty: () => void this.opening(() => Promise.resolve(JSON.stringify(emptyWorkshop()))),
          openKept: (sheet) => void this.openKept(sheet),
          removeKept: (sheet) => void this.removeKept(sheet),
          goBack: () => { this.isAtStart = false; },
        })
      : '';
    return html`${this.isDraggedOver ? html`<p class="drop-here screen">${words.backup.drop}</p>` : ''}${start}<bench-sheet ?hidden=${this.isAtStart} @bench-leave=${() => { this.isAtStart = true; void this.lookAtKept(); }}></bench-sheet>`;
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

  /** A workshop file is opened; a backup is taken in beside what is here. */
  private async takeFile(file: File): Promise<void> {
    const text = await file.text();
    if (!saysBackup(text)) return this.opening(() => Promise.resolve(text));
    this.fault = '';
    this.news = '';
    const { sheetsOf } = await import('./keeping/backup.js');
    const read = await sheetsOf(text);
    const kept = await this.sheets;
    const taken = 'fault' in read || kept === null ? null : await kept.takeIn(read.sheets);
    if ('fault' in read) this.fault = read.fault;
    else if (taken === null) this.fault = words.backup.refused;
    else this.news = words.backup.restored.replace('{count}', String(taken.takenCount)).replace('{same}', String(taken.sameCount));
    this.isAtStart = true;
    await this.lookAtKept();
  }

  private async backUp(): Promise<void> {
    const kept = await this.sheets;
    if (kept === null) return;
    const [{ backupOf }, { saveFile }, { today }, sheets] = await Promise.all([import('./keeping/backup.js'), import('./sharing/save-file.js'), import('./sheet/compute-sheet.js'), kept.list()]);
    saveFile(`seatwright-${today()}.json`, await backupOf(sheets, today()));
  }

  /** A job that came in the fragment of the address. */
  private async lookAtAddress(): Promise<void> {
    if (!carriesJob(location.hash)) return;
    const { jobIn } = await import('./sharing/share-link.js');
    const came = await jobIn(location.hash);
    this.isAtStart = true;
    if ('fault' in came) {
      this.fault = came.fault;
      this.dropAddress();
    } else this.arrived = came.file;
  }

  private readonly addressChanged = (): void => void this.lookAtAddress();

  private async openArrived(): Promise<void> {
    const file = this.arrived;
    if (file === null) return;
    await loadSheet();
    this.open(file, await this.sheets);
    // Kept before it leaves the address, and left there where nothing is kept: a reload must not lose it.
    this.sheet?.keepNow();
    this.arrived = null;
    if ((await this.sheets) !== null) this.dropAddress();
  }

  /** Takes the job out of the address again, so that a reload does not bring it back. */
  private dropAddress(): void {
    this.arrived = null;
    history.replaceState(null, '', location.pathname + location.search);
  }

  private readonly dragOver = (event: DragEvent): void => {
    if (event.dataTransfer?.types.includes('Files') !== true) return;
    event.preventDefault();
    this.isDraggedOver = true;
  };

  private readonly dragLeave = (event: DragEvent): void => {
    if (event.relatedTarget === null) this.isDraggedOver = false;
  };

  private readonly dropped = (event: DragEvent): void => {
    const [file] = event.dataTransfer?.files ?? [];
    this.isDraggedOver = false;
    if (file === undefined) return;
    event.preventDefault();
    void this.takeFile(file);
  };

  /** What this device keeps, newest first. */
  private async lookAtKept(): Promise<void> {
    const sheets = await this.sheets;
    this.keepsNothing = sheets === null;
    this.kept = sheets === null ? [] : await sheets.list();
    if (this.kept.length > 0) whenIdle(() => void this.lookAtDue().catch(() => undefined));
  }

  /** What is due of the kept sheets; fetched after the list stands. */
  private async lookAtDue(): Promise<void> {
    const [{ dueOf }, { today }] = await Promise.all([import('./sheet/due-of.js'), import('./sheet/compute-sheet.js')]);
    this.due = new Map(this.kept.map(({ id, file }) => [id, dueOf(file, today())]));
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
    this.news = '';
    this.isAtStart = false;
    this.hasSheet = true;
    this.sheet?.open(file, sheets, known);
  }
}

function titleOfFirst(file: JsonObject): string {
  const [first] = placesIn(file);
  return first === undefined ? '' : `${first.machineName}, ${first.positionName}`;
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
