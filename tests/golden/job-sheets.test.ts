import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { tablesEdition } from '@seatwright/core';
import { jobSheet, positionsOf, readWorkshopFile } from '@seatwright/core/job';
import { english, jobSheetDocument, writeText } from '@seatwright/core/wording';
import { expectWorkingHolds } from '../laws/internal/evaluate-working.js';

/** Every sample in, its job sheets out. `REGEN=1` rewrites them; the diff is what gets reviewed. */
const samples = new URL('../../apps/bench/public/samples/', import.meta.url);
const out = new URL('./out/', import.meta.url);
const asOfDate = '2026-03-02';

for (const file of readdirSync(samples).filter((name) => name.endsWith('.json'))) {
  const text = readFileSync(new URL(file, samples), 'utf8');

  test(`${file}: the job sheets are as reviewed`, () => {
    const { workshop } = readWorkshopFile(text);
    const sheets = positionsOf(workshop).map(({ machine, position }) => {
      const output = jobSheet.run({ workshop: JSON.parse(text) as unknown, machine: machine.name, position: position.name, asOfDate });
      return writeText(jobSheetDocument(output, english, { lengthUnit: workshop.lengthUnit ?? 'mm', decimalMark: '.' }));
    });
    // Another edition of the tables is told on every sheet; what it changes shows in the numbers.
    const written = sheets.join('\n\n').replaceAll(tablesEdition, 'EDITION');
    const target = new URL(file.replace('.json', '.txt'), out);
    if (process.env['REGEN'] !== undefined) writeFileSync(target, written);
    expect(written).toBe(readFileSync(target, 'utf8'));
    expect(written).not.toMatch(/NaN|undefined|Infinity|\{[a-zA-Z]+\}/);
  });

  test(`${file}: the working holds`, () => {
    for (const { machine, position } of positionsOf(readWorkshopFile(text).workshop)) {
      const input = { workshop: JSON.parse(text) as unknown, machine: machine.name, position: position.name };
      expectWorkingHolds(jobSheet.explain(input, jobSheet.run(input)));
    }
  });
}

test('the samples tell all four verdicts', () => {
  const verdicts = readdirSync(samples)
    .filter((name) => name.endsWith('.json'))
    .flatMap((file) => {
      const text = readFileSync(new URL(file, samples), 'utf8');
      return positionsOf(readWorkshopFile(text).workshop).map(({ machine, position }) => jobSheet.run({ workshop: JSON.parse(text) as unknown, machine: machine.name, position: position.name }).verdict);
    });
  expect(new Set(verdicts)).toEqual(new Set(['suits', 'suits with care', 'cannot tell', 'does not suit']));
});
