import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeAll, expect, test } from 'vitest';

const main = new URL('../../apps/cli/dist/main.js', import.meta.url).pathname;
const samples = new URL('../../apps/bench/public/samples/', import.meta.url).pathname;
const folder = mkdtempSync(join(tmpdir(), 'seatwright-'));

beforeAll(() => {
  if (!existsSync(main)) throw new Error('apps/cli/dist is missing: run `npm run build` first');
});

function seatwright(args: readonly string[], input = ''): { readonly code: number | null; readonly out: string; readonly err: string } {
  const { status, stdout, stderr } = spawnSync(process.execPath, [main, ...args], { input, encoding: 'utf8', maxBuffer: 1 << 28 });
  return { code: status, out: stdout, err: stderr };
}

function file(name: string, content: string | Uint8Array): string {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
}

const linesOf = (out: string) => out.trimEnd().split('\n').map((line) => JSON.parse(line) as { ok: boolean; id?: unknown; line?: number; output?: Record<string, unknown>; error?: { code: string; path: string; message: string }; working?: unknown[] });

test('the demo job answers and ends with 0', () => {
  const { code, out, err } = seatwright(['job', join(samples, 'bilge-pump.json')]);
  expect(err).toBe('');
  expect(code).toBe(0);
  expect(out).toContain('SUITS');
  expect(out).toContain('eye protection');
  expect(out).toContain('advises; it does not certify');
});

