/** A column of a table from runs of the same value: `[['steel', 2], ['copper', 1]]` is steel, steel, copper. */
export function runs<const T>(list: readonly (readonly [value: T, count: number])[]): readonly T[] {
  return list.flatMap(([value, count]) => Array.from({ length: count }, () => value));
}
