import { constructions, type Construction } from '@seatwright/core/seal';
import { parseLength } from '@seatwright/core/quantity';
import type { SectionSituation } from '@seatwright/elements/seat-section.js';
import { textAt, valueAt, type Json, type JsonObject } from '../document/raw-document.js';
import { positionPath, type Place } from '../document/places.js';

/** What the drawing can already show while the seal is not complete: every length that reads as one. */
export function draftSituation(document: JsonObject, place: Place, sealPart: number): SectionSituation {
  const position = valueAt(document, positionPath(place));
  const seal = valueAt(position, ['parts', sealPart]);
  const shaftMm = lengthAt(seal, 'shaftMm') ?? lengthAt(valueAt(position, ['shaft']), 'diameterMm');
  const outsideMm = lengthAt(seal, 'outsideMm') ?? lengthAt(valueAt(position, ['bore']), 'diameterMm');
  const widthMm = lengthAt(seal, 'widthMm');
  const construction = textAt(seal, ['construction']);
  const lipFacing = textAt(position, ['lipFacing']);
  return {
    seal: {
      ...(shaftMm === undefined ? {} : { shaftMm }),
      ...(outsideMm === undefined ? {} : { outsideMm }),
      ...(widthMm === undefined ? {} : { widthMm }),
      ...(isConstruction(construction) ? { construction } : {}),
      hasDustLip: valueAt(seal, ['hasDustLip']) === true,
    },
    ...(lipFacing === 'inward' || lipFacing === 'outward' ? { lipFacing } : {}),
  };
}

function isConstruction(text: string | undefined): text is Construction {
  return (constructions as readonly (string | undefined)[]).includes(text);
}

function lengthAt(object: Json | undefined, key: string): number | undefined {
  const value = valueAt(object, [key]);
  if (typeof value !== 'number' && typeof value !== 'string') return undefined;
  try {
    const { valueMm } = parseLength(value);
    return valueMm > 0 && valueMm <= 1000 ? valueMm : undefined;
  } catch {
    return undefined;
  }
}
