import type { JsonObject } from '../document/raw-document.js';
import type { Hindrance } from './device-store.js';
import type { KeptSheet, KeptSheets } from './kept-sheets.js';
import { newId } from './new-id.js';

/** What the page says about where its entries are. */
export type KeepingState = 'untouched' | 'being kept' | 'kept' | 'kept as a copy' | 'changed elsewhere' | Hindrance;

/** Whether the device does not keep what was typed last. */
export function isHindered(state: KeepingState): state is Hindrance {
  return state === 'refused' || state === 'no room' || state === 'held up' || state === 'outdated';
}

/** Whether the device has all of what is on the page. */
export function isKept(state: KeepingState): boolean {
  return state === 'kept' || state === 'kept as a copy' || state === 'changed elsewhere';
}

/** What the keeper has to know of a sheet that the device keeps already. */
export type KnownSheet = Pick<KeptSheet, 'id' | 'revision' | 'copyNumber'>;

/** What the keeper says: how it stands, and that another page changed the sheet. */
interface KeeperNews {
  tell(state: KeepingState): void;
  follow(file: JsonObject): void;
}

/**
 * Keeps one open sheet while it is typed: every change is written, the newest last, one write at a time.
 * What another page writes of the same sheet is taken over while nothing of this one waits to be written; where both wrote at once,
 * this one goes on as a copy: neither overwrites the other.
 * What the device would not have stays here, and is tried again with the next change, or once the store is there.
 */
export class Keeper {
  private readonly sheets: KeptSheets;
  private readonly tell: KeeperNews['tell'];
  private readonly follow: KeeperNews['follow'];
  private known: KnownSheet;
  private hasParted = false;
  private unkept: { readonly title: string; readonly file: JsonObject } | null = null;
  private writing: Promise<void> | null = null;

  constructor(sheets: KeptSheets, { tell, follow }: KeeperNews, known?: KnownSheet) {
    this.sheets = sheets;
    this.tell = tell;
    this.follow = follow;
    this.known = known ?? { id: newId(), revision: 0 };
  }

  keep(title: string, file: JsonObject): void {
    this.unkept = { title, file };
    this.start();
  }

  private readonly wroteElsewhere = (): void => void this.lookElsewhere();

  /** Tries once more what the device would not have. */
  tryAgain = (): void => {
    if (this.unkept !== null) this.start();
  };

  begin(): void {
    this.sheets.store.addEventListener('opened', this.tryAgain);
    this.sheets.store.addEventListener('changed elsewhere', this.wroteElsewhere);
  }

  end(): void {
    this.sheets.store.removeEventListener('opened', this.tryAgain);
    this.sheets.store.removeEventListener('changed elsewhere', this.wroteElsewhere);
  }

  /** Takes over what another page wrote of this sheet. What was typed here meanwhile goes its own way, as a copy. */
  private async lookElsewhere(): Promise<void> {
    if (!this.isSettled) return;
    const { id, revision } = this.known;
    const sheet = await this.sheets.read(id);
    if (!('value' in sheet) || sheet.value === undefined || sheet.value.revision === revision) return;
    if (!this.isSettled || this.known.id !== id || this.known.revision !== revision) return;
    this.known = { ...this.known, revision: sheet.value.revision };
    this.follow(sheet.value.file);
    this.tell('changed elsewhere');
  }

  private get isSettled(): boolean {
    return this.unkept === null && this.writing === null;
  }

  /** The sheet as the device knows it. */
  get sheet(): KnownSheet {
    return this.known;
  }

  /** Waits for the writes under way; true where nothing is left that the device does not keep. */
  async settled(): Promise<boolean> {
    await this.writing;
    return this.unkept === null;
  }

  private start(): void {
    this.tell('being kept');
    this.writing ??= this.write().finally(() => { this.writing = null; });
  }

  private async write(): Promise<void> {
    for (let next = this.unkept; next !== null; next = this.unkept) {
      const { title, file } = next;
      const { id, revision, copyNumber } = this.known;
      const outcome = await this.sheets.write({ id, title, file, ...(copyNumber === undefined ? {} : { copyNumber }) }, revision);
      if ('hindrance' in outcome) {
        if (this.unkept !== next) continue;
        this.tell(outcome.hindrance);
        return;
      }
      if (outcome.value === 'written elsewhere') {
        this.known = { id: newId(), revision: 0, copyNumber: await this.sheets.nextCopyNumber(title) };
        this.hasParted = true;
        continue;
      }
      this.known = { ...this.known, revision: outcome.value.revision };
      // Only once nothing newer waits is all of it kept.
      if (this.unkept === next) {
        this.unkept = null;
        this.tell(this.hasParted ? 'kept as a copy' : 'kept');
      }
    }
  }
}
