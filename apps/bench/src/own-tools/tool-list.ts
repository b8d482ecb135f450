import { isObject, listAt, type Json, type JsonObject } from '../document/raw-document.js';
import { toolListFormat } from '../sharing/marks.js';
import { words } from '../words/index.js';

const version = 1;
/** A workshop file takes no more. */
const mostTools = 1000;

/** Tubes and sockets as a file of their own, as typed. */
export function toolListOf(tools: readonly JsonObject[], madeOn: string): string {
  return `${JSON.stringify({ format: toolListFormat, version, madeOn, tools }, null, 2)}\n`;
}

/** The tubes and sockets in a text: a list of them, or those of a workshop file; or why there are none. */
export function toolsIn(text: string): { readonly tools: readonly JsonObject[] } | { readonly fault: string } {
  let raw: Json;
  try {
    raw = JSON.parse(text.replace(/^\uFEFF/u, '')) as Json;
  } catch {
    return { fault: words.backup.cut };
  }
  if (!isObject(raw) || (raw['format'] !== toolListFormat && raw['format'] !== 'seatwright')) return { fault: words.tools.foreign };
  if (typeof raw['version'] === 'number' && raw['version'] > version) return { fault: words.tools.newer };
  const tools = listAt(raw, [raw['format'] === toolListFormat ? 'tools' : 'toolsAtHand']);
  if (tools.length > mostTools) return { fault: words.tools.tooMany };
  const read = tools.filter(isObject);
  if (read.length < tools.length) return { fault: words.tools.foreign };
  return read.length === 0 ? { fault: words.tools.none } : { tools: read };
}
