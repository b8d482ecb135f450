import { expect, test } from 'vitest';
import { writeValue } from './write-value.js';

const inch = { lengthUnit: 'in', decimalMark: '.' } as const;
const written = (name: string, value: number) => writeValue(name, value, inch).replace('\u00a0', ' ');

test('inch shops read everything in their own units, by the exact definitions', () => {
  expect(written('boreMm', 25.4)).toBe('1 in');
  expect(written('holdUm', 25.4)).toBe('1 thou');
  // 1 lbf = 0.453 592 37 kg × 9.806 65 m/s²
  expect(written('pushForceN', 0.45359237 * 9.80665 * 50)).toBe('50 lbf');
  expect(written('pushForceN', 4448.2216152605)).toBe('1000 lbf');
  // 1 lbf·ft = 1 lbf × 0.3048 m
  expect(written('torqueNm', 4.4482216152605 * 0.3048 * 25)).toBe('25 lbf·ft');
  // 1 psi = 1 lbf / (0.0254 m)²
  expect(written('pressureMpa', (4.4482216152605 / 0.0254 ** 2 / 1e6) * 30)).toBe('30 psi');
  expect(written('temperatureC', 100)).toBe('212 °F');
  expect(written('temperatureC', -40)).toBe('−40 °F');
  expect(written('riseK', 50)).toBe('90 °F');
  expect(written('peripheralSpeedMps', 0.3048)).toBe('60 ft/min');
  expect(written('lipTravelKm', 160.9344)).toBe('100 mi');
  expect(written('volumeCm3', 163.87064)).toBe('10 in³');
});

test('what has no unit of theirs stays as it is', () => {
  expect(written('speedRpm', 7800)).toBe('7800 rpm');
  expect(written('intervalHours', 100)).toBe('100 h');
  expect(written('shareRatio', 0.5)).toBe('0.5');
  expect(writeValue('boreMm', 19.05, { lengthUnit: 'mm', decimalMark: ',' })).toBe('19,05\u00a0mm');
});

test('a ratio, and the room behind a seal, are told as finely as they are known', () => {
  expect(writeValue('safetyFactor', 3.3077)).toBe('3.31');
  expect(writeValue('shareRatio', 0.1178)).toBe('0.118');
  expect(writeValue('toolCount', 3)).toBe('3');
  expect(writeValue('roomNeededMm', 1.511).replace('\u00a0', ' ')).toBe('1.51 mm');
  expect(written('roomNeededMm', 12.71)).toBe('0.5 in');
});

test('a drill is named in millimetres first, in an inch shop too', () => {
  expect(writeValue('drillMm', 1.7, inch).replaceAll('\u00a0', ' ')).toBe('1.7 mm (0.0669 in)');
  expect(writeValue('drillMm', 1.7).replaceAll('\u00a0', ' ')).toBe('1.7 mm');
  expect(writeValue('drillStopMm', 2.54, inch).replaceAll('\u00a0', ' ')).toBe('0.1 in');
});
