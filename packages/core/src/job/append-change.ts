import * as z from 'zod/mini';
import { fromSchemaIssues, invalidInput, joinPath } from '../result/index.js';
import { findPosition } from './find-position.js';
import { readWorkshop } from './read-workshop-file.js';
import { changeField, type Change } from './workshop-file-field.js';

/** Where a change is written to. */
export interface ChangePlace {
  readonly machine?: string | undefined;
  readonly position?: string | undefined;
}

/**
 * A workshop file with one change more, at the end of the position's record. Nothing that stands there is touched: unknown fields stay,
 * earlier changes stay; the value given is not changed.
 * @param file a workshop file, parsed @param change what was renewed and measured, as the workshop file writes it
 * @throws CalculationError invalid-input: no workshop file, no such position, a change that is none, a day or an hour meter before the last
 * @example appendChange({ format: 'seatwright', version: 1, machines: [{ name: 'Bilge pump', hourMeterHours: 120, positions: [{ name: 'drive side', serviceIntervalHours: 100, parts: [{ kind: 'seal', shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' }] }] }] }, {}, { date: '2026-03-02', renewed: 'seal' }).machines[0].positions[0].changes.length // 1
 */
export function appendChange(file: unknown, place: ChangePlace, change: unknown): unknown {
  const { workshop } = readWorkshop(file);
  const { position, path } = findPosition(workshop, place);
  const parsed = z.safeParse(changeField, change);
  if (!parsed.success) throw fromSchemaIssues(parsed.error.issues, change).within('change');
  const last = lastOf(position.changes ?? []);
  if (last !== null && parsed.data.date < last.date) throw invalidInput('change.date', parsed.data.date, `${last.date} or later`, 'the record only grows: this day lies before its last change');
  const [now, before] = [parsed.data.hourMeterHours, lastMeter(position.changes ?? [])];
  if (now !== undefined && before !== null && now < before) throw invalidInput('change.hourMeterHours', now, `${before} or more`, 'the hour meter stood higher at an earlier change; after a new meter begin a new position');
  const [, m = '0', p = '0'] = /^machines\[(\d+)\]\.positions\[(\d+)\]$/u.exec(path) ?? [];
  return withChange(file, ['machines', Number(m), 'positions', Number(p), 'changes'], change);
}

function lastOf(changes: readonly Change[]): Change | null {
  return changes.reduce<Change | null>((latest, one) => (latest === null || one.date >= latest.date ? one : latest), null);
}

function lastMeter(changes: readonly Change[]): number | null {
  const meters = changes.flatMap(({ hourMeterHours }) => (hourMeterHours === undefined ? [] : [hourMeterHours]));
  return meters.length === 0 ? null : Math.max(...meters);
}

/** A copy along one path, with the change at the end of the list there; everything beside the path is shared. */
function withChange(value: unknown, path: readonly (string | number)[], change: unknown): unknown {
  const [key, ...rest] = path;
  if (key === undefined) return [...((value as readonly unknown[] | undefined) ?? []), change];
  if (Array.isArray(value)) return value.map((item: unknown, i) => (i === key ? withChange(item, rest, change) : item));
  if (typeof value !== 'object' || value === null) throw invalidInput(joinPath('', String(key)), value, 'an object');
  return { ...value, [key]: withChange((value as Readonly<Record<string, unknown>>)[String(key)], rest, change) };
}
