import { expect, test } from 'vitest';
import { lipHeat, lipSpeed } from '@seatwright/core/seal';
import { between, drawing, oneOf } from './internal/drawn.js';

/** π to forty places, so that only the last rounding is left. */
const pi = 31_415_926_535_897_932_384_626_433_832_795_028_841_972n;
const piScale = 10n ** 40n;
const draw = drawing(60_000);

test('speed and way of the lip, by whole numbers: micrometres, turns and minutes', () => {
  for (let i = 0; i < 500; i += 1) {
    const um = Math.round(between(draw, 3000, 500_000));
    const rpm = Math.round(between(draw, 1, 20_000));
    const minutes = Math.round(between(draw, 0, 600_000));
    const found = lipSpeed.run({ shaftDiameterMm: um / 1000, speedRpm: rpm, hours: minutes / 60 });
    // One turn is π·d; µm a minute, to m/s: 10⁶ and 60.
    const speed = Number((pi * BigInt(um) * BigInt(rpm) * 10n ** 15n) / (piScale * 60_000_000n)) / 1e15;
    const way = Number((pi * BigInt(um) * BigInt(rpm) * BigInt(minutes) * 10n ** 9n) / (piScale * 10n ** 9n)) / 1e9;
    expect(Math.abs(found.peripheralSpeedMps - speed)).toBeLessThan(1e-12 + speed * 1e-14);
    expect(Math.abs((found.lipTravelKm ?? Number.NaN) - way)).toBeLessThan(1e-8 + way * 1e-12);
  }
});

test('an inch shaft runs as fast as the same shaft in millimetres', () => {
  for (let n = 1; n <= 128; n += 1) {
    const [inch, metric] = [`${n}/32 in`, (n * 25.4) / 32].map((shaftDiameterMm) => lipSpeed.run({ shaftDiameterMm, speedRpm: 3000 }).peripheralSpeedMps);
    expect(inch).toBe(metric);
    // v in ft/min = π·d·n/12.
    expect((inch ?? 0) / 0.00508 / ((Math.PI * (n / 32) * 3000) / 12)).toBeCloseTo(1, 6);
  }
});

test('heat of the lip by each published estimate, worked as torque times turning, and as power a mm of circumference', () => {
  let met = 0;
  for (let i = 0; i < 400; i += 1) {
    const [d, n, oil] = [between(draw, 8, 200), between(draw, 100, 6000), between(draw, 20, 110)];
    const nu40 = oneOf(draw, [32, 46, 68, 100, 220]);
    const found = lipHeat.run({ shaftDiameterMm: d, speedRpm: n, lipMaterial: oneOf(draw, ['NBR', 'FKM'] as const), fluidTemperatureC: oil, fluid: 'gear-oil', viscosityAt40CMm2PerS: nu40 });
    const turning = (2 * Math.PI * n) / 60;
    const by: Readonly<Record<string, number>> = {
      // ISO/TR 14179-1: torque in N·m by the rubber.
      'torque by rubber, fluoro': 3.737e-3 * d * turning,
      'torque by rubber, nitrile': 2.429e-3 * d * turning,
      // ISO/TR 14179-2, short and long.
      'short form': 7.69e-6 * d ** 2 * n,
      'by oil and temperature': (145 - 1.6 * oil + 350 * Math.log10(Math.log10(nu40 + 0.8))) * d ** 2 * n * 1e-7,
    };
    for (const { estimate, frictionPowerW } of found.estimates) {
      met += 1;
      expect(frictionPowerW / (by[estimate] ?? Number.NaN), estimate).toBeCloseTo(1, 5);
    }
    const powers = found.estimates.map(({ frictionPowerW }) => frictionPowerW);
    expect(found.frictionPowerW).toEqual({ low: Math.min(...powers), high: Math.max(...powers) });
    expect(found.frictionTorqueNm.low * turning).toBeCloseTo(found.frictionPowerW.low, 6);
    expect(found.frictionTorqueNm.high * turning).toBeCloseTo(found.frictionPowerW.high, 6);
  }
  expect(met).toBeGreaterThan(800);
});
