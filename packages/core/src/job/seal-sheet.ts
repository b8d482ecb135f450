import { checkedInput, contradiction } from '../result/index.js';
import { composeSheet } from './internal/compose-sheet.js';
import { toEnd, type InSteps } from './internal/in-steps.js';
import type { JobSheetOutput } from './internal/sheet-output.js';
import { sheetQuestionField } from './internal/sheet-question-field.js';

/** The job sheet of a position with seals alone, for a page that has not fetched the rest yet: the same as `jobSheet`,
 * less the notes of what would help where a seal does not suit. It brings no bearings, joints or repairs with it.
 * @throws CalculationError invalid-input (file, or no such position); contradiction (the position holds a bearing: take `jobSheet`)
 * @example sealSheet({ workshop: { format: 'seatwright', version: 1, machines: [{ name: 'Bilge pump', hourMeterHours: 120, positions: [{ name: 'drive side', serviceIntervalHours: 100, parts: [{ kind: 'seal', shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' }] }] }] } }).verdict // 'cannot tell'
 */
export function sealSheet(raw: unknown): JobSheetOutput {
  return toEnd(sealSheetInSteps(raw));
}

/** The same sheet in steps, for a page that has keys to answer in between: each `next()` does a small part, the last gives the sheet.
 * @throws CalculationError as `sealSheet`, at the first step or a later one
 * @example Array.from(sealSheetInSteps({ workshop: { format: 'seatwright', version: 1, machines: [{ name: 'Bilge pump', hourMeterHours: 120, positions: [{ name: 'drive side', serviceIntervalHours: 100, parts: [{ kind: 'seal', shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' }] }] }] } })).length // 6
 */
export function sealSheetInSteps(raw: unknown): InSteps<JobSheetOutput> {
  const bearing = () => {
    throw contradiction(['parts'], 'a bearing is on this sheet: take the whole job sheet');
  };
  return composeSheet(checkedInput(sheetQuestionField, raw), { bearing, remedies: () => [] });
}
