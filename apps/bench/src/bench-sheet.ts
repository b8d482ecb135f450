import { updateWhenLocaleChanges } from '@lit/localize';
import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import './sheet-elements.js';
import type { JobSheetOutput } from '@seatwright/core/job';
import type { WorkingStep } from '@seatwright/core/result';
import type { SectionMode } from '@seatwright/elements/seat-section.js';
import { History } from './document/history.js';
import { seatPath, seatValue } from './document/seat-entry.js';
import { bearingPartsOf, placeKey, placesIn, positionPath, sealPartsOf, withPlaceAlone, type Place } from './document/places.js';
import { isObject, listAt, textAt, valueAt, withValue, type Json, type JsonObject, type Path } from './document/raw-document.js';
import { computeSheet, fetchWholeSheet, today, workingOf, type SheetResult } from './sheet/compute-sheet.js';
import { Held } from './sheet/held.js';
import { SheetComputer } from './sheet/sheet-computer.js';
import { nextTask } from './next-task.js';
import { whenIdle } from './when-idle.js';
import { beforeReload } from './keeping/before-reload.js';
import { isHindered, Keeper, type KeepingState, type KnownSheet } from './keeping/keeper.js';
import type { OwnTools } from './keeping/own-tools.js';
import { dropFromTab, holdInTab } from './keeping/tab-reserve.js';
import type { KeptSheets } from './keeping/kept-sheets.js';
import { draftSituation } from './sheet/draft-situation.js';
import { bearingOf } from './sheet/draft-bearing.js';
import { bearingDriversOf, driversOf } from './sheet/drivers-of.js';
import { dimensionOfKey } from './view/drawing-pane.js';
import { keepingPanel } from './view/keeping-panel.js';
import type { placesPanel } from './view/places-panel.js';
import { goToField } from './view/go-to-field.js';
import { PaperWatch } from './view/paper-watch.js';
import { printSheet } from './view/print-sheet.js';
import { sheetBar } from './view/sheet-bar.js';
import { drawsBearings } from './view/section-view.js';
import { situationOfSeal, type SheetActions, type SheetContext } from './view/sheet-context.js';
import { linkOf } from './sharing/share-link.js';
import { sharePanel, type Shared } from './view/share-panel.js';
import { sheetView } from './view/sheet-view.js';
import { fileName, saveFile } from './sharing/save-file.js';
import { StripWatch } from './view/strip-watch.js';
import { styleOf } from '@seatwright/core/wording';
import { rememberUnits } from './keeping/units-of-device.js';
import { words } from './words/index.js';
import { chooseLanguage, type Language } from './words/language.js';
import { sentences } from './words/sentences.js';

/** What is known of a sheet that is opened: where it is kept, and where in it to begin. */
interface Opening {
  /** The tubes and sockets of the person at this device. */
  readonly tools: OwnTools;
  readonly known?: KnownSheet;
  readonly place?: Place;
}

/** What undo goes back to: the file, and the position that was looked at. */
interface SheetState {
  readonly file: JsonObject;
  readonly place: Place;
}

/** One workshop file in hand, one sheet of it open. Everything is computed anew from what is typed, at each keystroke. */
@customElement('bench-sheet')
export class BenchSheet extends LitElement {
  @state() private file: JsonObject | null = null;
  @state() private place: Place = { machine: 0, position: 0 };
  @state() private sealPart = 0;
  @state() private result: SheetResult | null = null;
  @state() private lastGood: JobSheetOutput | null = null;
  @state() private mode: SectionMode = 'as driven';
  @state() private driverName = '';
  @state() private bearingDriverName = '';
  @state() private highlight = '';
  @state() private isUnsaved = false;
  @state() private keeping: KeepingState = 'untouched';
  /** What was said of it last: a write under way is no news, only a mark. */
  @state() private keepingTold: Exclude<KeepingState, 'being kept'> = 'untouched';
  private keeper: Keeper | null = null;
  /** The page is about to be loaded anew, and brings the sheet along. */
  private isReloading = false;
  private history = new History<SheetState>();
  @state() private isFresh = false;
  @state() private shared: Shared | null = null;
  /** Whether machines and positions are shown to be changed, and what was done there last. */
  @state() private arranging: { readonly news: string } | null = null;
  /** What shows them, fetched when it is first wanted. */
  private placesPanel: typeof placesPanel | null = null;
  private tools: OwnTools | null = null;
  /** What became of the tools that were taken in or noted last. */
  @state() private toolNews = '';
  @state() private working: readonly WorkingStep[] | null = null;
  private isWorkingOpen = false;
  @state() private isOnPaper = false;
  private readonly held = new Held();
  private readonly computer = new SheetComputer(
    () => this.file,
    (file) => computeSheet(file, this.place, this.sealPart, today()),
    (result, file) => { this.takeResult(result, file); },
  );
  /** The language that was asked for could not be fetched. */
  @state() private isUnspoken = false;

