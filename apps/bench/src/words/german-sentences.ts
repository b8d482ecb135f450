import { german } from '@seatwright/core/wording';
import { germanWords, type SpokenLanguage } from '@seatwright/elements/words.js';

/** All that sheet and elements say in German. */
export const germanSentences: SpokenLanguage = { catalogue: german, words: germanWords };

/** Where these words lie, to be kept for days without a network. */
export const address = import.meta.url;
