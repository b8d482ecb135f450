import type { SourceReference } from './source-reference.js';

/** A value that was taken for granted because nobody gave it, with what it changes. */
export interface Assumption {
  readonly name: string;
  readonly value: number | string;
  /** Other end of the range, where the assumption is a range. */
  readonly upToValue?: number;
  readonly unit: string;
  readonly source: SourceReference;
  /** Code of the sentence that says what the assumption changes (see `wording/`). */
  readonly effect: string;
}

/** What travels with every output: what was taken for granted and what was not looked at. */
export interface Candour {
  readonly assumptions: readonly Assumption[];
  /** Codes of what was not looked at (see `wording/`). */
  readonly notChecked: readonly string[];
}

/** Nothing assumed and nothing left out. */
export const nothingAssumed: Candour = Object.freeze({ assumptions: Object.freeze([]), notChecked: Object.freeze([]) });
