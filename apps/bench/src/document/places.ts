import { isObject, listAt, textAt, valueAt, type Json, type JsonObject, type Path } from './raw-document.js';

/** One position of one machine in a workshop file. */
export interface Place {
  readonly machine: number;
  readonly position: number;
}

export interface NamedPlace extends Place {
  readonly machineName: string;
  readonly positionName: string;
}

/** Every position of the file, as far as it can be made out. */
export function placesIn(document: JsonObject): readonly NamedPlace[] {
  return listAt(document, ['machines']).flatMap((machine, m) =>
    listAt(machine, ['positions']).flatMap((position, p) => (isObject(position) ? [{ machine: m, position: p, machineName: textAt(machine, ['name']), positionName: textAt(position, ['name']) }] : [])),
  );
}

/**
 * Where a position of one state of a file stands in another state of it, which somebody else made: at the same place if it is called the same
 * there, else where it is called so, else at the same place under another name. Undefined where it is gone.
 */
export function placeAfter(before: JsonObject, place: Place, after: JsonObject): Place | undefined {
  const known = placesIn(before).find((one) => placeKey(one) === placeKey(place));
  const places = placesIn(after);
  const named = places.filter(({ machineName, positionName }) => machineName === known?.machineName && positionName === known.positionName);
  const here = places.find((one) => placeKey(one) === placeKey(place));
  return named.find((one) => one === here) ?? named[0] ?? here;
}

/** The name of a position in a map of them. */
export function placeKey({ machine, position }: Place): string {
  return `${machine}.${position}`;
}

export function machinePath({ machine }: Place): Path {
  return ['machines', machine];
}

export function positionPath({ machine, position }: Place): Path {
  return ['machines', machine, 'positions', position];
}

/** The numbers of the parts that are seals. */
export function sealPartsOf(document: JsonObject, place: Place): readonly number[] {
  return partsOf(document, place, 'seal');
}

/** The numbers of the parts that are bearings. */
export function bearingPartsOf(document: JsonObject, place: Place): readonly number[] {
  return partsOf(document, place, 'bearing');
}

function partsOf(document: JsonObject, place: Place, kind: string): readonly number[] {
  return listAt(document, [...positionPath(place), 'parts']).flatMap((part, i) => (valueAt(part, ['kind']) === kind ? [i] : []));
}

/** The file with that position alone: what stands elsewhere in it cannot hold up this sheet. */
export function withPlaceAlone(document: JsonObject, place: Place): JsonObject {
  const machine = valueAt(document, machinePath(place));
  const position = valueAt(document, positionPath(place));
  return { ...document, machines: [{ ...(isObject(machine) ? machine : {}), positions: [position ?? {}] }] satisfies Json };
}

/** A new file with one position and nothing in it but the tools at hand. */
export function emptyWorkshop(machine: string, position: string, lengthUnit: 'mm' | 'in', toolsAtHand: readonly JsonObject[]): JsonObject {
  return { format: 'seatwright', version: 1, ...(lengthUnit === 'in' ? { lengthUnit } : {}), ...(toolsAtHand.length === 0 ? {} : { toolsAtHand }), machines: [{ name: machine, positions: [{ name: position, parts: [{ kind: 'seal' }] }] }] };
}
