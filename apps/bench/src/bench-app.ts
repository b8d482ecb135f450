import { html, type TemplateResult } from 'lit';
import { customElement, query, state } from 'lit/decorators.js';
import type { BenchSheet } from './bench-sheet.js';
import type { BenchOwnTools } from './own-tools/bench-own-tools.js';
import { emptyWorkshop, placesIn, type Place } from './document/places.js';
import type { JsonObject } from './document/raw-document.js';
import { sampleAddress, type Sample } from './samples.js';
import { BackupDesk } from './keeping/backup-desk.js';
import { DeviceStore, type Hindrance } from './keeping/device-store.js';
import { KeptSheets, titleOf, type KeptSheet } from './keeping/kept-sheets.js';
import { OwnTools, type OwnTool } from './keeping/own-tools.js';
import type { KnownSheet } from './keeping/keeper.js';
import { dropFromTab, heldInTab } from './keeping/tab-reserve.js';
import { unitsOfDevice } from './keeping/units-of-device.js';
import { PageElement } from './page-element.js';
import { DropWatch } from './sharing/drop-watch.js';
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
export class BenchApp extends PageElement {
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
  /** What was done, where there is something to say. */
  @state() private news = '';
  /** The sheet that was removed last, while it can be put back. */
  @state() private removed: KeptSheet | null = null;
  /** A job that came with the address, until it is opened or left. */
  @state() private arrived: JsonObject | null = null;
  private readonly store = new DeviceStore();
  private readonly sheets = new KeptSheets(this.store);
  private readonly tools = new OwnTools(this.store);
  private readonly backups = new BackupDesk(this.store, this.sheets, this.tools, {
    fault: (fault) => { this.fault = fault; },
    news: (news) => { this.news = news; },
    lookAgain: () => this.lookAtKept(),
  });
  private readonly dropped = new DropWatch(this, (file) => void this.takeFile(file));
  @query('bench-sheet') private sheet!: BenchSheet | null;
  @query('bench-own-tools') private ownToolsView!: BenchOwnTools | null;

  /** Nothing is drawn before it can be said in the right language. */
  protected override async scheduleUpdate(): Promise<void> {
    await languageIsThere;
    await super.scheduleUpdate();
  }

  override connectedCallback(): void {
    super.connectedCallback();
    whenIdle(() => void loadSheet().catch(() => undefined));
    this.store.addEventListener('opened', this.storeOpened);
    this.store.addEventListener('changed elsewhere', this.lookWhereShown);
    void this.lookAtKept();
    void this.lookAtHeld().catch(() => { this.fault = words.start.notLoaded; }).then(() => this.lookAtAddress());
    window.addEventListener('hashchange', this.addressChanged);
    window.addEventListener('focus', this.lookWhereShown);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.store.removeEventListener('opened', this.storeOpened);
    this.store.removeEventListener('changed elsewhere', this.lookWhereShown);
    window.removeEventListener('hashchange', this.addressChanged);
    window.removeEventListener('focus', this.lookWhereShown);
  }

  override render(): TemplateResult {
    const start = this.isAtStart && !this.isAtTools
      ? startView({ openTitle: this.hasSheet ? (this.sheet?.heading ?? '') : null, fault: this.fault, news: this.news, removedTitle: this.removed === null ? null : titleOf(this.removed), arrivedTitle: this.arrived === null ? null : titleOfFirst(this.arrived), isOpening: this.isOpening, kept: this.kept, due: this.due, hindrance: this.hindrance, backup: this.backups.opened, aside: this.backups.aside, isEmpty: this.isEmpty, ownCount: this.own.length, language: currentLanguage() }, {
          openSample: (sample) => void this.opening(() => sampleText(sample)),
          openFile: (file) => void this.takeFile(file),
          openArrived: () => void this.openArrived(),
          leaveArrived: () => { this.dropAddress(); },
          backUp: () => void this.backups.save(),
          startEmpty: () => void this.opening(async () => JSON.stringify(emptyWorkshop(words.places.newMachine, words.places.newPosition, unitsOfDevice(), await this.toolsForNewJob()))),
          showOwnTools: () => void this.showOwnTools(),
          restore: (way) => void this.backups.restore(way),
          leaveBackup: () => {
            this.backups.leave();
            this.requestUpdate();
          },
          putBack: () => void this.backups.putBack(),
          dropAside: () => void this.backups.dropAside(),
          openKept: (sheet, place) => void this.openKept(sheet, place),
          removeKept: (sheet) => void this.removeKept(sheet),
          putBackKept: () => void this.putBackKept(),
          goBack: () => { this.isAtStart = false; },
          speak: (language) => void this.speak(language),
        })
      : '';
    const tools = this.isAtStart && this.isAtTools ? html`<bench-own-tools @bench-leave=${() => { this.isAtTools = false; void this.lookAtKept(); }}></bench-own-tools>` : '';
    return html`${this.dropped.isOver ? html`<p class="drop-here screen">${words.backup.drop}</p>` : ''}${start}${tools}<bench-sheet ?hidden=${this.isAtStart} @bench-leave=${() => { this.isAtStart = true; void this.lookAtKept(); }}></bench-sheet>`;
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
    this.isAtStart = true;
    this.isAtTools = false;
    if ((await this.backups.open(text)) && this.isEmpty) await this.backups.restore('add');
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

  /** Another tab may have kept or removed sheets meanwhile. */
  private readonly lookWhereShown = (): void => { if (this.isAtStart && !this.isAtTools) void this.lookAtKept(); };

  private readonly storeOpened = (): void => void this.lookAtKept();

  /** What this device keeps, newest first. */
  private async lookAtKept(): Promise<void> {
    const [sheets, tools] = await Promise.all([this.sheets.list(), this.tools.list(), this.backups.lookAtAside()]);
    this.hindrance = 'hindrance' in sheets ? sheets.hindrance : null;
    // What was read before stays in sight where it cannot be read again.
    if ('value' in sheets) this.kept = sheets.value;
    if ('value' in tools) this.own = tools.value;
    this.requestUpdate();
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
    const isLeft = 'hindrance' in (await this.sheets.remove(sheet.id));
    this.fault = isLeft ? words.start.notRemoved : '';
    this.news = '';
    this.removed = isLeft ? null : sheet;
    await this.lookAtKept();
    // What had the focus went with the sheet.
    if (!isLeft) this.querySelector<HTMLButtonElement>('.removed button')?.focus();
  }

  private async putBackKept(): Promise<void> {
    if (this.removed === null) return;
    const isLost = 'hindrance' in (await this.sheets.putBack(this.removed));
    this.fault = isLost ? words.backup.refused : '';
    if (!isLost) this.removed = null;
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
    this.removed = null;
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
