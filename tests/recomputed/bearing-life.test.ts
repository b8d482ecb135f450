import { expect, test } from 'vitest';
import { ratingLife } from '@seatwright/core/bearing';
import { between, drawing } from './internal/drawn.js';

/**
 * ISO 281:2007 from its equations (from memory) and from the statistics behind them: lives follow Weibull's law with slope 1.5
 * and, at high reliability, a share of life below which no bearing fails (C_γ = 0.05); L10 is the life that nine in ten reach.
 */
const draw = drawing(281);
const base = { basicDynamicLoadRatingN: 20_000, equivalentLoadN: 2000, kind: 'ball', speedRpm: 1000 } as const;

test('basic life by counting revolutions: so many turns that the damage of the load, turn by turn, adds up to one', () => {
  for (let i = 0; i < 200; i += 1) {
    const [C, P, n] = [between(draw, 500, 200_000), between(draw, 100, 40_000), between(draw, 1, 20_000)];
    for (const [kind, cubed] of [['ball', (ratio: number) => ratio * ratio * ratio], ['roller', (ratio: number) => ratio * ratio * ratio * Math.cbrt(ratio)]] as const) {
      // Damage of one turn, in parts of a million turns at the rating: 1/(C/P)^p.
      const turns = 1e6 * cubed(C / P);
      const found = ratingLife.run({ basicDynamicLoadRatingN: C, equivalentLoadN: P, kind, speedRpm: n });
      expect(found.basicRatingLifeMillionRev / (turns / 1e6)).toBeCloseTo(1, 9);
      expect(found.basicRatingLifeHours / (turns / n / 60)).toBeCloseTo(1, 9);
    }
  }
});

test('a1 of every reliability is the share of L10 that Weibull leaves, to the digits printed', () => {
  for (const [reliabilityPercent, digits] of [[90, 2], [95, 2], [96, 2], [97, 2], [98, 2], [99, 2], [99.2, 2], [99.4, 2], [99.6, 2], [99.8, 2], [99.9, 3], [99.92, 3], [99.94, 3], [99.95, 3]] as const) {
    // Life that a share R of bearings reaches, by halving: survival(L) = exp(−ln(1/0.9)·((L − C)/(1 − C))^1.5), L in L10.
    let [low, high] = [0.05, 1.5];
    for (let step = 0; step < 60; step += 1) {
      const life = (low + high) / 2;
      const survival = Math.exp(Math.log(0.9) * ((life - 0.05) / 0.95) ** 1.5);
      if (survival > reliabilityPercent / 100) low = life;
      else high = life;
    }
    const { reliabilityFactor } = ratingLife.run({ ...base, reliabilityPercent });
    // Half a unit of the last digit printed, and a hair for 99.2 (0.2169) and its like.
    expect(Math.abs(reliabilityFactor - low), String(reliabilityPercent)).toBeLessThan(0.51 * 10 ** -digits);
  }
});

/** Rows of table 3 for deep groove balls: f0·Fa/C0 and e. X is 0.56, and Y follows: at Fa/Fr = e both sums meet, so Y = 0.44/e. */
const thrust = [[0.172, 0.19], [0.345, 0.22], [0.689, 0.26], [1.03, 0.28], [1.38, 0.3], [2.07, 0.34], [3.45, 0.38], [5.17, 0.42], [6.89, 0.44]] as const;

test('equivalent load of deep groove balls: drawn loads, e by straight lines between the rows, Y from where the sums meet', () => {
  let axial = 0;
  for (let i = 0; i < 400; i += 1) {
    const ratio = between(draw, 0.172, 6.89);
    const [C0, f0] = [between(draw, 1000, 100_000), between(draw, 12, 16)];
    const Fa = (ratio * C0) / f0;
    const Fr = Fa * between(draw, 0.3, 6);
    const at = thrust.findIndex(([upTo]) => ratio <= upTo);
    const [before, after] = [thrust[at - 1] ?? thrust[0], thrust[at] ?? thrust[8]];
    const share = (ratio - before[0]) / (after[0] - before[0]);
    const e = before[1] + share * (after[1] - before[1]);
    const found = ratingLife.run({ basicDynamicLoadRatingN: 2 * C0, basicStaticLoadRatingN: C0, f0Factor: f0, radialLoadN: Fr, axialLoadN: Fa, kind: 'ball', speedRpm: 500 }).equivalentLoadN;
    if (Fa <= e * Fr) expect(found).toBe(Fr);
    else {
      axial += 1;
      // e is printed to two places, so that Y by this way is good to two hundredths.
      expect(Math.abs(found / Math.max(Fr, 0.56 * Fr + (0.44 / e) * Fa) - 1)).toBeLessThan(0.02);
    }
  }
  expect(axial).toBeGreaterThan(100);
});

/** Life modification factor by the equations of 9.3.3.4. */
function aIso(kind: 'ball' | 'roller', kappa: number, load: number): number {
  const band = kappa < 0.4 ? 0 : kappa < 1 ? 1 : 2;
  const power = [0.054381, 0.19087, 0.071739][band] ?? Number.NaN;
  const k = Math.min(4, kappa);
  if (kind === 'ball') return Math.min(50, 0.1 * (1 - (2.5671 - ([2.2649, 1.9987, 1.9987][band] ?? Number.NaN) / k ** power) ** 0.83 * load ** (1 / 3)) ** -9.3);
  return Math.min(50, 0.1 * (1 - (1.5859 - ([1.3993, 1.2348, 1.2348][band] ?? Number.NaN) / k ** power) * load ** 0.4) ** -9.185);
}

test('a_ISO over viscosity ratio and cleanliness: drawn cases by the equations', () => {
  let below = 0;
  for (let i = 0; i < 600; i += 1) {
    const kind = draw() < 0.5 ? 'ball' : 'roller';
    const [meanDiameterMm, speedRpm] = [between(draw, 20, 300), between(draw, 50, 6000)];
    const wanted = (speedRpm < 1000 ? 45_000 * speedRpm ** -0.83 : 4500 / Math.sqrt(speedRpm)) / Math.sqrt(meanDiameterMm);
    const kappa = 10 ** between(draw, Math.log10(0.11), Math.log10(6));
    const [eC, CuP] = [between(draw, 0.01, 1), 10 ** between(draw, -2, 0.3)];
    const found = ratingLife.run({ ...base, kind, speedRpm, meanDiameterMm, viscosityMm2PerS: kappa * wanted, contaminationFactor: eC, fatigueLoadLimitN: CuP * base.equivalentLoadN });
    expect(found.viscosityRatio).toBeCloseTo(kappa, 6);
    const inside = aIso(kind, kappa, eC * CuP);
    // Past where the bracket ends the factor has no number of its own: 50 stands.
    const expected = Number.isNaN(inside) ? 50 : inside;
    if (expected < 50) below += 1;
    expect((found.lifeModificationFactor?.low ?? Number.NaN) / expected, `${kind} ${kappa} ${eC * CuP}`).toBeCloseTo(1, 6);
    expect((found.modifiedRatingLifeHours?.low ?? Number.NaN) / (expected * found.basicRatingLifeHours)).toBeCloseTo(1, 6);
  }
  expect(below).toBeGreaterThan(250);
});

test('the three equations of each kind meet where one takes over from the other', () => {
  for (const kind of ['ball', 'roller'] as const) {
    for (const limit of [0.4, 1]) {
      const [before, after] = [aIso(kind, limit * (1 - 1e-12), 0.2), aIso(kind, limit, 0.2)];
      expect(Math.abs(before / after - 1)).toBeLessThan(0.02);
    }
  }
});
