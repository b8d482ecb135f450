import type { JsonObject } from '../document/raw-document.js';
import type { DeviceStore, Outcome } from './device-store.js';
import { newId } from './new-id.js';

/** One workshop file that this device keeps. */
export interface KeptSheet {
  readonly id: string;
  readonly title: string;
  /** 2 and up where it parted from a sheet that another page went on with. */
  readonly copyNumber?: number;
  readonly file: JsonObject;
  /** Counts the writes: whoever writes must have seen the last one. */
  readonly revision: number;
  readonly changedAt: number;
}

/** A sheet as it is given to be kept. */
export type SheetToKeep = Omit<KeptSheet, 'revision' | 'changedAt'>;

/** A sheet as it comes out of a backup. */
export type SheetToTake = Omit<KeptSheet, 'revision'>;

/** The title with the number of the copy, where it is one. */
export function titleOf({ title, copyNumber }: Pick<KeptSheet, 'title' | 'copyNumber'>): string {
  return `${title}${copyMark(copyNumber)}`;
}

export function copyMark(copyNumber: number | undefined): string {
  return copyNumber === undefined ? '' : ` (${copyNumber})`;
}

/** The sheets that this device keeps. Nothing of them leaves it. */
export class KeptSheets {
  readonly store: DeviceStore;

  constructor(store: DeviceStore) {
    this.store = store;
  }

  /** Newest first. */
  list(): Promise<Outcome<readonly KeptSheet[]>> {
    return this.store.use(async (shelves) => (await shelves.getAll('sheets')).sort((a, b) => b.changedAt - a.changedAt));
  }

  /** Undefined where it is no longer there. */
  read(id: string): Promise<Outcome<KeptSheet | undefined>> {
    return this.store.use((shelves) => shelves.get('sheets', id));
  }

  /** Writes a sheet whole, if nobody else wrote it since `seenRevision` (0: it is new). One that was removed meanwhile is written anew. */
  write(sheet: SheetToKeep, seenRevision: number): Promise<Outcome<{ readonly revision: number } | 'written elsewhere'>> {
    return this.store.change(async (shelves) => {
      const transaction = shelves.transaction('sheets', 'readwrite', { durability: 'strict' });
      const before = await transaction.store.get(sheet.id);
      const isSeen = before === undefined || before.revision === seenRevision;
      const revision = seenRevision + 1;
      await Promise.all([isSeen ? transaction.store.put({ ...sheet, revision, changedAt: Date.now() }) : null, transaction.done]);
      return isSeen ? { revision } : 'written elsewhere';
    });
  }

  /** The number for the next copy of the sheet with that title. */
  async nextCopyNumber(title: string): Promise<number> {
    const all = await this.list();
    return 'value' in all ? nextCopyNumber(title, all.value) : 2;
  }

  async remove(id: string): Promise<Outcome<void>> {
    return this.store.change((shelves) => shelves.delete('sheets', id));
  }

  /** Puts a sheet that was removed back as it was; one that was written anew meanwhile stays. */
  putBack(sheet: KeptSheet): Promise<Outcome<void>> {
    return this.store.change(async (shelves) => {
      const transaction = shelves.transaction('sheets', 'readwrite', { durability: 'strict' });
      const now = await transaction.store.get(sheet.id);
      await Promise.all([now === undefined ? transaction.store.put(sheet) : null, transaction.done]);
    });
  }
}

function nextCopyNumber(title: string, sheets: readonly KeptSheet[]): number {
  return 1 + Math.max(1, ...sheets.flatMap((sheet) => (sheet.title === title ? [sheet.copyNumber ?? 1] : [])));
}

/** What has to be written so that sheets stand beside those that are here: the same sheet once, another sheet of the same id as a copy. */
export function besideKept(sheets: readonly SheetToTake[], here: readonly KeptSheet[]): readonly KeptSheet[] {
  return sheets.flatMap((sheet): readonly KeptSheet[] => {
    const known = here.find(({ id }) => id === sheet.id);
    if (known === undefined) return [{ ...sheet, revision: 1 }];
    if (JSON.stringify(known.file) === JSON.stringify(sheet.file)) return [];
    return [{ ...sheet, id: newId(), copyNumber: nextCopyNumber(sheet.title, here), revision: 1 }];
  });
}
