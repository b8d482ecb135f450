import type { JsonObject } from '../document/raw-document.js';
import type { DeviceStore, Outcome } from './device-store.js';
import { newId } from './new-id.js';

/** A tube or socket of the person at this device, as it was typed. */
export interface OwnTool {
  readonly id: string;
  readonly tool: JsonObject;
  /** Counts the writes: whoever writes must have seen the last one. */
  readonly revision: number;
  readonly addedAt: number;
}

/** The tubes and sockets of the person at this device. A new job begins with them; a job from elsewhere keeps its own. */
export class OwnTools {
  private readonly store: DeviceStore;

  constructor(store: DeviceStore) {
    this.store = store;
  }

  /** In the order in which they were added. */
  list(): Promise<Outcome<readonly OwnTool[]>> {
    return this.store.use(async (shelves) => (await shelves.getAll('tools')).sort((a, b) => a.addedAt - b.addedAt || (a.id < b.id ? -1 : 1)));
  }

  /** Tells when another page of this device wrote something; what comes back ends that. */
  follow(changed: () => void): () => void {
    this.store.addEventListener('changed elsewhere', changed);
    return () => { this.store.removeEventListener('changed elsewhere', changed); };
  }

  /** Writes one tool. Where another page wrote it since, this one becomes a tool of its own: neither is overwritten. */
  write(own: OwnTool): Promise<Outcome<OwnTool>> {
    return this.store.change(async (shelves) => {
      const transaction = shelves.transaction('tools', 'readwrite', { durability: 'strict' });
      const before = await transaction.store.get(own.id);
      const isSeen = before === undefined || before.revision === own.revision;
      const next: OwnTool = isSeen ? { ...own, revision: own.revision + 1 } : { ...own, id: newId(), revision: 1, addedAt: Date.now() };
      await Promise.all([transaction.store.put(next), transaction.done]);
      return next;
    });
  }

  remove(id: string): Promise<Outcome<void>> {
    return this.store.change((shelves) => shelves.delete('tools', id));
  }

  /** Takes tools in beside those that are here, all or none; how many were new. */
  takeIn(tools: readonly JsonObject[]): Promise<Outcome<number>> {
    return this.store.change(async (shelves) => {
      const transaction = shelves.transaction('tools', 'readwrite', { durability: 'strict' });
      const now = Date.now();
      const fresh = besideOwn(tools.map((tool, i) => ({ id: newId(), tool, addedAt: now + i })), await transaction.store.getAll());
      await Promise.all([...fresh.map((own) => transaction.store.put(own)), transaction.done]);
      return fresh.length;
    });
  }
}

/** What has to be written so that tools stand beside those that are here: the same tool once. */
export function besideOwn(tools: readonly Omit<OwnTool, 'revision'>[], here: readonly OwnTool[]): readonly OwnTool[] {
  const known = new Set(here.map(({ tool }) => markOf(tool)));
  return tools.flatMap((own): readonly OwnTool[] => {
    const mark = markOf(own.tool);
    if (known.has(mark)) return [];
    known.add(mark);
    return [{ ...own, id: here.some(({ id }) => id === own.id) ? newId() : own.id, revision: 1 }];
  });
}

/** Two tools are the same where the same was typed, in whatever order. */
function markOf(tool: JsonObject): string {
  return JSON.stringify(Object.entries(tool).sort(([a], [b]) => (a < b ? -1 : 1)));
}
