import type { JsonObject } from '../document/raw-document.js';
import { openWorkshop } from '../sheet/open-workshop.js';
import { words } from '../words/index.js';
import { jobMark } from './marks.js';

/** A job in the fragment of a link: `#job=1.` and the workshop file, compressed, in the letters that links may hold. The fragment is never sent to a server. */
const version = '1';

/** [characters] Mail and message programs cut or break longer links; such a job goes as a file. */
export const longestLink = 8000;
/** [bytes] No workshop file with one position is larger; a link that unpacks to more is none of ours. */
const largestFile = 1024 * 1024;

/** A link that carries the job, or null where it would be longer than links may be. */
export async function linkOf(address: string, file: JsonObject): Promise<string | null> {
  const packed = await throughStream(new TextEncoder().encode(JSON.stringify(file)), new CompressionStream('gzip'), Infinity);
  const link = `${address.replace(/#.*$/su, '')}${jobMark}${version}.${lettersOf(packed)}`;
  return link.length > longestLink ? null : link;
}

/** The job in a fragment, or why there is none. Whatever came is checked whole before anything is done with it. */
export async function jobIn(fragment: string): Promise<{ readonly file: JsonObject } | { readonly fault: string }> {
  const [which = '', data = '', ...rest] = fragment.slice(jobMark.length).split('.');
  if (which !== version) return { fault: /^\d+$/u.test(which) ? words.share.newer : words.share.broken };
  if (rest.length > 0 || !/^[\w-]+$/u.test(data)) return { fault: words.share.broken };
  let text: string;
  try {
    // Gzip carries the length and a checksum: a link that was cut or changed does not unpack.
    text = new TextDecoder('utf-8', { fatal: true }).decode(await throughStream(bytesOf(data), new DecompressionStream('gzip'), largestFile));
  } catch (error) {
    return { fault: error instanceof RangeError ? words.share.tooLarge : words.share.broken };
  }
  return openWorkshop(text);
}

/** Bytes through a stream; a RangeError once more than `most` come out. */
async function throughStream(bytes: Uint8Array<ArrayBuffer>, stream: CompressionStream | DecompressionStream, most: number): Promise<Uint8Array> {
  const writer = stream.writable.getWriter();
  // A fault shows where it is read.
  writer.write(bytes).catch(() => undefined);
  writer.close().catch(() => undefined);
  const parts: Uint8Array[] = [];
  let length = 0;
  const reader = stream.readable.getReader();
  for (let next = await reader.read(); !next.done; next = await reader.read()) {
    parts.push(next.value);
    length += next.value.length;
    if (length > most) {
      await reader.cancel().catch(() => undefined);
      throw new RangeError('more than a job can be');
    }
  }
  const whole = new Uint8Array(length);
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

/** Base64 in letters that stand in a link as they are. */
function lettersOf(bytes: Uint8Array): string {
  const text = Array.from(bytes, (byte) => String.fromCharCode(byte)).join('');
  return btoa(text).replaceAll('+', '-').replaceAll('/', '_').replace(/=+$/u, '');
}

function bytesOf(letters: string): Uint8Array<ArrayBuffer> {
  const text = atob(letters.replaceAll('-', '+').replaceAll('_', '/'));
  return Uint8Array.from(text, (letter) => letter.charCodeAt(0));
}
