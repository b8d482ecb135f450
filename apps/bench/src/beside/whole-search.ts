import { bearingDriver, driverSearch, type BearingDriverOutput, type DriverSearchOutput } from '@seatwright/core/handwork';
import type { BearingSeatInput } from '@seatwright/core/bearing';
import { readWorkshop } from '@seatwright/core/job';
import { CalculationError } from '@seatwright/core/result';
import type { Situation } from '@seatwright/core/seal';
import type { JsonObject } from '../document/raw-document.js';

/** More than anybody has at hand. */
const maximumCandidateCount = 200;

/** The search of the sheet once more, with every tool at hand in it: the sheet lists the best alone. */
export function wholeSearch<S extends DriverSearchOutput | BearingDriverOutput>(search: S, situation: unknown, workshop: JsonObject): DriverSearchOutput | BearingDriverOutput {
  try {
    const { toolsAtHand } = readWorkshop(workshop).workshop;
    const asked = { ...(toolsAtHand === undefined ? {} : { toolsAtHand }), maximumCandidateCount };
    return 'ring' in search ? bearingDriver.compute({ ...(situation as BearingSeatInput), ...asked }) : driverSearch.compute({ ...(situation as Situation), ...asked });
  } catch (error) {
    // An entry that cannot be read yet: what stood before goes on standing.
    if (error instanceof CalculationError) return search;
    throw error;
  }
}
