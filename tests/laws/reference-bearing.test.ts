import { expect, test } from 'vitest';
import { iso15DeepGroove } from '../../packages/core/src/tables/generated/iso-15-deep-groove.js';
import { iso492Radial } from '../../packages/core/src/tables/generated/iso-492-radial.js';
import { iso57531Clearance } from '../../packages/core/src/tables/generated/iso-5753-1-clearance.js';
import { numberAt, rowsOf, type Row } from './internal/table-rows.js';

function groupBy(rows: readonly Row[], ...columns: readonly string[]): readonly (readonly Row[])[] {
  const groups = new Map<string, Row[]>();
  for (const row of rows) {
    const key = columns.map((column) => String(row[column])).join(' ');
    groups.set(key, [...(groups.get(key) ?? []), row]);
  }
  return [...groups.values()];
}

const neighbours = <T>(list: readonly T[]): readonly (readonly [T, T])[] => list.slice(1).map((value, i) => [list[i] as T, value] as const);
const sizes = rowsOf(iso15DeepGroove);
const deviations = rowsOf(iso492Radial);
const clearances = rowsOf(iso57531Clearance);
/** Diameter series from light to heavy. */
const series = ['18', '19', '10', '02', '03', '04'];

test('the last two digits of a designation are the bore: five times them, or 10, 12, 15, 17', () => {
  const small: Readonly<Record<string, number>> = { '00': 10, '01': 12, '02': 15, '03': 17 };
  for (const row of sizes) {
    const designation = String(row['designation']);
    const [, digits = ''] = /(\d\d)$/.exec(designation) ?? [];
    const bore = designation.length === 3 ? Number(designation.at(-1)) : (small[digits] ?? Number(digits) * 5);
    expect(numberAt(row, 'boreMm'), designation).toBe(bore);
  }
});

test('a heavier diameter series is wider outside; a bearing is thicker than its corners; names are unique', () => {
  expect(new Set(sizes.map((row) => row['designation'])).size).toBe(sizes.length);
  for (const rows of groupBy(sizes, 'boreMm')) {
    const lightFirst = rows.filter((row) => series.includes(String(row['dimensionSeries']))).toSorted((a, b) => series.indexOf(String(a['dimensionSeries'])) - series.indexOf(String(b['dimensionSeries'])));
    for (const [light, heavy] of neighbours(lightFirst)) {
      expect(numberAt(heavy, 'outsideMm'), `${String(light['designation'])} ${String(heavy['designation'])}`).toBeGreaterThan(numberAt(light, 'outsideMm'));
      expect(numberAt(heavy, 'widthMm')).toBeGreaterThanOrEqual(numberAt(light, 'widthMm'));
    }
  }
  for (const row of sizes) {
    const wall = (numberAt(row, 'outsideMm') - numberAt(row, 'boreMm')) / 2;
    expect(wall, String(row['designation'])).toBeGreaterThan(1.5);
    if (row['cornerMinMm'] !== null) expect(2 * numberAt(row, 'cornerMinMm')).toBeLessThan(Math.min(wall, numberAt(row, 'widthMm')));
  }
});

test('within one dimension series outside, width and corner never shrink while the bore grows', () => {
  for (const rows of groupBy(sizes, 'dimensionSeries')) {
    const byBore = rows.toSorted((a, b) => numberAt(a, 'boreMm') - numberAt(b, 'boreMm'));
    for (const [smaller, larger] of neighbours(byBore)) {
      const names = `${String(smaller['designation'])} ${String(larger['designation'])}`;
      if (numberAt(smaller, 'boreMm') === numberAt(larger, 'boreMm')) continue;
      expect(numberAt(larger, 'outsideMm'), names).toBeGreaterThan(numberAt(smaller, 'outsideMm'));
      expect(numberAt(larger, 'widthMm'), names).toBeGreaterThanOrEqual(numberAt(smaller, 'widthMm'));
    }
  }
});

test('deviations of rings run down from nominal, never shrink with size, and close in from Normal to 6 to 5', () => {
  for (const rows of groupBy(deviations, 'ring', 'toleranceClass')) {
    for (const row of rows) expect([row['upperUm'], numberAt(row, 'lowerUm') < 0]).toEqual([0, true]);
    for (const [smaller, larger] of neighbours(rows)) {
      expect(numberAt(larger, 'overMm')).toBe(numberAt(smaller, 'upToMm'));
      expect(numberAt(larger, 'lowerUm')).toBeLessThanOrEqual(numberAt(smaller, 'lowerUm'));
      if (larger['runoutMaxUm'] !== null && smaller['runoutMaxUm'] !== null) expect(numberAt(larger, 'runoutMaxUm')).toBeGreaterThanOrEqual(numberAt(smaller, 'runoutMaxUm'));
    }
  }
  for (const rows of groupBy(deviations, 'ring', 'overMm')) {
    const [normal, six, five] = ['Normal', '6', '5'].map((name) => rows.find((row) => row['toleranceClass'] === name));
    for (const [wide, close] of [[normal, six], [six, five]] as const) {
      if (wide === undefined || close === undefined) continue;
      expect(numberAt(close, 'lowerUm')).toBeGreaterThanOrEqual(numberAt(wide, 'lowerUm'));
      if (close['runoutMaxUm'] !== null && wide['runoutMaxUm'] !== null) expect(numberAt(close, 'runoutMaxUm')).toBeLessThanOrEqual(numberAt(wide, 'runoutMaxUm'));
    }
  }
});

test('clearance groups rise from 2 to 5 at every bore, and never shrink with the bore', () => {
  const groups = ['2', 'N', '3', '4', '5'];
  for (const rows of groupBy(clearances, 'bearingType', 'overMm')) {
    const inOrder = rows.toSorted((a, b) => groups.indexOf(String(a['clearanceGroup'])) - groups.indexOf(String(b['clearanceGroup'])));
    for (const row of rows) expect(numberAt(row, 'minimumUm')).toBeLessThan(numberAt(row, 'maximumUm'));
    for (const [tight, open] of neighbours(inOrder)) {
      expect(numberAt(open, 'minimumUm')).toBeGreaterThan(numberAt(tight, 'minimumUm'));
      expect(numberAt(open, 'maximumUm')).toBeGreaterThan(numberAt(tight, 'maximumUm'));
    }
  }
  for (const rows of groupBy(clearances, 'bearingType', 'clearanceGroup')) {
    const byBore = rows.toSorted((a, b) => numberAt(a, 'overMm') - numberAt(b, 'overMm'));
    for (const [smaller, larger] of neighbours(byBore)) {
      expect(numberAt(larger, 'overMm')).toBe(numberAt(smaller, 'upToMm'));
      expect(numberAt(larger, 'minimumUm')).toBeGreaterThanOrEqual(numberAt(smaller, 'minimumUm'));
      expect(numberAt(larger, 'maximumUm')).toBeGreaterThanOrEqual(numberAt(smaller, 'maximumUm'));
    }
  }
});
