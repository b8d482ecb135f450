/** Any JSON value, as a workshop file holds it. What people typed stays in it as they typed it. */
export type Json = null | boolean | number | string | readonly Json[] | { readonly [key: string]: Json };
export type JsonObject = { readonly [key: string]: Json };

export type Path = readonly (string | number)[];

/** `bore.readings[2]` as `['bore', 'readings', 2]`. */
export function pathOf(text: string): Path {
  return text.match(/[^.[\]]+/gu)?.map((part) => (/^\d+$/u.test(part) ? Number(part) : part)) ?? [];
}

/** The value there; undefined where nothing is. */
export function valueAt(document: Json | undefined, path: Path): Json | undefined {
  let value: Json | undefined = document;
  for (const key of path) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, key)) return undefined;
    value = (value as Readonly<Record<string | number, Json>>)[key];
  }
  return value;
}

/** A copy with the value there. `undefined` takes the entry away, and with it every object and list that it leaves empty. */
export function withValue(document: Json | undefined, path: Path, value: Json | undefined): Json | undefined {
  const [key, ...rest] = path;
  if (key === undefined) return value;
  if (typeof key === 'number') {
    const list = [...(Array.isArray(document) ? (document as readonly Json[]) : [])];
    const next = withValue(list[key], rest, value);
    if (next === undefined) list.splice(key, 1);
    else list[key] = next;
    return list.length === 0 ? undefined : list;
  }
  const object = isObject(document) ? document : {};
  const next = withValue(object[key], rest, value);
  if (next !== undefined) return { ...object, [key]: next };
  const others = Object.entries(object).filter(([name]) => name !== key);
  return others.length === 0 ? undefined : Object.fromEntries(others);
}

export function isObject(value: Json | undefined): value is JsonObject {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

export function listAt(document: Json | undefined, path: Path): readonly Json[] {
  const value = valueAt(document, path);
  return Array.isArray(value) ? (value as readonly Json[]) : [];
}

/** Text of an entry as a field shows it. */
export function textAt(document: Json | undefined, path: Path): string {
  const value = valueAt(document, path);
  return typeof value === 'string' || typeof value === 'number' ? String(value) : '';
}
