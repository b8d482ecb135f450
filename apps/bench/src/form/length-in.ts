import { lengthAsTyped } from '@seatwright/core/quantity';
import type { WritingStyle } from '@seatwright/core/wording';
import { valueAt, type Json, type Path } from '../document/raw-document.js';

/** A length of the document as its field shows it; empty where there is none. */
export function lengthIn(document: Json | undefined, path: Path, { lengthUnit, decimalMark }: WritingStyle): string {
  const value = valueAt(document, path);
  return typeof value === 'number' || typeof value === 'string' ? lengthAsTyped(value, lengthUnit, decimalMark) : '';
}
