import { updateWhenLocaleChanges } from '@lit/localize';
import { html, LitElement, type TemplateResult } from 'lit';
import { customElement, query, state } from 'lit/decorators.js';
import type { BenchSheet } from './bench-sheet.js';
import type { BenchOwnTools } from './own-tools/bench-own-tools.js';
import { emptyWorkshop, placesIn, type Place } from './document/places.js';
import type { JsonObject } from './document/raw-document.js';
import { sampleAddress, type Sample } from './samples.js';
import type { BackupContents } from './keeping/backup.js';
import { DeviceStore, type Hindrance, type SetAside } from './keeping/device-store.js';
import { KeptSheets, titleOf, type KeptSheet } from './keeping/kept-sheets.js';
import { OwnTools, type OwnTool } from './keeping/own-tools.js';
import type { KnownSheet } from './keeping/keeper.js';
import { dropFromTab, heldInTab } from './keeping/tab-reserve.js';
import { unitsOfDevice } from './keeping/units-of-device.js';
import { carriesJob, saysBackup, saysToolList } from './sharing/marks.js';
import type { DueLine } from './view/kept-machines.js';
import { startView } from './view/start-view.js';
import { words, wordsAreThere } from './words/index.js';
import { beginLanguage, chooseLanguage, currentLanguage, type Language } from './words/language.js';
import { whenIdle } from './when-idle.js';

/** Everything that computes and draws; fetched while the first screen is read. */
const loadSheet = async () => {
  const [, sheet, { sentencesAreThere }] = await Promise.all([import('./bench-sheet.js'), import('./sheet/open-workshop.js'), import('./words/sentences.js')]);
  await sentencesAreThere;
  return sheet;
};

/** The language that the page begins in. */
const languageIsThere = Promise.all([wordsAreThere, beginLanguage()]);

/** The page: the first screen, and the sheet once one is open. */
@customElement('bench-app')
export class BenchApp extends LitElement {
  @state() private isAtStart = true;
  /** The tubes and sockets of one's own stand in place of the first screen. */
  @state() private isAtTools = false;
  @state() private hasSheet = false;
  @state() private fault = '';
  @state() private isOpening = false;
  @state() private kept: readonly KeptSheet[] = [];
  @state() private due: ReadonlyMap<string, ReadonlyMap<string, DueLine>> = new Map();
  /** Why nothing of what is kept here can be shown or kept; null where all is well. */
  @state() private hindrance: Hindrance | null = null;
  /** The tubes and sockets of the person at this device. */
  @state() private own: readonly OwnTool[] = [];
  /** A backup that was opened, until it is known what to do with it. */
  @state() private backup: BackupContents | null = null;
  /** What a restored backup took the place of. */
  @state() private aside: SetAside | null = null;
  /** What was done, where there is something to say. */
  @state() private news = '';
  /** A job that came with the address, until it is opened or left. */
  @state() private arrived: JsonObject | null = null;
  @state() private isDraggedOver = false;
  private readonly store = new DeviceStore();
  private readonly sheets = new KeptSheets(this.store);
  private readonly tools = new OwnTools(this.store);
  @query('bench-sheet') private sheet!: BenchSheet | null;
  @query('bench-own-tools') private ownToolsView!: BenchOwnTools | null;

  constructor() {
    super();
    updateWhenLocaleChanges(this);
  }

  /** Nothing is drawn before it can be said in the right language. */
  protected override async scheduleUpdate(): Promise<void> {
    await languageIsThere;
    await super.scheduleUpdate();
  }