test('positions of one name each have their sheet when all are asked for', () => {
  const position = (boreMm: number) => ({ name: 'motor side', bore: { diameterMm: boreMm }, parts: [{ kind: 'seal', shaftMm: 20, outsideMm: boreMm, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' }] });
  const twins = file('twins.json', JSON.stringify({ format: 'seatwright', version: 1, machines: [{ name: 'pump', positions: [position(35), position(40)] }] }));
  const { code, out } = seatwright(['job', twins, '--json']);
  expect(code).toBe(0);
  expect(linesOf(out).map(({ output }) => (output?.['parts'] as { name: string }[])[0]?.name)).toEqual(['20 × 35 × 7', '20 × 40 × 7']);
  expect(linesOf(seatwright(['job', twins, '--json', '--machine', 'Pump']).out)).toHaveLength(2);
  expect(seatwright(['job', twins, '--position', 'motor side']).err).toMatch(/stands 2 times/u);
});

test('one position by name; an unknown name lists those there are', () => {
  expect(seatwright(['job', join(samples, 'outboard-two-stroke.json'), '--position', 'crank, drive side']).out).toContain('crank, drive side');
  const { code, err } = seatwright(['job', join(samples, 'outboard-two-stroke.json'), '--position', 'nowhere']);
  expect(code).toBe(1);
  expect(err).toContain('"crank, flywheel side", "crank, drive side"');
});

test('sheets as Markdown, HTML and JSON', () => {
  const sample = join(samples, 'does-not-suit.json');
  expect(seatwright(['job', sample, '--format', 'markdown']).out).toMatch(/^# Job sheet/);
  expect(seatwright(['job', sample, '--format', 'html']).out).toContain('<!doctype html>');
  expect(linesOf(seatwright(['job', sample, '--json']).out)[0]?.output?.['verdict']).toBe('does not suit');
  expect(seatwright(['job', sample, '--format', 'wax']).code).toBe(2);
});

test('short commands for daily use', () => {
  expect(seatwright(['zone', '25 p6']).out).toContain('upper limit deviation: 35');
  expect(seatwright(['fit', '25', 'H7/p6']).out).toContain('interference');
  expect(seatwright(['fit', '3/4 in FN2']).out).toContain('interference');
  expect(seatwright(['fit', '3/4', 'FN9']).code).toBe(1);
  expect(seatwright(['zone', '25 q6']).code).toBe(1);
  expect(seatwright(['list']).out).toContain('lip-speed');
  expect(JSON.parse(seatwright(['schema', 'lip-speed']).out)).toHaveProperty('input.properties.shaftDiameterMm.unit', 'mm');
  expect(JSON.parse(seatwright(['schema', 'workshop-file']).out)).toHaveProperty('properties.machines');
});

test('batch keeps order, carries ids, explains on demand, and goes on after a bad line', () => {
  const requests = [
    '{"calc":"lip-speed","input":{"shaftDiameterMm":20,"speedRpm":7800},"id":"a","explain":true}',
    'not json',
    '{"calc":"tolerance-zone","input":{"nominalMm":25,"toleranceClass":"p6"},"id":2}',
    '{"calc":"nothing","input":{}}',
    '{"calc":"lip-speed","input":{"shaftDiameterMm":-1,"speedRpm":1}}',
    '{"calc":"lip-speed","input":{"shaftDiameterMm":20,"speedRpm":1,"colour":1}}',
    '[1]',
  ];
  const { code, out } = seatwright(['batch'], `${requests.join('\n')}`);
  const lines = linesOf(out);
  expect(code).toBe(1);
  expect(lines.map((line) => line.ok)).toEqual([true, false, true, false, false, false, false]);
  expect(lines[0]).toMatchObject({ id: 'a', output: { peripheralSpeedMps: expect.closeTo(8.168, 3) as number } });
  expect(lines[0]?.working).toHaveLength(1);
  expect(lines[1]).toMatchObject({ line: 2, error: { code: 'invalid-input' } });
  expect(lines[2]).toMatchObject({ id: 2, output: { upperLimitDeviationUm: 35, lowerLimitDeviationUm: 22 } });
  expect(lines[3]?.error?.path).toBe('calc');
  expect(lines[4]?.error?.path).toBe('shaftDiameterMm');
  expect(lines[5]?.error).toMatchObject({ path: 'colour' });
  expect(seatwright(['batch'], requests[2]).code).toBe(0);
});

test.each([
  ['a missing file', () => ['job', join(folder, 'none.json')], 2, /no such file/],
  ['a folder', () => ['job', folder], 2, /is a folder/],
  ['an empty file', () => ['job', file('empty.json', '')], 1, /empty/],
  ['malformed JSON', () => ['job', file('bad.json', '{\n  "format": "seatwright",\n  oops\n}')], 1, /line 3/],
  ['a binary file', () => ['job', file('binary.json', new Uint8Array([0, 1, 2, 255, 254, 0]))], 2, /not a text file/],
  ['a 50 MB file', () => ['job', file('large.json', new Uint8Array(50 * 1024 * 1024).fill(32))], 2, /at most 32 MiB/],
  ['a foreign file', () => ['job', file('foreign.json', '{"a":1}')], 1, /not a workshop file/],
  ['a newer file', () => ['job', file('newer.json', '{"format":"seatwright","version":9,"machines":[]}')], 1, /newer version/],
  ['a wrong unit', () => ['run', 'lip-speed', '--input', file('unit.json', '{"shaftDiameterMm":"20 bar","speedRpm":1}')], 1, /shaftDiameterMm: "bar" is a unit of pressure/],
  ['a negative size', () => ['run', 'lip-speed', '--input', file('negative.json', '{"shaftDiameterMm":-3,"speedRpm":1}')], 1, /shaftDiameterMm: expected over 0/],
  ['a size outside the table', () => ['run', 'tolerance-zone', '--input', file('size.json', '{"nominalMm":4000,"toleranceClass":"h7"}')], 1, /nominalMm/],
  ['an unknown class', () => ['run', 'tolerance-zone', '--input', file('class.json', '{"nominalMm":20,"toleranceClass":"t6"}')], 1, /toleranceClass/],
  ['a size below zero in a zone', () => ['zone', '-3 h7'], 1, /nominalMm: expected over 0/],
  ['a size below zero in a fit', () => ['fit', '-3 H7/h6'], 1, /nominalMm: expected over 0/],
  ['a size outside the table in a fit', () => ['fit', '9999 H7/p6'], 1, /nominalMm: expected over 0, up to and including 3150 mm/],
  ['an unknown class in a zone', () => ['zone', '25 zz7'], 1, /toleranceClass: expected a letter and a grade/],
  ['an unknown class in a fit', () => ['fit', '25 H7/q6'], 1, /shaft/],
  ['a wrong unit in a zone', () => ['zone', '25 bar h7'], 1, /"bar" is a unit of pressure/],
  ['a binary file to run', () => ['run', 'lip-speed', '--input', file('binary-run.json', new Uint8Array([0, 1, 2, 255, 254, 0]))], 2, /not a text file/],
  ['a 50 MB file to run', () => ['run', 'lip-speed', '--input', file('large-run.json', new Uint8Array(50 * 1024 * 1024).fill(32))], 2, /at most 32 MiB/],
  ['malformed JSON to run', () => ['run', 'lip-speed', '--input', file('bad-run.json', '{oops')], 1, /not JSON/],
  ['an unknown field to run', () => ['run', 'lip-speed', '--input', file('field.json', '{"shaftDiameterMm":20,"speedRpm":1,"colour":1}')], 1, /colour: unknown field/],
  ['a schema of nothing', () => ['schema', 'nothing'], 2, /no calculation "nothing"/],
  ['a wrong unit in a workshop file', () => ['job', file('unit-job.json', JSON.stringify({ format: 'seatwright', version: 1, machines: [{ name: 'm', positions: [{ name: 'p', parts: [{ kind: 'seal', shaftMm: '20 bar', outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' }] }] }] }))], 1, /machines\[0\]\.positions\[0\]\.parts\[0\]\.shaftMm: "bar" is a unit of pressure/],
  ['a negative size in a workshop file', () => ['job', file('negative-job.json', JSON.stringify({ format: 'seatwright', version: 1, machines: [{ name: 'm', positions: [{ name: 'p', parts: [{ kind: 'seal', shaftMm: -20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' }] }] }] }))], 1, /parts\[0\]\.shaftMm: expected over 0/],
  ['an unknown calculation', () => ['run', 'nothing', '--input', file('x.json', '{}')], 2, /no calculation "nothing"/],
  ['an unknown option', () => ['job', '--colour'], 2, /unknown option/],
] as const)('%s: one clear message, no stack trace', (_, args, code, message) => {
  const answer = seatwright(args());
  expect(answer.code).toBe(code);
  expect(answer.err).toMatch(message);
  expect(answer.err).not.toMatch(/\n {4}at /);
});
