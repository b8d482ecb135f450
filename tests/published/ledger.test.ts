import { describe, expect, test } from 'vitest';
import { allSheets } from './ledger/all-sheets.js';
import { outcomeOf } from './ledger/outcome.js';
import type { Entry, Sheet } from './ledger/sheet.js';

describe('published values', () => {
  test.each(allSheets.map((sheet) => [`${sheet.work}, ${sheet.place}: ${sheet.title}`, sheet] as const))('%s', (_, sheet) => {
    expect(sheet.entries.length).toBeGreaterThan(0);
    const failed = sheet.entries.flatMap((entry) => {
      const { ours, difference, allowed, holds } = outcomeOf(entry, sheet);
      return holds ? [] : [`${entry.row}, ${entry.column}: printed ${entry.printed}, ours ${ours}, difference ${String(difference)}, allowed ${allowed.difference}`];
    });
    expect(failed).toEqual([]);
  });

  test('at least 1 500 of them were read on a page', () => {
    expect(allSheets.flatMap(({ entries }) => entries).filter(({ how }) => how === 'page').length).toBeGreaterThanOrEqual(1500);
  });

  test('no place of a source is asked twice', () => {
    const places = allSheets.flatMap((sheet) => sheet.entries.map((entry) => [sheet.work, sheet.place, sheet.title, entry.row, entry.column].join('\n')));
    expect(places.length - new Set(places).size).toBe(0);
  });
});

describe('a comparison', () => {
  const sheet: Sheet = { work: 'plain-geometry', place: '', title: '', unit: '', kind: 'worked example', asked: '', allowed: 'exactly', layout: 'list', entries: [] };
  const entry = (printed: string, ...ours: readonly (number | string | null)[]): Entry => ({ row: '', column: '', printed, how: 'page', ours: () => ours });

  test('takes no difference in a table, and half of the last digit where a page rounds', () => {
    expect(outcomeOf(entry('35', 35), sheet)).toMatchObject({ holds: true, difference: 0 });
    expect(outcomeOf(entry('35', 35.001), sheet)).toMatchObject({ holds: false });
    expect(outcomeOf(entry('147.5', 147.488), { ...sheet, allowed: 'printed digits' })).toMatchObject({ holds: true, ours: '147.488', difference: -0.012 });
    expect(outcomeOf(entry('147.5', 147.44), { ...sheet, allowed: 'printed digits' })).toMatchObject({ holds: false });
  });

  test('fails where one of the places asked differs, has no number, or is not asked at all', () => {
    expect(outcomeOf(entry('35', 35, 36), sheet)).toMatchObject({ holds: false, ours: '35; 36', difference: 1 });
    expect(outcomeOf(entry('35', 35, null), sheet)).toMatchObject({ holds: false });
    expect(outcomeOf(entry('35', Number.NaN), sheet)).toMatchObject({ holds: false });
    expect(outcomeOf(entry('35'), sheet)).toMatchObject({ holds: false });
    expect(outcomeOf(entry('k5', 'k5', 'm5'), sheet)).toMatchObject({ holds: false });
    expect(outcomeOf(entry('k5', 'k5'), sheet)).toMatchObject({ holds: true });
  });
});
