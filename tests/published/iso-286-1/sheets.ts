import { toleranceZone } from '@seatwright/core/tolerance';
import { howOf, rangeText } from '../ledger/range-ends.js';
import { readCsv } from '../ledger/read-csv.js';
import type { Entry, Sheet } from '../ledger/sheet.js';

type Row = Readonly<Record<string, string>>;
type Ask = (nominalMm: number) => readonly number[];

const file = (name: string) => readCsv(new URL(`./${name}.csv`, import.meta.url));
const tolerances = file('standard-tolerances');
const zone = (nominalMm: number, toleranceClass: string) => toleranceZone.run({ nominalMm, toleranceClass });

/** Letters are used from over 1 mm; the smallest size asked is 1.001 mm. */
const endsOf = (overMm: number, upToMm: number): readonly number[] => [overMm === 0 ? 1.001 : Number((overMm + 0.001).toFixed(3)), upToMm];

function printedTolerance(grade: number, nominalMm: number): number {
  const row = tolerances.find(({ overMm, upToMm }) => nominalMm > Number(overMm) && nominalMm <= Number(upToMm));
  return Number(row?.[`IT${grade}`]);
}

/** Δ of Table 5: this grade less the one before it, by the printed tolerances; none up to 3 mm and over 500 mm. */
const delta = (grade: number, nominalMm: number): number => (nominalMm <= 3 || nominalMm > 500 ? 0 : printedTolerance(grade, nominalMm) - printedTolerance(grade - 1, nominalMm));

const upper = (...classes: readonly string[]): Ask => (nominalMm) => classes.map((name) => zone(nominalMm, name).upperLimitDeviationUm);
const lower = (...classes: readonly string[]): Ask => (nominalMm) => classes.map((name) => zone(nominalMm, name).lowerLimitDeviationUm);
/** What remains of the upper limit without Δ is the printed base. */
const upperLessDelta = (letter: string, ...grades: readonly number[]): Ask => (nominalMm) => grades.map((grade) => zone(nominalMm, `${letter}${grade}`).upperLimitDeviationUm - delta(grade, nominalMm));

/** The one exception of the standard: ES of M6 is −9 over 250, up to 315 mm, where the rule gives −11. */
const ofM: Ask = (nominalMm) => upperLessDelta('M', ...(nominalMm > 250 && nominalMm <= 315 ? [5, 7, 8] : [5, 6, 7, 8]))(nominalMm);

function askShaft(column: string): Ask {
  if (column === 'j5 j6') return lower('j5', 'j6');
  if (column === 'k4 to k7') return lower('k4', 'k5', 'k6', 'k7');
  if (column === 'other k') return lower('k3', 'k8', 'k9');
  if (column.startsWith('j')) return lower(column);
  return column < 'j' ? upper(`${column}6`, `${column}9`) : lower(`${column}6`, `${column}9`);
}

function askHole(column: string): Ask {
  const [letter = '', , grade] = column.split(' ');
  if (letter.startsWith('J')) return upper(letter);
  if (column.endsWith(' to IT8')) return letter === 'M' ? ofM : upperLessDelta(letter, 5, 6, 7, 8);
  if (column.endsWith(' over IT8')) return upper(`${letter}9`, `${letter}10`);
  if (grade === undefined) return lower(`${letter}6`, `${letter}9`);
  return (nominalMm) => [...upper(`${letter}8`, `${letter}9`)(nominalMm), ...upperLessDelta(letter, 6, 7)(nominalMm)];
}

/** The ranges of the tolerances hold two or three ranges of deviations; where these print the same value it is one cell of the page and counts once. */
const mainRanges = tolerances.map(({ overMm, upToMm }) => [Number(overMm), Number(upToMm)] as const);
const mainOf = (row: Row) => mainRanges.findIndex(([over, upTo]) => Number(row['overMm']) >= over && Number(row['upToMm']) <= upTo);

/** The shaft letter whose deviation is that of the hole with the opposite sign, by the general rule of the standard. */
function mirrorOf(column: string, overMm: number): string | null {
  const [letter = ''] = column.split(' ');
  if (/^[A-G]+$/u.test(column) || column.endsWith(' over IT7')) return letter.toLowerCase();
  return overMm >= 500 && (letter === 'M' || letter === 'N') && column.endsWith(' to IT8') ? letter.toLowerCase() : null;
}

const shaftMarks = file('shaft-deviations.how');

