import type { SameWords } from '@seatwright/core/wording';
import type { english } from './english.js';

/** The words of the page in one language: all that English has, and nothing else. */
export type BenchWords = SameWords<typeof english>;
