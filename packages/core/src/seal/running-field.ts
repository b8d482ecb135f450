import * as z from 'zod/mini';
import { hoursField, pressureField, rotationalSpeedField, temperatureField } from '../quantity/index.js';
import { choiceField, numberField, yesNoField } from '../result/index.js';

export const fluids = [
  'engine-oil', 'gear-oil', 'hypoid-gear-oil', 'atf', 'mineral-oil', 'grease', 'water', 'hot-water', 'petrol-oil-mix', 'diesel', 'brake-fluid-glycol', 'chemical-fluids',
] as const;
export type Fluid = (typeof fluids)[number];

/** Viscosity of an oil as its class says: ISO VG numbers are it. */
export const viscosityField = numberField({ label: 'viscosity of the oil at 40 °C (the number of its ISO VG class)', unit: 'mm²/s', from: 2, upTo: 3200, typical: '220' });

/** How the machine runs. */
export const runningField = z.strictObject({
  speedRpm: z.optional(rotationalSpeedField({ label: 'highest shaft speed', unit: 'rpm', from: 0, upTo: 100_000 })),
  fluid: z.optional(choiceField(fluids, { label: 'fluid at the lip' })),
  fluidTemperatureC: z.optional(temperatureField({ label: 'highest fluid temperature', unit: '°C', from: -100, upTo: 400 })),
  viscosityAt40CMm2PerS: z.optional(viscosityField),
  runsDry: z.optional(yesNoField({ label: 'the lip runs dry, without oil or grease' })),
  coldestC: z.optional(temperatureField({ label: 'coldest start', unit: '°C', from: -100, upTo: 100 })),
  housingTemperatureC: z.optional(temperatureField({ label: 'highest temperature of the housing at the seal', unit: '°C', from: -100, upTo: 400 })),
  pressureMpa: z.optional(pressureField({ label: 'mean pressure at the lip above the air side', unit: 'MPa', from: -1, upTo: 50 })),
  pressureLowMpa: z.optional(pressureField({ label: 'lowest pressure at the lip above the air side', unit: 'MPa', from: -1, upTo: 50 })),
  pressureHighMpa: z.optional(pressureField({ label: 'highest pressure at the lip above the air side', unit: 'MPa', from: -1, upTo: 50 })),
  hoursPerYear: z.optional(hoursField({ label: 'running hours in a year', unit: 'h', from: 0, upTo: 8784 })),
});

export type Running = z.infer<typeof runningField>;
