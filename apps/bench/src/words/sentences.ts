import { english, type Catalogue } from '@seatwright/core/wording';
import { englishWords, speak, type SpokenLanguage } from '@seatwright/elements/words.js';
import { inEveryLanguage, keepForOffline } from './language.js';

/** Sentences about findings, steps and values in the language in use. Read it while drawing: it changes with the language. */
export let sentences: Catalogue = english;

/** The sentences that are seldom said are wanted too. */
let isWhole = false;
let hasGerman = false;

/** Resolves once sheet and elements can speak the language in use. */
export const sentencesAreThere = inEveryLanguage<SpokenLanguage>({ catalogue: english, words: englishWords }, { de: fetchGerman }, (chosen) => {
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

async function fetchGerman(): Promise<{ readonly words: SpokenLanguage; readonly address: string }> {
  const { germanSentences, address } = await import('./german-sentences.js');
  hasGerman = true;
  if (isWhole) await fetchRestOfGerman();
  return { words: germanSentences, address };
}

async function fetchRestOfGerman(): Promise<void> {
  const { address } = await import('./german-later.js');
  void keepForOffline(address);
}

/** Fetches the sentences that are seldom said, in every language that was spoken so far and in those to come. Rejects where they cannot be loaded. */
export async function allSentences(): Promise<void> {
  isWhole = true;
  await Promise.all([import('./later-words.js'), hasGerman ? fetchRestOfGerman() : null]);
}
