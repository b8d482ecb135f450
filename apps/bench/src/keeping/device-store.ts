import { openDB, type DBSchema, type IDBPDatabase } from 'idb';
import type { KeptSheet } from './kept-sheets.js';
import type { OwnTool } from './own-tools.js';

interface Shelves extends DBSchema {
  readonly sheets: { readonly key: string; readonly value: KeptSheet };
  readonly tools: { readonly key: string; readonly value: OwnTool };
  readonly aside: { readonly key: string; readonly value: SetAside };
}

/** What a restored backup took the place of, until it is put back or dropped. */
export interface SetAside {
  readonly sheets: readonly KeptSheet[];
  readonly tools: readonly OwnTool[];
  readonly setAsideAt: number;
}

export type Connection = IDBPDatabase<Shelves>;

/**
 * Why the device does not keep something now. `held up`: an older page in another tab has to be closed first.
 * `outdated`: a newer page in another tab has changed the store, which this one cannot read any more.
 */
export type Hindrance = 'refused' | 'no room' | 'held up' | 'outdated';

export type Outcome<T> = { readonly value: T } | { readonly hindrance: Hindrance };

const version = 2;

/** How the pages of this device hear of each other; null where the browser denies that along with its storage. */
function channelToOthers(): BroadcastChannel | null {
  try {
    return new BroadcastChannel('seatwright-kept');
  } catch {
    return null;
  }
}

/**
 * The store of this device, and the connection to it. The connection comes when it is first used, is given up for a newer page,
 * and is made again where the browser closed it. Says `opened` each time that it is there, and `changed elsewhere` when another page
 * of this device wrote something.
 */
export class DeviceStore extends EventTarget {
  private connection: Connection | null = null;
  private opening: Promise<Connection | Hindrance> | null = null;
  private isOutdated = false;
  private readonly others = channelToOthers();

  constructor() {
    super();
    this.others?.addEventListener('message', () => this.dispatchEvent(new Event('changed elsewhere')));
  }

  /** Runs something that writes, and lets the other pages of this device know. */
  async change<T>(run: (connection: Connection) => Promise<T>): Promise<Outcome<T>> {
    const outcome = await this.use(run);
    if ('value' in outcome) this.others?.postMessage('changed');
    return outcome;
  }

  /** Runs something on the store; whatever the browser throws comes back as a hindrance. */
  async use<T>(run: (connection: Connection) => Promise<T>, isSecondTry = false): Promise<Outcome<T>> {
    const connection = await this.connected();
    if (typeof connection === 'string') return { hindrance: connection };
    try {
      return { value: await run(connection) };
    } catch (error) {
      const name = error instanceof Error || error instanceof DOMException ? error.name : '';
      // The browser closed the connection: the event may come later than the fault.
      if (name === 'InvalidStateError' && this.connection === connection) this.connection = null;
      if (this.connection !== connection && !isSecondTry) return this.use(run, true);
      return { hindrance: name === 'QuotaExceededError' ? 'no room' : 'refused' };
    }
  }

  private async connected(): Promise<Connection | Hindrance> {
    if (this.isOutdated) return 'outdated';
    return this.connection ?? (this.opening ??= this.open());
  }

  private open(): Promise<Connection | Hindrance> {
    return new Promise((settle) => {
      const failed = (error: unknown) => {
        this.opening = null;
        this.isOutdated = error instanceof DOMException && error.name === 'VersionError';
        settle(this.isOutdated ? 'outdated' : 'refused');
      };
      const opened = (connection: Connection) => {
        this.connection = connection;
        this.opening = null;
        settle(connection);
        this.dispatchEvent(new Event('opened'));
      };
      try {
        openDB<Shelves>('seatwright', version, {
          upgrade: (db, before) => {
            if (before < 1) db.createObjectStore('sheets', { keyPath: 'id' });
            if (before < 2) {
              db.createObjectStore('tools', { keyPath: 'id' });
              db.createObjectStore('aside');
            }
          },
          blocked: () => { settle('held up'); },
          blocking: (_, wanted) => { this.giveWay(wanted); },
          terminated: () => { this.connection = null; },
        }).then(opened, failed);
      } catch (error) {
        failed(error);
      }
    });
  }

  /** Another page wants the store for a newer version, or to be rid of it: writes under way are still ended by the browser. */
  private giveWay(wanted: number | null): void {
    this.connection?.close();
    this.connection = null;
    this.isOutdated = wanted !== null;
  }
}
