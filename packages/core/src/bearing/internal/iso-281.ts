import { invalidInput, outsideTable, type Span } from '../../result/index.js';
import { ballLoadFactors } from '../../tables/generated/ball-load-factors.js';
import { lifeReliability } from '../../tables/generated/life-reliability.js';
import { oilCleanliness } from '../../tables/generated/oil-cleanliness.js';

export const contaminationLevels = ['extreme cleanliness', 'high cleanliness', 'normal cleanliness', 'slight contamination', 'typical contamination', 'severe contamination', 'very severe contamination'] as const;

/** Factors and result of the equivalent load of a deep groove ball bearing. */
export interface BallLoad {
  readonly Fr: number;
  readonly Fa: number;
  readonly e: number;
  readonly X: number;
  readonly Y: number;
  readonly P: number;
}

/**
 * Equivalent dynamic load of deep groove balls, single row.  Fa/Fr ≤ e: P = Fr;  else P = 0.56·Fr + Y·Fa
 * e and Y by f0·Fa/C0, linear between the rows. Below the first row the first row stands: its e is the smallest and its Y the largest.
 * @throws CalculationError outside-table (f0·Fa/C0 over 6.89, or f0 and C0 missing under axial load)
 * @source iso-281-2007, table 3 (held as: memory)
 */
export function equivalentBallLoad(Fr: number, Fa: number, f0: number | undefined, C0: number | undefined): BallLoad {
  const none = { Fr, Fa, e: 0, X: 0.56, Y: 0, P: Fr };
  if (Fa === 0) return none;
  if (f0 === undefined) throw invalidInput('f0Factor', undefined, 'the factor f0, as the maker gives it', 'missing; axial load on balls needs it');
  if (C0 === undefined) throw invalidInput('basicStaticLoadRatingN', undefined, 'the static load rating, as the maker gives it', 'missing; axial load on balls needs it');
  const { columns } = ballLoadFactors;
  const ratio = (f0 * Fa) / C0;
  const ratios = columns.f0FaOverC0Ratio;
  const last = ratios.at(-1) ?? 0;
  if (ratio > last) throw outsideTable('the load factors of deep groove balls', 'axialLoadN', Fa, { over: 0, upTo: (last * C0) / f0, unit: 'N' });
  const above = Math.max(1, ratios.findIndex((row) => ratio <= row));
  const share = Math.max(0, (ratio - (ratios[above - 1] ?? 0)) / ((ratios[above] ?? 1) - (ratios[above - 1] ?? 0)));
  const between = (values: readonly number[]) => (values[above - 1] ?? 0) + share * ((values[above] ?? 0) - (values[above - 1] ?? 0));
  const [e, X, Y] = [between(columns.eRatio), 0.56, between(columns.yFactor)];
  // Just over e the factors of the table may give a little less than Fr: the load never counts less than its radial part.
  return { Fr, Fa, e, X, Y, P: Fa <= e * Fr ? Fr : Math.max(Fr, X * Fr + Y * Fa) };
}

/**
 * Factor a1 for a reliability, linear between the rows.
 * @source iso-281-2007, table 12 (held as: memory)
 */
export function reliabilityFactor(percent: number): number {
  const { columns } = lifeReliability;
  const above = Math.max(1, columns.reliabilityPercent.findIndex((row) => percent <= row));
  const [from = 90, to = 95] = [columns.reliabilityPercent[above - 1], columns.reliabilityPercent[above]];
  const [a = 1, b = 1] = [columns.a1Factor[above - 1], columns.a1Factor[above]];
  return a + ((percent - from) / (to - from)) * (b - a);
}

/**
 * Viscosity ν1 [mm²/s] that an adequate film wants.  n < 1000: 45 000·n^−0.83·Dpw^−0.5;  else 4 500·n^−0.5·Dpw^−0.5
 * @source iso-281-2007, 9.3.3.1 (held as: memory)
 */
export function nominalViscosity(speedRpm: number, meanDiameterMm: number): number {
  return speedRpm < 1000 ? 45_000 * speedRpm ** -0.83 * meanDiameterMm ** -0.5 : 4500 * speedRpm ** -0.5 * meanDiameterMm ** -0.5;
}

/** Constants of a_ISO over the three ranges of κ. */
const ranges = {
  ball: [[2.5671, 2.2649, 0.054381], [2.5671, 1.9987, 0.19087], [2.5671, 1.9987, 0.071739]],
  roller: [[1.5859, 1.3993, 0.054381], [1.5859, 1.2348, 0.19087], [1.5859, 1.2348, 0.071739]],
} as const;
const shapes = { ball: { inner: 0.83, load: 1 / 3, outer: -9.3 }, roller: { inner: 1, load: 0.4, outer: -9.185 } } as const;
const largestFactor = 50;

/** The constants that count at one κ. Throws `CalculationError` outside-table (κ below 0.1). */
export function lifeModificationTerms(kind: 'ball' | 'roller', kappa: number) {
  if (kappa < 0.1) throw outsideTable('the life modification factor of ISO 281, which is given by the viscosity ratio κ', 'viscosityMm2PerS', kappa, { from: 0.1, unit: '' });
  const ratio = Math.min(kappa, 4);
  const [a, b, power] = ranges[kind][ratio < 0.4 ? 0 : ratio < 1 ? 1 : 2];
  return { ratio, a, b, power, ...shapes[kind] };
}

/**
 * Life modification factor a_ISO of radial bearings.  ball: 0.1·[1 − (2.5671 − B/κ^b)^0.83·(eC·Cu/P)^(1/3)]^−9.3;
 * roller: 0.1·[1 − (1.5859 − B/κ^b)·(eC·Cu/P)^0.4]^−9.185;  at most 50; κ over 4 counts as 4
 * @throws CalculationError outside-table (κ below 0.1)
 * @source iso-281-2007, 9.3.3.4 (held as: memory; the branches meet at κ = 0.4 and 1)
 */
export function lifeModification(kind: 'ball' | 'roller', kappa: number, loadShare: number): number {
  const { ratio, a, b, power, inner, load, outer } = lifeModificationTerms(kind, kappa);
  // At κ = 0.1 the rounded constants of the standard miss nothing by 0.0001.
  const left = 1 - Math.max(0, a - b / ratio ** power) ** inner * loadShare ** load;
  return left <= 0 ? largestFactor : Math.min(largestFactor, 0.1 * left ** outer);
}

/**
 * Span of the contamination factor eC for a cleanliness, by the mean diameter.
 * @source iso-281-2007, table 13 (held as: memory)
 */
export function contaminationSpan(level: (typeof contaminationLevels)[number], meanDiameterMm: number): Span {
  const { columns } = oilCleanliness;
  const i = columns.level.findIndex((name, row) => name === level && meanDiameterMm >= (columns.fromMm[row] ?? 0) && meanDiameterMm < (columns.belowMm[row] ?? Infinity));
  return { low: columns.lowFactor[i] ?? 0, high: columns.highFactor[i] ?? 0 };
}
