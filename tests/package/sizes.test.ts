import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { rolldown } from 'rolldown';
import { beforeAll, expect, test } from 'vitest';
import { makeConsumer, type Consumer } from './internal/consumer.js';

/** What whoever imports just this pays for, bundled and minified, in bytes after gzip; zod and lit count where they are used. */
const entries = {
  'one fit': "import { fit } from '@seatwright/core/tolerance'; console.log(fit);",
  'one zone': "import { toleranceZone } from '@seatwright/core/tolerance'; console.log(toleranceZone);",
  'lip speed': "import { lipSpeed } from '@seatwright/core/seal'; console.log(lipSpeed);",
  'press joint': "import { pressJoint } from '@seatwright/core/joint'; console.log(pressJoint);",
  'seal check': "import { sealCheck } from '@seatwright/core/seal'; console.log(sealCheck);",
  'bearing seat': "import { bearingSeat } from '@seatwright/core/bearing'; console.log(bearingSeat);",
  'sheet of a seal': "import { sealSheet } from '@seatwright/core/job'; console.log(sealSheet);",
  'whole job sheet': "import { jobSheet } from '@seatwright/core/job'; console.log(jobSheet);",
  'every calculation': "import { calculations } from '@seatwright/core/registry'; console.log(calculations);",
  'parse a length': "import { parseLength } from '@seatwright/core/quantity'; console.log(parseLength);",
  'the edition': "import { tablesEdition } from '@seatwright/core'; console.log(tablesEdition);",
  'English words': "import { english } from '@seatwright/core/wording'; console.log(english);",
  'a length field': "import '@seatwright/elements/seat-length-field.define.js';",
  'the section drawing': "import '@seatwright/elements/seat-section.define.js';",
  'all elements': "import '@seatwright/elements/all.js';",
} as const;
type Entry = keyof typeof entries;

/** What must not come along: marks that only those parts have. */
const strangers: Partial<Record<Entry, readonly RegExp[]>> = {
  'one fit': [/mathjs|lusolve/u, /iso-5753-1-clearance|iso-15-deep-groove/u, /sheet-metal-pilot-holes|'tubes'/u],
  'lip speed': [/mathjs/u, /iso-5753-1-clearance|iso-286-1-hole-deviations/u],
  'parse a length': [/iso-286|strictObject/u],
  'the edition': [/iso-286|strictObject/u],
  'sheet of a seal': [/mathjs/u, /iso-5753-1-clearance|iso-492-radial|seat-repair|ring-stack/u],
  'a length field': [/mathjs/u, /iso-5753-1-clearance|driver-search/u],
};

const recordPath = new URL('./size.json', import.meta.url);
const recorded = JSON.parse(readFileSync(recordPath, 'utf8')) as Record<string, number>;
const measured: Record<string, number> = {};
const mayGrowBy = 200;
const mayShrinkBy = 1000;

let consumer: Consumer;
beforeAll(() => { consumer = makeConsumer(); }, 120_000);

async function bundled(code: string): Promise<string> {
  const input = join(consumer.folder, 'entry.mjs');
  writeFileSync(input, code);
  const bundle = await rolldown({ input, platform: 'browser', logLevel: 'silent' });
  const { output } = await bundle.generate({ minify: true, codeSplitting: false });
  await bundle.close();
  return output[0].code;
}

test.each(Object.entries(entries))('%s brings what it uses and no more', async (name, code) => {
  const text = await bundled(code);
  const size = gzipSync(text, { level: 9 }).length;
  measured[name] = size;
  for (const stranger of strangers[name as Entry] ?? []) expect(text).not.toMatch(stranger);
  if (process.env['REGEN'] !== undefined) return;
  const known = recorded[name] ?? 0;
  expect(size, `${name} grew from ${known} to ${size} bytes; if that is meant: REGEN=1, and say why`).toBeLessThanOrEqual(known + mayGrowBy);
  expect(size, `${name} shrank from ${known} to ${size} bytes: record it with REGEN=1`).toBeGreaterThanOrEqual(known - mayShrinkBy);
});

test('the record holds these entries and no others', () => {
  if (process.env['REGEN'] !== undefined) writeFileSync(recordPath, `${JSON.stringify(measured, null, 2)}\n`);
  else expect(Object.keys(recorded)).toEqual(Object.keys(entries));
});
