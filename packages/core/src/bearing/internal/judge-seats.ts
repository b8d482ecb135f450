import { verdictOf, type WorkingStep } from '../../result/index.js';
import { warmFit } from '../../tolerance/index.js';
import type { BearingSeatInput, BearingSeatOutput } from './bearing-seat-fields.js';
import { clearanceGroups } from './bearing-choices.js';
import { clearanceAfter, clearanceShift, middleState, preloadProbability, type ClearanceShift } from './clearance-states.js';
import { allAt20C } from './race-change.js';
import { seatFindings } from './seat-findings.js';
import { clearanceOf, seatProblem, type SeatProblem } from './seat-parts.js';
import { seatResult } from './seat-result.js';
import { seatWorking } from './seat-working.js';

/**
 * Both seats of a bearing, from input that is known to be sound: what `bearingSeat` computes.
 * @throws CalculationError no-such-class | outside-table
 * @example judgeSeats({ designation: '6203', shaftClass: 'k5' }).boreMm // 17
 */
export function judgeSeats(input: BearingSeatInput): BearingSeatOutput {
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
}

/**
 * The working of what `judgeSeats` found.
 * @throws CalculationError no-such-class | outside-table
 * @example explainSeats({ designation: '6203', shaftClass: 'k5' }, judgeSeats({ designation: '6203', shaftClass: 'k5' })).length > 0 // true
 */
export function explainSeats(input: BearingSeatInput, output: BearingSeatOutput): readonly WorkingStep[] {
  return seatWorking(seatProblem(input), output, input.radialLoadN);
}

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
