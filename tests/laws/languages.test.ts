import { describe, expect, test } from 'vitest';
import { english, german, placeholdersOf } from '@seatwright/core/wording';
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
