import { checkedInput, type WorkingStep } from '../result/index.js';
import { findPosition } from './find-position.js';
import { bearingOutcome, bearingWorking } from './internal/bearing-outcome.js';
import { composeSheet, type Experts } from './internal/compose-sheet.js';
import type { InSteps } from './internal/in-steps.js';
import { remediesOf } from './internal/remedies.js';
import { sealWorking } from './internal/seal-working.js';
import type { JobSheetOutput } from './internal/sheet-output.js';
import { sheetQuestionField, type SheetQuestion } from './internal/sheet-question-field.js';
import { readWorkshop } from './read-workshop-file.js';
import { situationOf } from './situation-of.js';

/** Who judges what on a whole sheet: bearings and remedies too. */
export const experts: Experts = { bearing: bearingOutcome, remedies: remediesOf };

/** The working of a sheet, from the question that it answered. */
export function explainSheet({ workshop: raw }: Pick<SheetQuestion, 'workshop'>, output: Pick<JobSheetOutput, 'machine' | 'position'>): readonly WorkingStep[] {
  const { workshop } = readWorkshop(raw);
  const { position } = findPosition(workshop, { machine: output.machine, position: output.position });
  return position.parts.flatMap((part) => (part.kind === 'seal' ? sealWorking(situationOf(workshop, position, part), workshop) : bearingWorking(workshop, position, part)));
}

/** The same sheet in steps, for a page that has keys to answer in between: each `next()` does a small part, the last gives the sheet.
 * @throws CalculationError as `jobSheet.run`, at the first step or a later one
 * @example Array.from(jobSheetInSteps({ workshop: { format: 'seatwright', version: 1, machines: [{ name: 'Bilge pump', hourMeterHours: 120, positions: [{ name: 'drive side', serviceIntervalHours: 100, parts: [{ kind: 'seal', shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' }] }] }] } })).length // 6
 */
export function jobSheetInSteps(raw: unknown): InSteps<JobSheetOutput> {
  return composeSheet(checkedInput(sheetQuestionField, raw), experts);
}

/** The working of a sheet, for a page that asks for it later: as `jobSheet.explain`, from input as it was typed.
 * @throws CalculationError invalid-input (file, or no such position)
 * @example jobSheetWorking({ workshop: { format: 'seatwright', version: 1, machines: [{ name: 'Bilge pump', hourMeterHours: 120, positions: [{ name: 'drive side', serviceIntervalHours: 100, parts: [{ kind: 'seal', shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' }] }] }] } }, { machine: 'Bilge pump', position: 'drive side' }).length > 0 // true
 */
export function jobSheetWorking(raw: unknown, output: Pick<JobSheetOutput, 'machine' | 'position'>): readonly WorkingStep[] {
  return explainSheet(checkedInput(sheetQuestionField, raw), output);
}
