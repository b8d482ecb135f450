import { positionPath, sealPartsOf, type Place } from './places.js';
import { isObject, listAt, textAt, valueAt, withValue, type Json, type JsonObject, type Path } from './raw-document.js';

/** What a seal has of its own where several share a bore; with one seal it stands at the position. */
const ownOfSeal: readonly Path[] = [
  ['seat'], ['lipFacing'], ['fluidSide'], ['oldDepthMm'], ['clearBehindMm'],
  ['running', 'fluid'], ['running', 'fluidTemperatureC'], ['running', 'pressureMpa'], ['running', 'pressureLowMpa'], ['running', 'pressureHighMpa'],
];

/** Whether an entry of the position belongs to each seal by itself where several share a bore. */
export function isOwnOfSeal(path: Path): boolean {
  return ownOfSeal.some((own) => own.every((key, i) => path[i] === key));
}

/** A position after a part was added or taken away, and the seal to look at then. */
export interface ChangedParts {
  readonly file: JsonObject;
  readonly sealPart: number;
}

/**
 * One more seal in the same bore. It begins with the sizes and the rubber of the first; where the first sits deep, it ends flush before it.
 * What only one of them can have goes from the position to the first.
 * @param name what a seal without a name is called, with `{number}`
 */
export function withSeal(file: JsonObject, place: Place, name: string): ChangedParts {
  const at = positionPath(place);
  const parts = listAt(file, [...at, 'parts']);
  const [first] = sealPartsOf(file, place);
  if (first === undefined) return { file: changed(file, [...at, 'parts'], [...parts, { kind: 'seal' }]), sealPart: parts.length };
  const named = (number: number) => name.replace('{number}', String(number));
  let next = file;
  if (sealPartsOf(file, place).length === 1) {
    for (const own of ownOfSeal) {
      const value = valueAt(next, [...at, ...own]);
      if (value === undefined) continue;
      if (valueAt(next, [...at, 'parts', first, ...own]) === undefined) next = changed(next, [...at, 'parts', first, ...own], value);
      next = changed(next, [...at, ...own], undefined);
    }
    if (textAt(next, [...at, 'parts', first, 'name']) === '') next = changed(next, [...at, 'parts', first, 'name'], named(1));
  }
  const model = valueAt(next, [...at, 'parts', first]);
  const alike = ['shaftMm', 'outsideMm', 'widthMm', 'construction', 'lipMaterial'].flatMap((key) => {
    const value = valueAt(model, [key]);
    return value === undefined ? [] : [[key, value] as const];
  });
  const sitsDeep = ['shoulder', 'depth'].includes(textAt(model, ['seat', 'kind']));
  const fresh: JsonObject = { kind: 'seal', name: named(sealPartsOf(file, place).length + 1), ...Object.fromEntries(alike), ...(sitsDeep ? { seat: { kind: 'flush' } } : {}) };
  return { file: changed(next, [...at, 'parts', parts.length], fresh), sealPart: parts.length };
}

/** Without that part; null where it is the only one. */
export function withoutPart(file: JsonObject, place: Place, part: number): ChangedParts | null {
  const path = [...positionPath(place), 'parts'];
  const parts = listAt(file, path).filter((_, i) => i !== part);
  if (parts.length === 0) return null;
  const next = changed(file, path, parts);
  return { file: next, sealPart: sealPartsOf(next, place)[0] ?? 0 };
}

/** The seal that was looked at, or the first where it is gone. */
export function sealStillThere(file: JsonObject, place: Place, sealPart: number): number {
  const seals = sealPartsOf(file, place);
  return seals.includes(sealPart) ? sealPart : (seals[0] ?? 0);
}

function changed(file: JsonObject, path: Path, value: Json | undefined): JsonObject {
  const next = withValue(file, path, value);
  return isObject(next) ? next : file;
}
