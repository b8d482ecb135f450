import { describe, expect, test } from 'vitest';
import * as z from 'zod';
import { workshopFileField } from '@seatwright/core/job';
import { english, german, placeholdersOf, wordFor } from '@seatwright/core/wording';
import { englishWords, germanWords } from '@seatwright/elements/words.js';
import { english as englishPage } from '../../apps/bench/src/words/english.js';
import { german as germanPage } from '../../apps/bench/src/words/german.js';

/** Every text of a catalogue, by its path. */
function textsOf(words: unknown, path = ''): ReadonlyMap<string, string> {
  if (typeof words === 'string') return new Map([[path, words]]);
  return new Map(Object.entries(words as Readonly<Record<string, unknown>>).flatMap(([key, inner]) => [...textsOf(inner, path === '' ? key : `${path} / ${key}`)]));
}

/** What is one language's own: the names of things that English takes from the tables, units, its mark, its tag. */
const own = /^(?:names|units) \/|^(?:language|decimalMark|dates)$/u;

describe.each([
  ['sheets', english, german],
  ['elements', englishWords, germanWords],
  ['page', englishPage, germanPage],
] as const)('German of the %s', (_, inEnglish, inGerman) => {
  const one = new Map([...textsOf(inEnglish)].filter(([path]) => !own.test(path)));
  const other = new Map([...textsOf(inGerman)].filter(([path]) => !own.test(path)));

  test('has every text that English has, and no other', () => {
    expect([...other.keys()].sort()).toEqual([...one.keys()].sort());
  });

  test('takes the same parameters in each text', () => {
    // What stands twice, as in `{count} {count|screw|screws}`, may stand once in the other language.
    const parametersOf = (text: string) => [...new Set(placeholdersOf(text))].sort();
    for (const [path, text] of one) expect({ path, takes: parametersOf(other.get(path) ?? '') }).toEqual({ path, takes: parametersOf(text) });
  });

  test('leaves no text empty, and no English sentence as it is', () => {
    const isSentence = (text: string) => /\b(?:the|is|of|and|to|with|it|are|not)\b/u.test(text.replace(/\{[^}]*\}/gu, ''));
    for (const [path, text] of other) {
      expect(text.trim(), path).not.toBe('');
      if (isSentence(one.get(path) ?? '')) expect(text, path).not.toBe(one.get(path));
    }
  });
});

/** Labels and choices of a schema, however deep. */
function saidBy(schema: unknown): { readonly labels: ReadonlySet<string>; readonly choices: ReadonlySet<string> } {
  const labels = new Set<string>();
  const choices = new Set<string>();
  const look = (node: unknown): void => {
    if (typeof node !== 'object' || node === null) return;
    const { label, enum: values } = node as { readonly label?: unknown; readonly enum?: unknown };
    if (typeof label === 'string') labels.add(label);
    if (Array.isArray(values)) for (const value of values) if (typeof value === 'string') choices.add(value);
    for (const inner of Object.values(node)) look(inner);
  };
  look(schema);
  return { labels, choices };
}

test('each field of a workshop file, and each choice in it, has a German name', () => {
  const { labels, choices } = saidBy(z.toJSONSchema(workshopFileField, { io: 'input', unrepresentable: 'any' }));
  expect(labels.size).toBeGreaterThan(50);
  expect([...labels].filter((label) => wordFor(label, german) === label)).toEqual([]);
  // Of the words only a unit is said alike in both.
  expect([...choices].filter((choice) => /^[a-z][a-z -]*$/u.test(wordFor(choice, german)) && wordFor(choice, german) === choice)).toEqual(['mm']);
});
