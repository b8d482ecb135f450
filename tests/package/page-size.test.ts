import { readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { brotliCompressSync, gzipSync } from 'node:zlib';
import { expect, test } from 'vitest';
import { holdAndDrawWords } from '../../packages/core/src/wording/english/hold-and-draw.js';
import { leakWords } from '../../packages/core/src/wording/english/leaks.js';
import { measuresWords } from '../../packages/core/src/wording/english/measures.js';
import { sizesAndHeatWords } from '../../packages/core/src/wording/english/sizes-and-heat.js';
import { takingApartWords } from '../../packages/core/src/wording/english/taking-apart.js';
import { root } from './internal/consumer.js';

const dist = join(root, 'apps/bench/dist');
const recordPath = new URL('./page-size.json', import.meta.url);
const recorded = JSON.parse(readFileSync(recordPath, 'utf8')) as Record<string, number>;
const mayGrowBy = 500;
const mayShrinkBy = 2000;

/** A chunk with every chunk that it cannot start without. */
function withImports(name: string, seen = new Set<string>()): ReadonlySet<string> {
  if (seen.has(name)) return seen;
  seen.add(name);
  const text = readFileSync(join(dist, 'assets', name), 'utf8');
  for (const [, imported = ''] of text.matchAll(/(?:from|import)\s*"\.\/([\w-]+(?:\.[\w-]+)*\.js)"/gu)) withImports(imported, seen);
  return seen;
}

const assets = readdirSync(join(dist, 'assets'));
const chunk = (start: string) => assets.find((name) => name.startsWith(`${start}-`) && name.endsWith('.js')) ?? '';
const files = (names: Iterable<string>) => [...names].map((name) => readFileSync(join(dist, name)));
const first = ['index.html', ...assets.filter((name) => name.endsWith('.css')).map((name) => `assets/${name}`), ...[...withImports(chunk('index'))].map((name) => `assets/${name}`)];
const sealJob = new Set([...first, ...[...withImports(chunk('seal-job'))].map((name) => `assets/${name}`)]);
const bytes = (names: Iterable<string>, size: (file: Buffer) => number) => files(names).reduce((sum, file) => sum + size(file), 0);
const gzip = (file: Buffer) => gzipSync(file, { level: 9 }).length;
const brotli = (file: Buffer) => brotliCompressSync(file).length;

const measured: Record<string, number> = {
  'first screen, gzip': bytes(first, gzip),
  'all that a seal job needs, gzip': bytes(sealJob, gzip),
  'all that a seal job needs, brotli': bytes(sealJob, brotli),
  'what German adds to it, brotli': bytes([`assets/${chunk('german-sentences')}`, ...assets.filter((name) => /^german-(?!later|sentences)[\w-]+\.js$/u.test(name)).map((name) => `assets/${name}`)], brotli),
  'the same with the sentences that are seldom said, brotli': bytes([...sealJob, `assets/${chunk('later-words')}`], brotli),
  'kept for offline, raw': bytes([...readFileSync(join(dist, 'sw.js'), 'utf8').matchAll(/url:"([^"]+)"/gu)].map(([, url = '']) => url), (file) => file.length),
};

test.each(Object.keys(measured))('%s: no heavier than recorded', (name) => {
  const size = measured[name] ?? 0;
  if (process.env['REGEN'] !== undefined) return;
  const known = recorded[name] ?? 0;
  expect(size, `grew from ${known} to ${size} bytes; if that is meant: REGEN=1, and say why`).toBeLessThanOrEqual(known + mayGrowBy);
  expect(size, `shrank from ${known} to ${size} bytes: record it with REGEN=1`).toBeGreaterThanOrEqual(known - mayShrinkBy);
});

test('what is kept for offline stays within 900 kB', () => {
  expect(measured['kept for offline, raw']).toBeLessThanOrEqual(900_000);
});

test('the first load holds nothing heavy', () => {
  if (process.env['REGEN'] !== undefined) writeFileSync(recordPath, `${JSON.stringify(measured, null, 2)}\n`);
  const text = files(first).join('\n');
  for (const stranger of ['lusolve', 'createUnit', 'iso-286-1', 'papaparse', 'scaleLinear']) expect(text).not.toContain(stranger);
  expect(files(sealJob).join('\n')).not.toMatch(/iso-5753-1-clearance|ring-stack|Papa/u);
});

test('what the page keeps no words for, it does not say', () => {
  const scripts = assets.filter((name) => name.endsWith('.js')).map((name) => readFileSync(join(dist, 'assets', name), 'utf8')).join('\n');
  const codes = [holdAndDrawWords, leakWords, measuresWords, sizesAndHeatWords, takingApartWords].flatMap((words) => Object.values(words).flatMap((group) => Object.keys(group)));
  expect(codes.length).toBeGreaterThan(100);
  expect(codes.filter((code) => ['`', '"', "'"].some((quote) => scripts.includes(`${quote}${code}${quote}`)))).toEqual([]);
});
