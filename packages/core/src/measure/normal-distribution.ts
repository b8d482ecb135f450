/** Beyond this the sums cancel; the continued fraction takes over. */
const seriesUpTo = 3;
/** Terms of the continued fraction; at 3 it has settled to the last digit after 40. */
const fractionTerms = 60;
const rootTwoPi = Math.sqrt(2 * Math.PI);

/**
 * Height of the standard normal density.  φ(z) = e^(−z²/2) / √(2π)
 * @example normalDensity(0).toFixed(6) // '0.398942'
 */
export function normalDensity(z: number): number {
  return Math.exp((-z * z) / 2) / rootTwoPi;
}

/**
 * Probability that a standard normal quantity lies at or below `z`.
 *   |z| ≤ 3:  Φ = ½ + φ(z)·(z + z³/3 + z⁵/(3·5) + …);   |z| > 3:  1 − Φ = φ(z)/(z + 1/(z + 2/(z + 3/(z + …))))
 * @param z distance from the mean in standard deviations; any finite number
 * @returns probability from 0 to 1; error below 1e-15, and below 1e-12 of the smaller tail
 * @source abramowitz-stegun-1964, 26.2.11 and 26.2.14 (held as: memory); both are exact expansions, without fitted numbers
 * @example normalProbability(1.96).toFixed(4) // '0.9750'
 */
export function normalProbability(z: number): number {
  const far = Math.abs(z);
  const upperTail = far <= seriesUpTo ? 0.5 - normalDensity(far) * seriesOf(far) : normalDensity(far) / fractionOf(far);
  return z > 0 ? 1 - upperTail : upperTail;
}

/**
 * The `z` that a standard normal quantity stays at or below with this probability: Φ(z) = p, by halving.
 * @param probability over 0, below 1
 * @returns z within 1e-12 for probabilities from 1e-300 to 1 − 1e-4
 * @example normalQuantile(0.975).toFixed(4) // '1.9600'
 */
export function normalQuantile(probability: number): number {
  if (probability > 0.5) return -normalQuantile(1 - probability);
  let low = -40;
  let high = 0;
  while (high - low > 1e-13) {
    const middle = (low + high) / 2;
    if (middle <= low || middle >= high) break;
    if (normalProbability(middle) < probability) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

function seriesOf(z: number): number {
  let term = z;
  let sum = z;
  for (let odd = 3; term > sum * 1e-18; odd += 2) {
    term *= (z * z) / odd;
    sum += term;
  }
  return sum;
}

function fractionOf(z: number): number {
  let value = z;
  for (let term = fractionTerms; term >= 1; term -= 1) value = z + term / value;
  return value;
}
