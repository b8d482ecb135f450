import { expect, test } from 'vitest';
import { parseAngle, parseDeviation, parseForce, parseHours, parseLength, parsePressure, parseRotationalSpeed, parseSurfaceSpeed, parseTemperature, parseTemperatureDifference } from '@seatwright/core/quantity';
import { drawing, oneOf } from './internal/drawn.js';

/** Every unit by exact fractions: 1 in = 25.4 mm, 1 lbf = 4.4482216152605 N by definition; the double next to the fraction must come out, at the place where core stops (a nanometre for lengths). */
interface Fraction {
  readonly n: bigint;
  readonly d: bigint;
}
const fraction = (n: bigint, d = 1n): Fraction => ({ n, d });
const times = (a: Fraction, b: Fraction): Fraction => fraction(a.n * b.n, a.d * b.d);
const plus = (a: Fraction, b: Fraction): Fraction => fraction(a.n * b.d + b.n * a.d, a.d * b.d);

/** Rounded to a decimal place, half up, and the double next to that. */
function rounded({ n, d }: Fraction, places: number): number {
  const twice = 2n * n * 10n ** BigInt(places) + d;
  const floor = (twice - (((twice % (2n * d)) + 2n * d) % (2n * d))) / (2n * d);
  return Number(`${floor}e-${places}`);
}

/** A decimal as it is written, with a point or a comma, and the same as a fraction. */
function decimal(draw: () => number, most: number): { readonly text: string; readonly value: Fraction } {
  // Three digits behind a mark may be thousands, and are refused for counts: none of those.
  const scale = oneOf(draw, [1, 10, 100, 10_000, 100_000]);
  const whole = Math.floor(draw() * most * scale);
  const digits = String(scale).length - 1;
  const text = digits === 0 ? String(whole) : `${Math.floor(whole / scale)}${oneOf(draw, ['.', ','])}${String(whole % scale).padStart(digits, '0')}`;
  return { text, value: fraction(BigInt(whole), BigInt(scale)) };
}

type Reading = readonly [name: string, read: (text: string) => number, places: number, most: number, units: readonly (readonly [spelling: string, factor: Fraction, offset?: Fraction])[]];

const inch = fraction(254n, 10n);
const readings: readonly Reading[] = [
  ['length', (text) => parseLength(text).valueMm, 6, 900, [['mm', fraction(1n)], ['cm', fraction(10n)], ['m', fraction(1000n)], ['µm', fraction(1n, 1000n)], ['in', inch], ['"', inch], ['ft', times(inch, fraction(12n))], ['thou', times(inch, fraction(1n, 1000n))]]],
  ['deviation', (text) => parseDeviation(text).valueUm, 9, 900, [['µm', fraction(1n)], ['mm', fraction(1000n)], ['in', fraction(25_400n)], ['thou', fraction(254n, 10n)]]],
  ['temperature', (text) => parseTemperature(text).valueC, 9, 900, [['°C', fraction(1n)], ['°F', fraction(5n, 9n), fraction(-160n, 9n)], ['K', fraction(1n), fraction(-27_315n, 100n)]]],
  ['temperature difference', (text) => parseTemperatureDifference(text).valueK, 9, 900, [['K', fraction(1n)], ['°F', fraction(5n, 9n)]]],
  ['rotational speed', (text) => parseRotationalSpeed(text).valueRpm, 9, 900, [['rpm', fraction(1n)], ['1/min', fraction(1n)], ['Hz', fraction(60n)]]],
  ['surface speed', (text) => parseSurfaceSpeed(text).valueMps, 9, 900, [['m/s', fraction(1n)], ['ft/min', fraction(3048n, 600_000n)]]],
  ['pressure', (text) => parsePressure(text).valueMpa, 9, 900, [['MPa', fraction(1n)], ['kPa', fraction(1n, 1000n)], ['bar', fraction(1n, 10n)], ['psi', fraction(44_482_216_152_605n * 10n, 64_516n * 10n ** 12n)]]],
  ['hours', (text) => parseHours(text).valueHours, 9, 900, [['h', fraction(1n)], ['min', fraction(1n, 60n)]]],
  ['force', (text) => parseForce(text).valueN, 9, 900, [['N', fraction(1n)], ['kN', fraction(1000n)], ['lbf', fraction(44_482_216_152_605n, 10n ** 13n)]]],
  ['angle', (text) => parseAngle(text).valueDeg, 9, 300, [['°', fraction(1n)]]],
];

test.each(readings)('%s: every unit by exact fractions', (_name, read, places, most, units) => {
  const draw = drawing(254);
  for (const [spelling, factor, offset = fraction(0n)] of units) {
    for (let i = 0; i < 200; i += 1) {
      const { text, value } = decimal(draw, most);
      const written = `${text} ${spelling}`;
      expect(read(written), written).toBe(rounded(plus(times(value, factor), offset), places));
    }
  }
});

test('inches in whole, halves to one hundred and twenty-eighths: exact to the nanometre', () => {
  for (const d of [2, 4, 8, 16, 32, 64, 128]) {
    for (let whole = 0; whole <= 12; whole += 1) {
      for (let n = 1; n < d; n += 1) {
        const exact = times(fraction(BigInt(whole * d + n), BigInt(d)), inch);
        const found = parseLength(whole === 0 ? `${n}/${d} in` : `${whole} ${n}/${d} in`).valueMm;
        // A half nanometre may go up or down.
        if ((exact.n * 2_000_000n) % exact.d === 0n && (exact.n * 1_000_000n) % exact.d !== 0n) expect(Math.abs(found - rounded(exact, 7))).toBeLessThan(0.51e-6);
        else expect(found).toBe(rounded(exact, 6));
      }
    }
  }
});
