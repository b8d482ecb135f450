/** As `reference/generate.mjs` writes them: the place of a value among the different ones of its column. */
const letters = 'abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ';

/** A column of a table from the few values in it: `among(['steel', 'copper'], 'aab')` is steel, steel, copper. */
export function among<const T>(values: readonly T[], places: string): readonly T[] {
  return Array.from(places, (letter) => values[letters.indexOf(letter)] as T);
}
