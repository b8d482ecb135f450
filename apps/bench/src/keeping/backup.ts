import { isObject, type Json, type JsonObject } from '../document/raw-document.js';
import { backupFormat } from '../sharing/marks.js';
import { openWorkshop } from '../sheet/open-workshop.js';
import { words } from '../words.js';
import type { KeptSheet } from './kept-sheets.js';

const version = 1;
/** [characters] Far above any workshop's sheets; a larger file is none of ours. */
const largestBackup = 200 * 1024 * 1024;

/** All sheets that a device keeps as one text, with a checksum over them. */
export async function backupOf(sheets: readonly KeptSheet[], madeOn: string): Promise<string> {
  const kept: Json = sheets.map(({ id, title, file, changedAt }) => ({ id, title, changedAt, file }));
  return `${JSON.stringify({ format: backupFormat, version, madeOn, checksum: await checksumOf(kept), sheets: kept })}\n`;
}

export type BackupSheet = Pick<KeptSheet, 'id' | 'title' | 'file' | 'changedAt'>;

/** The sheets of a backup, or why it cannot be trusted. Everything is checked before anything is written. */
export async function sheetsOf(text: string): Promise<{ readonly sheets: readonly BackupSheet[] } | { readonly fault: string }> {
  if (text.length > largestBackup) return { fault: words.backup.tooLarge };
  let raw: Json;
  try {
    raw = JSON.parse(text.replace(/^\uFEFF/u, '')) as Json;
  } catch {
    return { fault: words.backup.cut };
  }
  if (!isObject(raw) || raw['format'] !== backupFormat) return { fault: words.backup.foreign };
  const { version: of, checksum, sheets } = raw;
  if (typeof of === 'number' && of > version) return { fault: words.backup.newer };
  if (of !== version || !Array.isArray(sheets)) return { fault: words.backup.foreign };
  if (checksum !== (await checksumOf(sheets as Json))) return { fault: words.backup.changed };
  const read: BackupSheet[] = [];
  for (const sheet of sheets as readonly Json[]) {
    const one = isObject(sheet) ? sheetOf(sheet) : null;
    if (one === null) return { fault: words.backup.foreign };
    read.push(one);
  }
  return { sheets: read };
}

function sheetOf({ id, title, changedAt, file }: JsonObject): BackupSheet | null {
  if (typeof id !== 'string' || id === '' || typeof title !== 'string' || typeof changedAt !== 'number' || !Number.isFinite(changedAt) || !isObject(file)) return null;
  return 'file' in openWorkshop(JSON.stringify(file)) ? { id, title, changedAt, file } : null;
}

async function checksumOf(sheets: Json): Promise<string> {
  const digest = await crypto.subtle.digest('SHA-256', new TextEncoder().encode(JSON.stringify(sheets)));
  return `sha256-${[...new Uint8Array(digest)].map((byte) => byte.toString(16).padStart(2, '0')).join('')}`;
}
