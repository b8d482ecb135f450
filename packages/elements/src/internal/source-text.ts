import type { SourceReference } from '@seatwright/core/result';
import type { Catalogue } from '@seatwright/core/wording';

/** A source by id with its title, as a job sheet lists them. */
export interface SourceTitle {
  readonly id: string;
  readonly title: string;
}

/** A source in one line: title, clause, and how it is held. */
export function sourceText({ id, clause, held }: SourceReference, titles: readonly SourceTitle[], catalogue: Catalogue): string {
  const title = titles.find((entry) => entry.id === id)?.title ?? id;
  const mark = heldMark(held, catalogue);
  const isPractice = id === 'common-practice';
  return `${title}${clause === undefined ? '' : `, ${clause}`}${mark === '' || isPractice ? '' : ` · ${mark}`}`;
}

/** How a source is held, in words. */
export function heldMark(held: SourceReference['held'], { labels }: Catalogue): string {
  const keys = { memory: 'memoryMark', practice: 'practiceMark', computed: 'computedMark', page: 'pageMark' } as const;
  return labels[keys[held]] ?? held;
}