  private readonly strip = new StripWatch();

  constructor() {
    super();
    updateWhenLocaleChanges(this);
    new PaperWatch(this, (isWanted) => { this.turnPaper(isWanted); });
  }

  /** The page is the sheet: its style sheet, its print sheet and its anchors work on plain elements. */
  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    window.addEventListener('beforeunload', this.warn);
    beforeReload(this.readyToReload);
    this.addEventListener('focusin', this.light);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    window.removeEventListener('beforeunload', this.warn);
    this.removeEventListener('focusin', this.light);
  }

  /** Drawing is a task of its own, after what was computed, so that the next key need not wait for both. */
  protected override async scheduleUpdate(): Promise<void> {
    await this.computer.underWay;
    await nextTask();
    await super.scheduleUpdate();
  }

  override updated(): void {
    this.strip.look(this);
  }

  override render(): TemplateResult {
    const { file } = this;
    if (file === null) return html``;
    const context = this.context(file);
    return html`<div class="screen">${this.bar()}${this.isUnspoken ? html`<p class="fault" role="alert">${words.language.notFetched}</p>` : nothing}${keepingPanel(this.keepingTold, { saveFile: () => { this.save(); }, tryAgain: () => { this.keeper?.tryAgain(); } })}${this.places(file)}${sharePanel(this.shared, { close: () => { this.shared = null; }, saveFile: () => { this.save(); } })}${sheetView(context, this.workingView(context))}</div>${this.isOnPaper ? printSheet(context) : nothing}`;
  }

  private bar(): TemplateResult {
    const { keeping, keepingTold, isUnsaved, history } = this;
    return sheetBar(
      { keeping, keepingTold, isUnsaved, canUndo: history.canUndo, canRedo: history.canRedo, isInch: valueAt(this.file ?? {}, ['lengthUnit']) === 'in' },
      {
        leave: () => void this.leave(),
        step: (way) => { this.step(way); },
        showIn: (units) => { this.showIn(units); },
        speak: (language) => void this.speak(language),
        save: () => { this.save(); },
        share: () => void this.share(),
      },
    );
  }

  /** Takes the tubes and sockets of the person at this device into the job, those that are not there yet. */
  private async takeOwnTools(): Promise<void> {
    const [own, { toolsForNewJob }] = await Promise.all([this.tools?.list(), import('./own-tools/tools-for-new-job.js')]);
    if (own === undefined || 'hindrance' in own) {
      this.toolNews = words.start.keptUnread;
      return;
    }
    const here = listAt(this.file ?? {}, ['toolsAtHand']);
    const known = new Set(here.map((tool) => JSON.stringify(tool)));
    const fresh = toolsForNewJob(own.value).filter((tool) => !known.has(JSON.stringify(tool)));
    if (fresh.length > 0) this.change(['toolsAtHand'], [...here, ...fresh]);
    this.toolNews = words.tools.tookOwn.replace('{count}', String(fresh.length));
  }

  /** Notes the tools of the job as those of the person at this device. */
  private async makeToolsOwn(): Promise<void> {
    const tools = listAt(this.file ?? {}, ['toolsAtHand']).filter(isObject);
    const taken = await this.tools?.takeIn(tools);
    this.toolNews = taken === undefined || 'hindrance' in taken ? words.backup.refused : words.tools.madeOwn.replace('{count}', String(taken.value)).replace('{same}', String(tools.length - taken.value));
  }

  private async arrangePlaces(): Promise<void> {
    if (this.arranging !== null) {
      this.arranging = null;
      return;
    }
    this.placesPanel ??= (await import('./view/places-panel.js')).placesPanel;
    this.arranging = { news: '' };
    await this.updateComplete;
    this.querySelector('.places-panel')?.scrollIntoView({ block: 'start' });
  }

  /** Machines and positions, where they are added, renamed and taken away. */
  private places(file: JsonObject): TemplateResult | typeof nothing {
    if (this.arranging === null || this.placesPanel === null) return nothing;
    const close = (): void => { this.arranging = null; };
    return this.placesPanel({ document: file, place: this.place, news: this.arranging.news }, {
      change: (path, value) => { this.change(path, value); },
      say: (news) => { this.arranging = { news }; },
      rearrange: (next, news) => {
        this.history.note({ file, place: this.place }, []);
        this.take(next.file, next.place);
        this.arranging = { news };
        void this.updateComplete.then(() => { this.querySelector<HTMLInputElement>(`#position-${next.place.machine}-${next.place.position}`)?.focus(); });
      },
      open: (place) => {
        close();
        this.openPlace(place);
        window.scrollTo(0, 0);
      },
      close,
    });
  }

  private async speak(language: Language): Promise<void> {
    this.isUnspoken = false;
    try {
      await chooseLanguage(language);
      this.nameInTitle();
    } catch {
      this.isUnspoken = true;
    }
  }

  private showIn(units: 'mm' | 'in'): void {
    rememberUnits(units);
    this.change(['lengthUnit'], units);
  }

  private workingView({ output, isStale, style }: SheetContext): TemplateResult | typeof nothing {
    if (output === null) return nothing;
    return html`<details class="working" @toggle=${(event: Event) => { this.showWorking((event.currentTarget as HTMLDetailsElement).open); }}>
      <summary>${words.working}</summary>
      ${this.working === null || isStale ? nothing : html`<seat-working decimal-mark=${style.decimalMark} .steps=${this.working}></seat-working>`}
    </details>`;
  }

  private context(file: JsonObject): SheetContext {
    const { result, place, held } = this;
    const output = result?.kind === 'sheet' ? result.output : this.lastGood;
    const part = output?.parts.find(({ path }) => path.endsWith(`parts[${this.sealPart}]`));
    const seal = part?.kind === 'seal' ? part : null;
    const drivers = held.same('drivers', driversOf(seal));
    const bearingPart = bearingPartsOf(file, place)[0] ?? null;
    const outcome = output?.parts.find(({ path }) => path.endsWith(`parts[${bearingPart ?? -1}]`));
    const bearingOutcome = outcome?.kind === 'bearing' ? outcome : null;
    const bearingDrivers = held.same('bearing drivers', bearingDriversOf(bearingOutcome));
    const sealParts = sealPartsOf(file, place);
    const isStale = result !== null && result.kind !== 'sheet' && output !== null;
    return {
      document: file,
      place,
      places: placesIn(file),
      sealPart: this.sealPart,
      sealParts,
      bearingPart,
      output,
      seal,
      fault: result?.kind === 'fault' ? result.fault : null,
      toBegin: result?.kind === 'begin' ? result.missing : [],
      isFresh: this.isFresh,
      isStale,
      style: held.same('style', styleOf(sentences, valueAt(file, ['lengthUnit']) === 'in' ? 'in' : 'mm')),
      situation: situationOfSeal(seal) ?? held.same('draft', draftSituation(file, place, sealParts.length === 0 && bearingPart !== null ? null : this.sealPart)),
      drivers,
      driver: drivers.find(({ name }) => name === this.driverName) ?? drivers[0] ?? null,
      bearing: bearingPart === null ? null : held.same('bearing', bearingOf(bearingOutcome, file, place, bearingPart)),
      bearingOutcome,
      bearingDriver: bearingDrivers.find(({ name }) => name === this.bearingDriverName) ?? bearingDrivers[0] ?? null,
      mode: modeThere(this.mode, sealParts.length > 0 || bearingPart === null, bearingPart !== null),
      highlight: this.highlight,
      isUnsaved: this.isUnsaved,
      toolNews: this.toolNews,
      same: (name, value) => held.same(name, value),
      actions: this.actions,
    };
  }

  private readonly actions: SheetActions = {
    change: (path, value) => { this.change(path, value); },
    goTo: (key) => void this.goTo(key),
    showMode: (mode) => { this.mode = mode; },
    chooseDriver: (name) => {
      this.driverName = name;
      this.mode = 'as driven';
    },
    chooseBearingDriver: (name) => {
      this.bearingDriverName = name;
      this.mode = 'bearing in';
    },
    choosePlace: (place) => { this.openPlace(place); },
    takeOwnTools: () => void this.takeOwnTools(),
    makeToolsOwn: () => void this.makeToolsOwn(),
    arrangePlaces: () => void this.arrangePlaces(),
    chooseSeal: (part) => {
      this.sealPart = part;
      this.driverName = '';
      this.computer.now();
    },
  };

  private change(path: Path, value: Json | undefined): void {
    if (this.file === null) return;
    const next = withValue(this.file, seatPath(path), seatValue(this.file, path, value));
    if (!isObject(next)) return;
    this.history.note({ file: this.file, place: this.place }, path);
    this.take(next);
  }

  /** One change back or forth, to the position where it was made. */
  private step(way: 'undo' | 'redo'): void {
    if (this.file === null) return;
    const { file, place } = this.history[way]({ file: this.file, place: this.place });
    const isElsewhere = placeKey(place) !== placeKey(this.place) || placesIn(file).length !== placesIn(this.file).length;
    this.take(file, isElsewhere ? place : undefined);
    if (this.arranging !== null) this.arranging = { news: '' };
  }

  /** Another state of the file: kept, and computed anew; at another position where one is given. */
  private take(next: JsonObject, elsewhere?: Place): void {
    this.file = next;
    this.place = elsewhere ?? this.place;
    this.shared = null;
    this.isUnsaved = true;
    this.isReloading = false;
    this.keeper?.keep(this.heading, next);
    if (elsewhere === undefined) this.computer.soon();
    else this.openPlace(elsewhere);
  }

  private takeKeeping(state: KeepingState): void {
    this.keeping = state;
    if (state !== 'being kept') this.keepingTold = state;
    if (isHindered(state)) this.hold(this.file);
    if (state === 'kept' || state === 'kept as a copy') dropFromTab();
  }

  /** Holds the sheet in this tab until the page is loaded anew; the file too, where the device does not keep it. */
  private hold(file: JsonObject | null): boolean {
    return this.keeper !== null && holdInTab({ known: this.keeper.sheet, place: this.place, file });
  }

  /** Whether the page may be loaded anew: the sheet is kept, or held by the tab. */
  private readonly readyToReload = async (): Promise<boolean> => {
    if (this.file === null || this.keeper === null) return true;
    const isKept = await this.keeper.settled();
    const isReady = this.hold(isKept && this.keeper.sheet.revision > 0 ? null : this.file);
    this.isReloading = isReady;
    return isReady || isKept;
  };

  private takeResult(result: SheetResult, file: JsonObject): void {
    this.result = result.kind === 'sheet' ? { kind: 'sheet', output: this.held.same('output', result.output) } : result;
    if (this.result.kind === 'sheet') this.lastGood = this.result.output;
    if (this.result.kind === 'waiting') void this.completeSheet();
    if (bearingPartsOf(file, this.place).length > 0 && !drawsBearings()) void this.fetchBearingDrawing();
    if (this.isWorkingOpen) this.showWorking(true);
  }

  /** Fetches what draws a bearing. Where it cannot be loaded, what judges it tells so. */
  private async fetchBearingDrawing(): Promise<void> {
    try {
      await import('@seatwright/elements/seat-bearing-section.define.js');
      this.requestUpdate();
    } catch {
      // The sheet stands without the drawing.
    }
  }

  /** Fetches what judges bearings and finds remedies, and computes again with it. */
  private async completeSheet(): Promise<void> {
    try {
      if (await fetchWholeSheet()) this.computer.now();
    } catch {
      if (this.result?.kind === 'waiting') this.result = { kind: 'fault', fault: { key: 'bearing.designation', message: words.start.notLoaded } };
    }
  }

  private showWorking(isOpen: boolean): void {
    this.isWorkingOpen = isOpen;
    if (isOpen) void import('@seatwright/elements/seat-working.define.js');
    this.working = isOpen && this.file !== null && this.result?.kind === 'sheet' ? workingOf(this.file, this.place, today(), this.result.output) : isOpen ? this.working : null;
    if (isOpen && this.working === null) void this.completeSheet();
  }

  /** Opens a workshop file, at its first position if no other is named; `sheets` keeps what is changed in it. */
  open(file: JsonObject, sheets: KeptSheets, { tools, known, place }: Opening): void {
    this.tools = tools;
    this.toolNews = '';
    this.takeKeeping('untouched');
    this.keeper?.end();
    const keeper: Keeper = new Keeper(sheets, (state) => { if (this.keeper === keeper) this.takeKeeping(state); }, known);
    keeper.begin();
    this.keeper = keeper;
    this.history = new History<SheetState>();
    this.arranging = null;
    this.file = file;
    this.isUnsaved = false;
    const places = placesIn(file);
    const first = places.find((one) => place !== undefined && placeKey(one) === placeKey(place)) ?? places[0];
    if (first !== undefined) this.openPlace(first);
    window.scrollTo(0, 0);
    whenIdle(() => void this.completeSheet());
  }

  /** Keeps the sheet as it is, though nothing was changed in it; true once the device has it. */
  async keepNow(): Promise<boolean> {
    if (this.file === null || this.keeper === null) return false;
    this.isUnsaved = true;
    this.keeper.keep(this.heading, this.file);
    return this.keeper.settled();
  }

  /** Whether leaving the sheet for another would lose what was typed. */
  get wouldBeLost(): boolean {
    return this.isUnsaved && isHindered(this.keepingTold);
  }

  /** Back to the first screen once the writes under way have ended, so that it shows what is kept. */
  private async leave(): Promise<void> {
    await this.keeper?.settled();
    this.dispatchEvent(new Event('bench-leave', { bubbles: true }));
  }

  private openPlace(place: Place): void {
    if (this.file === null) return;
    this.place = place;
    this.shared = null;
    this.sealPart = sealPartsOf(this.file, place)[0] ?? 0;
    this.lastGood = null;
    this.working = null;
    this.isWorkingOpen = false;
    this.driverName = '';
    this.bearingDriverName = '';
    this.highlight = '';
    this.mode = 'as driven';
    this.nameInTitle();
    this.computer.now();
    this.isFresh = this.result?.kind === 'begin';
  }

  /** Opens everything that folds around a field and puts the cursor into it, once what was just changed is drawn. */
  private async goTo(key: string): Promise<void> {
    await this.updateComplete;
    goToField(this, key);
  }

  /** A link that carries this position alone. */
  private async share(): Promise<void> {
    if (this.file === null) return;
    const link = await linkOf(location.href, withPlaceAlone(this.file, this.place));
    this.shared = link === null ? 'too long' : { link };
    await this.updateComplete;
    this.querySelector<HTMLInputElement>('#share-link')?.focus();
  }

  private save(): void {
    if (this.file === null) return;
    saveFile(`${fileName(this.titleText(this.file))}.json`, `${JSON.stringify(this.file, null, 2)}\n`);
    this.isUnsaved = false;
  }

  /** The window says which sheet is open. */
  nameInTitle(): void {
    if (this.file !== null) document.title = `${this.titleText(this.file)} – ${words.name}`;
  }

  /** Machine and position of the open sheet. */
  get heading(): string {
    return this.file === null ? '' : this.titleText(this.file);
  }

  private titleText(file: JsonObject): string {
    return `${textAt(file, ['machines', this.place.machine, 'name'])}, ${textAt(file, [...positionPath(this.place), 'name'])}`;
  }

  private readonly warn = (event: BeforeUnloadEvent): void => {
    if (this.isUnsaved && !this.isReloading && this.keeping !== 'kept' && this.keeping !== 'kept as a copy') event.preventDefault();
  };

  /** The sheet for paper is drawn at the moment when it is wanted, and in time: nobody waits for a task before the pages are made. */
  private turnPaper(isWanted: boolean): void {
    if (isWanted && this.computer.underWay !== null) this.computer.now();
    this.isOnPaper = isWanted;
    if (isWanted) this.performUpdate();
  }

  private readonly light = (event: FocusEvent): void => {
    const field = event.target instanceof Element ? event.target.closest<HTMLElement>('[data-key]') : null;
    this.highlight = field === null ? '' : dimensionOfKey(field.dataset['key'] ?? '');
  };
}

/** What is shown of a place: its seal's work where it has a seal, its bearing's where it has one. */
function modeThere(mode: SectionMode, hasSeal: boolean, hasBearing: boolean): SectionMode {
  if (!hasSeal) return mode === 'taking out' || mode === 'bearing out' ? 'bearing out' : 'bearing in';
  return hasBearing ? mode : mode === 'bearing in' ? 'as driven' : mode === 'bearing out' ? 'taking out' : mode;
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-sheet': BenchSheet;
  }
}

