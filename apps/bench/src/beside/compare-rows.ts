/** What a row is called, and what one of two has there; '' for nothing. */
export type Row = readonly [label: string, value: string];

/** One row of two things beside each other. */
export interface ComparedRow {
  readonly label: string;
  readonly one: string;
  readonly other: string;
  readonly isDifferent: boolean;
}

/** Two with the same rows. A row that neither can fill is left out. */
export function compareRows(rows: readonly Row[], others: readonly Row[]): readonly ComparedRow[] {
  return rows.flatMap(([label, value], i) => {
    const opposite = others[i]?.[1] ?? '';
    return value === '' && opposite === '' ? [] : [{ label, one: value, other: opposite, isDifferent: value !== opposite }];
  });
}
