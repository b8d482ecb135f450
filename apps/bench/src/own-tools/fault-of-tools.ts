import { readWorkshop } from '@seatwright/core/job';
import { CalculationError } from '@seatwright/core/result';
import type { JsonObject } from '../document/raw-document.js';
import { isFinished } from '../document/without-unfinished.js';
import type { SheetFault } from '../sheet/compute-sheet.js';

/** The first entry of the tools that cannot be read, as a workshop file reads it; null where all can. What has only been begun is not looked at. */
export function faultOfTools(tools: readonly JsonObject[]): SheetFault | null {
  for (const [i, tool] of tools.entries()) {
    if (!isFinished('toolsAtHand', tool)) continue;
    try {
      readWorkshop({ format: 'seatwright', version: 1, toolsAtHand: [tool], machines: [{ name: 'any', positions: [{ name: 'any', parts: [{ kind: 'bearing' }] }] }] });
    } catch (error) {
      if (!(error instanceof CalculationError)) throw error;
      return { key: `file.${error.path.replace('toolsAtHand[0]', `toolsAtHand[${i}]`)}`, message: error.message };
    }
  }
  return null;
}
