import { expect, test } from 'vitest';
import { lipHeat } from '@seatwright/core/seal';

/**
 * Worked by hand from the formulas (ISO/TR 14179-1 and -2, from memory): d 50 mm at 1 500 rpm gives about 29 W for fluoro rubber,
 * 19 W for nitrile, 29 W by the short form and 55 W by oil and temperature (80 °C, 220 mm²/s); d 20 mm at 7 800 rpm gives 24 to 61 W.
 */
test.each([
  [{ shaftDiameterMm: 50, speedRpm: 1500, lipMaterial: 'FKM', fluidTemperatureC: 80 }, 'torque by rubber, fluoro', 29],
  [{ shaftDiameterMm: 50, speedRpm: 1500, lipMaterial: 'NBR', fluidTemperatureC: 80 }, 'torque by rubber, nitrile', 19],
  [{ shaftDiameterMm: 50, speedRpm: 1500, lipMaterial: 'NBR', fluidTemperatureC: 80 }, 'short form', 29],
  [{ shaftDiameterMm: 50, speedRpm: 1500, lipMaterial: 'NBR', fluidTemperatureC: 80, fluid: 'gear-oil', viscosityAt40CMm2PerS: 220 }, 'by oil and temperature', 55],
  [{ shaftDiameterMm: 20, speedRpm: 7800, lipMaterial: 'FKM', fluidTemperatureC: 80 }, 'torque by rubber, fluoro', 61],
  [{ shaftDiameterMm: 20, speedRpm: 7800, lipMaterial: 'FKM', fluidTemperatureC: 80 }, 'short form', 24],
] as const)('%o, %s: %d W', (input, estimate, watts) => {
  expect(lipHeat.run(input).estimates.find((one) => one.estimate === estimate)?.frictionPowerW.toFixed(0)).toBe(String(watts));
});

test('a lip runs 20 to 50 K over the fluid (seal selection article, 2018), with a dust lip more', () => {
  expect(lipHeat.run({ shaftDiameterMm: 20, speedRpm: 3000, lipMaterial: 'NBR', fluidTemperatureC: 80 }).lipTemperatureC).toEqual({ low: 100, high: 130 });
  expect(lipHeat.run({ shaftDiameterMm: 20, speedRpm: 3000, lipMaterial: 'NBR', fluidTemperatureC: 80, hasDustLip: true }).lipRiseK).toEqual({ low: 40, high: 70 });
});
