import { normalProbability, normalDensity } from '../normal-distribution.js';
import type { SeededDraws } from './seeded-draws.js';

/** How the sizes of one part spread; all in µm from the nominal size. */
export interface PartSpread {
  readonly kind: 'uniform' | 'triangular' | 'normal' | 'normal-within' | 'measured';
  readonly mean: number;
  readonly variance: number;
  /** Ends beyond which nothing lies; infinite for a whole normal distribution. */
  readonly low: number;
  readonly high: number;
  /** Where a smooth formula ends and another begins. */
  readonly kinks: readonly number[];
  /** Single sizes of equal weight; null where sizes spread without gaps. */
  readonly sizes: readonly number[] | null;
  /** Finest length over which the density changes. */
  readonly scale: number;
  density(x: number): number;
  cumulative(x: number): number;
  draw(draws: SeededDraws): number;
}

/** Every size between the limits is as likely as any other. */
export function uniformSpread(low: number, high: number): PartSpread {
  const width = high - low;
  return {
    kind: 'uniform',
    mean: (low + high) / 2,
    variance: (width * width) / 12,
    low,
    high,
    kinks: [low, high],
    sizes: null,
    scale: width,
    density: (x) => (x < low || x > high ? 0 : 1 / width),
    cumulative: (x) => Math.min(1, Math.max(0, (x - low) / width)),
    draw: (draws) => low + width * draws.uniform(),
  };
}

/** Sizes crowd around one value and thin out in straight lines to the limits. */
export function triangularSpread(low: number, high: number, peak: number): PartSpread {
  const width = high - low;
  const before = peak - low;
  const after = high - peak;
  const share = before / width;
  return {
    kind: 'triangular',
    mean: (low + high + peak) / 3,
    variance: (width * width - before * after) / 18,
    low,
    high,
    kinks: [low, peak, high],
    sizes: null,
    scale: width,
    density: (x) => (x < low || x > high ? 0 : x < peak ? (2 * (x - low)) / (width * before) : after === 0 ? 2 / width : (2 * (high - x)) / (width * after)),
    cumulative: (x) => (x <= low ? 0 : x >= high ? 1 : x < peak ? (x - low) ** 2 / (width * before) : 1 - (high - x) ** 2 / (width * after)),
    draw: (draws) => {
      const u = draws.uniform();
      return u < share ? low + Math.sqrt(u * width * before) : high - Math.sqrt((1 - u) * width * after);
    },
  };
}

/** The whole normal distribution: some parts lie beyond the limits. */
export function normalSpread(mean: number, deviation: number): PartSpread {
  return {
    kind: 'normal',
    mean,
    variance: deviation * deviation,
    low: -Infinity,
    high: Infinity,
    kinks: [],
    sizes: null,
    scale: deviation,
    density: (x) => normalDensity((x - mean) / deviation) / deviation,
    cumulative: (x) => normalProbability((x - mean) / deviation),
    draw: (draws) => mean + deviation * draws.normal(),
  };
}

/** A normal distribution whose parts beyond the limits were sorted out. */
export function normalWithin(low: number, high: number, mean: number, deviation: number): PartSpread {
  const from = (low - mean) / deviation;
  const to = (high - mean) / deviation;
  const below = normalProbability(from);
  const kept = normalProbability(to) - below;
  const shift = (normalDensity(from) - normalDensity(to)) / kept;
  return {
    kind: 'normal-within',
    mean: mean + deviation * shift,
    variance: deviation * deviation * (1 + (from * normalDensity(from) - to * normalDensity(to)) / kept - shift * shift),
    low,
    high,
    kinks: [low, high],
    sizes: null,
    scale: Math.min(deviation, high - low),
    density: (x) => (x < low || x > high ? 0 : normalDensity((x - mean) / deviation) / deviation / kept),
    cumulative: (x) => (x <= low ? 0 : x >= high ? 1 : (normalProbability((x - mean) / deviation) - below) / kept),
    draw: (draws) => {
      for (;;) {
        const z = draws.normal();
        if (z >= from && z <= to) return mean + deviation * z;
      }
    },
  };
}

/** Sizes that were measured, each as likely as the next. */
export function measuredSpread(values: readonly number[]): PartSpread {
  const sizes = values.toSorted((a, b) => a - b);
  const count = sizes.length;
  const mean = sizes.reduce((sum, size) => sum + size, 0) / count;
  return {
    kind: 'measured',
    mean,
    variance: sizes.reduce((sum, size) => sum + (size - mean) ** 2, 0) / count,
    low: sizes[0] ?? 0,
    high: sizes.at(-1) ?? 0,
    kinks: sizes,
    sizes,
    scale: 0,
    density: () => 0,
    cumulative: (x) => countUpTo(sizes, x) / count,
    draw: (draws) => sizes[draws.below(count)] ?? 0,
  };
}

/** How many sorted sizes are at most x. */
function countUpTo(sizes: readonly number[], x: number): number {
  let low = 0;
  let high = sizes.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((sizes[middle] ?? 0) <= x) low = middle + 1;
    else high = middle;
  }
  return low;
}
