import type { SealOutcome } from '@seatwright/core/job';
import type { SectionDriver } from '@seatwright/elements/seat-section.js';
import { words } from '../words.js';

/** The drivers that can be drawn: the candidates, best first, and the one to turn. */
export function driversOf(seal: SealOutcome | null): readonly SectionDriver[] {
  const search = seal?.driver;
  if (search == null) return [];
  const { turnedDriver } = search;
  const turned: readonly SectionDriver[] =
    turnedDriver === null
      ? []
      : [
          {
            name: words.turned,
            kind: 'turned',
            role: turnedDriver.form === 'flat plate' ? 'stops at the face' : 'enters',
            outsideMm: { low: turnedDriver.outsideMm, high: turnedDriver.outsideMm },
            insideMm: { low: turnedDriver.insideMm, high: turnedDriver.insideMm },
            collarOutsideMm: turnedDriver.collarOutsideMm,
          },
        ];
  return [...search.candidates, ...turned];
}
