import type { Span } from '../../result/index.js';
import { partDeviations, warmFit } from '../../tolerance/index.js';
import type { SeatResult } from './bearing-seat-fields.js';
import { practiceValue } from './bearing-practice.js';
import { middleState } from './clearance-states.js';
import { allAt20C, interferenceOf, ringState, smoothed } from './race-change.js';
import type { SeatPart, SeatProblem, Temperatures } from './seat-parts.js';

/**
 * One seat: its interference cold and hot, from when heat loosens it, pressure and stress of the ring.
 * Interferences and `looseFromC` are of the sizes as they are; pressures, stresses and raceways count what smoothing takes.
 */
export function seatResult(problem: SeatProblem, part: SeatPart, radialLoadN: number | undefined): SeatResult {
  const { where, nominalMm, seat, ring, given } = part;
  const deviations = (of: 'hole' | 'shaft', span: Span) => partDeviations({ lowerMm: nominalMm + span.low / 1000, upperMm: nominalMm + span.high / 1000 }, nominalMm, of);
  const middle = middleState(problem.running);
  const isShaft = where === 'shaft';
  const of = {
    nominalMm,
    holeMaterial: isShaft ? given.ring : given.seat,
    shaftMaterial: isShaft ? given.seat : given.ring,
    holeTemperatureC: isShaft ? middle.innerC : middle.housingC,
    shaftTemperatureC: isShaft ? middle.shaftC : middle.outerC,
    materials: [...problem.materials],
    curvePointCount: 2,
  };
  const fit = warmFit(of, { hole: deviations('hole', isShaft ? ring : seat), shaft: deviations('shaft', isShaft ? seat : ring) });
  const { leastUm, mostUm } = interferenceOf(part);
  const states = (state: Temperatures) => [leastUm, mostUm].flatMap((um) => pairsOf(part).map((perK) => ringState(problem, part, um, state, perK)));
  const cold = states(allAt20C);
  const hot = problem.running.flatMap(states);
  const span = (values: readonly number[]) => ({ low: Math.min(...values), high: Math.max(...values) });
  return {
    seatMm: nominalMm,
    lowerLimitOfSizeMm: settled(nominalMm + seat.low / 1000),
    upperLimitOfSizeMm: settled(nominalMm + seat.high / 1000),
    ringDeviationUm: { low: ring.low, high: ring.high },
    at20C: fit.at20C,
    atTemperature: fit.atTemperature,
    smoothingUm: span([leastUm, mostUm].map((um) => um - smoothed(part, um))),
    contactPressureMpa: span(cold.map(({ pressureMpa }) => pressureMpa)),
    hotContactPressureMpa: span(hot.map(({ pressureMpa }) => pressureMpa)),
    racewayChangeUm: span(cold.map(({ racewayUm }) => racewayUm)),
    ringHoopStressMpa: span(cold.map(({ hoopMpa }) => hoopMpa)),
    looseFromC: fit.looseFromC,
    interferenceLostToLoadUm: lostToLoadUm(problem, part, radialLoadN),
  };
}

/** Pairs of expansion coefficients that may meet: a seat and a ring of one material share theirs. */
function pairsOf({ isOneMaterial, seatMaterial, ringMaterial }: SeatPart): readonly { readonly seat: number; readonly ring: number }[] {
  const ends = [ringMaterial.expansionPerK.low, ringMaterial.expansionPerK.high];
  if (isOneMaterial) return ends.map((end) => ({ seat: end, ring: end }));
  return ends.flatMap((ring) => [seatMaterial.expansionPerK.low, seatMaterial.expansionPerK.high].map((seat) => ({ seat, ring })));
}

/**
 * Interference that a radial load on a turning ring takes away, the larger of two rules.  ΔI = 0.08·√(d·Fr/B),  ΔI = 0.02·Fr/B
 * Published for the inner ring; not asked of a ring on which the load stands still.
 */
function lostToLoadUm({ rings, innerLoad }: SeatProblem, { where }: SeatPart, radialLoadN = 0): number {
  if (where !== 'shaft' || innerLoad === 'stationary' || radialLoadN === 0) return 0;
  const light = practiceValue('interference-lost-to-load', 'Factor').low * Math.sqrt((rings.boreMm * radialLoadN) / rings.widthMm);
  return Math.max(light, (practiceValue('interference-lost-to-heavy-load', 'Factor').low * radialLoadN) / rings.widthMm);
}

function settled(valueMm: number): number {
  return Math.round(valueMm * 1e9) / 1e9;
}
