import type { SourceReference } from '@seatwright/core/result';
import { sourceName, wordFor, type Catalogue } from '@seatwright/core/wording';

/** A source in one line: designation and title, clause, and how it is held. */
export function sourceText({ id, clause, held }: SourceReference, catalogue: Catalogue): string {
  const title = sourceName(id, catalogue);
  const mark = heldMark(held, catalogue);
  const isPractice = id === 'common-practice';
  return `${title}${clause === undefined ? '' : `, ${wordFor(clause, catalogue)}`}${mark === '' || isPractice ? '' : ` · ${mark}`}`;
}

/** How a source is held, in words. */
export function heldMark(held: SourceReference['held'], { labels }: Catalogue): string {
  const keys = { memory: 'memoryMark', practice: 'practiceMark', computed: 'computedMark', page: 'pageMark' } as const;
  return labels[keys[held]] ?? held;
}
