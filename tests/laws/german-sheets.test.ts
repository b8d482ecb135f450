import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { jobSheet, positionsOf, readWorkshopFile } from '@seatwright/core/job';
import { english, german, jobSheetDocument, styleOf, wordFor, writeText } from '@seatwright/core/wording';

const folder = new URL('../../apps/bench/public/samples/', import.meta.url);
const samples = readdirSync(folder).filter((name) => name.endsWith('.json'));

/** Every text that somebody typed into the file: names stay in the language of who gave them. */
function typedIn(value: unknown): readonly string[] {
  if (typeof value === 'string') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(typedIn) : [];
}

/** Pieces of English sentences between their parameters, long enough to be nobody else's. */
const pieces = [english.findings, english.steps, english.cautions, english.notChecked, english.assumed, english.effects, english.readings, english.labels, english.values]
  .flatMap(typedIn)
  .flatMap((text) => text.split(/\{[^}]*\}/u))
  .map((piece) => piece.trim())
  .filter((piece) => /\w+ \w+/u.test(piece) && piece.length >= 10 && !typedIn(german).some((text) => text.includes(piece)));

const smallWords = /\b(?:the|of|and|with|to|is|not|from|by|for|or|at|than|as|on|it|be|are|has|after|inner|outer|ring only|table|clause)\b/u;

test('there is something to look for', () => {
  expect(samples.length).toBeGreaterThan(8);
  expect(pieces.length).toBeGreaterThan(500);
});

describe.each(samples)('the sheet of %s in German', (name) => {
  const text = readFileSync(new URL(name, folder), 'utf8');
  const raw = JSON.parse(text) as unknown;
  const typed = typedIn(raw).filter((one) => one.includes(' ')).sort((a, b) => b.length - a.length);
  const documents = positionsOf(readWorkshopFile(text).workshop).map(({ machine, position }) => {
    const input = { workshop: raw, machine: machine.name, position: position.name, asOfDate: '2026-10-12' };
    const output = jobSheet.run(input);
    return { output, working: jobSheet.explain(jobSheet.parse(input), output), sheet: writeText(jobSheetDocument(output, german, styleOf(german)), 10_000, 'Vorsicht') };
  });

  test('holds no English sentence and no code', () => {
    for (const { sheet } of documents) {
      const ours = typed.reduce((left, one) => left.replaceAll(one, '').replaceAll(one.toUpperCase(), ''), sheet);
      expect(pieces.filter((piece) => ours.includes(piece))).toEqual([]);
      for (const line of ours.split('\n')) {
        expect(line).not.toMatch(smallWords);
        expect(line).not.toMatch(/\{[a-z]|(?<![\w-])[a-z]+-[a-z]+-[a-z]+-[a-z]+(?![\w-])/u);
      }
    }
  });

  test('writes numbers with a comma, days as they are written here', () => {
    for (const { sheet } of documents) {
      const ours = typed.reduce((left, one) => left.replaceAll(one, ''), sheet);
      expect(ours).not.toMatch(/\d{4}-\d{2}-\d{2}/u);
      expect(ours).not.toMatch(/\d\.\d+\s(?:mm|µm|h|N|kN|MPa|m\/s|°C|km|U\/min)/u);
      expect(ours).not.toMatch(/\b(?:rpm|days)\b/u);
    }
  });

  test('names each step of the working', () => {
    for (const { working } of documents) {
      for (const { meaning } of working) expect(wordFor(meaning, german)).not.toMatch(smallWords);
      for (const step of working) if (step.kind === 'choice') expect(wordFor(step.why, german)).not.toMatch(smallWords);
    }
  });
});
