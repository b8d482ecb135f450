import { studentQuantile } from './student-distribution.js';

/** The reading that stands furthest from the others, and whether it stands too far for chance. */
export interface GrubbsOutlier {
  /** Place in the list, from 0. */
  readonly index: number;
  /** Distance from the mean in standard deviations. */
  readonly distanceRatio: number;
  readonly criticalRatio: number;
  readonly isOutlier: boolean;
}

/**
 * Critical distance of the furthest of `count` readings, in standard deviations.
 *   G = (n − 1)/√n · √(t²/(n − 2 + t²)),  t two-sided at the level α/n with n − 2 degrees of freedom
 * @param count readings, from 3
 * @param significance chance of a false alarm, either side; over 0, below 1
 * @source grubbs-1969, Table I and its relation to t (held as: memory)
 * @example grubbsCriticalRatio(10, 0.05).toFixed(3) // '2.290'
 */
export function grubbsCriticalRatio(count: number, significance: number): number {
  const t = studentQuantile(1 - significance / count, count - 2);
  return ((count - 1) / Math.sqrt(count)) * Math.sqrt(t ** 2 / (count - 2 + t ** 2));
}

/**
 * Grubbs' test for one outlier on either side.
 * A reading is only called one when it is also more than one step of the instrument from the mean: readings that
 * differ by a step may be alike.
 * @returns null with fewer than 3 readings or when all are alike
 * @example grubbsOutlier([10.001, 10.002, 10.001, 10.002, 10.05], 0.001, 0.05)?.index // 4
 */
export function grubbsOutlier(values: readonly number[], stepMm: number, significance: number): GrubbsOutlier | null {
  const count = values.length;
  if (count < 3) return null;
  const mean = values.reduce((sum, value) => sum + value, 0) / count;
  const deviation = Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (count - 1));
  if (deviation <= mean * 1e-13) return null;
  let index = 0;
  values.forEach((value, i) => {
    if (Math.abs(value - mean) > Math.abs((values[index] ?? mean) - mean)) index = i;
  });
  const distance = Math.abs((values[index] ?? mean) - mean);
  const criticalRatio = grubbsCriticalRatio(count, significance);
  const distanceRatio = distance / deviation;
  return { index, distanceRatio, criticalRatio, isOutlier: distanceRatio > criticalRatio && distance > stepMm * (1 + 1e-9) };
}
