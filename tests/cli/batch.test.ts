import { spawn, spawnSync } from 'node:child_process';
import { expect, test } from 'vitest';

const main = new URL('../../apps/cli/dist/main.js', import.meta.url).pathname;

const request = (i: number) => JSON.stringify({ calc: i % 7 === 3 ? 'nothing' : 'tolerance-zone', input: { nominalMm: 1 + (i % 600), toleranceClass: i % 2 === 0 ? 'h7' : 'P7' }, id: i });
const requests = Array.from({ length: 20_000 }, (_, i) => request(i)).join('\n');

function batch(args: readonly string[], input: string): { readonly code: number | null; readonly out: string; readonly err: string } {
  const { status, stdout, stderr } = spawnSync(process.execPath, [main, 'batch', ...args], { input, encoding: 'utf8', maxBuffer: 1 << 28 });
  return { code: status, out: stdout, err: stderr };
}

test('any number of threads gives the same lines in the same order', () => {
  const alone = batch([], requests);
  expect(alone.code).toBe(1);
  expect(alone.out.trimEnd().split('\n').map((line) => (JSON.parse(line) as { id: number }).id)).toEqual(Array.from({ length: 20_000 }, (_, i) => i));
  expect(batch(['--jobs', '3'], requests)).toEqual(alone);
});

test.each(['0', '-1', '1.5', 'many', '65', ''])('--jobs %j is refused and says what would do', (jobs) => {
  const { code, err } = batch([`--jobs=${jobs}`], '');
  expect(code).toBe(2);
  expect(err).toMatch(/--jobs/);
});

test('blank lines count but get no answer; a byte order mark and Windows line ends are passed over', () => {
  const { code, out } = batch([], `\uFEFF${request(0)}\r\n\r\n   \nnot json\r\n`);
  const lines = out.trimEnd().split('\n').map((line) => JSON.parse(line) as { ok: boolean; line?: number });
  expect(code).toBe(1);
  expect(lines.map(({ ok, line }) => [ok, line])).toEqual([[true, undefined], [false, 4]]);
});

test('a stream of binary noise is answered line by line and ends with 1', () => {
  const noise = Buffer.from(Array.from({ length: 50_000 }, (_, i) => (i * 7919 + (i >> 3)) % 256));
  const { status, stdout } = spawnSync(process.execPath, [main, 'batch'], { input: noise, encoding: 'utf8', maxBuffer: 1 << 28 });
  expect(status).toBe(1);
  for (const line of stdout.trimEnd().split('\n')) expect(JSON.parse(line)).toMatchObject({ ok: false, error: { code: 'invalid-input' } });
});

test.each([[[]], [['--jobs', '2']]])('a reader that goes away early ends the run quietly %j', async (args: readonly string[]) => {
  const child = spawn(process.execPath, [main, 'batch', ...args], { stdio: ['pipe', 'pipe', 'pipe'] });
  let err = '';
  child.stderr.on('data', (piece: Buffer) => (err += piece.toString()));
  child.stdin.on('error', () => undefined);
  child.stdout.once('data', () => child.stdout.destroy());
  for (let i = 0; i < 40; i += 1) child.stdin.write(`${requests}\n`);
  child.stdin.end();
  await new Promise((resolve) => child.once('exit', resolve));
  expect(err).toBe('');
});

test('answers come while the input is still open', async () => {
  const child = spawn(process.execPath, [main, 'batch'], { stdio: ['pipe', 'pipe', 'inherit'] });
  child.stdin.write(`${request(0)}\n`);
  const first = await new Promise<Buffer>((resolve) => child.stdout.once('data', resolve));
  expect(JSON.parse(first.toString())).toMatchObject({ id: 0, ok: true });
  child.stdin.end();
  expect(await new Promise((resolve) => child.once('exit', resolve))).toBe(0);
});
