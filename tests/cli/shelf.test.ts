import { spawnSync } from 'node:child_process';
import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';

const main = new URL('../../apps/cli/dist/main.js', import.meta.url).pathname;
const samples = new URL('../../apps/bench/public/samples/', import.meta.url).pathname;
const folder = mkdtempSync(join(tmpdir(), 'shelf-'));
const pump = `${samples}bilge-pump.json`;

function shelf(content: string | Buffer, ...more: readonly string[]) {
  const file = join(folder, 'list.csv');
  writeFileSync(file, content);
  const { stdout, stderr, status } = spawnSync(process.execPath, [main, 'shelf', file, '--for', pump, ...more], { encoding: 'utf8' });
  return { stdout, stderr, status };
}

const output = (content: string | Buffer, ...more: readonly string[]) => (JSON.parse(shelf(content, '--json', ...more).stdout) as { output: { candidates: { id: string; line: number; verdict: string }[]; badRows: { line: number }[]; rowCount: number; badRowCount: number; unreadRowCount: number; unreadRows: { line: number }[] } }).output;

test('the sample list: best first, near misses, skipped rows with their lines', () => {
  const { stdout, status } = spawnSync(process.execPath, [main, 'shelf', `${samples}shelf.csv`, '--for', pump], { encoding: 'utf8' });
  expect(status).toBe(0);
  expect(stdout).toMatch(/^20 rows: 3 suit, 2 suit with care/);
  expect(stdout).toContain('line 2, SW-001 (20 × 35 × 7 mm, NBR, metal case, 4 in stock, A1): Suits');
  expect(stdout).toContain('Line 17: no size in "d".');
});

test('in German, with its words and its decimal comma', () => {
  const german = (list: string, ...more: readonly string[]) => spawnSync(process.execPath, [main, 'shelf', list, '--for', pump, '--language', 'de', ...more], { encoding: 'utf8' });
  const { stdout } = german(`${samples}shelf.csv`);
  expect(stdout).toMatch(/^20 Zeilen: 3 passen, 2 passen mit Vorbehalt/);
  expect(stdout).toContain('Zeile 2, SW-001 (20 × 35 × 7 mm, NBR, Metallmantel, 4 vorrätig, A1): Passt');
  expect(stdout).toContain('Zeile 9, SW-008 (19,05 × 34,925 × 6,35 mm, NBR, Metallmantel, 1 vorrätig, B1): Welle −0,922 mm, außen −0,087 mm');
  expect(stdout).toContain('Zeile 17: kein Maß in „d“.');
  expect(german(`${samples}shelf.csv`, '--json').stdout).toContain('"verdict":"suits"');
  expect(spawnSync(process.execPath, [main, 'shelf', `${samples}shelf.csv`, '--for', pump, '--language', 'fr'], { encoding: 'utf8' })).toMatchObject({ status: 1, stdout: '' });
});

test('one list in every dress: byte order mark, semicolons, tabs, quotes, line ends, decimal commas', () => {
  const dresses = [
    'id,shaft,outside,width\n7,20,35,7\n',
    '\uFEFFid;shaft;outside;width\r\n7;20,0;35,0;7,0\r\n',
    'id\tshaft\toutside\twidth\r7\t20\t35\t7',
    '"id","shaft","outside","width"\n"7","20,0","35","7"\n\n',
  ];
  for (const dress of dresses) expect(output(dress).candidates.map(({ id, line, verdict }) => [id, line, verdict])).toEqual([['7', 2, 'suits with care']]);
});

test('a quoted line break counts as lines; a bad row is named and the rest goes on', () => {
  const found = output('id,shaft,outside,width\n"a\nb",20,35,7\nx,twenty,35,7\ny,20,35,7\nz,"20,35,7\n');
  expect(found.candidates.map(({ line }) => line)).toEqual([2, 5]);
  expect(found.badRows.map(({ line }) => line)).toEqual([4]);
  expect(found.unreadRows.map(({ line }) => line)).toEqual([6]);
});

test('columns by name, sizes in inches', () => {
  expect(output('No,Inner edge,OD,B\n1,0.7874,1.378,0.2756\n', '--unit', 'in', '--column', 'shaft=Inner edge').candidates).toHaveLength(1);
});

test.each([
  ['', 1, /is empty/],
  ['only,words\n1,2\n', 1, /no column says shaft or outside or width/],
  [Buffer.from([0x89, 0x50, 0x00, 0x0a, 0xff]), 2, /not a text file/],
])('refuses what is no list, with one clear line: %#', (content, status, message) => {
  const found = shelf(content);
  expect(found.status).toBe(status);
  expect(found.stderr).toMatch(message);
  expect(found.stderr.trim().split('\n')).toHaveLength(1);
});

test('refuses options that it does not understand', () => {
  expect(shelf('shaft,outside,width\n', '--best', 'many').stderr).toMatch(/--best/);
  expect(shelf('shaft,outside,width\n', '--unit', 'cm').stderr).toMatch(/--unit/);
  expect(shelf('shaft,outside,width\n', '--column', 'colour=x').stderr).toMatch(/--column/);
});
