import { expect, test } from 'vitest';
import { iso2861HoleDeviations as holes } from '../../packages/core/src/tables/generated/iso-286-1-hole-deviations.js';
import { iso2861ShaftDeviations as shafts } from '../../packages/core/src/tables/generated/iso-286-1-shaft-deviations.js';
import { iso2861StandardTolerances as grades } from '../../packages/core/src/tables/generated/iso-286-1-standard-tolerances.js';
import { expectOnlyListed, rangeText, type Difference } from './internal/kept-as-printed.js';

type Column = readonly (number | null)[];
type Columns = Readonly<Record<string, Column>>;
const it = grades.columns as unknown as Columns;
const shaft = shafts.columns as unknown as Columns;
const hole = holes.columns as unknown as Columns;

const cell = (columns: Columns, name: string, row: number): number | null => {
  const column = columns[name];
  if (column === undefined) throw new Error(`no column ${name}`);
  return column[row] ?? null;
};

/** Row of the standard tolerances that holds the end of a row of deviations. */
const gradeRow = (columns: Columns, row: number): number => {
  const upTo = cell(columns, 'upToMm', row) ?? 0;
  return (it['upToMm'] ?? []).findIndex((end) => end !== null && upTo <= end);
};
const gradeUm = (grade: number, row: number): number => cell(it, `it${grade}Um`, gradeRow(shaft, row)) ?? Number.NaN;
const rowText = (columns: Columns, row: number): string => rangeText(cell(columns, 'overMm', row), cell(columns, 'upToMm', row));
/** Geometric mean of a range; the first range counts from 1 mm. */
const meanOf = (columns: Columns, row: number): number => Math.sqrt(Math.max(1, cell(columns, 'overMm', row) ?? 0) * (cell(columns, 'upToMm', row) ?? 0));
const rows = (columns: Columns): readonly number[] => (columns['overMm'] ?? []).map((_, row) => row);

// ISO 286-1:2010, annex on the basis of the system: grades IT5 to IT18 are multiples of i (to 500 mm) and I (over 500 mm).
const multiples = { 5: 7, 6: 10, 7: 16, 8: 25, 9: 40, 10: 64, 11: 100, 12: 160, 13: 250, 14: 400, 15: 640, 16: 1000, 17: 1600, 18: 2500 };

test('standard tolerances IT5 to IT18 lie within 6 % of the multiples of the tolerance unit', () => {
  const differences: Difference[] = [];
  for (const row of rows(it)) {
    const mean = meanOf(it, row);
    const unitUm = mean <= 500 ? 0.45 * Math.cbrt(mean) + 0.001 * mean : 0.004 * mean + 2.1;
    for (const [grade, multiple] of Object.entries(multiples)) {
      const printed = cell(it, `it${grade}Um`, row);
      const byRule = multiple * unitUm;
      if (printed === null || Math.abs(printed - byRule) > 0.06 * byRule) {
        differences.push({ table: grades.id, row: rowText(it, row), column: `it${grade}Um`, printed, byRule: Number(byRule.toPrecision(4)) });
      }
    }
  }
  expectOnlyListed('tolerance-unit', differences);
});

test('five grades on, a standard tolerance is ten times as wide', () => {
  const differences: Difference[] = [];
  for (const row of rows(it)) {
    for (let grade = 6; grade + 5 <= 18; grade += 1) {
      const printed = cell(it, `it${grade + 5}Um`, row);
      const byRule = 10 * (cell(it, `it${grade}Um`, row) ?? Number.NaN);
      if (printed !== byRule) differences.push({ table: grades.id, row: rowText(it, row), column: `it${grade + 5}Um`, printed, byRule });
    }
  }
  expectOnlyListed('ten-times-five-grades-on', differences);
});

test('the finest grades follow their linear formulas to 500 mm', () => {
  const differences: Difference[] = [];
  const formulas: Readonly<Record<string, (meanMm: number) => number>> = {
    it01Um: (meanMm) => 0.3 + 0.008 * meanMm,
    it0Um: (meanMm) => 0.5 + 0.012 * meanMm,
    it1Um: (meanMm) => 0.8 + 0.02 * meanMm,
  };
  for (const row of rows(it)) {
    if ((cell(it, 'upToMm', row) ?? 0) > 500) continue;
    for (const [column, formula] of Object.entries(formulas)) {
      const printed = cell(it, column, row);
      const byRule = Number(formula(meanOf(it, row)).toPrecision(3));
      if (printed === null || Math.abs(printed - byRule) > Math.max(0.11, 0.1 * byRule)) differences.push({ table: grades.id, row: rowText(it, row), column, printed, byRule });
    }
  }
  expectOnlyListed('finest-grades', differences);
});

