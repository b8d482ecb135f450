import { readWorkshopFile } from '@seatwright/core/job';
import { CalculationError } from '@seatwright/core/result';
import { wordFor } from '@seatwright/core/wording';
import { placesIn } from '../document/places.js';
import { isObject, type Json, type JsonObject } from '../document/raw-document.js';
import { words } from '../words/index.js';
import { sentences } from '../words/sentences.js';

/** Where a fault says that the text is no workshop file at all; anywhere else it is one entry that somebody is still at. */
const refusing: readonly string[] = ['', 'format', 'version', 'machines'];

/**
 * The workshop file in a text, as typed; or why it cannot be opened.
 * A fault in one entry is shown at that entry once the sheet is open; it does not refuse the file.
 */
export function openWorkshop(text: string): { readonly file: JsonObject } | { readonly fault: string } {
  try {
    readWorkshopFile(text);
  } catch (error) {
    if (!(error instanceof CalculationError)) throw error;
    if (refusing.includes(error.path)) return { fault: wordFor(error.message, sentences) };
  }
  const file = JSON.parse(text.replace(/^\uFEFF/u, '')) as Json;
  return isObject(file) && placesIn(file).length > 0 ? { file } : { fault: words.start.noPosition };
}
