import { fixedText } from '../quantity/index.js';
import type { Catalogue } from './catalogue.js';

/** How numbers are written. */
export interface WritingStyle {
  /** `in` writes everything as inch shops do: inches and thou, °F, lbf, psi, lbf·ft, ft/min, miles. */
  readonly lengthUnit: 'mm' | 'in';
  readonly decimalMark: '.' | ',';
  /** Units that the language calls otherwise, by their English name: `{ rpm: 'U/min' }`. */
  readonly units?: Readonly<Record<string, string>>;
}

/**
 * The style of a language.
 * @example styleOf(english, 'in').lengthUnit // 'in'
 */
export function styleOf({ decimalMark, units }: Pick<Catalogue, 'decimalMark' | 'units'>, lengthUnit: WritingStyle['lengthUnit'] = 'mm'): WritingStyle {
  return { lengthUnit, decimalMark, units };
}

export const plainStyle: WritingStyle = { lengthUnit: 'mm', decimalMark: '.' };

const nbsp = '\u00a0';

/** Longest suffix first, so that `PerK` is met before `K`. */
const suffixes: readonly (readonly [suffix: string, unit: string, decimals: number])[] = [
  ['MlPerMin', 'mL/min', 2],
  ['Cm3', 'cm³', 0],
  ['MillionRev', 'million turns', 1],
  ['KgPerM3', 'kg/m³', 0],
  ['PaM3PerS', 'Pa·m³/s', 5],
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
  ['S', 's', 0],
];

interface InchUnit {
  readonly unit: string;
  readonly of: (value: number) => number;
  /** How many decimals a number of that size is told with. */
  readonly decimals: (shown: number) => number;
}

const whole = () => 0;

/** What inch shops write instead; exact by definition: 1 in = 25.4 mm, 1 lb = 0.453 592 37 kg, standard gravity 9.806 65 m/s². */
const inchUnits: Readonly<Record<string, InchUnit>> = {
  Mm: { unit: 'in', of: (mm) => (mm * 5) / 127, decimals: () => 4 },
  Um: { unit: 'thou', of: (um) => (um * 5) / 127, decimals: () => 2 },
  N: { unit: 'lbf', of: (n) => n / 4.4482216152605, decimals: whole },
  Nm: { unit: 'lbf·ft', of: (nm) => nm / 1.3558179483314004, decimals: (shown) => (shown < 10 ? 1 : 0) },
  Mpa: { unit: 'psi', of: (mpa) => (mpa * 1e6 * 6.4516e-4) / 4.4482216152605, decimals: (shown) => (shown < 10 ? 1 : 0) },
  Kpa: { unit: 'psi', of: (kpa) => (kpa * 1e3 * 6.4516e-4) / 4.4482216152605, decimals: (shown) => (shown < 10 ? 2 : 0) },
  Mps: { unit: 'ft/min', of: (mps) => (mps * 60) / 0.3048, decimals: whole },
  Km: { unit: 'mi', of: (km) => km / 1.609344, decimals: whole },
  Cm3: { unit: 'in³', of: (cm3) => cm3 / 16.387064, decimals: () => 1 },
  C: { unit: '°F', of: (c) => (c * 9) / 5 + 32, decimals: whole },
  K: { unit: '°F', of: (k) => (k * 9) / 5, decimals: whole },
};

/** The drills are those of ISO 235, and their size stands on them in millimetres, in an inch shop too. */
const metricDrill = 'drillMm';

/** Room behind a seal, found with a bent wire: thousandths of it are nobody's reading. */
const room = /^room/u;

/** Names of limits that a tolerance class gives. */
const limit = /limit|lower|upper/iu;

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
 * The name of a field in words, without the unit at its end.
 * @example nameInWords('shaftHoopStressMpa') // 'shaft hoop stress'
 */
export function nameInWords(name: string): string {
  const [suffix = ''] = bare.test(name) ? [] : (suffixes.find(([ending]) => name.endsWith(ending)) ?? []);
  return name.slice(0, name.length - suffix.length).replaceAll(/(?<=[a-z0-9])(?=[A-Z])/gu, ' ').toLowerCase();
}

