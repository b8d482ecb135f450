import { isObject, listAt, type Json, type JsonObject } from '../document/raw-document.js';
import type { OwnTools } from '../keeping/own-tools.js';
import { words } from '../words/index.js';

/** The tools of the job with those of the person at this device that are not there yet, and what to say of it; null where nothing changes. */
export async function withOwnTools(file: JsonObject, own: OwnTools): Promise<{ readonly tools: readonly Json[] | null; readonly news: string }> {
  const [kept, { toolsForNewJob }] = await Promise.all([own.list(), import('./tools-for-new-job.js')]);
  if ('hindrance' in kept) return { tools: null, news: words.start.keptUnread };
  const here = listAt(file, ['toolsAtHand']);
  const known = new Set(here.map((tool) => JSON.stringify(tool)));
  const fresh = toolsForNewJob(kept.value).filter((tool) => !known.has(JSON.stringify(tool)));
  return { tools: fresh.length === 0 ? null : [...here, ...fresh], news: words.tools.tookOwn.replace('{count}', String(fresh.length)) };
}

/** Notes the tools of the job as those of the person at this device; what to say of it. */
export async function noteAsOwn(file: JsonObject, own: OwnTools): Promise<string> {
  const tools = listAt(file, ['toolsAtHand']).filter(isObject);
  const taken = await own.takeIn(tools);
  return 'hindrance' in taken ? words.backup.refused : words.tools.madeOwn.replace('{count}', String(taken.value)).replace('{same}', String(tools.length - taken.value));
}
