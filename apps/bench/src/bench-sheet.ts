import { html, nothing, type TemplateResult } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import './sheet-elements.js';
import type { JobSheetOutput } from '@seatwright/core/job';
import type { SectionMode } from '@seatwright/elements/seat-section.js';
import { History } from './document/history.js';
import { sealStillThere } from './document/change-parts.js';
import { bearingPartsOf, placeAfter, placeKey, placesIn, positionPath, sealPartsOf, withPlaceAlone, type Place } from './document/places.js';
import { isObject, textAt, valueAt, withValue, type Json, type JsonObject, type Path } from './document/raw-document.js';
import { seatPath, seatValue } from './document/seat-entry.js';
import type { KnownSheet } from './keeping/keeper.js';
import type { KeptSheets } from './keeping/kept-sheets.js';
import type { OwnTools } from './keeping/own-tools.js';
import { SheetKeeping } from './keeping/sheet-keeping.js';
import { rememberUnits } from './keeping/units-of-device.js';
import { nextTask } from './next-task.js';
import { noteAsOwn, withOwnTools } from './own-tools/tools-of-job.js';
import { PageElement } from './page-element.js';
import { fileName, saveFile } from './sharing/save-file.js';
import { linkOf } from './sharing/share-link.js';
import { computeSheet, fetchWholeSheet, today, workingOf, type SheetResult } from './sheet/compute-sheet.js';
import { contextOf } from './sheet/context-of.js';
import { Held } from './sheet/held.js';
import { SheetComputer } from './sheet/sheet-computer.js';
import { dimensionOfKey } from './view/drawing-pane.js';
import { goToField } from './view/go-to-field.js';
import { keepingPanel } from './view/keeping-panel.js';
import { PaperWatch } from './view/paper-watch.js';
import { PlacesArranging } from './view/places-arranging.js';
import { printSheet } from './view/print-sheet.js';
import { drawsBearings } from './view/section-view.js';
import { sharePanel, type Shared } from './view/share-panel.js';
import { sheetBar } from './view/sheet-bar.js';
import type { SheetActions, SheetContext } from './view/sheet-context.js';
import { sheetView } from './view/sheet-view.js';
import { StripWatch } from './view/strip-watch.js';
import { WorkingFold } from './view/working-fold.js';
import { whenIdle } from './when-idle.js';
import { words } from './words/index.js';
import { chooseLanguage, type Language } from './words/language.js';

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
export class BenchSheet extends PageElement {
  @state() private file: JsonObject | null = null;
  @state() private place: Place = { machine: 0, position: 0 };
  @state() private sealPart = 0;
  @state() private result: SheetResult | null = null;
  @state() private lastGood: JobSheetOutput | null = null;
  @state() private mode: SectionMode = 'as driven';
  @state() private driverName = '';
  @state() private bearingDriverName = '';
  @state() private highlight = '';
  private history = new History<SheetState>();
  @state() private isFresh = false;
  @state() private shared: Shared | null = null;
  private tools: OwnTools | null = null;
  /** What became of the tools that were taken in or noted last. */
  @state() private toolNews = '';
  @state() private isOnPaper = false;
  private readonly held = new Held();
  private readonly computer = new SheetComputer(
    () => this.file,
    (file) => computeSheet(file, this.place, this.sealPart, today()),
    (result, file) => { this.takeResult(result, file); },
  );
  /** The language that was asked for could not be fetched. */
  @state() private isUnspoken = false;

  private readonly keeping = new SheetKeeping(this, () => ({ file: this.file, place: this.place, title: this.heading }), (file) => { this.follow(file); });
  private readonly arranging = new PlacesArranging(this, {
    change: (path, value) => { this.change(path, value); },
    rearrange: ({ file, place }) => {
      if (this.file !== null) this.history.note({ file: this.file, place: this.place }, []);
      this.take(file, place);
    },
    open: (place) => { this.openPlace(place); },
  });
  private readonly working = new WorkingFold(this, () => (this.file !== null && this.result?.kind === 'sheet' ? workingOf(this.file, this.place, today(), this.result.output) : null), () => void this.completeSheet());
  private readonly strip = new StripWatch();

  constructor() {
    super();
    new PaperWatch(this, (isWanted) => { this.turnPaper(isWanted); });
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.addEventListener('focusin', this.light);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
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
    return html`<div class="screen">${this.bar()}${this.isUnspoken ? html`<p class="fault" role="alert">${words.language.notFetched}</p>` : nothing}${keepingPanel(this.keeping.told, { saveFile: () => { this.save(); }, tryAgain: () => { this.keeping.tryAgain(); } })}${this.arranging.render(file, this.place)}${sharePanel(this.shared, { close: () => { this.shared = null; }, saveFile: () => { this.save(); } })}${sheetView(context, this.working.render(context))}</div>${this.isOnPaper ? printSheet(context) : nothing}`;
  }

