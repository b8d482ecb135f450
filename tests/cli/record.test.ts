import { spawn, spawnSync } from 'node:child_process';
import { chmodSync, copyFileSync, existsSync, lstatSync, mkdtempSync, readFileSync, readdirSync, statSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';

const main = new URL('../../apps/cli/dist/main.js', import.meta.url).pathname;
const sample = new URL('../../apps/bench/public/samples/bilge-pump.json', import.meta.url).pathname;

function fresh() {
  const folder = mkdtempSync(join(tmpdir(), 'record-'));
  const file = join(folder, 'pump.json');
  copyFileSync(sample, file);
  const record = (...args: readonly string[]) => {
    const { stdout, stderr, status } = spawnSync(process.execPath, [main, 'record', file, ...args], { encoding: 'utf8' });
    return { stdout, stderr, status };
  };
  const changes = () => (JSON.parse(readFileSync(file, 'utf8')) as { machines: { positions: { changes?: object[] }[] }[] }).machines[0]?.positions[0]?.changes ?? [];
  return { folder, file, record, changes };
}

test('writes one change more to the end, keeps the rest, and leaves no half file beside it', () => {
  const { folder, record, changes, file } = fresh();
  const before = changes();
  const { status, stdout } = record('--date', '2026-11-20', '--hours', '5000', '--bore', '35,01', '35.012', '--bore-with', 'inside-micrometer-rod', '--depth', '0.1', '0.1', '--note', 'spring was loose');
  expect(status).toBe(0);
  expect(stdout).toContain('2026-11-20  5000 h');
  expect(stdout).toContain('bore 35.011 mm');
  expect(changes().slice(0, -1)).toEqual(before);
  expect(changes().at(-1)).toEqual({ date: '2026-11-20', hourMeterHours: '5000', renewed: 'seal', boreReadings: [{ instrument: 'inside-micrometer-rod', valuesMm: ['35,01', '35.012'] }], depthMm: ['0.1', '0.1'], note: 'spring was loose' });
  expect(readdirSync(folder)).toEqual([file.split('/').at(-1)]);
});

test.each([
  [['--date', '2026-02-30'], /change\.date/],
  [['--date', '1999-01-01'], /record only grows/],
  [['--date', '2026-11-20', '--bore', '35.01'], /--bore-with/],
  [['--date', '2026-11-20', '--bore', 'wide', '--bore-with', 'inside-micrometer-rod'], /change\.boreReadings/],
  [['--out', 'x.json'], /--date/],
  [['--position', 'nowhere'], /no such position/],
])('refuses %j and changes nothing', (args, message) => {
  const { record, file } = fresh();
  record('--date', '2024-01-01', '--hours', '1');
  const before = readFileSync(file, 'utf8');
  const { status, stderr } = record(...args);
  expect(status).toBe(1);
  expect(stderr).toMatch(message);
  expect(stderr.trim().split('\n')).toHaveLength(1);
  expect(readFileSync(file, 'utf8')).toBe(before);
});

test('a folder that is not there: says so, writes nothing', () => {
  const { record, folder } = fresh();
  const { status, stderr } = record('--date', '2026-11-20', '--out', join(folder, 'no', 'such.json'));
  expect(status).toBe(2);
  expect(stderr).toMatch(/no such folder; nothing was changed/);
  expect(existsSync(join(folder, 'no'))).toBe(false);
});

test('changes written at once all stay', async () => {
  const { file, changes, folder } = fresh();
  const before = changes().length;
  const notes = ['one', 'two', 'three', 'four', 'five'];
  const statuses = await Promise.all(notes.map((note) => new Promise((done) => spawn(process.execPath, [main, 'record', file, '--date', '2026-12-01', '--note', note], { stdio: 'ignore' }).on('close', done))));
  expect(statuses).toEqual(notes.map(() => 0));
  expect(changes().slice(before).map((change) => (change as { note: string }).note).toSorted()).toEqual(notes.toSorted());
  expect(readdirSync(folder)).toHaveLength(1);
});

test('a link keeps pointing at its file, and the file keeps its permissions', () => {
  const { file, folder, changes } = fresh();
  chmodSync(file, 0o600);
  const link = join(folder, 'link.json');
  symlinkSync(file, link);
  expect(spawnSync(process.execPath, [main, 'record', link, '--date', '2026-12-01', '--found', 'damp', '--fitted', '20 x 35 x 7, rubber-covered', '--old-depth', '0.2']).status).toBe(0);
  expect(lstatSync(link).isSymbolicLink()).toBe(true);
  expect(statSync(file).mode & 0o777).toBe(0o600);
  expect(changes().at(-1)).toEqual({ date: '2026-12-01', renewed: 'seal', found: 'damp', fitted: '20 x 35 x 7, rubber-covered', oldDepthMm: ['0.2'] });
});

test('a change left half-way by another one: says which file to delete, writes nothing', () => {
  const { file, folder, record } = fresh();
  const before = readFileSync(file, 'utf8');
  writeFileSync(join(folder, '.pump.json.new'), '');
  const { status, stderr } = record('--date', '2026-12-01');
  expect(status).toBe(2);
  expect(stderr).toMatch(/another change is being written.*delete .*\.pump\.json\.new/);
  expect(readFileSync(file, 'utf8')).toBe(before);
});

test('in German, days and hours as they are written there; a language that is none writes nothing', () => {
  const { record, changes } = fresh();
  const { stdout } = record('--date', '2026-11-20', '--hours', '5000,5', '--language', 'de');
  expect(stdout).toMatch(/^Aufzeichnung: Bilge pump 2/);
  expect(stdout).toMatch(/20\.11\.2026 {2}5000,5 h/);
  expect(stdout).toContain('Nächster Wechsel: bei ');
  const count = changes().length;
  const refused = record('--date', '2026-11-21', '--language', 'fr');
  expect(changes()).toHaveLength(count);
  expect(refused.status).toBe(1);
  expect(refused.stderr).toContain('--language');
});