  /** The page is the sheet: its style sheet, its print sheet and its anchors work on plain elements. */
  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    whenIdle(() => void loadSheet().catch(() => undefined));
    this.store.addEventListener('opened', this.storeOpened);
    void this.lookAtKept();
    void this.lookAtHeld().catch(() => { this.fault = words.start.notLoaded; }).then(() => this.lookAtAddress());
    window.addEventListener('hashchange', this.addressChanged);
    window.addEventListener('focus', this.cameBack);
    this.addEventListener('dragover', this.dragOver);
    this.addEventListener('dragleave', this.dragLeave);
    this.addEventListener('drop', this.dropped);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.store.removeEventListener('opened', this.storeOpened);
    window.removeEventListener('hashchange', this.addressChanged);
    window.removeEventListener('focus', this.cameBack);
    this.removeEventListener('dragover', this.dragOver);
    this.removeEventListener('dragleave', this.dragLeave);
    this.removeEventListener('drop', this.dropped);
  }

  override render(): TemplateResult {
    const start = this.isAtStart && !this.isAtTools
      ? startView({ openTitle: this.hasSheet ? (this.sheet?.heading ?? '') : null, fault: this.fault, news: this.news, arrivedTitle: this.arrived === null ? null : titleOfFirst(this.arrived), isOpening: this.isOpening, kept: this.kept, due: this.due, hindrance: this.hindrance, backup: this.backup, aside: this.aside, isEmpty: this.isEmpty, ownCount: this.own.length, language: currentLanguage() }, {
          openSample: (sample) => void this.opening(() => sampleText(sample)),
          openFile: (file) => void this.takeFile(file),
          openArrived: () => void this.openArrived(),
          leaveArrived: () => { this.dropAddress(); },
          backUp: () => void this.backUp(),
          startEmpty: () => void this.opening(async () => JSON.stringify(emptyWorkshop(words.places.newMachine, words.places.newPosition, unitsOfDevice(), await this.toolsForNewJob()))),
          showOwnTools: () => void this.showOwnTools(),
          restore: (way) => void this.restore(way),
          leaveBackup: () => { this.backup = null; },
          putBack: () => void this.putBack(),
          dropAside: () => void this.dropAside(),
          openKept: (sheet, place) => void this.openKept(sheet, place),
          removeKept: (sheet) => void this.removeKept(sheet),
          goBack: () => { this.isAtStart = false; },
          speak: (language) => void this.speak(language),
        })
      : '';
    const tools = this.isAtStart && this.isAtTools ? html`<bench-own-tools @bench-leave=${() => { this.isAtTools = false; void this.lookAtKept(); }}></bench-own-tools>` : '';
    return html`${this.isDraggedOver ? html`<p class="drop-here screen">${words.backup.drop}</p>` : ''}${start}${tools}<bench-sheet ?hidden=${this.isAtStart} @bench-leave=${() => { this.isAtStart = true; void this.lookAtKept(); }}></bench-sheet>`;
  }

  private async speak(language: Language): Promise<void> {
    this.news = '';
    this.fault = '';
    try {
      await chooseLanguage(language);
      this.sheet?.nameInTitle();
      if (this.kept.length > 0) void this.lookAtDue().catch(() => undefined);
    } catch {
      this.news = words.language.notFetched;
    }
  }

  private async opening(read: () => Promise<string>): Promise<void> {
    this.isOpening = true;
    try {
      const { openWorkshop } = await loadSheet();
      const opened = openWorkshop(await read());
      if ('fault' in opened) this.fault = `${words.start.notOpened} ${opened.fault}`;
      else this.open(opened.file);
    } catch {
      this.fault = words.start.notLoaded;
    }
    this.isOpening = false;
  }

  /** A workshop file is opened; a backup is taken in at once where nothing is kept yet, and else after it is asked how. */
  private async takeFile(file: File): Promise<void> {
    const text = await file.text();
    if (saysToolList(text)) return this.takeToolList(text);
    if (!saysBackup(text)) return this.opening(() => Promise.resolve(text));
    this.fault = '';
    this.news = '';
    this.backup = null;
    this.isAtStart = true;
    this.isAtTools = false;
    const { readBackup } = await import('./keeping/backup.js');
    const read = await readBackup(text);
    if ('fault' in read) {
      this.fault = `${words.start.notOpened} ${read.fault}`;
      return;
    }
    this.backup = read;
    await this.lookAtKept();
    if (this.isEmpty) await this.restore('add');
  }

  private async takeToolList(text: string): Promise<void> {
    this.isAtStart = true;
    try {
      const read = (await import('./own-tools/tool-list.js')).toolsIn(text);
      if ('fault' in read) this.fault = `${words.start.notOpened} ${read.fault}`;
      else await this.showOwnTools(read.tools);
    } catch {
      this.fault = words.start.notLoaded;
    }
  }

  /** Shows the tubes and sockets of one's own, with those that just came. */
  private async showOwnTools(toTakeIn: readonly JsonObject[] = []): Promise<void> {
    try {
      const [, { sentencesAreThere }] = await Promise.all([import('./own-tools/bench-own-tools.js'), import('./words/sentences.js')]);
      await sentencesAreThere;
    } catch {
      this.fault = words.start.notLoaded;
      return;
    }
    this.fault = '';
    this.news = '';
    this.isAtTools = true;
    await this.updateComplete;
    window.scrollTo(0, 0);
    await this.ownToolsView?.show(this.tools, toTakeIn);
  }

  /** Nothing is kept here yet that a backup could take the place of. */
  private get isEmpty(): boolean {
    return this.kept.length === 0 && this.own.length === 0;
  }

  private async restore(way: 'add' | 'replace'): Promise<void> {
    const contents = this.backup;
    if (contents === null) return;
    const { addBeside, putInPlace } = await import('./keeping/restore.js');
    const outcome = way === 'add' ? await addBeside(this.store, contents) : await putInPlace(this.store, contents);
    await this.lookAtKept();
    if ('hindrance' in outcome) this.fault = words.backup.refused;
    else {
      const { sheetCount, toolCount, sameCount } = outcome.value;
      this.backup = null;
      this.news = (way === 'add' ? words.backup.added : words.backup.replaced).replace('{sheets}', String(sheetCount)).replace('{tools}', String(toolCount)).replace('{same}', String(sameCount));
    }
  }

  private async putBack(): Promise<void> {
    const { putBack } = await import('./keeping/restore.js');
    const outcome = await putBack(this.store);
    await this.lookAtKept();
    if ('hindrance' in outcome) this.fault = words.backup.refused;
    else if (outcome.value !== null) this.news = words.backup.replaced.replace('{sheets}', String(outcome.value.sheetCount)).replace('{tools}', String(outcome.value.toolCount));
  }

  private async dropAside(): Promise<void> {
    if (!globalThis.confirm(words.backup.dropAsk)) return;
    const { dropAside } = await import('./keeping/restore.js');
    if ('hindrance' in (await dropAside(this.store))) this.fault = words.start.notRemoved;
    await this.lookAtKept();
  }

  private async backUp(): Promise<void> {
    const [{ backupOf }, { saveFile }, { today }, sheets, tools] = await Promise.all([import('./keeping/backup.js'), import('./sharing/save-file.js'), import('./sheet/compute-sheet.js'), this.sheets.list(), this.tools.list()]);
    if ('hindrance' in sheets || 'hindrance' in tools) this.fault = words.start.keptUnread;
    else saveFile(`seatwright-${today()}.json`, await backupOf(sheets.value, tools.value, today()));
  }

  private async toolsForNewJob(): Promise<readonly JsonObject[]> {
    const [own, { toolsForNewJob }] = await Promise.all([this.tools.list(), import('./own-tools/tools-for-new-job.js')]);
    return 'value' in own ? toolsForNewJob(own.value) : [];
  }

  /** The sheet that was open here before the page was loaded anew, if the tab holds one. */
  private async lookAtHeld(): Promise<void> {
    const held = heldInTab();
    if (held === null) return;
    const kept = held.file === null ? await this.sheets.read(held.known.id) : null;
    if (kept !== null && 'hindrance' in kept) return;
    const file = held.file ?? kept?.value?.file;
    // Where the device keeps it, it is needed once; else the tab lets go of it as soon as it is kept.
    if (held.file === null) dropFromTab();
    if (file === undefined) return;
    await loadSheet();
    this.open(file, kept === null ? held.known : kept.value, held.place);
    if (held.file !== null) await this.sheet?.keepNow();
  }

  /** A job that came in the fragment of the address. */
  private async lookAtAddress(): Promise<void> {
    if (!carriesJob(location.hash)) return;
    const { jobIn } = await import('./sharing/share-link.js');
    const came = await jobIn(location.hash);
    this.isAtStart = true;
    this.isAtTools = false;
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
    if (!this.open(file)) return;
    this.arrived = null;
    // Kept before it leaves the address, and left there where nothing is kept: a reload must not lose it.
    if ((await this.sheet?.keepNow()) === true) this.dropAddress();
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

  /** Another tab may have kept or removed sheets meanwhile. */
  private readonly cameBack = (): void => { if (this.isAtStart && !this.isAtTools) void this.lookAtKept(); };

  private readonly storeOpened = (): void => void this.lookAtKept();

  /** What this device keeps, newest first. */
  private async lookAtKept(): Promise<void> {
    const [sheets, tools, aside] = await Promise.all([this.sheets.list(), this.tools.list(), this.store.use((shelves) => shelves.get('aside', 'replaced'))]);
    this.hindrance = 'hindrance' in sheets ? sheets.hindrance : null;
    // What was read before stays in sight where it cannot be read again.
    if ('value' in sheets) this.kept = sheets.value;
    if ('value' in tools) this.own = tools.value;
    this.aside = 'value' in aside ? (aside.value ?? null) : null;
    if (this.kept.length > 0) whenIdle(() => void this.lookAtDue().catch(() => undefined));
  }

  /** What is due of the kept sheets; fetched after the list stands, and told sheet by sheet so that the page is never held up. */
  private async lookAtDue(): Promise<void> {
    const [{ duesOf }, { today }] = await Promise.all([import('./sheet/due-of.js'), import('./sheet/compute-sheet.js')]);
    const told = new Map<string, ReadonlyMap<string, DueLine>>();
    const { kept } = this;
    for (const { id, file } of kept) {
      told.set(id, duesOf(file, today()));
      await new Promise((done) => setTimeout(done, 0));
      if (this.kept !== kept) return;
      this.due = new Map(told);
    }
  }

  private async openKept({ id }: KeptSheet, place: Place): Promise<void> {
    const sheet = await this.sheets.read(id);
    if ('hindrance' in sheet || sheet.value === undefined) {
      this.fault = 'hindrance' in sheet ? words.start.keptUnread : words.start.keptGone;
      return this.lookAtKept();
    }
    try {
      await loadSheet();
      this.open(sheet.value.file, sheet.value, place);
    } catch {
      this.fault = words.start.notLoaded;
    }
  }

  private async removeKept(sheet: KeptSheet): Promise<void> {
    if (!globalThis.confirm(words.start.removeAsk.replace('{title}', titleOf(sheet)))) return;
    this.fault = 'hindrance' in (await this.sheets.remove(sheet.id)) ? words.start.notRemoved : '';
    await this.lookAtKept();
  }

  /** Opens a sheet, unless another that is open would be lost by it. */
  private open(file: JsonObject, known?: KeptSheet | KnownSheet, place?: Place): boolean {
    const { sheet } = this;
    if (sheet?.wouldBeLost === true && !globalThis.confirm(words.loseAsk.replace('{title}', sheet.heading))) return false;
    this.fault = '';
    this.news = '';
    this.isAtStart = false;
    this.isAtTools = false;
    this.hasSheet = true;
    sheet?.open(file, this.sheets, { tools: this.tools, ...(known === undefined ? {} : { known }), ...(place === undefined ? {} : { place }) });
    return true;
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
