import { copyFileSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import { job } from '../../apps/cli/src/commands/job.js';
import { record } from '../../apps/cli/src/commands/record.js';
import { run } from '../../apps/cli/src/commands/run.js';
import { schema } from '../../apps/cli/src/commands/schema.js';
import { shelf } from '../../apps/cli/src/commands/shelf.js';
import { fitOf, zone } from '../../apps/cli/src/commands/zone.js';
import { attack, inputCount } from './internal/attack.js';
import { bytesOf, textOf } from './internal/spoilt-bytes.js';

const samples = new URL('../../apps/bench/public/samples/', import.meta.url);
const folder = mkdtempSync(join(tmpdir(), 'seatwright-'));
const workshop = join(folder, 'workshop.json');
const list = join(folder, 'shelf.csv');
let written = '';

beforeAll(() => {
  copyFileSync(new URL('bilge-pump.json', samples), workshop);
  copyFileSync(new URL('shelf.csv', samples), list);
  vi.spyOn(process.stdout, 'write').mockImplementation((text) => {
    written += String(text);
    return true;
  });
});
afterAll(() => {
  vi.restoreAllMocks();
  rmSync(folder, { recursive: true });
});

/** What the commands make of one argument; none of them asks for standard input or writes a file. */
const commands: readonly (readonly [name: string, good: readonly string[], call: (argument: string) => Promise<void>, most: number])[] = [
  ['zone', ['25 p6', '1 3/8 in h11', '3150 IT01', '0.5 JS18'], (designation) => zone(designation, {}), Infinity],
  ['fit', ['25 H7/p6', '1 in H7/p6', '3/4 FN2', '0.5 RC5'], (designation) => fitOf(designation, { json: true }), Infinity],
  ['schema', ['fit', 'workshop-file', 'seal-check'], (name) => schema(name), 2000],
  ['run', ['fit', 'lip-speed', 'press-joint'], (name) => run(name, { input: workshop }), 20_000],
  ['run --input', [workshop, list], (input) => run('lip-speed', { input: notStandardInput(input) }), 20_000],
  ['job', [workshop, list], (file) => job(notStandardInput(file), {}), 20_000],
  ['job --position', ['pump shaft, motor side', 'impeller side'], (position) => job(workshop, { position }), 20_000],
  ['job --as-of', ['2026-11-02', '2024-02-29'], (asOf) => job(workshop, { asOf }), 20_000],
  ['job --format', ['text', 'markdown', 'html'], (format) => job(workshop, { format }), 20_000],
  ['job --language', ['en', 'de'], (language) => job(workshop, { language }), 20_000],
  ['shelf --best', ['10', '1000'], (best) => shelf(list, { for: workshop, best }), 5000],
  ['shelf --part', ['1', 'motor side'], (part) => shelf(list, { for: workshop, part }), 5000],
  ['shelf --column', ['shaft=d', 'outside=D', 'width=Width'], (column) => shelf(list, { for: workshop, column: [column] }), 5000],
  ['shelf --unit', ['mm', 'in'], (unit) => shelf(list, { for: workshop, unit }), 5000],
  ['record --as-of', ['2026-11-02', '2024-02-29'], (asOf) => record(workshop, { asOf }), 20_000],
  ['record --date', ['2026-11-02', '2024-02-29'], (date) => record(notStandardInput(join(folder, 'none.json')), { date, out: '-' }), 20_000],
];

/** The fuzzer has no hands to type with. */
function notStandardInput(file: string): string {
  return file === '-' ? './-' : file;
}

test.each(commands)('any bytes behind "%s" are answered or refused in words', async (_, good, call, most) => {
  await attack(bytesOf(good), async (bytes) => {
    // No argument of a program can hold a null byte.
    const argument = textOf(bytes).replaceAll('\0', '');
    written = '';
    try {
      await call(argument);
      if (!/NaN|Infinity|undefined|object/u.test(argument)) expect(written).not.toMatch(/NaN|Infinity|undefined|\[object/u);
    } catch (error) {
      expect((error as object).constructor.name).toMatch(/^(?:Error|CalculationError)$/u);
      expect((error as Error).message).not.toMatch(/undefined|\[object|Cannot read|is not a function/u);
    }
  }, Math.min(inputCount, most));
});

test('the workshop file is as it was', () => {
  expect(readFileSync(workshop)).toEqual(readFileSync(new URL('bilge-pump.json', samples)));
});
