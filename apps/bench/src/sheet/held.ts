/**
 * Holds what was made last under each name, so that what is equal stays the same object.
 * Elements draw anew only what is another object: a key that changes one number redraws the places that show it.
 */
export class Held {
  private readonly last = new Map<string, unknown>();

  same<T>(name: string, value: T): T {
    const held = shareEqual(this.last.get(name), value) as T;
    this.last.set(name, held);
    return held;
  }
}

/**
 * `next`, with every part that equals its part of `last` replaced by that one. Both are plain data; neither is changed.
 * One object that stands at two places of `next` is one object at both afterwards.
 */
export function shareEqual(last: unknown, next: unknown, seen = new Map<object, unknown>()): unknown {
  if (Object.is(last, next)) return last;
  if (typeof next !== 'object' || next === null) return next;
  const known = seen.get(next);
  if (known !== undefined) return known;
  const shared = Array.isArray(next) ? sharedList(Array.isArray(last) ? last : [], next, seen) : sharedObject(isPlain(last) ? last : {}, next as PlainObject, seen);
  const isKept = Array.isArray(last) === Array.isArray(next) && isEqualBelow(last, shared);
  seen.set(next, isKept ? last : shared);
  return isKept ? last : shared;
}

type PlainObject = Readonly<Record<string, unknown>>;

function isPlain(value: unknown): value is PlainObject {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function sharedList(last: readonly unknown[], next: readonly unknown[], seen: Map<object, unknown>): readonly unknown[] {
  return next.map((item, i) => shareEqual(last[i], item, seen));
}

function sharedObject(last: PlainObject, next: PlainObject, seen: Map<object, unknown>): PlainObject {
  return Object.fromEntries(Object.keys(next).map((key) => [key, shareEqual(Object.hasOwn(last, key) ? last[key] : undefined, next[key], seen)]));
}

/** Whether two objects have the same keys with the very same values. */
function isEqualBelow(last: unknown, shared: object): boolean {
  if (typeof last !== 'object' || last === null) return false;
  const keys = Object.keys(shared);
  return keys.length === Object.keys(last).length && keys.every((key) => Object.hasOwn(last, key) && Object.is((last as PlainObject)[key], (shared as PlainObject)[key]));
}
