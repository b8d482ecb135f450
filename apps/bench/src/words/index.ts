import type { BenchWords } from './bench-words.js';
import { english } from './english.js';
import { inEveryLanguage } from './language.js';

export type { BenchWords } from './bench-words.js';

/** Words of the page in the language in use. Read it while drawing: it changes with the language. */
export let words: BenchWords = english;

/** Resolves once the words of the language in use are there. */
export const wordsAreThere = inEveryLanguage<BenchWords>(english, { de: async () => { const { german, address } = await import('./german.js'); return { words: german, address }; } }, (chosen) => { words = chosen; });
