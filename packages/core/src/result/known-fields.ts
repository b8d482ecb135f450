import type * as z from 'zod/mini';

interface Inside {
  readonly type: string;
  readonly shape?: Readonly<Record<string, z.core.$ZodType>>;
  readonly element?: z.core.$ZodType;
  readonly innerType?: z.core.$ZodType;
}

/** Names of the fields at a path of a schema; none where several forms are possible there. */
export function knownFields(schema: z.core.$ZodType, path: readonly PropertyKey[]): readonly string[] {
  const { shape, element, innerType } = schema._zod.def as unknown as Inside;
  if (innerType !== undefined) return knownFields(innerType, path);
  const [key, ...rest] = path;
  if (key === undefined) return Object.keys(shape ?? {});
  const inner = element ?? (shape !== undefined && typeof key === 'string' && Object.hasOwn(shape, key) ? shape[key] : undefined);
  return inner === undefined ? [] : knownFields(inner, rest);
}

/** Of the known names those that hold the asked one, or are held by it; all of them where none does. */
export function likelyFields(asked: string, known: readonly string[]): readonly string[] {
  const plain = (name: string) => name.toLowerCase().replace(/(?:mm|um|mpa|rpm|c|n|in|hours)$/u, '');
  const wanted = plain(asked);
  const near = wanted.length < 3 ? [] : known.filter((name) => plain(name).includes(wanted) || (plain(name).length > 2 && wanted.includes(plain(name))));
  return near.length > 0 ? near : known;
}
