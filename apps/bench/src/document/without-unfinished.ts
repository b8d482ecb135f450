import { isObject, pathOf, valueAt, type Json, type Path } from './raw-document.js';

/** Entries of lists that count for nothing until they have these: readings without an instrument, a tool without a size. */
const needsOfItems: Readonly<Record<string, readonly string[]>> = {
  readings: ['instrument'],
  outsideReadings: ['instrument'],
  shaftReadings: ['instrument'],
  housingReadings: ['instrument'],
  obstacles: ['kind', 'diameterMm', 'fromMm'],
  toolsAtHand: ['name', 'kind', 'outsideMm'],
};

/** Whether an entry of a list has all that it needs to count. */
export function isFinished(list: string, entry: Json): boolean {
  if (!isObject(entry) || !hasAll(entry, needsOfItems[list] ?? [])) return false;
  return list !== 'toolsAtHand' || entry['kind'] === 'turned' || entry['wallMm'] !== undefined || entry['insideMm'] !== undefined;
}

/** The file without what somebody has only begun to enter. The file itself keeps it. */
export function withoutUnfinished(value: Json): Json {
  if (Array.isArray(value)) return (value as readonly Json[]).map(withoutUnfinished);
  if (!isObject(value)) return value;
  return Object.fromEntries(
    Object.entries(value).flatMap(([key, item]): [string, Json][] => {
      if (isObject(item) && !isObjectFinished(key, item)) return [];
      if (!Array.isArray(item) || needsOfItems[key] === undefined) return [[key, withoutUnfinished(item)]];
      const finished = (item as readonly Json[]).filter((entry) => isFinished(key, entry));
      return finished.length === 0 ? [] : [[key, finished.map(withoutUnfinished)]];
    }),
  );
}

/** Where a path of `withoutUnfinished(document)` leads in the document itself: entries that were left out count again. */
export function pathInFull(document: Json, path: string): string {
  const full: (string | number)[] = [];
  for (const key of pathOf(path)) {
    const list = full.at(-1);
    const isThinned = typeof key === 'number' && typeof list === 'string' && needsOfItems[list] !== undefined;
    full.push(isThinned ? placeOfFinished(list, valueAt(document, full), key) : key);
  }
  return textOf(full);
}

/** The place in the whole list of the finished entry of that number. */
function placeOfFinished(list: string, entries: Json | undefined, number: number): number {
  const finished = (Array.isArray(entries) ? (entries as readonly Json[]) : []).flatMap((entry, i) => (isFinished(list, entry) ? [i] : []));
  return finished[number] ?? number;
}

function textOf(path: Path): string {
  return path.map((key, i) => (typeof key === 'number' ? `[${key}]` : i === 0 ? key : `.${key}`)).join('');
}

/** A chamfer needs its length or its kind; a seat at a depth needs the depth. */
function isObjectFinished(key: string, item: Readonly<Record<string, Json>>): boolean {
  if (key === 'leadIn') return item['lengthMm'] !== undefined || item['kind'] !== undefined;
  if (key === 'seat') return item['kind'] !== 'depth' || item['depthMm'] !== undefined;
  return true;
}

function hasAll(entry: Readonly<Record<string, Json>>, keys: readonly string[]): boolean {
  return keys.every((key) => entry[key] !== undefined && entry[key] !== '');
}
