import type { BackupContents } from './backup.js';
import type { DeviceStore, Outcome } from './device-store.js';
import { besideKept } from './kept-sheets.js';
import { besideOwn } from './own-tools.js';

export interface Restored {
  readonly sheetCount: number;
  readonly toolCount: number;
  readonly sameCount: number;
}

const allShelves = ['sheets', 'tools', 'aside'] as const;
const aside = 'replaced';

/** Takes what a backup holds in beside what is here, all or nothing. */
export function addBeside(store: DeviceStore, { sheets, tools }: BackupContents): Promise<Outcome<Restored>> {
  return store.change(async (shelves) => {
    const transaction = shelves.transaction(allShelves, 'readwrite', { durability: 'strict' });
    const [sheetShelf, toolShelf] = [transaction.objectStore('sheets'), transaction.objectStore('tools')];
    const newSheets = besideKept(sheets, await sheetShelf.getAll());
    const newTools = besideOwn(tools, await toolShelf.getAll());
    await Promise.all([...newSheets.map((sheet) => sheetShelf.put(sheet)), ...newTools.map((tool) => toolShelf.put(tool)), transaction.done]);
    return { sheetCount: newSheets.length, toolCount: newTools.length, sameCount: sheets.length + tools.length - newSheets.length - newTools.length };
  });
}

/** Puts what a backup holds in place of what is here, which is set aside in the same step: all or nothing. */
export function putInPlace(store: DeviceStore, { sheets, tools }: Pick<BackupContents, 'sheets' | 'tools'>): Promise<Outcome<Restored>> {
  return store.change(async (shelves) => {
    const transaction = shelves.transaction(allShelves, 'readwrite', { durability: 'strict' });
    const [sheetShelf, toolShelf, asideShelf] = [transaction.objectStore('sheets'), transaction.objectStore('tools'), transaction.objectStore('aside')];
    const [sheetsHere, toolsHere] = await Promise.all([sheetShelf.getAll(), toolShelf.getAll()]);
    // A sheet that is open in a tab must not take the restored one for what it wrote itself.
    const revisionOf = (id: string, here: readonly { readonly id: string; readonly revision: number }[]) => 1 + (here.find((one) => one.id === id)?.revision ?? 0);
    await Promise.all([
      asideShelf.put({ sheets: sheetsHere, tools: toolsHere, setAsideAt: Date.now() }, aside),
      sheetShelf.clear(),
      toolShelf.clear(),
      ...sheets.map((sheet) => sheetShelf.put({ ...sheet, revision: revisionOf(sheet.id, sheetsHere) })),
      ...tools.map((tool) => toolShelf.put({ ...tool, revision: revisionOf(tool.id, toolsHere) })),
      transaction.done,
    ]);
    return { sheetCount: sheets.length, toolCount: tools.length, sameCount: 0 };
  });
}

/** What a restored backup took the place of comes back; what stands there now is set aside instead. */
export async function putBack(store: DeviceStore): Promise<Outcome<Restored | null>> {
  const kept = await store.use((shelves) => shelves.get('aside', aside));
  if ('hindrance' in kept) return kept;
  return kept.value === undefined ? { value: null } : putInPlace(store, kept.value);
}

export function dropAside(store: DeviceStore): Promise<Outcome<void>> {
  return store.use((shelves) => shelves.delete('aside', aside));
}
