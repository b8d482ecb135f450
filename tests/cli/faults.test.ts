import { spawn, spawnSync } from 'node:child_process';
import { closeSync, copyFileSync, existsSync, mkdtempSync, openSync, readFileSync, readdirSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

const main = new URL('../../apps/cli/dist/main.js', import.meta.url).pathname;
const samples = new URL('../../apps/bench/public/samples/', import.meta.url).pathname;
const pump = join(samples, 'bilge-pump.json');
const outboard = ['--position', 'crank, drive side'];

const request = (i: number) => JSON.stringify({ calc: i % 3 === 0 ? 'seal-check' : 'tolerance-zone', id: i, input: i % 3 === 0 ? { seal: { shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' } } : { nominalMm: 1 + (i % 600), toleranceClass: 'P7' } });
const requests = `${Array.from({ length: 6000 }, (_, i) => request(i)).join('\n')}\n`;

function run(args: readonly string[], options: { readonly input?: string; readonly env?: Readonly<Record<string, string>>; readonly stdout?: number } = {}) {
  const { status, signal, stdout, stderr } = spawnSync(process.execPath, [main, ...args], { input: options.input ?? '', encoding: 'utf8', env: { ...process.env, ...options.env }, stdio: ['pipe', options.stdout ?? 'pipe', 'pipe'], maxBuffer: 1 << 28 });
  return { status, signal, out: stdout ?? '', err: stderr };
}

/** What came out is whole lines of JSON, numbered from nothing without a gap. */
function expectWholeLines(out: string): void {
  expect(out.endsWith('\n')).toBe(true);
  const ids = out.trimEnd().split('\n').map((line) => (JSON.parse(line) as { id: number }).id);
  expect(ids).toEqual(ids.map((_, i) => i));
}

describe('killed in the middle of a batch', () => {
  it.each([
    [['batch'], 5],
    [['batch'], 400],
    [['batch', '--jobs', '2'], 30],
  ])('%j, after %d kB into a pipe: whole lines only', async (args, afterKb) => {
    const child = spawn(process.execPath, [main, ...args], { stdio: ['pipe', 'pipe', 'inherit'] });
    child.stdin.on('error', () => undefined);
    child.stdin.write(requests);
    const pieces: Buffer[] = [];
    let bytes = 0;
    child.stdout.on('data', (piece: Buffer) => {
      pieces.push(piece);
      bytes += piece.length;
      if (bytes > afterKb * 1000) child.kill('SIGKILL');
    });
    expect(await new Promise((done) => child.once('close', (_, signal) => done(signal)))).toBe('SIGKILL');
    expectWholeLines(Buffer.concat(pieces).toString());
  });

  it('into a file: whole lines only', async () => {
    const file = join(mkdtempSync(join(tmpdir(), 'faults-')), 'answers.jsonl');
    const handle = openSync(file, 'w');
    const child = spawn(process.execPath, [main, 'batch'], { stdio: ['pipe', handle, 'inherit'] });
    closeSync(handle);
    child.stdin?.on('error', () => undefined);
    child.stdin?.write(requests);
    while (statSync(file).size < 50_000 && child.exitCode === null) await new Promise((done) => setTimeout(done, 2));
    child.kill('SIGKILL');
    await new Promise((done) => child.once('close', done));
    expectWholeLines(readFileSync(file, 'utf8'));
  });
});

describe('the output is closed early', () => {
  it.each(['list', 'schema seal-check', 'batch', 'batch --jobs 2', `job ${pump}`, 'fit "25 H7/p6" --explain'])('%s, read for one line: no word on the error output', (command) => {
    const { stderr, stdout } = spawnSync('bash', ['-c', `set -o pipefail; "${process.execPath}" "${main}" ${command} | head -n 1`], { input: requests, encoding: 'utf8' });
    expect(stderr).toBe('');
    expect(stdout.trimEnd().split('\n')).toHaveLength(1);
  });
});

const hasFullDisk = existsSync('/dev/full');

describe.skipIf(!hasFullDisk)('the disk is full (/dev/full; skipped where there is none)', () => {
  it.each(['list', 'schema fit', '--help', '--version', 'zone 25 p6', 'zone 25 p6 --json', 'batch', 'batch --jobs 2', `job ${pump}`, `shelf ${join(samples, 'shelf.csv')} --for ${pump}`, `record ${pump}`])('%s: says so in one line and ends with 2', (command) => {
    const handle = openSync('/dev/full', 'w');
    const { status, err } = run(command.split(' '), { input: requests, stdout: handle });
    closeSync(handle);
    expect(err).toBe('seatwright: the output could not be written: the disk is full\n');
    expect(status).toBe(2);
  });

  it('a device is not replaced by a file', () => {
    const { status, err } = run(['record', pump, '--date', '2027-01-01', '--out', '/dev/full']);
    expect([status, err]).toEqual([2, 'seatwright: /dev/full: is not a file; nothing was changed\n']);
    expect(statSync('/dev/full').isCharacterDevice()).toBe(true);
  });
});

describe('a record that cannot be written', () => {
  it('no room for all of it: the old one stays whole, nothing is left beside it', () => {
    const folder = mkdtempSync(join(tmpdir(), 'faults-'));
    const file = join(folder, 'pump.json');
    copyFileSync(pump, file);
    // A limit on the size of files stands for a disk that fills up while it is written.
    const { status, stderr } = spawnSync('bash', ['-c', `ulimit -f 2; exec "${process.execPath}" "${main}" record "${file}" --date 2027-01-01 --hours 5000`], { encoding: 'utf8' });
    expect(status).toBe(2);
    expect(stderr).toMatch(/^seatwright: .*pump\.json: [^\n]*nothing was changed\n$/);
    expect(readFileSync(file, 'utf8')).toBe(readFileSync(pump, 'utf8'));
    expect(readdirSync(folder)).toEqual(['pump.json']);
  });

  // The modes of a folder do not hold the superuser back: /sys takes no new file from anyone.
  it.skipIf(!existsSync('/sys/kernel'))('a folder that may not be written: says so', () => {
    const { status, err } = run(['record', pump, '--date', '2027-01-01', '--out', '/sys/pump.json']);
    expect(status).toBe(2);
    expect(err).toMatch(/^seatwright: \/sys\/pump\.json: (may not be written|lies on a read-only disk); nothing was changed\n$/);
  });
});

describe('the clock is wrong', () => {
  const file = join(samples, 'outboard-two-stroke.json');

  it('a day of the work before the last change on record: no day is counted from it, and the sheet says why', () => {
    const { out, status } = run(['job', file, ...outboard, '--as-of', '1970-01-01']);
    expect(status).toBe(0);
    expect(out.replaceAll(/\s+/gu, ' ')).toContain('The day of the work, 1970-01-01, lies before the last change on record, 2025-06-20');
    expect(out).not.toMatch(/about\s+19\d\d/);
    expect(run(['record', file, ...outboard, '--as-of', '1970-01-01']).out).toContain('1970-01-01, lies before the last change on record');
  });

  it('on the day of the last change and after it, a day is told and nothing is said of the clock', () => {
    for (const day of ['2025-06-20', '2026-11-26', '9999-12-31']) {
      const { out } = run(['job', file, ...outboard, '--as-of', day]);
      expect(out).not.toContain('lies before the last change');
      expect(out).toMatch(/DUE AGAIN\n-+\n[^]*\d{4}-\d\d-\d\d/);
    }
  });

  it('a change of a day before the last one is refused: the record only grows', () => {
    const { status, err } = run(['record', file, ...outboard, '--date', '1970-01-01', '--out', join(tmpdir(), 'never-written.json')]);
    expect([status, err]).toEqual([1, 'seatwright: change.date: the record only grows: this day lies before its last change, got "1970-01-01"\n']);
  });

  it('without a day of the work the answer is the same whatever the clock of the machine shows', () => {
    const today = run(['job', file, ...outboard]).out;
    const preload = join(mkdtempSync(join(tmpdir(), 'faults-')), 'clock-at-zero.mjs');
    writeFileSync(preload, 'const Real = Date;\nglobalThis.Date = class extends Real {\n  constructor(...args) { super(...(args.length === 0 ? [0] : args)); }\n  static now() { return 0; }\n};\n');
    const early = spawnSync(process.execPath, ['--import', preload, main, 'job', file, ...outboard], { encoding: 'utf8' }).stdout;
    expect(early).toBe(today);
  });
});

describe('language and time zone of the machine', () => {
  const commands = [['job', join(samples, 'outboard-two-stroke.json'), '--as-of', '2026-11-26'], ['record', join(samples, 'winch-gearbox.json'), '--as-of', '2026-11-26'], ['zone', '25,4 mm', 'js6', '--explain'], ['shelf', join(samples, 'shelf.csv'), '--for', pump]];
  const places = [{ LC_ALL: 'de_DE.UTF-8', LANG: 'de_DE.UTF-8', TZ: 'Europe/Berlin' }, { LC_ALL: 'tr_TR.UTF-8', LANG: 'tr_TR.UTF-8', TZ: 'Asia/Istanbul' }, { LC_ALL: 'ar_EG.UTF-8', LANG: 'ar_EG.UTF-8', TZ: 'Africa/Cairo' }, { LC_ALL: 'C', LANG: 'C', TZ: 'Pacific/Kiritimati' }, { LC_ALL: 'C', TZ: 'Pacific/Pago_Pago' }];

  it.each(commands)('%s: the same to the letter everywhere', (...args) => {
    const here = run(args, { env: { LC_ALL: 'C', TZ: 'UTC' } });
    expect(here.status).toBe(0);
    for (const env of places) expect(run(args, { env })).toEqual(here);
  });
});
