import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { readRows } from '../../apps/cli/src/internal/read-rows.js';
import { attack, inputCount } from './internal/attack.js';

test('any bytes as a list give rows or a reason: never a crash, a hang or a row on the wrong line', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'seatwright-'));
  const good = [readFileSync(new URL('../../apps/bench/public/samples/shelf.csv', import.meta.url)), Buffer.from('shaft,outside\n"20","35"\r\n"a ""quoted"" one",1\n')];
  const file = join(folder, 'list.csv');
  try {
    await attack(good, async (given) => {
      const bytes = Buffer.from(given);
      writeFileSync(file, bytes);
      const lineCount = bytes.toString().split(/\r\n|\n|\r/u).length;
      const rows: number[] = [];
      const bad: number[] = [];
      try {
        for await (const { line, cells } of readRows(file, (where) => bad.push(where))) {
          rows.push(line);
          expect(cells.every((cell) => typeof cell === 'string')).toBe(true);
        }
        for (const lines of [rows, bad]) {
          expect(lines.toSorted((a, b) => a - b)).toEqual(lines);
          expect(lines.every((line) => line >= 1 && line <= lineCount)).toBe(true);
        }
      } catch (error) {
        expect((error as Error).message).toMatch(/not a text file/u);
      }
    }, Math.min(inputCount, 50_000));
  } finally {
    rmSync(folder, { recursive: true });
  }
});
