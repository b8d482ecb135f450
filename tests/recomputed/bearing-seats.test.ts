import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { bearingSeat } from '@seatwright/core/bearing';
import { toleranceZone } from '@seatwright/core/tolerance';
import { between, drawing, oneOf } from './internal/drawn.js';
import { solvedRings, type Part } from './internal/finite-rings.js';

/**
 * Seats of drawn bearings: limits of the rings as they were typed from the page, every extreme of every part tried, pressure and
 * raceway by finite elements. What core says must be the least and the most of all that is tried.
 */
const radial = readFileSync(new URL('../../reference/bearing/iso-492-radial.csv', import.meta.url), 'utf8')
  .trim()
  .split('\n')
  .map((line) => line.split(','));
const columns = radial[0] ?? [];
const cell = (row: readonly string[], name: string): string => row[columns.indexOf(name)] ?? '';

function ringLow(ring: 'inner' | 'outer', size: number): number {
  const row = radial.slice(1).find((row) => cell(row, 'ring') === ring && cell(row, 'toleranceClass') === 'Normal' && size > Number(cell(row, 'overMm')) && size <= Number(cell(row, 'upToMm')));
  return Number(cell(row ?? [], 'lowerUm'));
}

const draw = drawing(492);
const bearings = [[10, 26, 8], [17, 40, 12], [20, 47, 14], [25, 52, 15], [30, 72, 19], [40, 80, 18], [60, 110, 22], [85, 150, 28]] as const;
const cases = Array.from({ length: 40 }, () => {
  const [d, D, B] = oneOf(draw, bearings);
  const material = () => ({ E: between(draw, 40_000, 210_000), nu: between(draw, 0.25, 0.35), alpha: between(draw, 9e-6, 26e-6) });
  return {
    d, D, B,
    shaftClass: oneOf(draw, ['g6', 'h6', 'j5', 'k5', 'k6', 'm6', 'n6']),
    housingClass: oneOf(draw, ['G7', 'H7', 'J7', 'K7', 'M7', 'N7', 'P7']),
    bore: draw() < 0.5 ? 0 : d * between(draw, 0.2, 0.7),
    outside: D * between(draw, 1.1, 2),
    shaft: material(), housing: material(), ring: { E: 207_000, nu: 0.3, alpha: 12e-6 },
    warm: { shaft: between(draw, 20, 110), inner: between(draw, 20, 110), outer: between(draw, 20, 110), housing: between(draw, 20, 110) },
    finish: oneOf(draw, ['ground', 'turned'] as const),
  };
});

