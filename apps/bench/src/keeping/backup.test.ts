import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import type { JsonObject } from '../document/raw-document.js';
import { saysBackup } from '../sharing/marks.js';
import { backupOf, readBackup } from './backup.js';

const file = JSON.parse(readFileSync(new URL('../../public/samples/bilge-pump.json', import.meta.url), 'utf8')) as JsonObject;
const sheets = [{ id: 'a-1', title: 'Bilge pump 2, pump shaft', file, revision: 3, changedAt: 1_780_000_000_000 }, { id: 'b-2', title: 'Bilge pump 2, pump shaft', copyNumber: 2, file, revision: 1, changedAt: 1_780_000_100_000 }];
const tools = [{ id: 't-1', tool: { name: 'Offcut 35 x 3', kind: 'tube', outsideMm: '35' }, revision: 4, addedAt: 1_780_000_000_000 }];

test('a backup gives back what was kept', async () => {
  const text = await backupOf(sheets, tools, '2026-03-02');
  expect(saysBackup(text)).toBe(true);
  expect(saysBackup(JSON.stringify(file))).toBe(false);
  expect(await readBackup(text)).toEqual({ madeOn: '2026-03-02', sheets: sheets.map(({ revision: _, ...sheet }) => sheet), tools: tools.map(({ revision: _, ...tool }) => tool) });
  expect(await readBackup(await backupOf([], [], '2026-03-02'))).toEqual({ madeOn: '2026-03-02', sheets: [], tools: [] });
});

test('a broken, cut, altered, newer or foreign file gives nothing and says why', async () => {
  const text = await backupOf(sheets, tools, '2026-03-02');
  for (const [broken, why] of [
    [text.slice(0, -200), /cut/u],
    [text.replace('35', '36'), /changed/u],
    [text.replace('"version":2', '"version":3'), /newer/u],
    [text.replace('seatwright-backup', 'other'), /no backup/u],
    ['[]', /no backup/u],
    ['', /cut/u],
    [JSON.stringify(file), /no backup/u],
  ] as const) {
    expect(await readBackup(broken)).toEqual({ fault: expect.stringMatching(why) as string });
  }
});

test('a backup with a right checksum around something that is no sheet is refused whole', async () => {
  const odd = await backupOf([...sheets, { id: 'c', title: 'odd', file: { format: 'other' }, revision: 1, changedAt: 1 }], tools, '2026-03-02');
  expect(await readBackup(odd)).toHaveProperty('fault');
});

test('a sheet that somebody is still at comes back as it was typed: an entry that cannot be read yet does not hold up the rest', async () => {
  const tool = { name: 'offcut', kind: 'tube', outsideMm: '34.5' };
  const typing = [{ id: 'c-3', title: 'half typed', file: { ...file, toolsAtHand: [tool], lengthUnit: 'furlong' }, revision: 1, changedAt: 1 }, ...sheets];
  expect(await readBackup(await backupOf(typing, [], '2026-03-02'))).toMatchObject({ sheets: typing.map(({ id, file: own }) => ({ id, file: own })) });
});

test('a backup of before, with the sheets alone, is still read', async () => {
  const kept = [{ id: 'a-1', title: 'Bilge pump 2, pump shaft', changedAt: 1, file }];
  const digest = await crypto.subtle.digest('SHA-256', new TextEncoder().encode(JSON.stringify(kept)));
  const checksum = `sha256-${Buffer.from(digest).toString('hex')}`;
  expect(await readBackup(JSON.stringify({ format: 'seatwright-backup', version: 1, madeOn: '2026-03-02', checksum, sheets: kept }))).toEqual({ madeOn: '2026-03-02', sheets: kept, tools: [] });
});
