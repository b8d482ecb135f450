import { defineCalculation, type WorkingStep } from '../result/index.js';
import { seatProblem, withHousingMaterial } from './internal/seat-parts.js';
import { inputField, outputField } from './internal/seat-repair-fields.js';
import { repairSeat } from './internal/repair-seat.js';

export type { SeatRepairInput, SeatRepairOutput } from './internal/seat-repair-fields.js';

/** What can be done where the seat of a bearing is loose: how loose it is, and which repairs give it back.
 * Repairs are compared, not chosen: a retaining compound within its gap, a sleeve with its own fit that stays tight hot, plating by others.
 * @returns the gap [µm], options with their numbers, best first; what is refused
 * @throws CalculationError invalid-input | contradiction (the seat was not given) | no-such-class | outside-table
 * @source plain-mechanics; gap and wall common-practice
 * @example seatRepair.run({ designation: '6203', housingClass: 'H9', housingMaterial: 'al-a380', shaftClass: 'k5', seat: 'housing', temperatureC: 80 }).options[0].kind // 'sleeve'
 */
export const seatRepair = defineCalculation({
  name: 'seat-repair',
  summary: 'What can be done where the seat of a bearing is loose',
  input: inputField,
  output: outputField,
  compute: repairSeat,
  explain(input, output): readonly WorkingStep[] {
    const problem = seatProblem(input.seat === 'housing' ? withHousingMaterial(input) : input);
    const part = input.seat === 'shaft' ? problem.shaft : problem.housing;
    if (part === null) return [];
    const [inner, outer] = part.where === 'shaft' ? [part.seat, part.ring] : [part.ring, part.seat];
    return [{ kind: 'formula', symbol: 'g', meaning: 'largest gap on the diameter', formula: 'ES - ei', scope: { ES: outer.high, ei: inner.low }, value: output.mostGapUm, unit: 'µm', source: part.ringSource }];
  },
});
