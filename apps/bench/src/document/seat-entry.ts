import { valueAt, type Json, type JsonObject, type Path } from './raw-document.js';

/** A seat is one thing: its kind decides whether it has a depth. */
export function seatPath(path: Path): Path {
  return path.at(-2) === 'seat' && path.at(-1) === 'kind' ? path.slice(0, -1) : path;
}

/** The seat with the kind that was chosen, and its depth where the kind has one. */
export function seatValue(file: JsonObject, path: Path, value: Json | undefined): Json | undefined {
  if (path.at(-2) !== 'seat' || path.at(-1) !== 'kind' || value === undefined) return value;
  const depthMm = valueAt(file, [...path.slice(0, -1), 'depthMm']);
  return value === 'depth' && depthMm !== undefined ? { kind: value, depthMm } : { kind: value };
}
