import { english, type Catalogue } from '@seatwright/core/wording';
import { englishWords, speak, type SpokenLanguage } from '@seatwright/elements/words.js';
import { inEveryLanguage } from './language.js';

/** Sentences about findings, steps and values in the language in use. Read it while drawing: it changes with the language. */
export let sentences: Catalogue = english;

/** Resolves once sheet and elements can speak the language in use. */
export const sentencesAreThere = inEveryLanguage<SpokenLanguage>({ catalogue: english, words: englishWords }, { de: async () => { const { germanSentences, address } = await import('./german-sentences.js'); return { words: germanSentences, address }; } }, (chosen) => {
  sentences = chosen.catalogue;
  speak(chosen);
});

/** What `make` makes in the language in use, made once for each language. */
export function inLanguage<T>(make: () => T): () => T {
  let made: { readonly by: Catalogue; readonly value: T } | null = null;
  return () => {
    if (made?.by !== sentences) made = { by: sentences, value: make() };
    return made.value;
  };
}
