import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { sealCheck } from '@seatwright/core/seal';
import { rankList, readList } from './rank-list.js';
import { english } from '../words/english.js';
import { german } from '../words/german.js';
import { sealFromRow } from './seal-from-row.js';

const text = readFileSync(new URL('../../public/samples/shelf.csv', import.meta.url), 'utf8');
const situation = sealCheck.parse({ shaft: { diameterMm: 20 }, bore: { diameterMm: 35, material: 'gjl250', readings: [{ instrument: 'inside-micrometer-rod', valuesMm: [35.012] }] }, seal: { shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' } });

test('a list is read with any of the usual marks, and ranked', async () => {
  const list = readList(text);
  if (list === null || list === 'too long') throw new Error('no list');
  const result = await rankList(list, situation, 'mm', () => false);
  expect(result?.candidates[0]).toMatchObject({ shaftMm: 20, outsideMm: 35 });
  expect(readList('shaft\toutside\twidth\n20\t35\t7\n')).toEqual({ header: ['shaft', 'outside', 'width'], rows: [['20', '35', '7']] });
  expect(readList('\uFEFFshaft,outside,width\r\n20,35,7')).toEqual({ header: ['shaft', 'outside', 'width'], rows: [['20', '35', '7']] });
});

test.each([[english, 'metal'], [german, 'Metall']])('the header that the page shows is one that it reads', async ({ shelf }, metal) => {
  const list = readList(`${shelf.example}\n20;35;7;${metal};FKM`);
  if (list === null || list === 'too long') throw new Error('no list');
  expect((await rankList(list, situation, 'mm', () => false))?.candidates[0]).toMatchObject({ shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'FKM' });
});

test('nothing, or a header alone, is no list; one without sizes is refused in words; an answer that nobody wants is none', async () => {
  expect(readList('')).toBeNull();
  expect(readList('shaft;outside;width')).toBeNull();
  await expect(rankList({ header: ['a', 'b'], rows: [['1', '2']] }, situation, 'mm', () => false)).rejects.toThrow(/column/u);
  expect(await rankList({ header: ['shaft', 'outside', 'width'], rows: [['20', '35', '7']] }, situation, 'mm', () => true)).toBeNull();
});

test('a chosen row takes the place of the seal, and nothing of the old one stays but where it sits', () => {
  const row = { line: 2, id: 'SW-001', place: 'A1', pieceCount: 4, shaftMm: 20, outsideMm: 35, widthMm: 10, construction: null, lipMaterial: 'FKM' };
  expect(sealFromRow({ kind: 'seal', name: 'old', shaftMm: '20', outsideMm: 34, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR', outsideReadings: [], lipFacing: 'inward' }, row)).toEqual({ kind: 'seal', shaftMm: 20, outsideMm: 35, widthMm: 10, lipMaterial: 'FKM', marking: 'SW-001', lipFacing: 'inward' });
});
