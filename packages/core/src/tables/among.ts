/** As `reference/generate.mjs` writes them: the place of a value among the different ones of its column. */
const letters = 'abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ';

/**
 * A column of a table from the few values in it: `among(['steel', 'copper'], 'aab')` is steel, steel, copper.
 * Where there are more values than letters, two letters tell a place.
 */
export function among<const T>(values: readonly T[], places: string): readonly T[] {
  const each = values.length > letters.length ? /../gu : /./gu;
  return Array.from(places.matchAll(each), ([place]) => values[[...place].reduce((sum, letter) => sum * letters.length + letters.indexOf(letter), 0)] as T);
}
