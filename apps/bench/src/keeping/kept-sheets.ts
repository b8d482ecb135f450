import { openDB, type DBSchema, type IDBPDatabase } from 'idb';
import type { JsonObject } from '../document/raw-document.js';
import { newId } from './new-id.js';

/** One workshop file that this device keeps. */
export interface KeptSheet {
  readonly id: string;
  readonly title: string;
  readonly file: JsonObject;
  /** Counts the writes: whoever writes must have seen the last one. */
  readonly revision: number;
  readonly changedAt: number;
}

interface Shelves extends DBSchema {
  readonly sheets: { readonly key: string; readonly value: KeptSheet };
}

/** How a write came out: the new revision, another page was faster, or the device would not have it. */
export type Written = { readonly revision: number } | 'written elsewhere' | 'refused';

/** The sheets that this device keeps. Nothing of them leaves it. */
export class KeptSheets {
  private readonly shelves: IDBPDatabase<Shelves>;

  private constructor(shelves: IDBPDatabase<Shelves>) {
    this.shelves = shelves;
  }

  /** Null where the browser keeps nothing: a private window, or storage that was denied. */
  static async open(): Promise<KeptSheets | null> {
    try {
      const shelves = await openDB<Shelves>('seatwright', 1, { upgrade: (db) => { db.createObjectStore('sheets', { keyPath: 'id' }); } });
      return new KeptSheets(shelves);
    } catch {
      return null;
    }
  }

  /** Newest first. */
  async list(): Promise<readonly KeptSheet[]> {
    const all = await this.shelves.getAll('sheets');
    return all.sort((a, b) => b.changedAt - a.changedAt);
  }

  read(id: string): Promise<KeptSheet | undefined> {
    return this.shelves.get('sheets', id);
  }

  /** Writes a sheet whole, if nobody wrote it since `seenRevision` (0: it is new). */
  async write(id: string, title: string, file: JsonObject, seenRevision: number): Promise<Written> {
    try {
      const transaction = this.shelves.transaction('sheets', 'readwrite', { durability: 'strict' });
      const before = await transaction.store.get(id);
      if ((before?.revision ?? 0) !== seenRevision) {
        await transaction.done;
        return 'written elsewhere';
      }
      const revision = seenRevision + 1;
      await transaction.store.put({ id, title, file, revision, changedAt: Date.now() });
      await transaction.done;
      return { revision };
    } catch {
      return 'refused';
    }
  }

  /** Takes sheets in beside what is here, all or none: the same sheet once, another sheet of the same id as a copy. Null where the device would not have them. */
  async takeIn(sheets: readonly Pick<KeptSheet, 'id' | 'title' | 'file' | 'changedAt'>[]): Promise<{ readonly takenCount: number; readonly sameCount: number } | null> {
    try {
      const transaction = this.shelves.transaction('sheets', 'readwrite', { durability: 'strict' });
      let takenCount = 0;
      for (const { id, title, file, changedAt } of sheets) {
        const here = await transaction.store.get(id);
        if (here !== undefined && JSON.stringify(here.file) === JSON.stringify(file)) continue;
        await transaction.store.put({ id: here === undefined ? id : newId(), title, file, changedAt, revision: 1 });
        takenCount += 1;
      }
      await transaction.done;
      return { takenCount, sameCount: sheets.length - takenCount };
    } catch {
      return null;
    }
  }

  async remove(id: string): Promise<void> {
    await this.shelves.delete('sheets', id);
  }
}
