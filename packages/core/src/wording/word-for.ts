import { sourceDesignations, sourceTitles } from '../tables/generated/source-titles.js';
import type { Catalogue } from './catalogue.js';

type Words = Pick<Catalogue, 'decimalMark' | 'dayForm' | 'values' | 'names'>;
type Pattern = readonly [pattern: RegExp, parts: readonly string[]];

/** Nothing stands in itself more often than this. */
const deepest = 6;

/**
 * The word for a value, or the name of what stands in the tables in English; the text itself where it needs none.
 * @example wordFor('metal-case', english) // 'metal case'
 */
export function wordFor(text: string, words: Words): string {
  return found(text, words, 0);
}

/**
 * What a source is called: the designation of a standard, and the title in the language.
 * @param id as in a `SourceReference`; one that no list holds is told as it is
 * @example sourceName('din-3760-1996', english) // 'DIN 3760:1996, Rotary shaft lip type seals'
 */
export function sourceName(id: string, words: Words): string {
  const title = wordFor(sourceTitles[id] ?? id, words);
  const designation = sourceDesignations[id];
  return designation === undefined ? title : `${designation}, ${title}`;
}

/**
 * A calendar day as a language writes it; any other text as it is.
 * @example writeDay('2027-03-09', '{day}.{month}.{year}') // '09.03.2027'
 */
export function writeDay(day: string, dayForm: string): string {
  const [whole, year, month, ofMonth] = /^(\d{4})-(\d{2})-(\d{2})$/u.exec(day) ?? [];
  return whole === undefined ? day : dayForm.replace('{year}', year ?? '').replace('{month}', month ?? '').replace('{day}', ofMonth ?? '');
}

function found(text: string, words: Words, depth: number): string {
  // A tool may be called "constructor".
  for (const known of [words.values, words.names]) if (Object.hasOwn(known, text)) return known[text] ?? text;
  if (/^\d{4}-\d{2}-\d{2}$/u.test(text)) return writeDay(text, words.dayForm);
  if (depth >= deepest) return text;
  for (const [pattern, parts] of patternsOf(words.names)) {
    const match = pattern.exec(text);
    if (match === null) continue;
    const filled = match.slice(1).map((part) => (/^[-−+]?\d+\.\d+$/u.test(part) && words.decimalMark === ',' ? part.replace('.', ',') : found(part, words, depth + 1)));
    return parts.map((part, i) => `${part}${filled[i] ?? ''}`).join('');
  }
  return text;
}

const known = new WeakMap<Catalogue['names'], readonly Pattern[]>();

/** The names that stand for many, once made ready. */
function patternsOf(names: Catalogue['names']): readonly Pattern[] {
  const ready = known.get(names);
  if (ready !== undefined) return ready;
  const made = Object.entries(names).flatMap(([name, written]): readonly Pattern[] => {
    if (!name.includes('…')) return [];
    const source = name.split('…').map((part) => part.replace(/[\\^$.*+?()[\]{}|]/gu, '\\$&')).join('(.+?)');
    return [[new RegExp(`^${source}$`, 'su'), written.split('…')]];
  });
  known.set(names, made);
  return made;
}
