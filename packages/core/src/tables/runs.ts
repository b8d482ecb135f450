/** A column of a table from runs of the same value: `[['steel', 2], 'copper']` is steel, steel, copper. */
export function runs<const T extends string | number | null>(list: readonly (T | readonly [value: T, count: number])[]): readonly T[] {
  return list.flatMap((run) => (typeof run === 'object' && run !== null ? Array.from({ length: run[1] }, () => run[0]) : [run]));
}
