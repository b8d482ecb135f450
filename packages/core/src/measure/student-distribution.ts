import { normalQuantile } from './normal-distribution.js';

/** From here on the expansion about the normal quantile is used; it errs by less than 1e-8 there. */
const exactUpToCount = 200;

/**
 * Probability that |t| stays at or below `t`, for a whole number of degrees of freedom: a finite sum in θ = atan(t/√ν).
 * @param t from 0, any finite number
 * @param degreesOfFreedomCount whole, from 1
 * @returns probability from 0 to 1; error below 1e-13
 * @source abramowitz-stegun-1964, 26.7.3 and 26.7.4 (held as: memory)
 * @example studentProbability(2.228, 10).toFixed(3) // '0.950'
 */
export function studentProbability(t: number, degreesOfFreedomCount: number): number {
  const angle = Math.atan(t / Math.sqrt(degreesOfFreedomCount));
  const cosine = Math.cos(angle);
  const isOdd = degreesOfFreedomCount % 2 === 1;
  if (degreesOfFreedomCount === 1) return (2 * angle) / Math.PI;
  let term = isOdd ? cosine : 1;
  let sum = term;
  for (let power = isOdd ? 3 : 2; power <= degreesOfFreedomCount - 2; power += 2) {
    term *= (cosine * cosine * (power - 1)) / power;
    sum += term;
  }
  const part = Math.sin(angle) * sum;
  return isOdd ? (2 / Math.PI) * (angle + part) : part;
}

/**
 * The `t` that |t| stays at or below with this probability (two-sided), as tables of the t-factor give it.
 * Up to 200 degrees of freedom by halving the finite sum; beyond, z + (z³+z)/4ν + (5z⁵+16z³+3z)/96ν² + (3z⁷+19z⁵+17z³−15z)/384ν³.
 * @param probability two-sided level, over 0 and below 1
 * @param degreesOfFreedomCount from 1; a fraction is cut to the whole number below, as the GUM has it (G.4.1)
 * @returns t; relative error below 1e-8 for levels up to 0.999
 * @source abramowitz-stegun-1964, 26.7.3 to 26.7.5 (held as: memory)
 * @example studentQuantile(0.95, 10).toFixed(3) // '2.228'
 */
export function studentQuantile(probability: number, degreesOfFreedomCount: number): number {
  const whole = Math.floor(degreesOfFreedomCount);
  if (whole > exactUpToCount) return nearNormal(normalQuantile((1 + probability) / 2), whole);
  let low = 0;
  let high = 1;
  while (studentProbability(high, whole) < probability && high < 1e12) {
    low = high;
    high *= 2;
  }
  while (high - low > 1e-13 * high) {
    const middle = (low + high) / 2;
    if (middle <= low || middle >= high) break;
    if (studentProbability(middle, whole) < probability) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

function nearNormal(z: number, count: number): number {
  const first = (z ** 3 + z) / 4;
  const second = (5 * z ** 5 + 16 * z ** 3 + 3 * z) / 96;
  const third = (3 * z ** 7 + 19 * z ** 5 + 17 * z ** 3 - 15 * z) / 384;
  return z + first / count + second / count ** 2 + third / count ** 3;
}
