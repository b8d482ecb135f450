import type { JsonObject } from '../document/raw-document.js';
import type { KeptSheets } from './kept-sheets.js';
import { newId } from './new-id.js';

/** What the page says about where its entries are. */
export type KeepingState = 'untouched' | 'being kept' | 'kept' | 'kept as a copy' | 'not kept';

/**
 * Keeps one open sheet while it is typed: every change is written, the newest last, one write at a time.
 * Where another page wrote the same sheet meanwhile, this one goes on as a copy: neither overwrites the other.
 */
export class Keeper {
  private readonly sheets: KeptSheets | null;
  private readonly tell: (state: KeepingState) => void;
  private id: string;
  private revision: number;
  private waiting: { readonly title: string; readonly file: JsonObject } | null = null;
  private isWriting = false;
  private isCopy = false;

  constructor(sheets: KeptSheets | null, tell: (state: KeepingState) => void, known?: { readonly id: string; readonly revision: number }) {
    this.sheets = sheets;
    this.tell = tell;
    this.id = known?.id ?? newId();
    this.revision = known?.revision ?? 0;
  }

  keep(title: string, file: JsonObject): void {
    if (this.sheets === null) {
      this.tell('not kept');
      return;
    }
    this.waiting = { title, file };
    this.tell('being kept');
    if (!this.isWriting) void this.write(this.sheets);
  }

  private async write(sheets: KeptSheets): Promise<void> {
    this.isWriting = true;
    while (this.waiting !== null) {
      const { title, file } = this.waiting;
      this.waiting = null;
      const written = await sheets.write(this.id, this.isCopy ? `${title} (2)` : title, file, this.revision);
      if (written === 'written elsewhere') {
        this.id = newId();
        this.revision = 0;
        this.isCopy = true;
        this.waiting ??= { title, file };
      } else if (written === 'refused') this.tell('not kept');
      else {
        this.revision = written.revision;
        // Only once nothing newer waits is all of it kept.
        if (this.waiting === null) this.tell(this.isCopy ? 'kept as a copy' : 'kept');
      }
    }
    this.isWriting = false;
  }
}
