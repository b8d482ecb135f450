import * as tables from '@seatwright/core/tables';
import { findHalfOpenRow, rowsOf, type GeneratedTable } from '@seatwright/core/tables';
import { readCsv } from './read-csv.js';
import type { Entry, How, Kind, Sheet } from './sheet.js';

type Row = Readonly<Record<string, string>>;

/**
 * Sheets of values that are looked up in a table of the library rather than computed: one CSV line a value.
 *
 * Columns: `work`, `place`, `title`, `unit`, `row`, `column`, `printed`, `how`, `kind`; then where it stands with us: `table` (id), `match`
 * (`set=din-3760;construction=metal-case`), `at` (places in the range of the table, `10.001;20`; empty where the match is enough), `cell`.
 */
export function tableSheets(url: URL, note?: string): readonly Sheet[] {
  const rows = readCsv(url);
  const groups = [...new Set(rows.map(groupOf))];
  return groups.map((group): Sheet => {
    const own = rows.filter((row) => groupOf(row) === group);
    const [first] = own;
    return {
      work: first?.['work'] ?? '',
      place: first?.['place'] ?? '',
      title: first?.['title'] ?? '',
      unit: first?.['unit'] ?? '',
      kind: first?.['kind'] as Kind,
      asked: own.some((row) => row['at'] !== '') ? 'the table, at both ends of the range' : 'the table',
      ...(note === undefined ? {} : { note }),
      allowed: 'exactly',
      layout: 'grid',
      entries: own.map((row): Entry => ({ row: row['row'] ?? '', column: row['column'] ?? '', printed: row['printed'] ?? '', how: row['how'] as How, ours: () => cellsOf(row) })),
    };
  });
}

const groupOf = (row: Row) => [row['work'], row['place'], row['title'], row['unit'], row['kind']].join('\n');

function tableOf(id: string): GeneratedTable {
  const found = Object.values(tables).find((one): one is typeof tables.tubes => typeof one === 'object' && 'id' in one && one.id === id);
  if (found === undefined) throw new Error(`no table ${id}`);
  return found;
}

function cellsOf(row: Row): readonly (number | string | null | undefined)[] {
  const wanted = (row['match'] ?? '').split(';').filter((part) => part !== '').map((part) => part.split('='));
  const found = rowsOf(tableOf(row['table'] ?? '')).filter((one) => wanted.every(([name = '', value]) => String(one[name] ?? '') === value));
  const cell = row['cell'] ?? '';
  const at = (row['at'] ?? '').split(';').filter((part) => part !== '');
  if (at.length === 0) return found.map((one) => one[cell]);
  const limits = (start: RegExp) => {
    const name = Object.keys(found[0] ?? {}).find((column) => start.test(column)) ?? '';
    return found.map((one) => one[name] as number | null);
  };
  return at.map((place) => found[findHalfOpenRow(limits(/^(shaftOver|speedOver|over)[A-Z]/u), limits(/^(shaftUpTo|speedUpTo|upTo)[A-Z]/u), Number(place))]?.[cell]);
}
