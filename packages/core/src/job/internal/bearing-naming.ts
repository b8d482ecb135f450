import { bearingDimensions } from '../../bearing/index.js';
import { commonPractice, deciding, supporting, type Finding } from '../../result/index.js';
import type { BearingPart } from '../workshop-file-field.js';
import { attempt } from './attempt.js';

/** The sizes that the tables give for a designation; null where they hold no such bearing. */
function listedSize({ designation }: BearingPart): { readonly boreMm: number; readonly outsideMm: number; readonly widthMm: number } | null {
  const found = attempt(() => bearingDimensions.compute({ designation }).matches[0]);
  return 'value' in found ? (found.value ?? null) : null;
}

/** A bearing that the tables do not hold, with all three sizes entered: these are taken then. */
export function isUnlisted(part: BearingPart): boolean {
  const hasSizes = [part.boreMm, part.outsideMm, part.widthMm].every((mm) => mm !== undefined);
  return part.designation !== undefined && hasSizes && listedSize(part) === null;
}

/** [mm] A size that lies this far off is another one: twice what a calliper errs by; common practice. */
const otherSizeMm = 0.1;

/** What is to be said of a designation beside sizes that were entered too. */
export function namingFindings(part: BearingPart): readonly Finding[] {
  if (part.designation === undefined) return [];
  if (isUnlisted(part)) return [supporting('bearing-not-listed', 'note', { designation: part.designation }, commonPractice)];
  const size = listedSize(part);
  if (size === null) return [];
  const differing = (['boreMm', 'outsideMm', 'widthMm'] as const).find((name) => part[name] !== undefined && Math.abs(part[name] - size[name]) > otherSizeMm);
  if (differing === undefined) return [];
  return [deciding('bearing-sizes-differ', 'care', { designation: part.designation, listedBoreMm: size.boreMm, listedOutsideMm: size.outsideMm, listedWidthMm: size.widthMm, enteredMm: part[differing] ?? 0 }, commonPractice)];
}
