import { readFileSync } from 'node:fs';

/** One row of a table as it was typed; null where the page gives nothing. */
export type Row = Readonly<Record<string, number | null>>;

/** A table as typed from its page, read here by its own few lines: nothing between the page and the test. */
export function printedTable(name: string): readonly Row[] {
  const [head = '', ...lines] = readFileSync(new URL(`../../../reference/${name}.csv`, import.meta.url), 'utf8').trim().split('\n');
  const names = head.split(',');
  return lines.map((line) => {
    const cells = line.split(',');
    return Object.fromEntries(names.map((column, i) => [column, cells[i] === '' || cells[i] === undefined ? null : Number(cells[i])]));
  });
}

/** A cell that must be there. */
export function cellOf(row: Row | undefined, column: string): number {
  const value = row?.[column];
  if (value === null || value === undefined) throw new Error(`nothing in ${column}`);
  return value;
}
