import { plainGeometry, source, type WorkingStep } from '../../result/index.js';
import type { BearingSeatOutput, SeatResult } from './bearing-seat-fields.js';
import { practiceValue } from './bearing-practice.js';
import { clearanceShift, elementsUm, middleState } from './clearance-states.js';
import { allAt20C, interferenceOf, ringState, smoothed } from './race-change.js';
import type { SeatPart, SeatProblem } from './seat-parts.js';

const lame = source('timoshenko-strength-2', 'memory', 'compound cylinders');

/** Working of a bearing seat: both fits, smoothing, raceways of parts of middle size, clearance. */
export function seatWorking(problem: SeatProblem, output: BearingSeatOutput, radialLoadN: number | undefined): readonly WorkingStep[] {
  const { rings, shaft, housing, clearance } = problem;
  const steps: WorkingStep[] = [
    { kind: 'formula', symbol: 'D_i', meaning: 'raceway of the inner ring', formula: 'd + s * (D - d)', scope: { d: rings.boreMm, D: rings.outsideMm, s: rings.ringShare }, value: rings.innerRaceMm, unit: 'mm', source: rings.raceSource },
    { kind: 'formula', symbol: 'D_e', meaning: 'raceway of the outer ring', formula: 'D - s * (D - d)', scope: { d: rings.boreMm, D: rings.outsideMm, s: rings.ringShare }, value: rings.outerRaceMm, unit: 'mm', source: rings.raceSource },
  ];
  if (shaft !== null && output.shaftSeat !== null) steps.push(...ofSeat(problem, shaft, output.shaftSeat, radialLoadN));
  if (housing !== null && output.housingSeat !== null) steps.push(...ofSeat(problem, housing, output.housingSeat, radialLoadN));
  const shift = clearanceShift(problem, [allAt20C]);
  const running = clearanceShift(problem, problem.running);
  if (clearance === null || shift === null || running === null || shaft === null || housing === null) return steps;
  const middle = middleState(problem.running);
  const perK = shaft.ringMaterial.expansionPerK.probable;
  const race = (part: SeatPart) => ringState(problem, part, interferenceOf(part).middleUm, middle, { seat: part.seatMaterial.expansionPerK.probable, ring: perK }).racewayUm;
  const before = { C_1: clearance.low, C_2: clearance.high };
  return [
    ...steps,
    { kind: 'lookup', symbol: 'C_1', meaning: 'smallest clearance before fitting', table: 'iso-5753-1-clearance', row: `bore ${rings.boreMm} mm`, column: 'minimumUm', value: clearance.low, unit: 'µm', source: clearance.source },
    { kind: 'lookup', symbol: 'C_2', meaning: 'largest clearance before fitting', table: 'iso-5753-1-clearance', row: `bore ${rings.boreMm} mm`, column: 'maximumUm', value: clearance.high, unit: 'µm', source: clearance.source },
    { kind: 'formula', symbol: 'C_m', meaning: 'clearance after fitting, parts of middle size', formula: '(C_1 + C_2) / 2 + dC', scope: { ...before, dC: shift.probable }, value: output.mountedClearanceUm?.probable ?? 0, unit: 'µm', source: plainGeometry },
    { kind: 'formula', symbol: 'dC_b', meaning: 'growth of the rolling elements, both sides', formula: '2000 * D_w * alpha * ((t_i + t_e) / 2 - 20)', scope: { D_w: rings.elementMm, alpha: perK, t_i: middle.innerC, t_e: middle.outerC }, value: elementsUm(problem, middle, perK), unit: 'µm', source: source('bearing-handbook-reprints', 'page', 'operating clearance') },
    { kind: 'formula', symbol: 'C_r', meaning: 'clearance while running, parts of middle size', formula: '(C_1 + C_2) / 2 + g_e - g_i - dC_b', scope: { ...before, g_e: race(housing), g_i: race(shaft), dC_b: elementsUm(problem, middle, perK) }, value: output.runningClearanceUm?.probable ?? 0, unit: 'µm', source: plainGeometry },
  ];
}

