import type { Verdict } from '../result/index.js';

/** How a line stands: a check mark, a question, a warning … Written as a sign and a word, never by colour alone. */
export type Tone = 'good' | 'note' | 'care' | 'unknown' | 'bad' | 'plain';

export interface SheetItem {
  readonly text: string;
  readonly tone: Tone;
  /** Lines below it: what to do, and cautions. */
  readonly below: readonly { readonly kind: 'todo' | 'caution' | 'source'; readonly text: string }[];
}

/** A job sheet as a sequence of blocks. Text, Markdown, HTML and the page are all written from it. */
export type SheetBlock =
  | { readonly kind: 'title'; readonly text: string; readonly under: string }
  | { readonly kind: 'verdict'; readonly verdict: Verdict; readonly word: string; readonly because: readonly string[]; readonly next: string | null }
  | { readonly kind: 'heading'; readonly text: string }
  | { readonly kind: 'paragraph'; readonly text: string; readonly isSmall: boolean }
  | { readonly kind: 'list'; readonly isNumbered: boolean; readonly isSmall: boolean; readonly items: readonly SheetItem[] }
  | { readonly kind: 'table'; readonly columns: readonly string[]; readonly rows: readonly (readonly string[])[] }
  | { readonly kind: 'blanks'; readonly rows: readonly { readonly label: string; readonly count: number }[] };

export type SheetDocument = readonly SheetBlock[];