  private bar(): TemplateResult {
    const { keeping, history } = this;
    return sheetBar(
      { keeping, canUndo: history.canUndo, canRedo: history.canRedo, isInch: valueAt(this.file ?? {}, ['lengthUnit']) === 'in' },
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
    if (this.file === null || this.tools === null) return;
    const { tools, news } = await withOwnTools(this.file, this.tools);
    if (tools !== null) this.change(['toolsAtHand'], [...tools]);
    this.toolNews = news;
  }

  /** Notes the tools of the job as those of the person at this device. */
  private async makeToolsOwn(): Promise<void> {
    if (this.file !== null && this.tools !== null) this.toolNews = await noteAsOwn(this.file, this.tools);
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

  private context(file: JsonObject): SheetContext {
    const { place, sealPart, result, lastGood, mode, driverName, bearingDriverName, highlight, isFresh, toolNews } = this;
    return contextOf({ file, place, sealPart, result, lastGood, mode, driverName, bearingDriverName, highlight, isFresh, toolNews, isUnsaved: this.keeping.isUnsaved }, this.held, this.actions);
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
    arrangePlaces: () => void this.arranging.toggle(),
    chooseSeal: (part) => { this.openSeal(part); },
    changeParts: ({ file, sealPart }) => {
      if (this.file !== null) this.history.note({ file: this.file, place: this.place }, []);
      this.take(file);
      this.openSeal(sealPart);
    },
  };

  private openSeal(part: number): void {
    this.sealPart = part;
    this.driverName = '';
    this.computer.now();
  }

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
    this.arranging.silence();
  }

  /** The sheet as another page of this device left it, at the same position where that is still there. Undo goes back to what was here. */
  private follow(file: JsonObject): void {
    if (this.file === null) return;
    this.history.note({ file: this.file, place: this.place }, []);
    const place = placeAfter(this.file, this.place, file);
    this.file = file;
    this.shared = null;
    if (place !== undefined && placeKey(place) === placeKey(this.place)) {
      this.sealPart = sealStillThere(file, place, this.sealPart);
      this.computer.soon();
    }
    else this.openPlace(place ?? placesIn(file)[0] ?? this.place);
  }

  /** Another state of the file: kept, and computed anew; at another position where one is given. */
  private take(next: JsonObject, elsewhere?: Place): void {
    this.file = next;
    this.place = elsewhere ?? this.place;
    this.sealPart = sealStillThere(next, this.place, this.sealPart);
    this.shared = null;
    this.keeping.keep();
    if (elsewhere === undefined) this.computer.soon();
    else this.openPlace(elsewhere);
  }

  private takeResult(result: SheetResult, file: JsonObject): void {
    this.result = result.kind === 'sheet' ? { kind: 'sheet', output: this.held.same('output', result.output) } : result;
    if (this.result.kind === 'sheet') this.lastGood = this.result.output;
    if (this.result.kind === 'waiting') void this.completeSheet();
    if (bearingPartsOf(file, this.place).length > 0 && !drawsBearings()) void this.fetchBearingDrawing();
    this.working.follow();
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

  /** Fetches what judges bearings, finds remedies and says what is seldom said, and computes again with it. */
  private async completeSheet(): Promise<void> {
    try {
      if (await fetchWholeSheet()) this.computer.now();
    } catch {
      if (this.result?.kind !== 'waiting' || this.file === null) return;
      const key = bearingPartsOf(this.file, this.place).length > 0 ? 'bearing.designation' : 'file';
      this.result = { kind: 'fault', fault: { key, message: words.start.notLoaded } };
    }
  }

  /** Opens a workshop file, at its first position if no other is named; `sheets` keeps what is changed in it. */
  open(file: JsonObject, sheets: KeptSheets, { tools, known, place }: Opening): void {
    this.tools = tools;
    this.toolNews = '';
    this.keeping.begin(sheets, known);
    this.history = new History<SheetState>();
    this.arranging.close();
    this.file = file;
    const places = placesIn(file);
    const first = places.find((one) => place !== undefined && placeKey(one) === placeKey(place)) ?? places[0];
    if (first !== undefined) this.openPlace(first);
    window.scrollTo(0, 0);
    whenIdle(() => void this.completeSheet());
  }

  /** Keeps the sheet as it is, though nothing was changed in it; true once the device has it. */
  async keepNow(): Promise<boolean> {
    if (this.file === null) return false;
    this.keeping.keep();
    return this.keeping.settled();
  }

  /** Whether leaving the sheet for another would lose what was typed. */
  get wouldBeLost(): boolean {
    return this.keeping.wouldBeLost;
  }

  /** Back to the first screen once the writes under way have ended, so that it shows what is kept. */
  private async leave(): Promise<void> {
    await this.keeping.settled();
    this.dispatchEvent(new Event('bench-leave', { bubbles: true }));
  }

  private openPlace(place: Place): void {
    if (this.file === null) return;
    this.place = place;
    this.shared = null;
    this.sealPart = sealPartsOf(this.file, place)[0] ?? 0;
    this.lastGood = null;
    this.working.close();
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
    this.keeping.saved();
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

declare global {
  interface HTMLElementTagNameMap {
    'bench-sheet': BenchSheet;
  }
}

