import fc from 'fast-check';
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import type { JsonObject } from '../document/raw-document.js';
import { carriesJob } from './marks.js';
import { jobIn, linkOf, longestLink } from './share-link.js';

const sample = JSON.parse(readFileSync(new URL('../../public/samples/bilge-pump.json', import.meta.url), 'utf8')) as JsonObject;
const fragmentOf = async (file: JsonObject) => new URL((await linkOf('https://bench.example/page?x=1#old', file)) ?? '').hash;

test('a job comes out of its link as it went in', async () => {
  const link = (await linkOf('https://bench.example/page?x=1#old', sample)) ?? '';
  expect(link).toMatch(/^https:\/\/bench\.example\/page\?x=1#job=1\.[\w-]+$/);
  expect(link.length).toBeLessThan(longestLink);
  expect(carriesJob(new URL(link).hash)).toBe(true);
  expect(await jobIn(new URL(link).hash)).toEqual({ file: sample });
});

test('names in any script, and what was typed, come out as they went in', async () => {
  await fc.assert(fc.asyncProperty(fc.string({ unit: 'grapheme', minLength: 1, maxLength: 60 }), async (name) => {
    const file = { ...sample, name } as JsonObject;
    expect(await jobIn(await fragmentOf(file))).toEqual({ file });
  }), { numRuns: 50 });
});

test('a job too long for a link is none', async () => {
  const noise = Array.from({ length: 4000 }, (_, i) => ((i * 2654435761) >>> 0).toString(36)).join('');
  expect(await linkOf('https://bench.example/', { ...sample, note: noise })).toBeNull();
});

test('a link that was cut, changed, made by a newer page or by somebody else changes nothing and says why', async () => {
  const fragment = await fragmentOf(sample);
  for (const broken of [fragment.slice(0, -8), fragment.slice(0, 40), `${fragment.slice(0, 60)}A${fragment.slice(61)}`, '#job=', '#job=1.', '#job=1.!!', '#job=x.abc', `${fragment}.abc`, fragment.replace('1.', '1.AAAA')]) {
    expect(await jobIn(broken)).toEqual({ fault: expect.stringMatching(/link/u) as string });
  }
  expect(await jobIn(fragment.replace('=1.', '=2.'))).toEqual({ fault: expect.stringMatching(/newer/u) as string });
});

test('what unpacks to more than a job can be is refused before it fills the memory', async () => {
  const bomb = await fragmentOf({ format: 'seatwright', filling: 'a'.repeat(3_000_000) });
  expect(await jobIn(bomb)).toEqual({ fault: expect.stringMatching(/more than/u) as string });
});

test('a packed file that is no workshop file, or bears foreign keys, does no harm', async () => {
  expect(await jobIn(await fragmentOf({ format: 'other' }))).toHaveProperty('fault');
  const foreign = JSON.parse('{"format":"seatwright","version":1,"__proto__":{"polluted":true},"machines":[{"name":"a","positions":[{"name":"b","parts":[{"kind":"seal"}]}]}]}') as JsonObject;
  expect(await jobIn(await fragmentOf(foreign))).toHaveProperty('file');
  expect(({} as { polluted?: boolean }).polluted).toBeUndefined();
});

test('spoilt letters never give anything but a job or a reason', async () => {
  const fragment = await fragmentOf(sample);
  await fc.assert(fc.asyncProperty(fc.nat(fragment.length - 1), fc.string({ maxLength: 6 }), async (at, by) => {
    const outcome = await jobIn(`#job=${fragment.slice(5, at)}${by}${fragment.slice(at + by.length)}`);
    expect('file' in outcome ? outcome.file : outcome.fault).toBeTruthy();
  }), { numRuns: 300 });
});
