import type { PartSpread } from './part-distribution.js';
import { SeededDraws } from './seeded-draws.js';

/** What a seeded run found. */
export interface SimulatedClearance {
  readonly mean: number;
  readonly deviation: number;
  readonly clearanceShare: number;
  readonly interferenceShare: number;
  readonly overShare: number;
  /** Sorted. */
  readonly values: Float64Array;
}

/** Picks pairs of parts at random; the same seed gives the same digits on every machine. */
export function simulateClearance(hole: PartSpread, shaft: PartSpread, count: number, seed: number, interferenceOver: number): SimulatedClearance {
  const draws = new SeededDraws(seed);
  const values = new Float64Array(count);
  let sum = 0;
  let clear = 0;
  let tight = 0;
  let over = 0;
  for (let i = 0; i < count; i += 1) {
    const clearance = hole.draw(draws) - shaft.draw(draws);
    values[i] = clearance;
    sum += clearance;
    if (clearance > 0) clear += 1;
    if (clearance < 0) tight += 1;
    if (-clearance > interferenceOver) over += 1;
  }
  const mean = sum / count;
  let squares = 0;
  for (let i = 0; i < count; i += 1) squares += ((values[i] ?? 0) - mean) ** 2;
  values.sort();
  return { mean, deviation: Math.sqrt(squares / count), clearanceShare: clear / count, interferenceShare: tight / count, overShare: over / count, values };
}
