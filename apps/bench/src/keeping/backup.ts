import { isObject, type Json, type JsonObject } from '../document/raw-document.js';
import { backupFormat } from '../sharing/marks.js';
import { openWorkshop } from '../sheet/open-workshop.js';
import { words } from '../words/index.js';
import type { KeptSheet, SheetToTake } from './kept-sheets.js';
import type { OwnTool } from './own-tools.js';

/** 1 held the sheets alone. */
const version = 2;
/** [characters] Far above any workshop's sheets; a larger file is none of ours. */
const largestBackup = 200 * 1024 * 1024;

type ToolToTake = Omit<OwnTool, 'revision'>;

/** What a backup holds. */
export interface BackupContents {
  readonly madeOn: string;
  readonly sheets: readonly SheetToTake[];
  readonly tools: readonly ToolToTake[];
}

/** All that a device keeps as one text, with a checksum over it. */
export async function backupOf(sheets: readonly KeptSheet[], tools: readonly OwnTool[], madeOn: string): Promise<string> {
  const kept: JsonObject = {
    sheets: sheets.map(({ id, title, copyNumber, file, changedAt }): Json => ({ id, title, ...(copyNumber === undefined ? {} : { copyNumber }), changedAt, file })),
    tools: tools.map(({ id, tool, addedAt }): Json => ({ id, addedAt, tool })),
  };
  return `${JSON.stringify({ format: backupFormat, version, madeOn, checksum: await checksumOf(kept), ...kept })}\n`;
}

/** What is in a backup, or why it cannot be trusted. Everything is checked before anything is written. */
export async function readBackup(text: string): Promise<BackupContents | { readonly fault: string }> {
  if (text.length > largestBackup) return { fault: words.backup.tooLarge };
  let raw: Json;
  try {
    raw = JSON.parse(text.replace(/^\uFEFF/u, '')) as Json;
  } catch {
    return { fault: words.backup.cut };
  }
  if (!isObject(raw) || raw['format'] !== backupFormat) return { fault: words.backup.foreign };
  const { version: of, checksum, madeOn, sheets, tools = [] } = raw;
  if (typeof of === 'number' && of > version) return { fault: words.backup.newer };
  if ((of !== 1 && of !== version) || !Array.isArray(sheets) || !Array.isArray(tools)) return { fault: words.backup.foreign };
  if (checksum !== (await checksumOf(of === 1 ? (sheets as Json) : { sheets: sheets as Json, tools: tools as Json }))) return { fault: words.backup.changed };
  const readSheets = (sheets as readonly Json[]).map((sheet) => (isObject(sheet) ? sheetOf(sheet) : null));
  const readTools = (tools as readonly Json[]).map((tool) => (isObject(tool) ? toolOf(tool) : null));
  if (!readSheets.every((sheet) => sheet !== null) || !readTools.every((tool) => tool !== null)) return { fault: words.backup.foreign };
  return { madeOn: typeof madeOn === 'string' ? madeOn : '', sheets: readSheets, tools: readTools };
}

function sheetOf({ id, title, copyNumber, changedAt, file }: JsonObject): SheetToTake | null {
  if (typeof id !== 'string' || id === '' || typeof title !== 'string' || typeof changedAt !== 'number' || !Number.isFinite(changedAt) || !isObject(file)) return null;
  if (copyNumber !== undefined && (typeof copyNumber !== 'number' || !Number.isInteger(copyNumber) || copyNumber < 2)) return null;
  return 'file' in openWorkshop(JSON.stringify(file)) ? { id, title, ...(copyNumber === undefined ? {} : { copyNumber }), changedAt, file } : null;
}

function toolOf({ id, addedAt, tool }: JsonObject): ToolToTake | null {
  return typeof id === 'string' && id !== '' && typeof addedAt === 'number' && Number.isFinite(addedAt) && isObject(tool) ? { id, addedAt, tool } : null;
}

async function checksumOf(kept: Json): Promise<string> {
  const digest = await crypto.subtle.digest('SHA-256', new TextEncoder().encode(JSON.stringify(kept)));
  return `sha256-${[...new Uint8Array(digest)].map((byte) => byte.toString(16).padStart(2, '0')).join('')}`;
}
