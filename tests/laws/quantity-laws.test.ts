import fc from 'fast-check';
import { expect, test } from 'vitest';
import { CalculationError } from '@seatwright/core';
import {
  parseAngle,
  parseDeviation,
  parseForce,
  parseHours,
  parseLength,
  parsePressure,
  parseRotationalSpeed,
  parseSurfaceSpeed,
  parseTemperature,
  parseTemperatureDifference,
  writeLength,
} from '@seatwright/core/quantity';
import { numRuns } from './internal/num-runs.js';

const parsers: readonly (readonly [string, (written: string) => object])[] = [
  ['angle', parseAngle],
  ['deviation', parseDeviation],
  ['force', parseForce],
  ['hours', parseHours],
  ['length', (written) => parseLength(written)],
  ['pressure', parsePressure],
  ['rotational speed', parseRotationalSpeed],
  ['surface speed', parseSurfaceSpeed],
  ['temperature', parseTemperature],
  ['temperature difference', parseTemperatureDifference],
];

/** Text that looks like a quantity more often than chance would have it. */
const text = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 100 }),
  fc.array(fc.constantFrom('1', '25', '0', '3/4', '½', '.', ',', ' ', '-', '−', '+', '/', '"', "'", 'mm', 'in', 'µm', 'thou', '°C', '°F', 'rpm', 'bar', 'h', 'N', '°', 'ø', 'e', '%', '\n'), { maxLength: 12 }).map((parts) => parts.join('')),
);

test.each(parsers)('any text is read as a finite %s or refused with a message that says what would be understood', (_, parse) => {
  fc.assert(
    fc.property(text, (written) => {
      try {
        const value = Object.values(parse(written)).find((item) => typeof item === 'number');
        expect(Number.isFinite(value)).toBe(true);
      } catch (error) {
        if (!(error instanceof CalculationError)) throw error;
        expect(error.code).toBe('invalid-input');
        expect(error.message.length).toBeGreaterThan(10);
        expect(error.message.length).toBeLessThan(600);
      }
    }),
    { numRuns: numRuns * 2 },
  );
});

const micrometres = fc.integer({ min: -3_150_000, max: 3_150_000 });

test.each(['.', ','] as const)('a length written with %s and three decimals reads back as itself', (decimalMark) => {
  fc.assert(
    fc.property(micrometres, (um) => {
      expect(parseLength(writeLength(um / 1000, { decimalMark })).valueMm).toBe(um / 1000);
    }),
    { numRuns },
  );
});

test('both decimal marks say the same, and spaces of any kind change nothing', () => {
  fc.assert(
    fc.property(micrometres, fc.constantFrom(' ', '\u00a0', '\u2009', ''), (um, space) => {
      const written = (um / 1000).toFixed(3);
      expect(parseLength(`${space}${written.replace('.', ',')}${space}mm${space}`).valueMm).toBe(parseLength(written).valueMm);
    }),
    { numRuns },
  );
});

test('every 64th of an inch up to 8 in is exact as a fraction, as a mixed number and as a decimal, and is written back', () => {
  for (let parts = 1; parts <= 8 * 64; parts += 1) {
    const mm = (parts * 127) / 320;
    const whole = Math.floor(parts / 64);
    const rest = parts % 64;
    const ways = [`${parts}/64 in`, `${parts / 64}"`, ...(rest === 0 ? [`${whole} in`] : whole === 0 ? [] : [`${whole} ${rest}/64"`, `${whole}-${rest}/64 in`])];
    for (const way of ways) expect(parseLength(way).valueMm, way).toBeCloseTo(mm, 6);
    expect(parseLength(writeLength(mm, { unit: 'in-fraction' })).valueMm).toBe(parseLength(`${parts}/64 in`).valueMm);
  }
});

test('thousandths of an inch snap to the exact millimetre', () => {
  // 1 thou = 0.0254 mm exactly; four decimals of a millimetre hold every whole thou.
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 99_999 }), (thou) => {
      const exactMm = Number(BigInt(thou) * 254n) / 10_000;
      expect(parseLength(`${thou} thou`).valueMm).toBe(exactMm);
      expect(parseLength(`${(thou / 1000).toFixed(3)} in`).valueMm).toBe(exactMm);
    }),
    { numRuns },
  );
});

test('a sum is the sum of its terms, and a difference is a sum with the sign turned', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 500_000 }), fc.integer({ min: 0, max: 999 }), fc.constantFrom('+', '-', '−'), (um, more, sign) => {
      const expected = (um + (sign === '+' ? more : -more)) / 1000;
      const [size, allowance] = [(um / 1000).toFixed(3), (more / 1000).toFixed(3)];
      expect(parseLength(`${size} ${sign} ${allowance}`).valueMm).toBe(expected);
      expect(parseLength(`${size} mm ${sign} ${allowance} mm`).valueMm).toBe(expected);
      expect(parseLength(`${size} ${sign} ${more} µm`).valueMm).toBe(expected);
      expect(parseLength(`${size} mm ${sign} ${more} µm`).valueMm).toBe(expected);
    }),
    { numRuns },
  );
});

test('Celsius and Fahrenheit meet at every whole degree Celsius', () => {
  for (let celsius = -60; celsius <= 300; celsius += 5) expect(parseTemperature(`${(celsius * 9) / 5 + 32} °F`).valueC).toBe(celsius);
});

test('a count with a mark before exactly three digits is refused, and any other mark is a decimal mark', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 99 }), fc.integer({ min: 0, max: 99_999 }), fc.integer({ min: 1, max: 5 }), fc.constantFrom('.', ','), (whole, part, digits, mark) => {
      const decimals = String(part).padStart(digits, '0').slice(0, digits);
      const written = `${whole}${mark}${decimals}`;
      if (digits === 3) expect(() => parseRotationalSpeed(written)).toThrow(new RegExp(`write ${whole}${decimals}`));
      else expect(parseRotationalSpeed(written).valueRpm).toBeCloseTo(Number(`${whole}.${decimals}`), 6);
    }),
    { numRuns },
  );
});