/**
 * A value with its unit, as a sentence wants it. The unit comes from the end of the parameter's name;
 * lengths follow the style's unit, forces over 1 000 N are written in kN with two digits.
 * @example writeValue('pushForceN', 3420) // '3.4 kN'
 */
export function writeValue(name: string, value: number | string, style: WritingStyle = plainStyle): string {
  if (typeof value === 'string') return value;
  if (bare.test(name)) return mark(trimmed(value, name.endsWith('Count') ? 0 : Math.abs(value) >= 1 ? 2 : 3), style);
  const found = suffixes.find(([suffix]) => name.endsWith(suffix));
  if (found === undefined) return mark(trimmed(value, 3), style);
  const [suffix, unit] = found;
  const decimals = room.test(name) ? found[2] - 1 : found[2];
  const inch = style.lengthUnit === 'in' ? inchUnits[suffix] : undefined;
  if (inch !== undefined) {
    const shown = inch.of(value);
    const told = suffix === 'N' && Math.abs(shown) >= 100 ? Math.round(shown / 10) * 10 : shown;
    const text = mark(trimmed(told, inch.decimals(Math.abs(shown)) - (room.test(name) ? 1 : 0)), style) + nbsp + called(inch.unit, style);
    return name === metricDrill ? `${writeValue(name, value, { ...style, lengthUnit: 'mm' })} (${text})` : text;
  }
  if (suffix === 'N' && Math.abs(value) >= 1000) return mark(trimmed(value / 1000, Math.abs(value) >= 10_000 ? 0 : 1), style) + nbsp + 'kN';
  if (suffix === 'N' && Math.abs(value) >= 20) return mark(trimmed(Math.round(value / 10) * 10, 0), style) + nbsp + 'N';
  if (suffix === 'Um' && (Math.abs(value) < 10 || isHalf(value))) return mark(trimmed(value, 1), style) + nbsp + called(unit, style);
  if (suffix === 'Mm' && limit.test(name) && isHalf(value * 1000)) return mark(trimmed(value, 4), style) + nbsp + called(unit, style);
  if (suffix === 'Nm' && Math.abs(value) < 1) return mark(trimmed(value, 3), style) + nbsp + called(unit, style);
  if (suffix === 'Mpa' && Math.abs(value) >= 10) return mark(trimmed(value, 0), style) + nbsp + called(unit, style);
  if (suffix === 'Deg') return mark(trimmed(value, decimals), style) + unit;
  return mark(trimmed(value, decimals), style) + nbsp + called(unit, style);
}

/**
 * A value in the units of the style, unrounded, with the name of its unit there.
 * @example valueInStyle('boreMm', 25.4, { lengthUnit: 'in', decimalMark: '.' }).value // 1
 */
export function valueInStyle(name: string, value: number, style: WritingStyle): { readonly value: number; readonly unit: string } {
  const [suffix = '', unit = ''] = suffixes.find(([end]) => name.endsWith(end)) ?? [];
  const inch = style.lengthUnit === 'in' ? inchUnits[suffix] : undefined;
  return inch === undefined ? { value, unit: called(unit, style) } : { value: inch.of(value), unit: called(inch.unit, style) };
}

/** Half a micrometre, as the limits of js and JS have it: rounded, the limits would stand further apart or nearer than the tolerance. */
function isHalf(um: number): boolean {
  return Math.abs(Math.abs(um % 1) - 0.5) < 1e-6;
}

function trimmed(value: number, decimals: number): string {
  const text = fixedText(value, decimals);
  const short = text.includes('.') ? text.replace(/\.?0+$/, '') : text;
  return short === '-0' ? '0' : short.replace('-', '−');
}

function called(unit: string, style: WritingStyle): string {
  return style.units?.[unit] ?? unit;
}

function mark(text: string, style: WritingStyle): string {
  return style.decimalMark === ',' ? text.replace('.', ',') : text;
}
