import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import type { JsonObject } from '../../apps/bench/src/document/raw-document.js';
import { backupOf, readBackup } from '../../apps/bench/src/keeping/backup.js';
import { jobIn, linkOf } from '../../apps/bench/src/sharing/share-link.js';
import { attack, inputCount } from './internal/attack.js';
import { bytesOf, textOf } from './internal/spoilt-bytes.js';

const samples = ['bilge-pump', 'old-inch-pump', 'bearing-outboard-crank'].map((name) => readFileSync(new URL(`../../apps/bench/public/samples/${name}.json`, import.meta.url)));
const jobs = samples.map((text) => JSON.parse(text.toString()) as JsonObject);
const linked = async (file: JsonObject) => (await linkOf('https://bench.example/', file)) ?? '';

/** An object in the text, whatever became of it. */
function objectIn(text: string): JsonObject | null {
  try {
    const read: unknown = JSON.parse(text);
    return typeof read === 'object' && read !== null && !Array.isArray(read) ? (read as JsonObject) : null;
  } catch {
    return null;
  }
}

function expectWhole(outcome: { readonly file: unknown } | { readonly fault: string }): void {
  if ('fault' in outcome) expect(outcome.fault).toMatch(/\w/u);
  else expect(outcome.file).toBeTypeOf('object');
}

test('any bytes as a link are a job or a reason', async () => {
  const good = bytesOf(await Promise.all(jobs.map(async (file) => new URL(await linked(file)).hash)));
  await attack(good, async (bytes) => { expectWhole(await jobIn(textOf(bytes))); }, Math.min(inputCount, 200_000));
});

test('any file packed into a link as it should be is a job or a reason', async () => {
  await attack(samples, async (bytes) => {
    const file = objectIn(textOf(bytes));
    const link = file === null ? '' : await linked(file);
    if (link !== '') expectWhole(await jobIn(new URL(link).hash));
  }, Math.min(inputCount, 200_000));
});

test('any bytes as a backup, and any file in one, are taken whole or refused with a reason', async () => {
  const tools = [{ id: 't', revision: 1, addedAt: 1, tool: { kind: 'tube', name: 'Offcut', outsideMm: 34 } }];
  const backup = (file: JsonObject) => backupOf([{ id: 'a', revision: 1, title: 'Bilge pump', file, changedAt: 1 }], tools, '2026-11-02');
  const good = [...bytesOf(await Promise.all(jobs.map(backup))), ...samples];
  await attack(good, async (bytes) => {
    const text = textOf(bytes);
    const file = objectIn(text);
    for (const one of [text, ...(file === null ? [] : [await backup(file)])]) {
      const contents = await readBackup(one);
      if ('fault' in contents) expect(contents.fault).toMatch(/\w/u);
      else for (const sheet of contents.sheets) expect(sheet.file).toBeTypeOf('object');
    }
  }, Math.min(inputCount, 200_000));
});
