/** A permitted range; `over` and `below` are open ends, `from` and `upTo` closed ones. */
export interface Limits {
  readonly over?: number;
  readonly from?: number;
  readonly below?: number;
  readonly upTo?: number;
  readonly unit: string;
}

/**
 * The range in words: "over 0, up to and including 500 mm".
 * @example describeLimits({ over: 0, upTo: 500, unit: 'mm' }) // 'over 0, up to and including 500 mm'
 */
export function describeLimits(limits: Limits): string {
  const parts: string[] = [];
  if (limits.over !== undefined) parts.push(`over ${limits.over}`);
  if (limits.from !== undefined) parts.push(`from ${limits.from}`);
  if (limits.below !== undefined) parts.push(`below ${limits.below}`);
  if (limits.upTo !== undefined) parts.push(`up to and including ${limits.upTo}`);
  if (parts.length === 0) parts.push('any number');
  return limits.unit === '' ? parts.join(', ') : `${parts.join(', ')} ${limits.unit}`;
}

/** Nearer to nothing than this, and yet not nothing, no size, load or time of a workshop is: such a number is a slip. */
export const smallestMagnitude = 1e-15;

/**
 * Whether a number lies in the range. NaN, infinities and numbers too small to be meant never do.
 * @example isWithin(0, { over: 0, upTo: 500, unit: 'mm' }) // false
 */
export function isWithin(value: number, limits: Limits): boolean {
  return (
    Number.isFinite(value) &&
    isMeant(value) &&
    (limits.over === undefined || value > limits.over) &&
    (limits.from === undefined || value >= limits.from) &&
    (limits.below === undefined || value < limits.below) &&
    (limits.upTo === undefined || value <= limits.upTo)
  );
}

/** Zero, or large enough to be meant. */
export function isMeant(value: number): boolean {
  return value === 0 || Math.abs(value) >= smallestMagnitude;
}
