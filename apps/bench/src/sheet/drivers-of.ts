import type { BearingOutcome, SealOutcome } from '@seatwright/core/job';
import type { BearingPusher } from '@seatwright/elements/seat-bearing-section.js';
import type { SectionDriver } from '@seatwright/elements/seat-section.js';
import { words } from '../words/index.js';

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
            role: turnedDriver.form === 'flat plate' || turnedDriver.form === 'recessed plate' ? 'stops at the face' : 'enters',
            outsideMm: { low: turnedDriver.outsideMm, high: turnedDriver.outsideMm },
            insideMm: { low: turnedDriver.insideMm, high: turnedDriver.insideMm },
            collarOutsideMm: turnedDriver.collarOutsideMm,
          },
        ];
  return [...search.candidates, ...turned];
}

/** What can be drawn pushing the bearing: the tools that serve, best first; where none does, one turned to the middle of its window. */
export function bearingDriversOf(bearing: BearingOutcome | null): readonly BearingPusher[] {
  const search = bearing?.driver;
  if (search == null) return [];
  if (search.candidates.length > 0) return search.candidates;
  const middle = (over: number, upTo: number) => ({ low: (over + upTo) / 2, high: (over + upTo) / 2 });
  return [{ name: words.turned, outsideMm: middle(search.outsideOverMm, search.outsideUpToMm), insideMm: middle(search.insideOverMm, search.insideUpToMm) }];
}