test.each(cases)('$d/$D in $shaftClass and $housingClass', ({ d, D, B, shaftClass, housingClass, bore, outside, shaft, housing, ring, warm, finish }) => {
  const stated = ({ E, nu, alpha }: typeof ring) => ({ youngsModulusGpa: E / 1000, poissonRatio: nu, expansionPerK: alpha });
  const found = bearingSeat.run({
    boreMm: d, outsideMm: D, widthMm: B, bearingKind: 'deep-groove-ball', bearingToleranceClass: 'Normal', clearanceGroup: 'N', shaftClass, housingClass, shaftBoreMm: bore, housingOutsideMm: outside,
    shaftMaterial: stated(shaft), housingMaterial: stated(housing), ringMaterial: stated(ring), seatFinish: finish,
    temperatureC: warm.housing, shaftTemperatureC: warm.shaft, innerRingTemperatureC: warm.inner, outerRingTemperatureC: warm.outer, housingTemperatureC: warm.housing,
  });
  // Average grooves: a fifth of the section in from bore and outside.
  const [inner, outer] = [d + (D - d) / 5, D - (D - d) / 5];
  expect(found.innerRacewayMm).toBeCloseTo(inner, 9);
  expect(found.outerRacewayMm).toBeCloseTo(outer, 9);

  const seat = toleranceZone.run({ nominalMm: d, toleranceClass: shaftClass });
  const hole = toleranceZone.run({ nominalMm: D, toleranceClass: housingClass });
  const part = (from: number, to: number, { E, nu, alpha }: typeof ring, celsius: number): Part => ({ inside: from, outside: to, E, nu, alpha, density: 0, warm: celsius - 20 });
  /** Pressure and growth of the raceway by pressing alone. */
  const fitted = (which: 'shaft' | 'housing', um: number, isWarm: boolean) => {
    const at = (celsius: number) => (isWarm ? celsius : 20);
    const parts = which === 'shaft' ? [part(bore, d, shaft, at(warm.shaft)), part(d, inner, ring, at(warm.inner))] : [part(outer, D, ring, at(warm.outer)), part(D, outside, housing, at(warm.housing))];
    const { pressures, outsideUm, boreUm } = solvedRings(parts, [um], 0);
    const heat = ring.alpha * 1000 * (which === 'shaft' ? inner * (at(warm.inner) - 20) : outer * (at(warm.outer) - 20));
    return { pressure: pressures[0] ?? 0, racewayUm: (which === 'shaft' ? (outsideUm[1] ?? 0) : (boreUm[0] ?? 0)) - heat };
  };
  const all = { shaft: [] as number[], housing: [] as number[], hotShaft: [] as number[], hotHousing: [] as number[] };
  const pressed = { shaft: [] as number[], housing: [] as number[] };
  for (const share of [0, 0.5, 1]) {
    for (const ringShare of [0, 1]) {
      const shaftUm = seat.lowerLimitDeviationUm + share * seat.standardToleranceUm - (1 - ringShare) * ringLow('inner', d);
      const housingUm = (1 - ringShare) * ringLow('outer', D) - (hole.lowerLimitDeviationUm + share * hole.standardToleranceUm);
      // What smoothing leaves of an interference: d/(d + 2) ground, d/(d + 3) turned; a gap stays a gap.
      const left = (um: number, size: number) => (um > 0 ? (um * size) / (size + (finish === 'ground' ? 2 : 3)) : um);
      const [onShaft, inHousing] = [fitted('shaft', left(shaftUm, d), false), fitted('housing', left(housingUm, D), false)];
      all.shaft.push(onShaft.racewayUm);
      all.housing.push(inHousing.racewayUm);
      pressed.shaft.push(onShaft.pressure);
      pressed.housing.push(inHousing.pressure);
      all.hotShaft.push(fitted('shaft', left(shaftUm, d), true).racewayUm);
      all.hotHousing.push(fitted('housing', left(housingUm, D), true).racewayUm);
    }
  }
  const span = (values: readonly number[]) => ({ low: Math.min(...values), high: Math.max(...values) });
  const close = (ours: { readonly low: number; readonly high: number } | undefined, theirs: { readonly low: number; readonly high: number }) => {
    expect(ours?.low).toBeCloseTo(theirs.low, 3);
    expect(ours?.high).toBeCloseTo(theirs.high, 3);
  };
  close(found.shaftSeat?.contactPressureMpa, span(pressed.shaft));
  close(found.housingSeat?.contactPressureMpa, span(pressed.housing));
  close(found.shaftSeat?.racewayChangeUm, span(all.shaft));
  const shrunk = span(all.housing);
  const told = found.housingSeat?.racewayChangeUm;
  // The outer raceway shrinks: told below zero, or as how much.
  close(told === undefined ? undefined : { low: Math.min(-Math.abs(told.low), -Math.abs(told.high)), high: Math.max(-Math.abs(told.low), -Math.abs(told.high)) }, shrunk);

  const clearance = found.unmountedClearanceUm;
  const worst = (free: number, inside: number, outsideUm: number) => free - inside + outsideUm;
  const [growth, shrink] = [span(all.shaft), span(all.housing)];
  expect(found.mountedClearanceUm?.min).toBeCloseTo(worst(clearance?.low ?? Number.NaN, growth.high, shrink.low), 3);
  expect(found.mountedClearanceUm?.max).toBeCloseTo(worst(clearance?.high ?? Number.NaN, growth.low, shrink.high), 3);
  // Balls as warm as the mean of both rings: each raceway and two balls grow by their own heat.
  const balls = outer - inner;
  const byHeat = 1000 * ring.alpha * (outer * (warm.outer - 20) - inner * (warm.inner - 20) - balls * ((warm.inner + warm.outer) / 2 - 20));
  const [hotGrowth, hotShrink] = [span(all.hotShaft), span(all.hotHousing)];
  expect(found.runningClearanceUm?.min).toBeCloseTo(worst(clearance?.low ?? Number.NaN, hotGrowth.high, hotShrink.low) + byHeat, 3);
  expect(found.runningClearanceUm?.max).toBeCloseTo(worst(clearance?.high ?? Number.NaN, hotGrowth.low, hotShrink.high) + byHeat, 3);
});
