import Papa from 'papaparse';
import { shelfMatcher, type ShelfMatchOutput, type Situation } from '@seatwright/core/seal';

/** A list of seals as it was given: its header, and its rows with the line that each begins on. */
export interface SealList {
  readonly header: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** [characters] A longer list is one for the command line, which reads it as a stream. */
const longestList = 20_000_000;
/** Rows judged before the page gets its turn again, so that typing never waits. */
const rowsInOneGo = 400;

/** A list from pasted text or a file; null where it has no row. Cells may be parted by semicolon, tab or comma. */
export function readList(text: string): SealList | null | 'too long' {
  if (text.length > longestList) return 'too long';
  const { data } = Papa.parse<string[]>(text.replace(/^\uFEFF/u, '').trimEnd(), { delimitersToGuess: [';', '\t', ','], skipEmptyLines: false });
  const [header, ...rows] = data;
  return header === undefined || rows.length === 0 ? null : { header, rows };
}

/** The list judged for one place, in slices; null where `isOutdated` says meanwhile that nobody wants the answer. */
export async function rankList({ header, rows }: SealList, situation: Situation, unit: 'mm' | 'in', isOutdated: () => boolean): Promise<ShelfMatchOutput | null> {
  const matcher = shelfMatcher(situation, header, { unit, bestCount: 8 });
  for (let at = 0; at < rows.length; at += rowsInOneGo) {
    for (let i = at; i < Math.min(at + rowsInOneGo, rows.length); i += 1) {
      const cells = rows[i] ?? [];
      if (cells.some((cell) => cell.trim() !== '')) matcher.take(cells, i + 2);
    }
    await new Promise((done) => setTimeout(done, 0));
    if (isOutdated()) return null;
  }
  return matcher.result();
}
