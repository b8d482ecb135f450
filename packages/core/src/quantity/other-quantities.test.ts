import { expect, test } from 'vitest';
import * as z from 'zod/mini';
import { CalculationError, defineCalculation, nothingAssumed } from '../result/index.js';
import { inchField, lengthField } from './quantity-field.js';
import { parseHours } from './parse-hours.js';
import { parsePressure } from './parse-pressure.js';
import { parseRotationalSpeed } from './parse-rotational-speed.js';
import { parseSurfaceSpeed } from './parse-surface-speed.js';
import { parseTemperatureDifference } from './parse-temperature-difference.js';
import { parseTemperature } from './parse-temperature.js';
import { snapMm } from './snap.js';
import { writeLength } from './write-length.js';
import { writeNumber } from './write-number.js';

test('temperatures', () => {
  expect(parseTemperature('180 °F').valueC).toBeCloseTo(82.222222, 6);
  expect(parseTemperature('212 °F').valueC).toBe(100);
  expect(parseTemperature('-40 °F').valueC).toBe(-40);
  expect(parseTemperature('293.15 K').valueC).toBe(20);
  expect(parseTemperature('80').valueC).toBe(80);
});
test('pressures', () => {
  expect(parsePressure('0.5 bar').valueMpa).toBe(0.05);
  expect(parsePressure('7 psi').valueMpa).toBeCloseTo(0.048263, 6);
  expect(parsePressure('-0.3 bar').valueMpa).toBe(-0.03);
  expect(parsePressure('1.013 bar').valueMpa).toBe(0.1013);
  expect(parsePressure('50 kPa').valueMpa).toBe(0.05);
});
test('speeds and hours', () => {
  expect(parseRotationalSpeed('7800').valueRpm).toBe(7800);
  expect(parseRotationalSpeed('50 Hz').valueRpm).toBe(3000);
  expect(parseRotationalSpeed('1450 1/min').valueRpm).toBe(1450);
  expect(parseSurfaceSpeed('1000 ft/min').valueMps).toBeCloseTo(5.08, 9);
  expect(parseHours('2 days').valueHours).toBe(48);
  expect(parseHours('1 h + 30 min').valueHours).toBe(1.5);
});
test('a mark before exactly three digits is refused for speeds and counts', () => {
  for (const written of ['7,800', '7.800', '7,800 rpm']) expect(() => parseRotationalSpeed(written)).toThrow(/write 7800/);
  expect(() => parseHours('1.000 h')).toThrow(/write 1000/);
  expect(parseRotationalSpeed('7.8 rpm').valueRpm).toBe(7.8);
});
test('lengths are written in the unit asked for', () => {
  expect(writeLength(34.925, { unit: 'in-fraction' })).toBe('1 3/8\u00a0in');
  expect(writeLength(35, { unit: 'in-fraction' })).toBe('1.3780\u00a0in');
  expect(writeLength(-0.0000001)).toBe('0.000\u00a0mm');
  expect(writeLength(19.05, { decimalMark: ',', decimals: 2 })).toBe('19,05\u00a0mm');
});

const probe = defineCalculation({
  name: 'probe',
  summary: '',
  input: z.strictObject({ shaft: z.strictObject({ diameterMm: lengthField({ label: 'd', unit: 'mm', over: 0, upTo: 500 }) }) }),
  output: z.strictObject({ dMm: z.number(), assumptions: z.readonly(z.array(z.never())), notChecked: z.readonly(z.array(z.string())) }),
  compute: ({ shaft }) => ({ dMm: shaft.diameterMm, assumptions: [], notChecked: nothingAssumed.notChecked }),
  explain: () => [],
});

test('a field takes numbers and text and names its path when it refuses', () => {
  expect(probe.run({ shaft: { diameterMm: '3/4 in' } }).dMm).toBe(19.05);
  const refused = (raw: unknown) => {
    try {
      probe.run(raw);
    } catch (error) {
      if (error instanceof CalculationError) return error.toJSON();
    }
    return null;
  };
  expect(refused({ shaft: { diameterMm: 0 } })).toEqual({ code: 'invalid-input', path: 'shaft.diameterMm', received: 0, allowed: 'over 0, up to and including 500 mm', message: 'shaft.diameterMm: expected over 0, up to and including 500 mm, got 0' });
  expect(refused({ shaft: { diameterMm: '20 bar' } })?.message).toMatch(/^shaft\.diameterMm: "bar" is a unit of pressure, not of length/);
  expect(refused({ shaft: {} })?.message).toMatch(/^shaft\.diameterMm: missing/);
  expect(refused({ shaft: { diameterMm: true } })?.path).toBe('shaft.diameterMm');
});

test('digits typed as text are the number that they say', () => {
  for (const digits of ['20.923', '-6.81', '12345678.123456789', '9007199.254740993', '98765432.1', '0.000000001']) expect(parseTemperatureDifference(digits).valueK, digits).toBe(Number(digits));
  expect(parseTemperatureDifference('-0.0000000001').valueK).toBe(0);
  expect(parsePressure(1e-10).valueMpa).toBe(1e-10);
  expect(parsePressure(-0).valueMpa).toBe(0);
  expect(snapMm(-1e-9)).toBe(0);
});

test('a mark that may part thousands: both readings are offered, and the place is said', () => {
  expect(() => parseRotationalSpeed('007,800')).toThrow(/write 7800 or 007\.80: .* at character 4 /);
  expect(() => parseRotationalSpeed(',800')).toThrow(/write 800 or 0\.80: .* at character 1 /);
  expect(() => parseHours('12 h + 1.000 h')).toThrow(/write 1000 or 1\.00: .* at character 9 /);
});

test('sums are read where they make sense, and refused where not', () => {
  expect(parseHours('1 + 30 min').valueHours).toBeCloseTo(31 / 60, 9);
  expect(() => parseTemperature('20 + 5 °C')).toThrow(/a temperature is written as one number at character 4/);
  expect(() => parsePressure('ø20')).toThrow(/a number is expected at character 1/);
});

test('lengths in fractions of an inch: whole, proper, mixed, below nothing', () => {
  const written = (mm: number, decimals?: number) => writeLength(mm, { unit: 'in-fraction', ...(decimals === undefined ? {} : { decimals }) }).replace('\u00a0', ' ');
  expect([25.4, 9.525, 50.8, 0, -34.925, -9.525, -1e-7].map((mm) => written(mm))).toEqual(['1 in', '3/8 in', '2 in', '0 in', '−1 3/8 in', '−3/8 in', '0 in']);
  expect(written(35, 2)).toBe('1.38 in');
  expect(written(9.526)).toBe('0.3750 in');
  expect(writeNumber(-0.004, 2)).toBe('0.00');
});

test('a field in inches takes millimetres too', () => {
  const field = inchField({ label: 'd', unit: 'in', over: 0, upTo: 10 });
  expect(['3/4', '19.05 mm', 0.75, '1/3'].map((raw) => field.safeParse(raw).data)).toEqual([0.75, 0.75, 0.75, 0.333333333]);
});
