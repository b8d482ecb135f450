/** A generated table as rows by column name: what a law reads. */
export type Row = Readonly<Record<string, number | string | null>>;

export function rowsOf(table: { readonly columns: object }): readonly Row[] {
  const columns = table.columns as Readonly<Record<string, readonly (number | string | null)[]>>;
  const length = Object.values(columns)[0]?.length ?? 0;
  return Array.from({ length }, (_, i) => Object.fromEntries(Object.entries(columns).map(([name, column]) => [name, column[i] ?? null])));
}

/** The number of a cell; a blank is NaN, so that a law over it fails. */
export function numberAt(row: Row, column: string): number {
  const value = row[column];
  return typeof value === 'number' ? value : Number.NaN;
}
