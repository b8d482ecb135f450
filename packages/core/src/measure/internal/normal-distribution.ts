const rootOfTwoPi = Math.sqrt(2 * Math.PI);

/** Density of the standard normal distribution.  φ(z) = exp(−z²/2)/√(2π) */
export function normalDensity(z: number): number {
  return Math.exp((-z * z) / 2) / rootOfTwoPi;
}

/**
 * Probability that a standard normal variable is at most z.
 * Near the middle ½ + φ(z)·(z + z³/3 + z⁵/15 + …), whose terms all have one sign; in the tails the continued fraction
 * φ(z)/(z + 1/(z + 2/(z + 3/(z + …)))). Relative error below 1e-13 to |z| = 37, where it falls below the smallest number.
 * @source dlmf-7, 7.6.2 and 7.9 (held as: memory)
 */
export function normalCumulative(z: number): number {
  if (Number.isNaN(z)) return Number.NaN;
  if (z > 0) return 1 - normalCumulative(-z);
  const size = -z;
  return size < 3 ? 0.5 - normalDensity(size) * middleSeries(size) : tail(size);
}

function middleSeries(size: number): number {
  let term = size;
  let sum = size;
  for (let n = 3; term > sum * 1e-17; n += 2) {
    term *= (size * size) / n;
    sum += term;
  }
  return sum;
}

/** Evaluated from the far end: 120 terms settle it for every z from 3 on. */
function tail(size: number): number {
  if (size > 38.5) return 0;
  let fraction = size;
  for (let n = 120; n >= 1; n -= 1) fraction = size + n / fraction;
  return normalDensity(size) / fraction;
}
