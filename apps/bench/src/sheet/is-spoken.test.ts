import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { jobSheetInSteps } from '@seatwright/core/job';
import { english, german } from '@seatwright/core/wording';
import { samples } from '../samples.js';
import { isSpoken } from './is-spoken.js';

test.each(samples)('where all words are there, the sheet of %s is spoken', (sample) => {
  const workshop = JSON.parse(readFileSync(new URL(`../../public/samples/${sample}.json`, import.meta.url), 'utf8')) as { readonly machines: readonly { readonly name: string; readonly positions: readonly { readonly name: string }[] }[] };
  for (const { name: machine, positions } of workshop.machines) {
    for (const { name: position } of positions) {
      const steps = jobSheetInSteps({ workshop, machine, position, asOfDate: '2026-01-01' });
      let step = steps.next();
      while (step.done !== true) step = steps.next();
      for (const catalogue of [english, german]) expect(isSpoken(step.value, catalogue)).toBe(true);
    }
  }
});

test.each<[string, string, (code: string) => unknown]>([
  ['finding', 'bore-mouth-takes-seal', (code) => ({ findings: [{ code, severity: 'good' }] })],
  ['step', 'out-make-safe', (code) => ({ steps: [{ code, cautions: [] }] })],
  ['caution', 'eye-protection', (code) => ({ steps: [{ code: 'out-make-safe', cautions: [code] }] })],
  ['assumption', 'bore-chamfer-angle', (code) => ({ assumptions: [{ name: code, effect: 'mouth-of-bore' }] })],
  ['effect of an assumption', 'mouth-of-bore', (code) => ({ assumptions: [{ name: 'bore-chamfer-angle', effect: code }] })],
  ['check that was not made', 'bore-depth', (code) => ({ notChecked: ['bore-lead-in', code] })],
  ['source', 'din-3760-1996', (code) => ({ findings: [{ code: 'bore-mouth-takes-seal', severity: 'good', source: { id: code } }] })],
])('a %s without words holds the sheet back', (_sort, known, sheet) => {
  expect(isSpoken({ parts: [sheet(known)] }, english)).toBe(true);
  expect(isSpoken({ parts: [sheet('no-such-code')] }, english)).toBe(false);
});
