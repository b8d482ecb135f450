import type { Material } from '../../material/index.js';
import { ringStack } from '../../joint/index.js';
import type { SeatPart, SeatProblem, Temperatures } from './seat-parts.js';

/** What one seat does to its ring at one size, one pair of expansion coefficients and one state. */
export interface RingState {
  readonly pressureMpa: number;
  /** Growth of the raceway on the diameter, by fit and heat, against the free ring at 20 °C [µm]. */
  readonly racewayUm: number;
  readonly hoopMpa: number;
}

export const allAt20C: Temperatures = { shaftC: 20, innerC: 20, outerC: 20, housingC: 20 };

/** Interference at 20 °C after the seats have smoothed: a clearance stays what it is. */
export function smoothed(part: SeatPart, interferenceUm: number): number {
  return interferenceUm > 0 ? interferenceUm * part.keptRatio : interferenceUm;
}

/** The seat and its ring as two rings in contact; they may stand apart. */
export function ringState(problem: SeatProblem, part: SeatPart, interferenceUm: number, temperatures: Temperatures, perK: { readonly seat: number; readonly ring: number }): RingState {
  const { rings } = problem;
  const ring = stated(part.ringMaterial, perK.ring);
  const seat = stated(part.seatMaterial, perK.seat);
  const isShaft = part.where === 'shaft';
  const stack = ringStack.compute({
    rings: isShaft
      ? [
          { insideMm: problem.shaftBoreMm, outsideMm: rings.boreMm, material: seat, temperatureC: temperatures.shaftC },
          { insideMm: rings.boreMm, outsideMm: rings.innerRaceMm, material: ring, temperatureC: temperatures.innerC },
        ]
      : [
          { insideMm: rings.outerRaceMm, outsideMm: rings.outsideMm, material: ring, temperatureC: temperatures.outerC },
          { insideMm: rings.outsideMm, outsideMm: problem.housingOutsideMm, material: seat, temperatureC: temperatures.housingC },
        ],
    interferencesUm: [smoothed(part, interferenceUm)],
  });
  const bearing = stack.rings[isShaft ? 1 : 0];
  return {
    pressureMpa: stack.joints[0]?.contactPressureMpa ?? 0,
    racewayUm: (isShaft ? bearing?.outsideDisplacementUm : bearing?.boreDisplacementUm) ?? 0,
    hoopMpa: bearing?.hoopStressMpa.bore ?? 0,
  };
}

/** Contact pressure [MPa] of one interference at 20 °C, after smoothing, with the probable coefficients. */
export function coldPressureMpa(problem: SeatProblem, part: SeatPart, interferenceUm: number): number {
  return ringState(problem, part, interferenceUm, allAt20C, { seat: part.seatMaterial.expansionPerK.probable, ring: part.ringMaterial.expansionPerK.probable }).pressureMpa;
}

function stated({ youngsModulusGpa, poissonRatio }: Material, expansionPerK: number) {
  return { youngsModulusGpa, poissonRatio, expansionPerK };
}

/** Interference of a seat at 20 °C [µm]: the worst cases, parts of middle size, and the probable range around them. */
export function interferenceOf({ where, seat, ring }: SeatPart) {
  const [outer, inner] = where === 'shaft' ? [ring, seat] : [seat, ring];
  const leastUm = settled(inner.low - outer.high);
  const mostUm = settled(inner.high - outer.low);
  const middleUm = (leastUm + mostUm) / 2;
  const probableHalfUm = Math.hypot(seat.high - seat.low, ring.high - ring.low) / 2;
  return { leastUm, mostUm, middleUm, probableLowUm: middleUm - probableHalfUm, probableHighUm: middleUm + probableHalfUm };
}

function settled(valueUm: number): number {
  return Math.round(valueUm * 1e6) / 1e6 + 0;
}
