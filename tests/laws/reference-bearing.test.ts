import { expect, test } from 'vitest';
import { ballLoadFactors } from '../../packages/core/src/tables/generated/ball-load-factors.js';
import { iso15DeepGroove } from '../../packages/core/src/tables/generated/iso-15-deep-groove.js';
import { iso15WideSeries } from '../../packages/core/src/tables/generated/iso-15-wide-series.js';
import { iso492Radial } from '../../packages/core/src/tables/generated/iso-492-radial.js';
import { iso57531Clearance } from '../../packages/core/src/tables/generated/iso-5753-1-clearance.js';
import { lifeReliability } from '../../packages/core/src/tables/generated/life-reliability.js';
import { oilCleanliness } from '../../packages/core/src/tables/generated/oil-cleanliness.js';
import { seatClasses } from '../../packages/core/src/tables/generated/seat-classes.js';
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

test('seat classes: ranges of the bore do not overlap and leave no gap; a heavier load is never given a looser shaft', () => {
  const letters = 'a b c d e f g h js j k m n p r s'.split(' ');
  const rank = (toleranceClass: unknown) => letters.indexOf(String(toleranceClass).replace(/[\d+IT]+$/u, '').replace(/\d.*$/u, ''));
  for (const rows of groupBy(rowsOf(seatClasses).filter((row) => row['seat'] === 'shaft'), 'set', 'bearingKind', 'ringLoad', 'magnitude', 'condition')) {
    for (const [smaller, larger] of neighbours(rows)) {
      expect(larger['overMm']).toBe(smaller['upToMm']);
      expect(rank(larger['toleranceClass'])).toBeGreaterThanOrEqual(rank(smaller['toleranceClass']));
    }
  }
  for (const rows of groupBy(rowsOf(seatClasses).filter((row) => row['seat'] === 'shaft' && row['set'] === 'abma-7' && row['ringLoad'] === 'rotating'), 'bearingKind')) {
    for (const boreMm of [10, 20, 45, 90, 130]) {
      const at = (magnitude: string) => rows.find((row) => row['magnitude'] === magnitude && boreMm > Number(row['overMm'] ?? 0) && boreMm <= Number(row['upToMm'] ?? Infinity));
      const [light, normal, heavy] = ['light', 'normal', 'heavy'].map(at);
      if (light !== undefined && normal !== undefined) expect(rank(normal['toleranceClass'])).toBeGreaterThanOrEqual(rank(light['toleranceClass']));
      if (normal !== undefined && heavy !== undefined) expect(rank(heavy['toleranceClass'])).toBeGreaterThanOrEqual(rank(normal['toleranceClass']));
    }
  }
});

test('load factors of ball bearings: e rises, Y falls, and at e both formulas of the load meet within 2 %', () => {
  const rows = rowsOf(ballLoadFactors);
  for (const [before, after] of neighbours(rows)) {
    expect(numberAt(after, 'eRatio')).toBeGreaterThan(numberAt(before, 'eRatio'));
    expect(numberAt(after, 'yFactor')).toBeLessThan(numberAt(before, 'yFactor'));
  }
  for (const row of rows) expect(Math.abs(0.56 + numberAt(row, 'yFactor') * numberAt(row, 'eRatio') - 1)).toBeLessThan(0.02);
});

test('reliability: the 2007 factors fall from 1 and follow the Weibull slope 1.5 above 95 % within 0.015, the 1990 ones lie below them', () => {
  const rows = rowsOf(lifeReliability);
  for (const [before, after] of neighbours(rows)) expect(numberAt(after, 'a1Factor')).toBeLessThan(numberAt(before, 'a1Factor'));
  for (const row of rows) if (row['a1Edition1990Factor'] !== null) expect(numberAt(row, 'a1Edition1990Factor')).toBeLessThanOrEqual(numberAt(row, 'a1Factor'));
  // ISO 281:2007 takes a three-parameter Weibull curve: a1 = (1 − Cγ)·(ln(100/S)/ln(100/90))^(2/3) + Cγ with Cγ = 0.05 (its bibliography).
  for (const row of rows) {
    const S = numberAt(row, 'reliabilityPercent');
    expect(Math.abs(0.95 * (Math.log(100 / S) / Math.log(100 / 90)) ** (2 / 3) + 0.05 - numberAt(row, 'a1Factor')), String(S)).toBeLessThan(0.015);
  }
});

test('cleanliness: the factor falls as the oil gets dirtier, and larger bearings bear dirt better', () => {
  const rows = rowsOf(oilCleanliness);
  for (const rowsOfSize of groupBy(rows, 'fromMm')) for (const [cleaner, dirtier] of neighbours(rowsOfSize)) expect(numberAt(dirtier, 'highFactor')).toBeLessThanOrEqual(numberAt(cleaner, 'highFactor'));
  for (const [small, large] of groupBy(rows, 'level').map((pair) => [pair[0], pair[1]] as const)) if (small !== undefined && large !== undefined) expect(numberAt(large, 'highFactor')).toBeGreaterThanOrEqual(numberAt(small, 'highFactor'));
});

test('the wide series share bore and outside with series 02 and 03, are wider, and grow with the bore', () => {
  for (const row of rowsOf(iso15WideSeries)) {
    const narrow = sizes.find((one) => one['dimensionSeries'] === (row['dimensionSeries'] === '22' ? '02' : '03') && one['boreMm'] === row['boreMm']);
    expect([narrow?.['boreMm'], narrow?.['outsideMm']], `${String(row['dimensionSeries'])} ${String(row['boreMm'])}`).toEqual([row['boreMm'], row['outsideMm']]);
    expect(numberAt(row, 'widthMm')).toBeGreaterThan(Number(narrow?.['widthMm']));
  }
  for (const rows of groupBy(rowsOf(iso15WideSeries), 'dimensionSeries')) for (const [smaller, larger] of neighbours(rows)) if (numberAt(larger, 'boreMm') > 17) expect(numberAt(larger, 'widthMm')).toBeGreaterThanOrEqual(numberAt(smaller, 'widthMm') - (numberAt(smaller, 'boreMm') < 20 ? 3 : 0));
});
