import { readWorkshopFile } from '@seatwright/core/job';
import { CalculationError } from '@seatwright/core/result';
import { placesIn } from '../document/places.js';
import { isObject, type Json, type JsonObject } from '../document/raw-document.js';
import { words } from '../words.js';

/**
 * The workshop file in a text, as typed; or why it cannot be opened.
 * A fault in one entry is shown at that entry once the sheet is open; it does not refuse the file.
 */
export function openWorkshop(text: string): { readonly file: JsonObject } | { readonly fault: string } {
  try {
    readWorkshopFile(text);
  } catch (error) {
    if (!(error instanceof CalculationError)) throw error;
    if (!error.path.startsWith('machines[')) return { fault: error.message };
  }
  const file = JSON.parse(text.replace(/^\uFEFF/u, '')) as Json;
  return isObject(file) && placesIn(file).length > 0 ? { file } : { fault: words.start.noPosition };
}