function ofSeat(problem: SeatProblem, part: SeatPart, seat: SeatResult, radialLoadN: number | undefined): readonly WorkingStep[] {
  const isShaft = part.where === 'shaft';
  const name = isShaft ? 'shaft' : 'housing';
  const mark = isShaft ? 's' : 'h';
  const { leastUm, mostUm, middleUm } = interferenceOf(part);
  const [inner, outer] = isShaft ? [part.seat, part.ring] : [part.ring, part.seat];
  const middle = middleState(problem.running);
  const [holeC, shaftC] = isShaft ? [middle.innerC, middle.shaftC] : [middle.housingC, middle.outerC];
  const [holeMaterial, shaftMaterial] = isShaft ? [part.ringMaterial, part.seatMaterial] : [part.seatMaterial, part.ringMaterial];
  const steps: WorkingStep[] = [
    { kind: 'formula', symbol: `I_${mark}1`, meaning: `smallest interference of the ${name} seat`, formula: 'ei - ES', scope: { ei: inner.low, ES: outer.high }, value: leastUm, unit: 'µm', source: part.ringSource },
    { kind: 'formula', symbol: `I_${mark}2`, meaning: `largest interference of the ${name} seat`, formula: 'es - EI', scope: { es: inner.high, EI: outer.low }, value: mostUm, unit: 'µm', source: part.ringSource },
    { kind: 'formula', symbol: `U_${mark}`, meaning: 'interference of parts of middle size after smoothing', formula: 'I > 0 ? I * d / (d + k) : I', scope: { I: middleUm, d: part.nominalMm, k: part.smoothing.mm }, value: smoothed(part, middleUm), unit: 'µm', source: part.smoothing.source },
    {
      kind: 'formula', symbol: `I_${mark}t`, meaning: `interference of the ${name} seat while running, parts of middle size`, formula: 'I + 1000 * d * (alpha_s * (t_s - 20) - alpha_h * (t_h - 20))',
      scope: { I: middleUm, d: part.nominalMm, alpha_s: shaftMaterial.expansionPerK.probable, alpha_h: holeMaterial.expansionPerK.probable, t_s: shaftC, t_h: holeC },
      value: seat.atTemperature.probableInterferenceUm, unit: 'µm', source: source('iso-1-2022', 'page', 'reference temperature 20 °C'),
    },
    ...raceStep(problem, part, middleUm),
  ];
  if (isShaft && seat.interferenceLostToLoadUm > 0 && radialLoadN !== undefined) {
    const [light, heavy] = [practiceValue('interference-lost-to-load', 'Factor'), practiceValue('interference-lost-to-heavy-load', 'Factor')];
    steps.push({ kind: 'formula', symbol: 'dI_F', meaning: 'interference that the load takes, the larger of two rules', formula: 'max(a * sqrt(d * F / B), b * F / B)', scope: { a: light.low, b: heavy.low, d: part.nominalMm, F: radialLoadN, B: problem.rings.widthMm }, value: seat.interferenceLostToLoadUm, unit: 'µm', source: light.source });
  }
  return steps;
}

/** Growth of a raceway by the fit alone, in closed form for both rings. */
function raceStep(problem: SeatProblem, part: SeatPart, middleUm: number): readonly WorkingStep[] {
  const { rings, shaftBoreMm, housingOutsideMm } = problem;
  const isShaft = part.where === 'shaft';
  const perK = { seat: part.seatMaterial.expansionPerK.probable, ring: part.ringMaterial.expansionPerK.probable };
  const { pressureMpa, racewayUm } = ringState(problem, part, middleUm, allAt20C, perK);
  const [E_b, v_b, E_a, v_a] = [part.ringMaterial.youngsModulusGpa * 1000, part.ringMaterial.poissonRatio, part.seatMaterial.youngsModulusGpa * 1000, part.seatMaterial.poissonRatio];
  const U = smoothed(part, middleUm) / 1000;
  const [symbol, d, i, o] = isShaft ? (['s', rings.boreMm, shaftBoreMm, rings.innerRaceMm] as const) : (['h', rings.outsideMm, rings.outerRaceMm, housingOutsideMm] as const);
  const pressure = isShaft
    ? 'max(0, U / (d * (((o^2 + d^2) / (o^2 - d^2) + v_b) / E_b + ((d^2 + i^2) / (d^2 - i^2) - v_a) / E_a)))'
    : 'max(0, U / (d * (((o^2 + d^2) / (o^2 - d^2) + v_a) / E_a + ((d^2 + i^2) / (d^2 - i^2) - v_b) / E_b)))';
  const growth = isShaft ? '1000 * 2 * p * d^2 * o / (E_b * (o^2 - d^2))' : '-1000 * 2 * p * d^2 * i / (E_b * (d^2 - i^2))';
  return [
    { kind: 'formula', symbol: `p_${symbol}`, meaning: `contact pressure of the ${part.where} seat, parts of middle size, 20 °C`, formula: pressure, scope: { U, d, i, o, E_b, v_b, E_a, v_a }, value: pressureMpa, unit: 'MPa', source: lame },
    { kind: 'formula', symbol: `g_${symbol}`, meaning: 'growth of that raceway by it', formula: growth, scope: { p: pressureMpa, d, i, o, E_b }, value: racewayUm, unit: 'µm', source: lame },
  ];
}