test('grades IT2 to IT4 step evenly from IT1 to IT5', () => {
  const differences: Difference[] = [];
  for (const row of rows(it)) {
    const first = cell(it, 'it1Um', row);
    const last = cell(it, 'it5Um', row);
    if (first === null || last === null) continue;
    for (const grade of [2, 3, 4]) {
      const printed = cell(it, `it${grade}Um`, row);
      const byRule = Number((first * (last / first) ** ((grade - 1) / 4)).toPrecision(3));
      if (printed === null || Math.abs(printed - byRule) > Math.max(0.5, 0.07 * byRule)) differences.push({ table: grades.id, row: rowText(it, row), column: `it${grade}Um`, printed, byRule });
    }
  }
  expectOnlyListed('geometric-it2-to-it4', differences);
});

/** Steps of the table of standard tolerances count for letters whose deviation is one value over such a step. */
const stepMean = (row: number): number => meanOf(it, gradeRow(shaft, row));
const ownMean = (row: number): number => meanOf(shaft, row);

type Formula = (row: number, isLarge: boolean) => number;
// ISO 286-1:2010, annex on the basis of the system (from memory): formulas of the fundamental deviations of shafts.
const formulas: Readonly<Record<string, Formula>> = {
  esAUm: (row) => -(ownMean(row) <= 120 ? 265 + 1.3 * ownMean(row) : 3.5 * ownMean(row)),
  esBUm: (row) => -(ownMean(row) <= 160 ? 140 + 0.85 * ownMean(row) : 1.8 * ownMean(row)),
  esCUm: (row) => -(ownMean(row) <= 40 ? 52 * ownMean(row) ** 0.2 : 95 + 0.8 * ownMean(row)),
  esDUm: (row) => -16 * stepMean(row) ** 0.44,
  esEUm: (row) => -11 * stepMean(row) ** 0.41,
  esFUm: (row) => -5.5 * stepMean(row) ** 0.41,
  esGUm: (row) => -2.5 * stepMean(row) ** 0.34,
  eiK4ToK7Um: (row, isLarge) => (isLarge ? 0 : 0.6 * Math.cbrt(stepMean(row))),
  eiMUm: (row, isLarge) => (isLarge ? 0.024 * stepMean(row) + 12.6 : gradeUm(7, row) - gradeUm(6, row)),
  eiNUm: (row, isLarge) => (isLarge ? 0.04 * stepMean(row) + 21 : 5 * stepMean(row) ** 0.34),
  eiPUm: (row, isLarge) => (isLarge ? 0.072 * stepMean(row) + 37.8 : gradeUm(7, row) + 2.5),
  eiSUm: (row) => ((cell(shaft, 'upToMm', row) ?? 0) <= 50 ? gradeUm(8, row) + 2 : gradeUm(7, row) + 0.4 * ownMean(row)),
  eiTUm: (row) => gradeUm(7, row) + 0.63 * ownMean(row),
  eiUUm: (row) => gradeUm(7, row) + ownMean(row),
  eiVUm: (row) => gradeUm(7, row) + 1.25 * ownMean(row),
  eiXUm: (row) => gradeUm(7, row) + 1.6 * ownMean(row),
  eiYUm: (row) => gradeUm(7, row) + 2 * ownMean(row),
  eiZUm: (row) => gradeUm(7, row) + 2.5 * ownMean(row),
  eiZaUm: (row) => gradeUm(8, row) + 3.15 * ownMean(row),
  eiZbUm: (row) => gradeUm(9, row) + 4 * ownMean(row),
  eiZcUm: (row) => gradeUm(10, row) + 5 * ownMean(row),
};

/** Letters whose formulas do not reach down to small sizes: there the standard sets its values. */
const steep = new Set(['eiUUm', 'eiVUm', 'eiXUm', 'eiYUm', 'eiZUm', 'eiZaUm', 'eiZbUm', 'eiZcUm']);

test('fundamental deviations of shafts lie within 2 µm or 4 % of their formulas', () => {
  const differences: Difference[] = [];
  for (const [column, formula] of Object.entries(formulas)) {
    for (const row of rows(shaft)) {
      const printed = cell(shaft, column, row);
      if (printed === null || (steep.has(column) && (cell(shaft, 'upToMm', row) ?? 0) <= 14)) continue;
      const byRule = formula(row, (cell(shaft, 'upToMm', row) ?? 0) > 500);
      if (Math.abs(printed - byRule) > Math.max(2, 0.04 * Math.abs(byRule))) differences.push({ table: shafts.id, row: rowText(shaft, row), column, printed, byRule: Number(byRule.toPrecision(4)) });
    }
  }
  expectOnlyListed('deviation-formulas', differences);
});

