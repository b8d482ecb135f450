/** Places and weights on −1 … 1. */
export interface GaussRule {
  readonly places: Float64Array;
  readonly weights: Float64Array;
}

/**
 * The Gauss–Legendre rule of `count` points, exact for polynomials to the degree 2·count − 1.
 * Roots of the Legendre polynomial by Newton steps from cos(π·(i + ¾)/(n + ½)).
 * @source dlmf-3, 3.5 (v) (held as: memory)
 */
export function gaussLegendre(count: number): GaussRule {
  const places = new Float64Array(count);
  const weights = new Float64Array(count);
  for (let i = 0; i < count; i += 1) {
    let x = Math.cos((Math.PI * (i + 0.75)) / (count + 0.5));
    let slope = 1;
    for (let step = 0; step < 50; step += 1) {
      let before = 1;
      let now = x;
      for (let n = 2; n <= count; n += 1) [before, now] = [now, ((2 * n - 1) * x * now - (n - 1) * before) / n];
      slope = (count * (x * now - before)) / (x * x - 1);
      const move = now / slope;
      x -= move;
      if (Math.abs(move) < 1e-16) break;
    }
    places[i] = x;
    weights[i] = 2 / ((1 - x * x) * slope * slope);
  }
  return { places, weights };
}
