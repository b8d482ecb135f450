/** Sums of tenths of a micrometre land on the decimal number that is meant; never −0. */
export function settledUm(valueUm: number): number {
  return Math.round(valueUm * 1000) / 1000 + 0;
}
