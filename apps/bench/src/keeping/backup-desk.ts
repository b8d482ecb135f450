import { saveFile } from '../sharing/save-file.js';
import { words } from '../words/index.js';
import type { BackupContents } from './backup.js';
import type { DeviceStore, SetAside } from './device-store.js';
import type { KeptSheets } from './kept-sheets.js';
import type { OwnTools } from './own-tools.js';

/** What the first screen is told. */
interface Teller {
  fault(fault: string): void;
  news(news: string): void;
  /** What is kept may have changed. */
  lookAgain(): Promise<void>;
}

/** All that the device keeps goes out into one file here, and comes back from one: beside what is there, or in its place. */
export class BackupDesk {
  /** A backup that was opened, until it is known what to do with it. */
  opened: BackupContents | null = null;
  /** What a restored backup took the place of. */
  aside: SetAside | null = null;
  private readonly store: DeviceStore;
  private readonly sheets: KeptSheets;
  private readonly tools: OwnTools;
  private readonly tell: Teller;

  constructor(store: DeviceStore, sheets: KeptSheets, tools: OwnTools, tell: Teller) {
    this.store = store;
    this.sheets = sheets;
    this.tools = tools;
    this.tell = tell;
  }

  /** Reads a backup whole; true where it can be trusted. */
  async open(text: string): Promise<boolean> {
    this.opened = null;
    const { readBackup } = await import('./backup.js');
    const read = await readBackup(text);
    if ('fault' in read) {
      this.tell.fault(`${words.start.notOpened} ${read.fault}`);
      return false;
    }
    this.opened = read;
    await this.tell.lookAgain();
    return true;
  }

  async restore(way: 'add' | 'replace'): Promise<void> {
    const contents = this.opened;
    if (contents === null) return;
    const { addBeside, putInPlace } = await import('./restore.js');
    const outcome = way === 'add' ? await addBeside(this.store, contents) : await putInPlace(this.store, contents);
    if (!('hindrance' in outcome)) this.opened = null;
    await this.tell.lookAgain();
    if ('hindrance' in outcome) this.tell.fault(words.backup.refused);
    else this.tell.news(counted(way === 'add' ? words.backup.added : words.backup.replaced, outcome.value));
  }

  leave(): void {
    this.opened = null;
  }

  async lookAtAside(): Promise<void> {
    const aside = await this.store.use((shelves) => shelves.get('aside', 'replaced'));
    this.aside = 'value' in aside ? (aside.value ?? null) : null;
  }

  async putBack(): Promise<void> {
    const { putBack } = await import('./restore.js');
    const outcome = await putBack(this.store);
    await this.tell.lookAgain();
    if ('hindrance' in outcome) this.tell.fault(words.backup.refused);
    else if (outcome.value !== null) this.tell.news(counted(words.backup.replaced, outcome.value));
  }

  async dropAside(): Promise<void> {
    if (!globalThis.confirm(words.backup.dropAsk)) return;
    const { dropAside } = await import('./restore.js');
    if ('hindrance' in (await dropAside(this.store))) this.tell.fault(words.start.notRemoved);
    await this.tell.lookAgain();
  }

  async save(): Promise<void> {
    const [{ backupOf }, { today }, sheets, tools] = await Promise.all([import('./backup.js'), import('../sheet/compute-sheet.js'), this.sheets.list(), this.tools.list()]);
    if ('hindrance' in sheets || 'hindrance' in tools) this.tell.fault(words.start.keptUnread);
    else saveFile(`seatwright-${today()}.json`, await backupOf(sheets.value, tools.value, today()));
  }
}

function counted(sentence: string, { sheetCount, toolCount, sameCount = 0 }: { readonly sheetCount: number; readonly toolCount: number; readonly sameCount?: number }): string {
  return sentence.replace('{sheets}', String(sheetCount)).replace('{tools}', String(toolCount)).replace('{same}', String(sameCount));
}
