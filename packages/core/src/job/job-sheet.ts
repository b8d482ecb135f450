import { defineCalculation } from '../result/index.js';
import { composeSheet } from './internal/compose-sheet.js';
import { toEnd } from './internal/in-steps.js';
import { jobSheetField } from './internal/sheet-output.js';
import { sheetQuestionField } from './internal/sheet-question-field.js';
import { experts, explainSheet } from './whole-sheet.js';

export type { BearingOutcome, JobSheetOutput, SealOutcome } from './internal/sheet-output.js';

/** Everything for one position, as one ordered job sheet.
 * @returns verdict, parts with check and plans, the work in order, next due, assumptions, what was not checked, sources
 * @throws CalculationError invalid-input (file, or no such position); a size outside a table becomes a finding instead
 * @example jobSheet.run({ workshop: { format: 'seatwright', version: 1, machines: [{ name: 'Bilge pump', hourMeterHours: 120, positions: [{ name: 'drive side', serviceIntervalHours: 100, parts: [{ kind: 'seal', shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' }] }] }] }, asOfDate: '2026-11-02' }).verdict // 'cannot tell'
 */
export const jobSheet = defineCalculation({
  name: 'job',
  summary: 'Everything for one position as an ordered job sheet: does it suit, take out, put in, when next',
  input: sheetQuestionField,
  output: jobSheetField,
  compute: (input) => toEnd(composeSheet(input, experts)),
  explain: explainSheet,
});
