import type { Change, Position } from '../workshop-file-field.js';

/** Whether a change renewed what the interval counts: the seal where the position has one, else the bearing. */
export function renewsPosition({ parts }: Position, { renewed }: Pick<Change, 'renewed'>): boolean {
  const counted = parts.some(({ kind }) => kind === 'seal') ? 'seal' : 'bearing';
  return renewed === counted || renewed === 'seal and bearing';
}

/** The latest change that an interval is counted from; of several on one day the one written last. Null where there is none. */
export function lastRenewal(position: Position): Change | null {
  const counted = (position.changes ?? []).filter((change) => renewsPosition(position, change));
  return counted.reduce<Change | null>((latest, one) => (latest === null || one.date >= latest.date ? one : latest), null);
}
