import type { Change, Position } from '../workshop-file-field.js';

/** Whether a change renewed what the interval counts: the seal where the position has one, else the bearing. */
function renewsPosition({ parts }: Position, { renewed }: Pick<Change, 'renewed'>): boolean {
  const counted = parts.some(({ kind }) => kind === 'seal') ? 'seal' : 'bearing';
  return renewed === counted || renewed === 'seal and bearing';
}

/** The latest change that an interval is counted from; of several on one day the one written last. Null where there is none. */
export function lastRenewal(position: Position): Change | null {
  const counted = (position.changes ?? []).filter((change) => renewsPosition(position, change));
  return counted.reduce<Change | null>((latest, one) => (latest === null || one.date >= latest.date ? one : latest), null);
}

/** Day of the latest change of any kind that lies after a day: then the day, or the clock that told it, is wrong. */
export function changeAfter({ changes = [] }: Position, asOfDate: string | undefined): string | null {
  const latest = changes.map(({ date }) => date).toSorted().at(-1);
  return asOfDate !== undefined && latest !== undefined && latest > asOfDate ? latest : null;
}
