/** A size in inches as a workshop writes it, with its exact millimetres. */
export interface InchFraction {
  readonly text: string;
  readonly sizeMm: number;
  readonly denominator: number;
}

/**
 * The inch fraction nearest to a size, of one denominator.  1 in = 25.4 mm = 127/5 mm exactly
 * @param denominator 1, 2, 4 … 64: parts of an inch
 */
export function nearestInchFraction(sizeMm: number, denominator: number): InchFraction {
  const parts = Math.round((sizeMm * denominator * 5) / 127);
  let [over, under] = [parts, denominator];
  while (over % 2 === 0 && under > 1) [over, under] = [over / 2, under / 2];
  const whole = Math.floor(over / under);
  const rest = over - whole * under;
  const text = rest === 0 ? `${whole} in` : `${whole === 0 ? '' : `${whole} `}${rest}/${under} in`;
  return { text, sizeMm: (parts * 127) / (5 * denominator), denominator: under };
}

/** The coarsest fraction, from whole inches down to 1/64 in, that lies within `reachMm`; null where none does. */
export function inchFractionWithin(sizeMm: number, reachMm: number): InchFraction | null {
  for (const denominator of [1, 2, 4, 8, 16, 32, 64]) {
    const fraction = nearestInchFraction(sizeMm, denominator);
    if (fraction.sizeMm > 0 && Math.abs(fraction.sizeMm - sizeMm) <= reachMm + 1e-9) return fraction;
  }
  return null;
}
