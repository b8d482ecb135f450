import { writeNumber, type DecimalMark } from './write-number.js';

export interface WriteLengthOptions {
  readonly unit?: 'mm' | 'in' | 'in-fraction' | 'µm' | 'thou';
  readonly decimals?: number;
  readonly decimalMark?: DecimalMark;
}

const nbsp = '\u00a0';
const usualDecimals = { mm: 3, in: 4, µm: 0, thou: 1 } as const;
const perMm = { mm: 1, in: 5 / 127, µm: 1000, thou: 5000 / 127 } as const;

/** Writes a length with its unit. `in-fraction` gives a fraction of an inch up to 64ths where one is met exactly, else decimals.
 * @param valueMm [mm]
 * @example writeLength(34.925, { unit: 'in-fraction' }) // '1 3/8 in'
 */
export function writeLength(valueMm: number, { unit = 'mm', decimals, decimalMark = '.' }: WriteLengthOptions = {}): string {
  if (unit === 'in-fraction') return fractionOfInch(valueMm) ?? writeLength(valueMm, { unit: 'in', decimalMark, ...(decimals === undefined ? {} : { decimals }) });
  return writeNumber(valueMm * perMm[unit], decimals ?? usualDecimals[unit], decimalMark) + nbsp + unit;
}

function fractionOfInch(valueMm: number): string | null {
  const parts = Math.round((Math.abs(valueMm) * 320) / 127);
  if (Math.abs((parts * 127) / 320 - Math.abs(valueMm)) > 1e-6) return null;
  let top = parts % 64;
  let bottom = 64;
  while (top !== 0 && top % 2 === 0) {
    top /= 2;
    bottom /= 2;
  }
  const whole = Math.floor(parts / 64);
  const sign = valueMm < 0 && parts !== 0 ? '−' : '';
  const text = top === 0 ? String(whole) : whole === 0 ? `${top}/${bottom}` : `${whole} ${top}/${bottom}`;
  return `${sign}${text}${nbsp}in`;
}
