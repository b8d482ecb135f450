import type { ShelfCandidate } from '@seatwright/core/seal';
import { isObject, type Json, type JsonObject } from '../document/raw-document.js';

/** What belongs to the seal that was in the file before, and not to one from the shelf. */
const ofTheOldOne = ['outsideReadings', 'caseThicknessMm', 'caseYieldMpa', 'faceThicknessMm', 'edgeRadiusMm', 'ratedPressureMpa', 'marking', 'hasDustLip', 'turns', 'name'];

/** The seal part of the file with what a row of the list says; what the list does not say is asked anew. */
export function sealFromRow(part: Json | undefined, { id, shaftMm, outsideMm, widthMm, construction, lipMaterial }: Omit<ShelfCandidate, 'verdict' | 'reasons'>): JsonObject {
  const kept = Object.entries(isObject(part) ? part : {}).filter(([key]) => !ofTheOldOne.includes(key) && key !== 'construction' && key !== 'lipMaterial');
  return {
    ...Object.fromEntries(kept),
    kind: 'seal',
    shaftMm,
    outsideMm,
    widthMm,
    ...(construction === null ? {} : { construction }),
    ...(lipMaterial === null ? {} : { lipMaterial }),
    ...(id === '' ? {} : { marking: id }),
  };
}
