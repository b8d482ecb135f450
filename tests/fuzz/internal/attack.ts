import { expect } from 'vitest';
import { drawn, spoilt } from './spoilt-bytes.js';

/** How many inputs a target gets: some in the tests, as many as `INPUTS` says in `npm run fuzz`. */
export const inputCount = process.env['INPUTS'] === undefined ? 3000 : Number(process.env['INPUTS']);
const seed = process.env['INPUTS'] === undefined ? 20_260_101 : (Date.now() & 0x7fffffff) || 1;

/** [ms] No input may take longer; far above what the slowest good one takes, so that only a hang is met. */
const longestMs = 5000;

/** [MiB] What the heap may have grown by over all inputs, garbage collected or not: far above one input, far below one kept each. */
const largestGrowthMib = 300;

/** Throws spoilt inputs at `eat`, which says what it got wrong by throwing; each is bounded in time, memory does not grow with them, and nothing leaks into all objects. */
export async function attack(good: readonly Uint8Array[], eat: (bytes: Uint8Array) => void | Promise<void>, count = inputCount): Promise<void> {
  const draw = drawn(seed);
  const before = process.memoryUsage().heapUsed;
  for (let i = 0; i < count; i += 1) {
    const bytes = spoilt(good, draw);
    const from = performance.now();
    try {
      await eat(bytes);
    } catch (error) {
      throw new Error(`seed ${seed}, input ${i}: ${JSON.stringify(Buffer.from(bytes).toString('latin1'))}`, { cause: error });
    }
    if (performance.now() - from > longestMs) throw new Error(`seed ${seed}, input ${i} took over ${longestMs} ms: ${JSON.stringify(Buffer.from(bytes).toString('latin1'))}`);
  }
  expect(Object.keys(Object.prototype)).toEqual([]);
  expect((process.memoryUsage().heapUsed - before) / 2 ** 20).toBeLessThan(largestGrowthMib);
}