/** The mirrored shaft, where it was read on a page of its own: our table of shafts was typed from there, not from the page of the holes. */
function mirrored(column: string, first: Row, last: Row): Ask | null {
  const letter = mirrorOf(column, Number(first['overMm']));
  const own = shaftMarks.filter(({ overMm, upToMm }) => Number(overMm) >= Number(first['overMm']) && Number(upToMm) <= Number(last['upToMm']));
  if (letter === null || own.length === 0 || !own.every((row) => row[letter] === 'page')) return null;
  const ask = askShaft(letter);
  return (nominalMm) => ask(nominalMm).map((value) => -value);
}

function deviations(name: string, askOf: (column: string) => Ask): readonly Entry[] {
  const rows = file(name);
  const marks = file(`${name}.how`);
  const entries: (Entry & { readonly place: number; readonly size: number })[] = [];
  for (const column of Object.keys(rows[0] ?? {}).slice(2)) {
    const ask = askOf(column);
    for (let i = 0; i < rows.length; i += 1) {
      const [first, mark] = [rows[i], marks[i]?.[column]];
      const printed = first?.[column] ?? '';
      if (first === undefined || printed === '') continue;
      let last = first;
      for (let next = rows[i + 1]; next !== undefined && next[column] === printed && marks[i + 1]?.[column] === mark && mainOf(next) === mainOf(first); next = rows[i + 1]) {
        last = next;
        i += 1;
      }
      const held = howOf(mark);
      if (held === null) continue;
      const ends = endsOf(Number(first['overMm']), Number(last['upToMm']));
      const shaft = name === 'hole-deviations' ? mirrored(column, first, last) : null;
      entries.push({ place: Number(first['overMm']), size: Number(last['upToMm']), row: rangeText(first['overMm'] ?? '', last['upToMm'] ?? ''), column, printed, ...held, ...(shaft === null ? {} : { kind: 'another page' as const }), ours: () => ends.flatMap((size) => [...ask(size), ...(shaft?.(size) ?? [])]) });
    }
  }
  return entries.sort((one, other) => one.place - other.place || other.size - one.size);
}

const columnsOf = (name: string) => Object.keys(file(name)[0] ?? {}).slice(2);

function standardTolerances(): readonly Entry[] {
  const marks = file('standard-tolerances.how');
  return tolerances.flatMap((row, i) =>
    Object.keys(row).slice(2).flatMap((column): readonly Entry[] => {
      const held = howOf(marks[i]?.[column]);
      if (row[column] === '' || held === null) return [];
      const grade = column.slice(2);
      const ends = endsOf(Number(row['overMm']), Number(row['upToMm']));
      return [{ row: rangeText(row['overMm'] ?? '', row['upToMm'] ?? ''), column, printed: row[column] ?? '', ...held, ours: () => ends.flatMap((nominalMm) => [zone(nominalMm, `H${grade}`), zone(nominalMm, `h${grade}`)].map(({ standardToleranceUm }) => standardToleranceUm)) }];
    }),
  );
}

const common = { work: 'iso-286-1-2010', unit: 'µm', kind: 'same page', allowed: 'exactly', layout: 'grid' } as const;

export const iso2861: readonly Sheet[] = [
  {
    ...common,
    place: 'Table 1',
    title: 'Standard tolerances by grade, sizes in mm',
    asked: 'width of H and h of that grade at both ends of the range',
    entries: standardTolerances(),
  },
  {
    ...common,
    place: 'Tables 2 and 3',
    title: 'Fundamental deviations of shafts (es of a to g, ei of j to zc), sizes in mm',
    asked: 'limit of the zone in two grades or more, at both ends of the range',
    note: 'h (0) and js (half the tolerance) are left out. Ranges inside one range of the tolerances that print the same value are one cell.',
    columns: columnsOf('shaft-deviations'),
    entries: deviations('shaft-deviations', askShaft),
  },
  {
    ...common,
    place: 'Tables 4 and 5',
    title: 'Fundamental deviations of holes (EI of A to G, ES of J to ZC), sizes in mm',
    asked: 'limit of the zone in two grades or more, at both ends of the range; Δ by the printed tolerances is taken off where the standard adds it; and the shaft of the same letter with its sign turned, where our table of shafts was typed from a page of its own',
    note: 'The cells that the shafts confirm count as another page; in part both pages are of one book. H (0), JS and Δ (computed) are left out; M6 over 250, up to 315 mm is the exception of the standard.',
    columns: columnsOf('hole-deviations'),
    entries: deviations('hole-deviations', askHole),
  },
];
