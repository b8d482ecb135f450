/** An exact fraction of whole numbers; `bottom` is above zero. */
export interface Ratio {
  readonly top: bigint;
  readonly bottom: bigint;
}

export function ratio(top: bigint | number, bottom: bigint | number = 1): Ratio {
  return { top: BigInt(top), bottom: BigInt(bottom) };
}

export function plus(a: Ratio, b: Ratio): Ratio {
  return { top: a.top * b.bottom + b.top * a.bottom, bottom: a.bottom * b.bottom };
}

export function times(a: Ratio, b: Ratio): Ratio {
  return { top: a.top * b.top, bottom: a.bottom * b.bottom };
}

export function negated(a: Ratio): Ratio {
  return { top: -a.top, bottom: a.bottom };
}

/** A decimal text with a dot (`19.05`, `.5`, `19.`) as a fraction, exactly. */
export function decimalRatio(text: string): Ratio {
  const [whole = '', part = ''] = text.split('.');
  return { top: BigInt(whole + part), bottom: 10n ** BigInt(part.length) };
}

/** The number next to the fraction rounded to nine decimals: the same that the digits give when they are typed as a number. */
export function toNumber({ top, bottom }: Ratio): number {
  const scale = 1_000_000_000n;
  const sign = top < 0n ? -1n : 1n;
  const scaled = (2n * top * sign * scale + bottom) / (2n * bottom);
  // Whole numbers that a number holds exactly are divided with one rounding; longer ones go by their digits.
  const size = scaled <= Number.MAX_SAFE_INTEGER ? Number(scaled) / 1e9 : Number(`${scaled / scale}.${String(scaled % scale).padStart(9, '0')}`);
  return size === 0 ? 0 : Number(sign) * size;
}
