import { constructions, type Construction } from '@seatwright/core/seal';
import { parseLength } from '@seatwright/core/quantity';
import type { SectionSituation } from '@seatwright/elements/seat-section.js';
import { textAt, valueAt, type Json, type JsonObject } from '../document/raw-document.js';
import { positionPath, type Place } from '../document/places.js';

/** What the drawing can already show while the seal is not complete: every length that reads as one. */
export function draftSituation(document: JsonObject, place: Place, sealPart: number | null): SectionSituation {
  const position = valueAt(document, positionPath(place));
  if (sealPart === null) return draftPlace(position);
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

/** The place of a bearing that stands alone: its bore, as far as it ends what is drawn. */
function draftPlace(position: Json | undefined): SectionSituation {
  const depthMm = lengthAt(valueAt(position, ['bore']), 'depthMm');
  const shoulderInsideMm = lengthAt(valueAt(position, ['bore']), 'shoulderInsideMm');
  const diameterMm = lengthAt(valueAt(position, ['shaft']), 'diameterMm');
  const innerEnd = textAt(position, ['bore', 'innerEnd']);
  return {
    bore: { ...(depthMm === undefined ? {} : { depthMm }), ...(shoulderInsideMm === undefined ? {} : { shoulderInsideMm }), ...(innerEnd === 'shoulder' || innerEnd === 'open' ? { innerEnd } : {}) },
    ...(diameterMm === undefined ? {} : { shaft: { diameterMm } }),
  };
}

function isConstruction(text: string | undefined): text is Construction {
  return (constructions as readonly (string | undefined)[]).includes(text);
}

/** A length as it reads; undefined where none does yet. */
export function lengthAt(object: Json | undefined, key: string): number | undefined {
  const value = valueAt(object, [key]);
  if (typeof value !== 'number' && typeof value !== 'string') return undefined;
  try {
    const { valueMm } = parseLength(value);
    return valueMm > 0 && valueMm <= 1000 ? valueMm : undefined;
  } catch {
    return undefined;
  }
}
