import type { Held } from './held.js';

/** What every generated table has: its columns side by side, and marks for the cells that are held unlike the rest. */
export interface GeneratedTable {
  readonly id: string;
  readonly source: string;
  readonly clause: string;
  readonly held: Held;
  readonly rowCount: number;
  readonly columns: Readonly<Record<string, readonly (number | string | null)[]>>;
  readonly marks: Readonly<Record<string, readonly Held[] | undefined>>;
}

/** One row of a table: the element of each column. */
export type RowOf<T extends GeneratedTable> = {
  readonly [Column in keyof T['columns']]: T['columns'][Column] extends readonly (infer Cell)[] ? Cell : never;
};

/**
 * The row at a zero-based place. Throws a RangeError outside the table.
 * @example rowAt(iso15DeepGroove, 0).designation // '61800'
 */
export function rowAt<T extends GeneratedTable>(table: T, at: number): RowOf<T> {
  requireRow(table, at);
  const row: Record<string, number | string | null> = {};
  for (const [column, cells] of Object.entries(table.columns)) row[column] = cells[at] ?? null;
  return row as RowOf<T>;
}

/**
 * All rows, in the order of the page.
 * @example rowsOf(iso15DeepGroove).length // 159
 */
export function rowsOf<T extends GeneratedTable>(table: T): readonly RowOf<T>[] {
  return Array.from({ length: table.rowCount }, (_, at) => rowAt(table, at));
}

/**
 * How one cell is held: by its own mark, else by the `held` column of its row, else as the table is.
 * @example markAt(tubes, 'outsideMm', 0) // 'page'
 */
export function markAt<T extends GeneratedTable>(table: T, column: keyof T['columns'] & string, at: number): Held {
  requireRow(table, at);
  const own = table.marks[column]?.[at];
  if (own !== undefined) return own;
  const ofRow = table.columns['held']?.[at];
  return isHeld(ofRow) ? ofRow : table.held;
}

function isHeld(cell: unknown): cell is Held {
  return cell === 'page' || cell === 'computed' || cell === 'memory' || cell === 'practice';
}

function requireRow(table: GeneratedTable, at: number): void {
  if (!Number.isInteger(at) || at < 0 || at >= table.rowCount) throw new RangeError(`table ${table.id} has no row ${at}`);
}
