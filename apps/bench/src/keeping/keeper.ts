import type { JsonObject } from '../document/raw-document.js';
import type { Hindrance } from './device-store.js';
import type { KeptSheet, KeptSheets } from './kept-sheets.js';
import { newId } from './new-id.js';

/** What the page says about where its entries are. */
export type KeepingState = 'untouched' | 'being kept' | 'kept' | 'kept as a copy' | Hindrance;

/** Whether the device does not keep what was typed last. */
export function isHindered(state: KeepingState): state is Hindrance {
  return state === 'refused' || state === 'no room' || state === 'held up' || state === 'outdated';
}

/** What the keeper has to know of a sheet that the device keeps already. */
export type KnownSheet = Pick<KeptSheet, 'id' | 'revision' | 'copyNumber'>;

/**
 * Keeps one open sheet while it is typed: every change is written, the newest last, one write at a time.
 * Where another page wrote the same sheet meanwhile, this one goes on as a copy: neither overwrites the other.
 * What the device would not have stays here, and is tried again with the next change, or once the store is there.
 */
export class Keeper {
  private readonly sheets: KeptSheets;
  private readonly tell: (state: KeepingState) => void;
  private known: KnownSheet;
  private hasParted = false;
  private unkept: { readonly title: string; readonly file: JsonObject } | null = null;
  private writing: Promise<void> | null = null;

  constructor(sheets: KeptSheets, tell: (state: KeepingState) => void, known?: KnownSheet) {
    this.sheets = sheets;
    this.tell = tell;
    this.known = known ?? { id: newId(), revision: 0 };
  }

  keep(title: string, file: JsonObject): void {
    this.unkept = { title, file };
    this.start();
  }

  /** Tries once more what the device would not have. */
  tryAgain = (): void => {
    if (this.unkept !== null) this.start();
  };

  begin(): void {
    this.sheets.store.addEventListener('opened', this.tryAgain);
  }

  end(): void {
    this.sheets.store.removeEventListener('opened', this.tryAgain);
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
