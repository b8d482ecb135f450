import * as z from 'zod/mini';
import { CalculationError, fromSchemaIssues, invalidInput, pathText } from '../result/index.js';
import { workshopFileField, type WorkshopFile } from './workshop-file-field.js';

export interface ReadWorkshopFile {
  readonly workshop: WorkshopFile;
  /** Paths of fields that this version does not know; they stay in the file untouched. */
  readonly unknownFields: readonly string[];
}

/** Version that this library writes and reads. */
export const workshopFileVersion = 1;

/**
 * Reads a workshop file from its text.
 * Unknown fields are listed, not refused; files of a newer version are refused.
 * @throws CalculationError invalid-input, with the path of the field (for malformed JSON: line and column)
 * @example readWorkshopFile('{"format":"seatwright","version":1,"machines":[{"name":"Winch","positions":[{"name":"drum","parts":[{"kind":"bearing","designation":"6203"}]}]}]}').workshop.machines[0].name // 'Winch'
 */
export function readWorkshopFile(text: string): ReadWorkshopFile {
  return readWorkshop(parsedJson(text));
}

/**
 * The same from a value that is already parsed. The value itself is not changed.
 * @example readWorkshop({ format: 'seatwright', version: 1, colour: 'blue', machines: [{ name: 'Winch', positions: [{ name: 'drum', parts: [{ kind: 'bearing', designation: '6203' }] }] }] }).unknownFields // colour
 */
export function readWorkshop(raw: unknown): ReadWorkshopFile {
  if (typeof raw !== 'object' || raw === null || Array.isArray(raw)) throw invalidInput('', raw, 'a workshop file: a JSON object with "format": "seatwright"');
  const { format, version } = raw as { readonly format?: unknown; readonly version?: unknown };
  if (format !== 'seatwright') throw invalidInput('format', format, '"seatwright"', 'this is not a workshop file; expected "format": "seatwright"');
  if (typeof version === 'number' && version > workshopFileVersion) {
    throw invalidInput('version', version, `up to ${workshopFileVersion}`, `the file was written by a newer version; this one reads versions up to ${workshopFileVersion}`);
  }
  const unknownFields: string[] = [];
  let candidate: unknown = raw;
  for (let round = 0; round < 20; round += 1) {
    const parsed = z.safeParse(workshopFileField, candidate);
    if (parsed.success) return { workshop: parsed.data, unknownFields };
    const unknown = unknownKeysOf(parsed.error.issues);
    if (unknown.length === 0) throw fromSchemaIssues(parsed.error.issues, candidate);
    unknownFields.push(...unknown.map((path) => pathText(path)));
    candidate = withoutPaths(candidate, unknown);
  }
  throw invalidInput('', 'too many unknown fields', 'a workshop file of version 1');
}

type Path = readonly PropertyKey[];

function unknownKeysOf(issues: readonly z.core.$ZodIssue[]): readonly Path[] {
  return issues.flatMap((issue) => (issue.code === 'unrecognized_keys' ? issue.keys.map((key) => [...issue.path, key]) : []));
}

/** A copy without the given paths; the original stays as it is. */
function withoutPaths(value: unknown, paths: readonly Path[]): unknown {
  if (paths.length === 0) return value;
  if (Array.isArray(value)) return value.map((item, i) => withoutPaths(item, tailsFor(paths, i)));
  if (typeof value !== 'object' || value === null) return value;
  const dropped = new Set(paths.filter((path) => path.length === 1).map((path) => path[0]));
  const kept = Object.entries(value).filter(([key]) => !dropped.has(key));
  return Object.fromEntries(kept.map(([key, item]) => [key, withoutPaths(item, tailsFor(paths, key))]));
}

function tailsFor(paths: readonly Path[], key: PropertyKey): readonly Path[] {
  return paths.filter((path) => path.length > 1 && path[0] === key).map((path) => path.slice(1));
}

function parsedJson(text: string): unknown {
  const clean = text.startsWith('﻿') ? text.slice(1) : text;
  try {
    return JSON.parse(clean) as unknown;
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    throw new CalculationError('invalid-input', { message: `not JSON: ${placed(clean, reason)}`, received: clean.slice(0, 40), allowed: 'a workshop file in JSON' });
  }
}

/** Line and column of the fault, where the engine tells the position. */
function placed(text: string, reason: string): string {
  const at = /position (\d+)/.exec(reason);
  if (at === null) return text.trim() === '' ? 'the file is empty' : reason.replace(/\s+/g, ' ');
  const before = text.slice(0, Number(at[1]));
  const line = before.split('\n').length;
  const column = before.length - before.lastIndexOf('\n');
  return `${reason.replace(/ \(line.*$/, '')} (line ${line}, column ${column})`;
}
