import { defineCalculation } from '../result/index.js';
import { bearingSeatField, bearingSeatOutputField } from './internal/bearing-seat-fields.js';
import { explainSeats, judgeSeats } from './internal/judge-seats.js';

/** A bearing in its two seats: fits cold and hot, what they leave of the clearance, from when a warm case lets the ring go.
 * C = C₀ + outer raceway − inner raceway − 2·Dw·α·(T − 20); each seat and ring are two elastic rings that may stand apart.
 * Worst cases run over sizes, expansion coefficients and temperatures; `probable…` is the root sum of squares of the tolerances.
 * @returns both seats, clearances [µm] mounted, running and from cold, the clearance group that suits, findings
 * @throws CalculationError invalid-input | no-such-class | outside-table
 * @source iso-492, iso-5753-1 (held as: page); bearing-handbook-reprints (held as: page); timoshenko-strength-2 (held as: memory)
 * @example bearingSeat.run({ designation: '6203', shaftClass: 'k5', housingClass: 'N7', housingMaterial: { youngsModulusGpa: 71, poissonRatio: 0.33, expansionPerK: 23e-6 }, ringMaterial: { youngsModulusGpa: 206, poissonRatio: 0.3, expansionPerK: 11.5e-6 } }).housingSeat.looseFromC.latest.toFixed(1) // '91.7'
 */
export const bearingSeat = defineCalculation({
  name: 'bearing-seat',
  summary: 'Whether both rings of a bearing stay put, cold and hot, and what clearance is left',
  input: bearingSeatField,
  output: bearingSeatOutputField,
  compute: judgeSeats,
  explain: explainSeats,
});
