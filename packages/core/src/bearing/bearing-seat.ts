import { verdictOf, defineCalculation } from '../result/index.js';
import { warmFit } from '../tolerance/index.js';
import { bearingSeatField, bearingSeatOutputField, type BearingSeatInput, type BearingSeatOutput } from './internal/bearing-seat-fields.js';
import { clearanceGroups } from './internal/bearing-choices.js';
import { clearanceAfter, clearanceShift, middleState, preloadProbability, type ClearanceShift } from './internal/clearance-states.js';
import { allAt20C } from './internal/race-change.js';
import { seatFindings } from './internal/seat-findings.js';
import { clearanceOf, seatProblem, type SeatProblem } from './internal/seat-parts.js';
import { seatResult } from './internal/seat-result.js';
import { seatWorking } from './internal/seat-working.js';

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
  compute(input): BearingSeatOutput {
    const problem = seatProblem(input);
    const { rings, shaft, housing, clearance } = problem;
    const shaftSeat = shaft === null ? null : seatResult(problem, shaft, input.radialLoadN);
    const housingSeat = housing === null ? null : seatResult(problem, housing, input.radialLoadN);
    const mounted = clearanceShift(problem, [allAt20C]);
    const running = clearanceShift(problem, problem.running);
    const cold = problem.cold === null ? null : clearanceShift(problem, [problem.cold]);
    const after = (shift: ClearanceShift | null) => (clearance === null || shift === null ? null : clearanceAfter(clearance, shift));
    const runningClearanceUm = after(running);
    const coldClearanceUm = after(cold);
    const axialGrowthUm = axialGrowthOf(problem, input.bearingSpacingMm);
    const chance = runningClearanceUm === null ? null : preloadProbability(runningClearanceUm);
    const groups = groupsOf(problem, running);
    const findings = seatFindings(problem, input, { shaftSeat, housingSeat, runningClearanceUm, coldClearanceUm, preloadProbability: chance, axialGrowthUm });
    return {
      verdict: verdictOf(findings),
      designation: problem.designation,
      boreMm: rings.boreMm,
      outsideMm: rings.outsideMm,
      widthMm: rings.widthMm,
      innerRacewayMm: rings.innerRaceMm,
      outerRacewayMm: rings.outerRaceMm,
      shaftSeat,
      housingSeat,
      unmountedClearanceUm: clearance === null ? null : { low: clearance.low, high: clearance.high },
      mountedClearanceUm: after(mounted),
      runningClearanceUm,
      coldClearanceUm,
      preloadProbability: chance,
      clearanceGroups: groups,
      clearanceGroupThatSuits: groups.find(({ runningClearanceUm: { probableLow } }) => probableLow >= 0)?.clearanceGroup ?? null,
      axialGrowthUm,
      dimensionsSource: problem.dimensionsSource,
      findings,
      assumptions: problem.assumptions,
      notChecked: ['form-and-roughness', 'edge-pressure', 'load-opens-clearance', 'shoulder-and-corner', ...(input.radialLoadN === undefined ? ['interference-under-load'] : [])],
    };
  },
  explain: (input: BearingSeatInput, output) => seatWorking(seatProblem(input), output, input.radialLoadN),
});

/** The running clearance of every group that ISO 5753-1 lists for this bore. */
function groupsOf(problem: SeatProblem, shift: ClearanceShift | null): BearingSeatOutput['clearanceGroups'] {
  if (shift === null || problem.clearance === null) return [];
  return clearanceGroups.flatMap((clearanceGroup) => {
    const clearance = clearanceOf(problem.kind, clearanceGroup, problem.rings.boreMm);
    if (clearance === null) return [];
    const runningClearanceUm = clearanceAfter(clearance, shift);
    return [{ clearanceGroup, runningClearanceUm, preloadProbability: preloadProbability(runningClearanceUm) }];
  });
}

/** Growth of the case along the shaft, over the shaft's own. */
function axialGrowthOf(problem: SeatProblem, lengthMm: number | undefined): BearingSeatOutput['axialGrowthUm'] {
  const { shaft, housing } = problem;
  if (lengthMm === undefined || shaft === null || housing === null) return null;
  const { housingC, shaftC } = middleState(problem.running);
  const parts = {
    nominalMm: housing.nominalMm,
    holeMaterial: housing.given.seat,
    shaftMaterial: shaft.given.seat,
    holeTemperatureC: housingC,
    shaftTemperatureC: shaftC,
    lengthMm,
    materials: [...problem.materials],
    curvePointCount: 2,
  };
  // Only the growth along the shaft is asked for: no deviation takes part in it.
  const noDeviation = { lowerUm: 0, upperUm: 0 };
  return warmFit(parts, { hole: noDeviation, shaft: noDeviation }).axialGrowthUm;
}
