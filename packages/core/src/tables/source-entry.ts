import type { Held } from './held.js';

/** One source of `reference/sources.json`. */
export interface SourceEntry {
  /** What a standard is called by: `DIN 3760:1996`. */
  readonly designation?: string;
  readonly title: string;
  readonly part?: string;
  readonly publisher?: string;
  readonly year?: number;
  readonly clauses?: string;
  readonly held: Held;
  readonly note?: string;
}
