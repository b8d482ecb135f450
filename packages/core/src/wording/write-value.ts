/** How numbers are written. */
export interface WritingStyle {
  readonly lengthUnit: 'mm' | 'in';
  readonly decimalMark: '.' | ',';
}

export const plainStyle: WritingStyle = { lengthUnit: 'mm', decimalMark: '.' };

const nbsp = '\u00a0';

/** Longest suffix first, so that `PerK` is met before `K`. */
const suffixes: readonly (readonly [suffix: string, unit: string, decimals: number])[] = [
  ['MlPerMin', 'mL/min', 2],
  ['Cm3', 'cm³', 0],
  ['MillionRev', 'million turns', 1],
  ['KgPerM3', 'kg/m³', 0],
  ['Mm2PerS', 'mm²/s', 1],
  ['Mm2', 'mm²', 1],
  ['PerK', '1/K', 8],
  ['Percent', '%', 1],
  ['Thou', 'thou', 2],
  ['Hours', 'h', 0],
  ['Kpa', 'kPa', 1],
  ['Mpa', 'MPa', 3],
  ['Gpa', 'GPa', 0],
  ['Rpm', 'rpm', 0],
  ['Mps', 'm/s', 2],
  ['Hrc', 'HRC', 0],
  ['Deg', '°', 2],
  ['Days', 'days', 0],
  ['Nm', 'N·m', 1],
  ['Km', 'km', 0],
  ['Mm', 'mm', 3],
  ['Um', 'µm', 0],
  ['In', 'in', 4],
  ['C', '°C', 0],
  ['K', 'K', 0],
  ['N', 'N', 0],
  ['W', 'W', 0],
];

const bare = /(Ratio|Factor|Coefficient|Probability|Count)$/;

/**
 * The unit that the end of a field name tells, or '' when the number has none.
 * @example unitOfName('contactPressureMpa') // 'MPa'
 */
export function unitOfName(name: string): string {
  if (bare.test(name)) return '';
  return suffixes.find(([suffix]) => name.endsWith(suffix))?.[1] ?? '';
}

/**
 * A value with its unit, as a sentence wants it. The unit comes from the end of the parameter's name;
 * lengths follow the style's unit, forces over 1 000 N are written in kN with two digits.
 * @example writeValue('pushForceN', 3420) // '3.4 kN'
 */
export function writeValue(name: string, value: number | string, style: WritingStyle = plainStyle): string {
  if (typeof value === 'string') return value;
  if (bare.test(name)) return mark(trimmed(value, name.endsWith('Count') ? 0 : 3), style);
  const found = suffixes.find(([suffix]) => name.endsWith(suffix));
  if (found === undefined) return mark(trimmed(value, 3), style);
  const [suffix, unit, decimals] = found;
  if (suffix === 'Mm' && style.lengthUnit === 'in') return mark(trimmed((value * 5) / 127, 4), style) + nbsp + 'in';
  if (suffix === 'Um' && style.lengthUnit === 'in') return mark(trimmed((value * 5) / 127, 2), style) + nbsp + 'thou';
  if (suffix === 'N' && Math.abs(value) >= 1000) return mark(trimmed(value / 1000, Math.abs(value) >= 10_000 ? 0 : 1), style) + nbsp + 'kN';
  if (suffix === 'N' && Math.abs(value) >= 20) return mark(trimmed(Math.round(value / 10) * 10, 0), style) + nbsp + 'N';
  if (suffix === 'Um' && Math.abs(value) < 10) return mark(trimmed(value, 1), style) + nbsp + unit;
  if (suffix === 'Mpa' && Math.abs(value) >= 10) return mark(trimmed(value, 0), style) + nbsp + unit;
  if (suffix === 'Deg') return mark(trimmed(value, decimals), style) + unit;
  return mark(trimmed(value, decimals), style) + nbsp + unit;
}

function trimmed(value: number, decimals: number): string {
  const text = value.toFixed(decimals);
  const short = text.includes('.') ? text.replace(/\.?0+$/, '') : text;
  return short === '-0' ? '0' : short.replace('-', '−');
}

function mark(text: string, style: WritingStyle): string {
  return style.decimalMark === ',' ? text.replace('.', ',') : text;
}
