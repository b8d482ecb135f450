import { readWorkshop } from './read-workshop-file.js';
import { defineCalculation } from '../result/index.js';
import { findPosition } from './find-position.js';
import { sheetQuestionField } from './internal/sheet-question-field.js';
import { bearingOutcome, bearingWorking } from './internal/bearing-outcome.js';
import { composeSheet, type Experts } from './internal/compose-sheet.js';
import { toEnd, type InSteps } from './internal/in-steps.js';
import { remediesOf } from './internal/remedies.js';
import { sealWorking } from './internal/seal-working.js';
import { jobSheetField, type JobSheetOutput } from './internal/sheet-output.js';
import { situationOf } from './situation-of.js';

export type { BearingOutcome, JobSheetOutput, SealOutcome } from './internal/sheet-output.js';

const experts: Experts = { bearing: bearingOutcome, remedies: remediesOf };

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
  explain(input, output) {
    const { workshop } = readWorkshop(input.workshop);
    const { position } = findPosition(workshop, { machine: output.machine, position: output.position });
    return position.parts.flatMap((part) => (part.kind === 'seal' ? sealWorking(situationOf(workshop, position, part), workshop) : bearingWorking(workshop, position, part)));
  },
});

/** The same sheet in steps, for a page that has keys to answer in between: each `next()` does a small part, the last gives the sheet.
 * @throws CalculationError as `jobSheet.run`, at the first step or a later one
 * @example Array.from(jobSheetInSteps({ workshop: { format: 'seatwright', version: 1, machines: [{ name: 'Bilge pump', hourMeterHours: 120, positions: [{ name: 'drive side', serviceIntervalHours: 100, parts: [{ kind: 'seal', shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' }] }] }] } })).length // 6
 */
export function jobSheetInSteps(raw: unknown): InSteps<JobSheetOutput> {
  return composeSheet(jobSheet.parse(raw), experts);
}
