import { source, type SourceReference } from '../result/index.js';
import { markAt, type GeneratedTable } from './table.js';

/** A table of single values: one name a row, its number in the column of its unit. */
interface NamedValues extends GeneratedTable {
  readonly columns: GeneratedTable['columns'] & { readonly name: readonly string[]; readonly rowSource: readonly string[]; readonly clause: readonly string[] };
}

/** One named value, as a span where the table gives two ends. */
export interface NamedValue {
  readonly low: number;
  readonly high: number;
  readonly source: SourceReference;
}

/**
 * The value of that name. A single number stands as both ends.
 * @param unit the unit part of its columns: `Mm` reads `lowMm` and `highMm`
 * @throws RangeError where the table has no such value: an error of ours, not of what was typed
 * @example namedValue(sealLimits, 'sleeve-wall', 'Mm').low // 2
 */
export function namedValue(table: NamedValues, name: string, unit: string): NamedValue {
  const i = table.columns.name.indexOf(name);
  const low = table.columns[`low${unit}`]?.[i];
  const high = table.columns[`high${unit}`]?.[i];
  const one = typeof low === 'number' ? low : high;
  if (typeof one !== 'number') throw new RangeError(`table ${table.id} has no ${name} in ${unit}`);
  const clause = table.columns.clause[i] ?? '';
  const by = source(table.columns.rowSource[i] ?? table.source, markAt(table, 'name', i));
  return { low: one, high: typeof high === 'number' ? high : one, source: clause === '' ? by : { ...by, clause } };
}
