import { normalProbability } from '../../measure/index.js';
import type { Span } from '../../result/index.js';
import type { RadialClearance } from './bearing-seat-fields.js';
import { interferenceOf, ringState } from './race-change.js';
import type { SeatPart, SeatProblem, Temperatures } from './seat-parts.js';

const referenceC = 20;

/** Growth of both raceways and of the rolling elements in one state: how far the clearance rises [µm], over worst cases and probably. */
export interface ClearanceShift {
  readonly min: number;
  readonly probable: number;
  readonly max: number;
  /** Squares of what the tolerances of the seats take below and add above the probable value. */
  readonly below2: number;
  readonly above2: number;
}

/**
 * What fits and heat do to the radial clearance.  ΔC = outer raceway − inner raceway − 2·Dw·α·(T − 20)
 * Worst cases over sizes, expansion coefficients and both ends of the temperatures; the probable range by root sum of squares.
 */
export function clearanceShift(problem: SeatProblem, states: readonly Temperatures[]): ClearanceShift | null {
  const { shaft, housing } = problem;
  if (shaft === null || housing === null) return null;
  const { expansionPerK } = shaft.ringMaterial;
  const corners = states.flatMap((state) =>
    [expansionPerK.low, expansionPerK.high].map((perK) => {
      const elements = elementsUm(problem, state, perK);
      const inner = endsOf(problem, shaft, state, perK);
      const outer = endsOf(problem, housing, state, perK);
      return { min: outer.low - inner.high - elements, max: outer.high - inner.low - elements };
    }),
  );
  const middle = middleState(states);
  const race = (part: SeatPart, interferenceUm: number) =>
    ringState(problem, part, interferenceUm, middle, { seat: part.seatMaterial.expansionPerK.probable, ring: expansionPerK.probable }).racewayUm;
  const [inside, outside] = [interferenceOf(shaft), interferenceOf(housing)];
  const [innerUm, outerUm] = [race(shaft, inside.middleUm), race(housing, outside.middleUm)];
  return {
    min: Math.min(...corners.map((corner) => corner.min)),
    max: Math.max(...corners.map((corner) => corner.max)),
    probable: outerUm - innerUm - elementsUm(problem, middle, expansionPerK.probable),
    below2: (race(shaft, inside.probableHighUm) - innerUm) ** 2 + (outerUm - race(housing, outside.probableHighUm)) ** 2,
    above2: (innerUm - race(shaft, inside.probableLowUm)) ** 2 + (race(housing, outside.probableLowUm) - outerUm) ** 2,
  };
}

/** A clearance before fitting, carried through the fits: worst case and probable. Never beyond the worst case. */
export function clearanceAfter(unmounted: Span, shift: ClearanceShift): RadialClearance {
  const half2 = ((unmounted.high - unmounted.low) / 2) ** 2;
  const probable = (unmounted.low + unmounted.high) / 2 + shift.probable;
  const [min, max] = [unmounted.low + shift.min, unmounted.high + shift.max];
  return {
    min,
    probableLow: Math.max(min, probable - Math.sqrt(half2 + shift.below2)),
    probable,
    probableHigh: Math.min(max, probable + Math.sqrt(half2 + shift.above2)),
    max,
  };
}

/** Probability of no clearance, the probable range taken as three standard deviations to either side. */
export function preloadProbability({ probableLow, probable }: RadialClearance): number {
  const deviation = (probable - probableLow) / 3;
  if (deviation <= 0) return probable < 0 ? 1 : 0;
  return normalProbability(-probable / deviation);
}

function endsOf(problem: SeatProblem, part: SeatPart, state: Temperatures, ringPerK: number): Span {
  const { leastUm, mostUm } = interferenceOf(part);
  const { low, high } = part.seatMaterial.expansionPerK;
  const seats = part.isOneMaterial ? [ringPerK] : [low, high];
  const values = seats.flatMap((seat) => [leastUm, mostUm].map((interferenceUm) => ringState(problem, part, interferenceUm, state, { seat, ring: ringPerK }).racewayUm));
  return { low: Math.min(...values), high: Math.max(...values) };
}

/** Balls or rollers at the mean temperature of both rings, two of them across the diameter. */
export function elementsUm({ rings }: SeatProblem, { innerC, outerC }: Temperatures, perK: number): number {
  return 2000 * rings.elementMm * perK * ((innerC + outerC) / 2 - referenceC);
}

export function middleState(states: readonly Temperatures[]): Temperatures {
  const mean = (of: (state: Temperatures) => number) => states.reduce((sum, state) => sum + of(state), 0) / states.length;
  return { shaftC: mean(({ shaftC }) => shaftC), innerC: mean(({ innerC }) => innerC), outerC: mean(({ outerC }) => outerC), housingC: mean(({ housingC }) => housingC) };
}