test.each([
  ['eiRUm', 'eiPUm', 'eiSUm'],
  ['esEfUm', 'esEUm', 'esFUm'],
  ['esFgUm', 'esFUm', 'esGUm'],
  ['esCdUm', 'esCUm', 'esDUm'],
])('%s is the geometric mean of its neighbours %s and %s', (column, before, after) => {
  const differences: Difference[] = [];
  for (const row of rows(shaft)) {
    const printed = cell(shaft, column, row);
    const [first, second] = [cell(shaft, before, row), cell(shaft, after, row)];
    if (printed === null || first === null || second === null) continue;
    const byRule = Math.sign(first) * Math.sqrt(first * second);
    if (Math.abs(printed - byRule) > Math.max(1, 0.02 * Math.abs(byRule))) differences.push({ table: shafts.id, row: rowText(shaft, row), column, printed, byRule: Number(byRule.toPrecision(4)) });
  }
  expectOnlyListed(`geometric-mean-${column}`, differences);
});

const mirrors: readonly (readonly [hole: string, shaft: string])[] = [
  ...['A', 'B', 'C', 'Cd', 'D', 'E', 'Ef', 'F', 'Fg', 'G'].map((letter) => [`ei${letter}Um`, `es${letter}Um`] as const),
  ...['P', 'R', 'S', 'T', 'U', 'V', 'X', 'Y', 'Z', 'Za', 'Zb', 'Zc'].map((letter) => [`es${letter}Um`, `ei${letter}Um`] as const),
  ['esKUpToIt8Um', 'eiK4ToK7Um'],
  ['esMUpToIt8Um', 'eiMUm'],
  ['esMAboveIt8Um', 'eiMUm'],
  ['esNUpToIt8Um', 'eiNUm'],
];

test('hole and shaft of one letter mirror each other', () => {
  const differences: Difference[] = [];
  for (const [ours, theirs] of mirrors) {
    for (const row of rows(hole)) {
      const printed = cell(hole, ours, row);
      const other = cell(shaft, theirs, row);
      const byRule = other === null ? null : -other + 0;
      if (printed !== byRule) differences.push({ table: holes.id, row: rowText(hole, row), column: ours, printed, byRule });
    }
  }
  expect(rows(hole).map((row) => rowText(hole, row))).toEqual(rows(shaft).map((row) => rowText(shaft, row)));
  expectOnlyListed('hole-mirrors-shaft', differences);
});

test('delta is a standard tolerance less the next finer one, over 3 up to 500 mm, and zero elsewhere', () => {
  const differences: Difference[] = [];
  for (const row of rows(hole)) {
    const isInside = (cell(hole, 'overMm', row) ?? 0) >= 3 && (cell(hole, 'upToMm', row) ?? 0) <= 500;
    for (const grade of [3, 4, 5, 6, 7, 8]) {
      const column = `deltaIt${grade}Um`;
      const printed = cell(hole, column, row);
      const byRule = isInside ? gradeUm(grade, row) - gradeUm(grade - 1, row) : 0;
      if ((printed ?? 0) !== byRule) differences.push({ table: holes.id, row: rowText(hole, row), column, printed, byRule });
    }
  }
  expectOnlyListed('delta', differences);
});

test('J of a grade is the mirror of j one grade finer, plus delta; up to 3 mm of j of its own grade', () => {
  const differences: Difference[] = [];
  const pairs = [
    ['esJ6Um', 'eiJ5J6Um', 'eiJ5J6Um', 6],
    ['esJ7Um', 'eiJ5J6Um', 'eiJ7Um', 7],
    ['esJ8Um', 'eiJ7Um', 'eiJ8Um', 8],
  ] as const;
  for (const [column, finer, same, grade] of pairs) {
    for (const row of rows(hole)) {
      const isSmall = (cell(hole, 'upToMm', row) ?? 0) <= 3;
      const printed = cell(hole, column, row);
      const other = cell(shaft, isSmall ? same : finer, row);
      if (printed === null && other === null) continue;
      const deltaUm = isSmall ? 0 : gradeUm(grade, row) - gradeUm(grade - 1, row);
      const byRule = other === null ? null : -other + deltaUm;
      if (printed !== byRule) differences.push({ table: holes.id, row: rowText(hole, row), column, printed, byRule });
    }
  }
  expectOnlyListed('j-by-delta', differences);
});
