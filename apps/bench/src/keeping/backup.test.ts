import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import type { JsonObject } from '../document/raw-document.js';
import { saysBackup } from '../sharing/marks.js';
import { backupOf, sheetsOf } from './backup.js';

const file = JSON.parse(readFileSync(new URL('../../public/samples/bilge-pump.json', import.meta.url), 'utf8')) as JsonObject;
const sheets = [{ id: 'a-1', title: 'Bilge pump 2, pump shaft', file, revision: 3, changedAt: 1_780_000_000_000 }, { id: 'b-2', title: 'Bilge pump, again', file, revision: 1, changedAt: 1_780_000_100_000 }];

test('a backup gives back what was kept', async () => {
  const text = await backupOf(sheets, '2026-03-02');
  expect(saysBackup(text)).toBe(true);
  expect(saysBackup(JSON.stringify(file))).toBe(false);
  expect(await sheetsOf(text)).toEqual({ sheets: sheets.map(({ id, title, file: own, changedAt }) => ({ id, title, file: own, changedAt })) });
  expect(await sheetsOf(await backupOf([], '2026-03-02'))).toEqual({ sheets: [] });
});

test('a broken, cut, altered, newer or foreign file gives nothing and says why', async () => {
  const text = await backupOf(sheets, '2026-03-02');
  for (const [broken, why] of [
    [text.slice(0, -200), /cut/u],
    [text.replace('35', '36'), /changed/u],
    [text.replace('"version":1', '"version":2'), /newer/u],
    [text.replace('seatwright-backup', 'other'), /no backup/u],
    ['[]', /no backup/u],
    ['', /cut/u],
    [JSON.stringify(file), /no backup/u],
  ] as const) {
    expect(await sheetsOf(broken)).toEqual({ fault: expect.stringMatching(why) as string });
  }
});

test('a backup with a right checksum around something that is no sheet is refused whole', async () => {
  const odd = await backupOf([...sheets, { id: 'c', title: 'odd', file: { format: 'other' }, revision: 1, changedAt: 1 }], '2026-03-02');
  expect(await sheetsOf(odd)).toHaveProperty('fault');
});

test('a sheet that somebody is still at comes back as it was typed: an entry that cannot be read yet does not hold up the rest', async () => {
  const tool = { name: 'offcut', kind: 'tube', outsideMm: '34.5' };
  const typing = [{ id: 'c-3', title: 'half typed', file: { ...file, toolsAtHand: [tool], lengthUnit: 'furlong' }, revision: 1, changedAt: 1 }, ...sheets];
  expect(await sheetsOf(await backupOf(typing, '2026-03-02'))).toMatchObject({ sheets: typing.map(({ id, file: own }) => ({ id, file: own })) });
});
