import { readFileSync } from 'node:fs';
import { expect } from 'vitest';

/** A cell that differs from the rule it is compared with. */
export interface Difference {
  readonly table: string;
  /** The row by its key, such as `over 3 up to 6`. */
  readonly row: string;
  readonly column: string;
  readonly printed: number | string | null;
  readonly byRule: number | string | null;
}

const page = readFileSync(new URL('../../../reference/misprints.md', import.meta.url), 'utf8');

/** Rows `| law | table | row | column | printed | by the rule | why it stays |` of the page on cells kept against a rule. */
const listed = page
  .split('\n')
  .filter((line) => /^\| [a-z]/.test(line) && !line.startsWith('| law '))
  .map((line) => line.split('|').slice(1, -1).map((cell) => cell.trim()));

/**
 * The cells that break a law are those that `reference/misprints.md` lists for it, no more and no fewer:
 * a new one is an error in the table, and one that no longer breaks the law must leave the list.
 */
export function expectOnlyListed(law: string, differences: readonly Difference[]): void {
  const found = differences.map(({ table, row, column, printed, byRule }) => [law, table, row, column, String(printed ?? 'blank'), String(byRule ?? 'blank')].join(' | '));
  const expected = listed.filter(([name]) => name === law).map((cells) => cells.slice(0, 6).join(' | '));
  expect(found.toSorted()).toEqual(expected.toSorted());
}

/** `over 3 up to 6` */
export function rangeText(over: number | null | undefined, upTo: number | null | undefined): string {
  return `over ${String(over)} up to ${String(upTo)}`;
}
