import { defineCalculation, type WorkingStep } from '../result/index.js';
import { practiceValue } from './internal/bearing-practice.js';
import { coldPressureMpa, interferenceOf } from './internal/race-change.js';
import { seatProblem, withHousingMaterial } from './internal/seat-parts.js';
import { inputField, outputField } from './internal/bearing-removal-fields.js';
import { planRemoval } from './internal/plan-removal.js';

export type { BearingRemovalInput, BearingRemovalOutput } from './internal/bearing-removal-fields.js';

/** How a bearing comes out: the force on each ring, the heat that frees it, by which ring it is gripped, and whether it may go in again.
 * F = 0.18·p·π·d·B with the interference that smoothing has left; rust and fretting ask for several times that.
 * @returns forces [N] and freeing temperatures [°C] of both seats, steps with cautions, findings
 * @throws CalculationError invalid-input | no-such-class | outside-table
 * @source bearing-handbook-reprints (held as: page)
 * @example bearingRemoval.run({ designation: '6203', shaftClass: 'k5', housingClass: 'H7', housingMaterial: 'al-a380' }).pullBy // 'inner ring'
 */
export const bearingRemoval = defineCalculation({
  name: 'bearing-removal',
  summary: 'How a bearing comes out: force, heat, by which ring, and whether it may go in again',
  input: inputField,
  output: outputField,
  compute: planRemoval,
  explain(input, output): readonly WorkingStep[] {
    const problem = seatProblem(withHousingMaterial(input));
    const mu = practiceValue('friction-pulling-ring', 'Coefficient');
    return output.seats.flatMap(({ seat, pullForceN }): readonly WorkingStep[] => {
      const part = seat === 'shaft' ? problem.shaft : problem.housing;
      if (part === null || pullForceN.high === 0) return [];
      return [{ kind: 'formula', symbol: 'F', meaning: `force to draw the ring off, ${seat}`, formula: 'mu * p * pi * d * B', scope: { mu: mu.low, p: coldPressureMpa(problem, part, interferenceOf(part).mostUm), d: part.nominalMm, B: problem.rings.widthMm }, value: pullForceN.high, unit: 'N', source: mu.source }];
    });
  },
});
