import type { SectionBearing } from '@seatwright/elements/seat-bearing-section.js';
import type { BearingOutcome } from '@seatwright/core/job';
import { positionPath, type Place } from '../document/places.js';
import { textAt, valueAt, type JsonObject } from '../document/raw-document.js';
import { lengthAt } from './draft-situation.js';

/** The bearing as it is asked about; while nothing can be computed yet, every size of it that reads as one. */
export function bearingOf(outcome: BearingOutcome | null, document: JsonObject, place: Place, bearingPart: number): SectionBearing {
  if (outcome?.situation != null) return outcome.situation;
  const part = valueAt(document, [...positionPath(place), 'parts', bearingPart]);
  const designation = textAt(part, ['designation']);
  const sizes = (['boreMm', 'outsideMm', 'widthMm'] as const).flatMap((key) => {
    const valueMm = lengthAt(part, key);
    return valueMm === undefined ? [] : [[key, valueMm] as const];
  });
  return {
    ...(designation === '' ? Object.fromEntries(sizes) : { designation }),
    ...(textAt(part, ['bearingKind']) === 'cylindrical-roller' ? { bearingKind: 'cylindrical-roller' } : {}),
  };
}
