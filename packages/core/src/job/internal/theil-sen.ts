import { normalQuantile } from '../../measure/index.js';

/** A slope that single bad points do not bend, with its interval. */
export interface RobustSlope {
  readonly slope: number;
  /** Value of the line at the last point. */
  readonly levelAtLast: number;
  /** Interval of the slope; null with fewer points than it needs. */
  readonly interval: { readonly low: number; readonly high: number } | null;
  readonly pairCount: number;
}

/** Level of the interval. */
export const slopeConfidence = 0.95;
/**
 * With fewer points no interval by ranks reaches 95 %: from the least to the largest slope of n points lies the true one with
 * 1 − 2/n!, which is 91.7 % of four points and 98.3 % of five.
 */
const leastPointsForInterval = 5;

/**
 * Theil–Sen: the median of the slopes of all pairs of points, the line through the median of what it leaves.
 * Interval by Sen from the ranks of the slopes:  C = z·√(n(n − 1)(2n + 5)/18), from rank (N − C)/2 to (N + C)/2 + 1
 * @param points (x, y) in order of x; pairs with equal x are left out
 * @returns null with fewer than two points of different x
 * @source sen-1968 (held as: memory)
 */
export function theilSen(points: readonly { readonly x: number; readonly y: number }[]): RobustSlope | null {
  const slopes: number[] = [];
  points.forEach((a, i) => points.slice(i + 1).forEach((b) => b.x !== a.x && slopes.push((b.y - a.y) / (b.x - a.x))));
  const last = points.at(-1);
  if (slopes.length === 0 || last === undefined) return null;
  slopes.sort((a, b) => a - b);
  const slope = medianOf(slopes);
  const levelAtLast = medianOf(points.map(({ x, y }) => y - slope * (x - last.x)).toSorted((a, b) => a - b));
  return { slope, levelAtLast, interval: points.length < leastPointsForInterval ? null : intervalOf(slopes, points.length), pairCount: slopes.length };
}

function intervalOf(slopes: readonly number[], n: number): RobustSlope['interval'] {
  const reach = normalQuantile((1 + slopeConfidence) / 2) * Math.sqrt((n * (n - 1) * (2 * n + 5)) / 18);
  const low = Math.max(0, Math.floor((slopes.length - reach) / 2) - 1);
  const high = Math.min(slopes.length - 1, Math.ceil((slopes.length + reach) / 2));
  return { low: slopes[low] ?? 0, high: slopes[high] ?? 0 };
}

/** Median of sorted numbers. */
export function medianOf(sorted: readonly number[]): number {
  const middle = Math.floor(sorted.length / 2);
  const upper = sorted[middle] ?? 0;
  return sorted.length % 2 === 1 ? upper : ((sorted[middle - 1] ?? 0) + upper) / 2;
}
