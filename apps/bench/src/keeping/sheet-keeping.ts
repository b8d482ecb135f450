import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { Place } from '../document/places.js';
import type { JsonObject } from '../document/raw-document.js';
import { beforeReload } from './before-reload.js';
import { isHindered, isKept, Keeper, type KeepingState, type KnownSheet } from './keeper.js';
import type { KeptSheets } from './kept-sheets.js';
import { dropFromTab, holdInTab } from './tab-reserve.js';

/** The open sheet as it is to be kept. */
interface OpenSheet {
  readonly file: JsonObject | null;
  readonly place: Place;
  readonly title: string;
}

/** Keeps the open sheet while it is typed, tells how that stands, and lets nothing be lost when the page is left or loaded anew. */
export class SheetKeeping implements ReactiveController {
  state: KeepingState = 'untouched';
  /** What was said of it last: a write under way is no news, only a mark. */
  told: Exclude<KeepingState, 'being kept'> = 'untouched';
  isUnsaved = false;
  private keeper: Keeper | null = null;
  /** The page is about to be loaded anew, and brings the sheet along. */
  private isReloading = false;
  private readonly host: ReactiveControllerHost;
  private readonly watchers = new Set<() => void>();
  private readonly open: () => OpenSheet;
  private readonly follow: (file: JsonObject) => void;

  /** @param follow shows the sheet as another page of this device left it */
  constructor(host: ReactiveControllerHost, open: () => OpenSheet, follow: (file: JsonObject) => void) {
    this.host = host;
    this.open = open;
    this.follow = follow;
    host.addController(this);
  }

  hostConnected(): void {
    window.addEventListener('beforeunload', this.warn);
    beforeReload(this.readyToReload);
  }

  hostDisconnected(): void {
    window.removeEventListener('beforeunload', this.warn);
  }

  /** Calls `watcher` with each news of the keeping, before the sheet itself is drawn anew. */
  watch(watcher: () => void): void {
    this.watchers.add(watcher);
  }

  unwatch(watcher: () => void): void {
    this.watchers.delete(watcher);
  }

  /** Another sheet is opened, which `sheets` keep from its first change on. */
  begin(sheets: KeptSheets, known?: KnownSheet): void {
    this.take('untouched');
    this.keeper?.end();
    const keeper: Keeper = new Keeper(sheets, { tell: (state) => { if (this.keeper === keeper) this.take(state); }, follow: this.follow }, known);
    keeper.begin();
    this.keeper = keeper;
    this.isUnsaved = false;
  }

  /** Keeps the sheet as it is now. */
  keep(): void {
    const { file, title } = this.open();
    if (file === null || this.keeper === null) return;
    this.isUnsaved = true;
    this.isReloading = false;
    this.keeper.keep(title, file);
    this.draw();
  }

  tryAgain(): void {
    this.keeper?.tryAgain();
  }

  /** True once the writes under way have ended and the device has all. */
  settled(): Promise<boolean> {
    return this.keeper?.settled() ?? Promise.resolve(false);
  }

  /** The sheet was saved as a file. */
  saved(): void {
    this.isUnsaved = false;
    this.draw();
  }

  /** Whether leaving the sheet for another would lose what was typed. */
  get wouldBeLost(): boolean {
    return this.isUnsaved && isHindered(this.told);
  }

  private take(state: KeepingState): void {
    this.state = state;
    if (state !== 'being kept') this.told = state;
    if (isHindered(state)) this.hold(this.open().file);
    if (isKept(state)) dropFromTab();
    this.draw();
  }

  private draw(): void {
    for (const watcher of this.watchers) watcher();
    this.host.requestUpdate();
  }

  /** Holds the sheet in this tab until the page is loaded anew; the file too, where the device does not keep it. */
  private hold(file: JsonObject | null): boolean {
    return this.keeper !== null && holdInTab({ known: this.keeper.sheet, place: this.open().place, file });
  }

  /** Whether the page may be loaded anew: the sheet is kept, or held by the tab. */
  private readonly readyToReload = async (): Promise<boolean> => {
    const { file } = this.open();
    if (file === null || this.keeper === null) return true;
    const isKept = await this.keeper.settled();
    const isReady = this.hold(isKept && this.keeper.sheet.revision > 0 ? null : file);
    this.isReloading = isReady;
    return isReady || isKept;
  };

  private readonly warn = (event: BeforeUnloadEvent): void => {
    if (this.isUnsaved && !this.isReloading && !isKept(this.state)) event.preventDefault();
  };
}
