/**
 * Numbers from 0 to 1 for drawn cases, the same on every machine: Park and Miller's minimal standard generator
 * (Communications of the ACM 31, 1988). Good enough to pick cases and to shake a mean, and not what core draws with.
 */
export function drawing(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
}

/** From low to high. */
export const between = (draw: () => number, low: number, high: number): number => low + (high - low) * draw();

/** One of them. */
export function oneOf<T>(draw: () => number, values: readonly T[]): T {
  const value = values[Math.floor(draw() * values.length)];
  if (value === undefined) throw new Error('nothing to pick from');
  return value;
}

/** A normal draw by the sum of twelve would cut the tails: by the cosine of Box and Muller instead. */
export const normal = (draw: () => number): number => Math.sqrt(-2 * Math.log(1 - draw())) * Math.cos(2 * Math.PI * draw());
