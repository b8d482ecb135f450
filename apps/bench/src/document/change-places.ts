import { machinePath, placesIn, positionPath, type Place } from './places.js';
import { isObject, listAt, valueAt, withValue, type Json, type JsonObject } from './raw-document.js';
import { shaftNameOf } from './outline.js';

/** A file after its machines or positions were changed, and the position to look at then. */
export interface ChangedPlaces {
  readonly file: JsonObject;
  readonly place: Place;
}

/** One more machine with one position, at the end. */
export function withMachine(file: JsonObject, machineName: string, positionName: string): ChangedPlaces {
  const machines = listAt(file, ['machines']);
  return { file: { ...file, machines: [...machines, { name: machineName, positions: [freshPosition(positionName, {})] }] }, place: { machine: machines.length, position: 0 } };
}

/** One more position beside another. On the same shaft it turns as fast and as long; of another shaft nothing is known. */
export function withPosition(file: JsonObject, beside: Place, name: string, otherShaft?: string): ChangedPlaces {
  const neighbour = valueAt(file, positionPath(beside));
  const positions = [...listAt(file, [...machinePath(beside), 'positions'])];
  const position = otherShaft === undefined ? beside.position + 1 : positions.length;
  positions.splice(position, 0, freshPosition(name, otherShaft === undefined ? ofTheShaft(neighbour) : { onShaft: otherShaft }));
  return { file: changed(file, beside.machine, positions), place: { machine: beside.machine, position } };
}

/** The first position of a machine that has none. */
export function withFirstPosition(file: JsonObject, machine: number, name: string): ChangedPlaces {
  return { file: changed(file, machine, [freshPosition(name, {})]), place: { machine, position: 0 } };
}

/** Without that position, and without its machine where it was the only one; null where nothing would be left. */
export function withoutPosition(file: JsonObject, gone: Place, open: Place): ChangedPlaces | null {
  const positions = listAt(file, [...machinePath(gone), 'positions']);
  if (positions.length <= 1) return withoutMachine(file, gone.machine, open);
  const left = positions.filter((_, i) => i !== gone.position);
  const isBefore = gone.machine === open.machine && (gone.position < open.position || open.position >= left.length);
  return { file: changed(file, gone.machine, left), place: isBefore ? { ...open, position: Math.max(0, open.position - 1) } : open };
}

/** Without that machine; null where it is the only one. */
export function withoutMachine(file: JsonObject, gone: number, open: Place): ChangedPlaces | null {
  const machines = listAt(file, ['machines']).filter((_, i) => i !== gone);
  const next = { ...file, machines };
  const [first] = placesIn(next);
  if (first === undefined) return null;
  if (gone === open.machine) {
    const { machine, position } = placesIn(next).find((place) => place.machine === Math.min(gone, machines.length - 1)) ?? first;
    return { file: next, place: { machine, position } };
  }
  return { file: next, place: gone < open.machine ? { ...open, machine: open.machine - 1 } : open };
}

/** Two positions of a machine in each other's place; what is open stays open. */
export function withPositionsSwapped(file: JsonObject, one: Place, other: Place, open: Place): ChangedPlaces {
  const positions = [...listAt(file, [...machinePath(one), 'positions'])];
  const [first, second] = [positions[one.position], positions[other.position]];
  if (one.machine !== other.machine || first === undefined || second === undefined) return { file, place: open };
  [positions[one.position], positions[other.position]] = [second, first];
  const isOpen = (place: Place) => open.machine === place.machine && open.position === place.position;
  return { file: changed(file, one.machine, positions), place: isOpen(one) ? other : isOpen(other) ? one : open };
}

/** The shaft of that name under another one, for every position on it. */
export function withShaftRenamed(file: JsonObject, machine: number, from: string, to: string): JsonObject {
  return changed(file, machine, listAt(file, ['machines', machine, 'positions']).map((position) => (isObject(position) && shaftNameOf(position) === from ? (withValue(position, ['onShaft'], to === '' ? undefined : to) ?? position) : position)));
}

function changed(file: JsonObject, machine: number, positions: readonly Json[]): JsonObject {
  const next = withValue(file, ['machines', machine, 'positions'], positions);
  return isObject(next) ? next : file;
}

function freshPosition(name: string, known: JsonObject): JsonObject {
  return { name, parts: [{ kind: 'seal' }], ...known };
}

/** What every position on one shaft has in common. */
function ofTheShaft(position: Json | undefined): JsonObject {
  const onShaft = shaftNameOf(position);
  const running = Object.fromEntries(['speedRpm', 'hoursPerYear'].flatMap((key): [string, Json][] => {
    const value = valueAt(position, ['running', key]);
    return value === undefined ? [] : [[key, value]];
  }));
  return { ...(onShaft === '' ? {} : { onShaft }), ...(Object.keys(running).length === 0 ? {} : { running }) };
}
