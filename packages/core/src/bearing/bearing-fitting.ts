import { defineCalculation, type WorkingStep } from '../result/index.js';
import { practiceValue } from './internal/bearing-practice.js';
import { seatProblem, withHousingMaterial } from './internal/seat-parts.js';
import { inputField, outputField } from './internal/bearing-fitting-fields.js';
import { handbook, planFitting, pressingMpa } from './internal/plan-fitting.js';

export type { BearingFittingInput, BearingFittingOutput } from './internal/bearing-fitting-fields.js';

/** How a bearing goes in: what must be warm and how warm, what else works where heat is not enough, the force cold, which ring to push.
 * The largest interference counts, before any smoothing. Heat is limited by the bearing (sealed, greased), the case and its alloy.
 * A bearing that is marked as sealed or shielded counts as sealed whatever is said; so does one with a suffix that the trade does not share, unless it is said to be open.
 * The time on the bench is a lumped estimate in still air; once it touches the cold part it grips within seconds.
 * @returns a way for each seat with temperatures, limits, forces; the ring to push and the ring of the driver; steps with cautions
 * @throws CalculationError invalid-input | no-such-class | outside-table
 * @source bearing-handbook-reprints (held as: page); din-7190-2001 (held as: memory)
 * @example bearingFitting.run({ designation: '6203', shaftClass: 'k5', housingClass: 'H7', housingMaterial: 'al-a380' }).ways[0].noGapC.toFixed(0) // '104'
 */
export const bearingFitting = defineCalculation({
  name: 'bearing-fitting',
  summary: 'How a bearing goes in: heat, chill or press, how much, and through which ring',
  input: inputField,
  output: outputField,
  compute: planFitting,
  explain(input, output): readonly WorkingStep[] {
    const problem = seatProblem(withHousingMaterial(input));
    return output.ways.flatMap(({ seat, mostInterferenceUm, noGapC, pushForceN }): readonly WorkingStep[] => {
      const part = seat === 'shaft' ? problem.shaft : problem.housing;
      if (part === null || mostInterferenceUm <= 0) return [];
      const warm = seat === 'shaft' ? part.ringMaterial : part.seatMaterial;
      const p = pressingMpa(problem, part, mostInterferenceUm);
      const mu = practiceValue('friction-pressing-ring', 'Coefficient');
      return [
        { kind: 'formula', symbol: 't_0', meaning: `the warm part just slips over, ${seat}`, formula: 't_a + U / (1000 * alpha * d)', scope: { t_a: input.ambientC ?? 20, U: mostInterferenceUm, alpha: warm.expansionPerK.low, d: part.nominalMm }, value: noGapC, unit: '°C', source: handbook },
        { kind: 'formula', symbol: 'F', meaning: `force to press it in cold, ${seat}`, formula: 'mu * p * pi * d * B', scope: { mu: mu.low, p, d: part.nominalMm, B: problem.rings.widthMm }, value: pushForceN.high, unit: 'N', source: mu.source },
      ];
    });
  },
});
