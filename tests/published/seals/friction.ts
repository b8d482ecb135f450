import { lipHeat, lipSpeed } from '@seatwright/core/seal';
import type { Entry, Sheet } from '../ledger/sheet.js';

type Asked = Parameters<typeof lipHeat.run>[0];

const byHand = (row: string, column: string, printed: string, ours: () => number | undefined): Entry => ({ row, column, printed, how: 'by hand', ours: () => [ours()] });
const d50 = { shaftDiameterMm: 50, speedRpm: 1500, fluidTemperatureC: 80 } as const;
const d20 = { shaftDiameterMm: 20, speedRpm: 7800, lipMaterial: 'FKM', fluidTemperatureC: 80 } as const;
const watts = (asked: Asked, estimate: string) => () => lipHeat.run(asked).estimates.find((one) => one.estimate === estimate)?.frictionPowerW;
const common = { kind: 'worked example', allowed: 'printed digits', layout: 'list' } as const;

/** Friction formulas of ISO/TR 14179 (from memory) and the speed under a lip, worked by hand at single points. */
export const lipFriction: readonly Sheet[] = [
  {
    ...common, work: 'iso-tr-14179-1', place: 'seal loss: T = 0.003737·d (fluoro), 0.002429·d (nitrile), P = T·n·π/30', title: 'Friction power', unit: 'W', asked: 'heat of the lip',
    entries: [
      byHand('50 mm, 1 500 rpm', 'fluoro rubber', '29', watts({ ...d50, lipMaterial: 'FKM' }, 'torque by rubber, fluoro')),
      byHand('50 mm, 1 500 rpm', 'nitrile', '19', watts({ ...d50, lipMaterial: 'NBR' }, 'torque by rubber, nitrile')),
      byHand('20 mm, 7 800 rpm', 'fluoro rubber', '61', watts(d20, 'torque by rubber, fluoro')),
    ],
  },
  {
    ...common, work: 'iso-tr-14179-2', place: 'seal loss by oil and temperature, and its short form 7.69·10⁻⁶·d²·n', title: 'Friction power', unit: 'W', asked: 'heat of the lip',
    entries: [
      byHand('50 mm, 1 500 rpm', 'short form', '29', watts({ ...d50, lipMaterial: 'NBR' }, 'short form')),
      byHand('50 mm, 1 500 rpm, 80 °C, 220 mm²/s', 'by oil and temperature', '55', watts({ ...d50, lipMaterial: 'NBR', fluid: 'gear-oil', viscosityAt40CMm2PerS: 220 }, 'by oil and temperature')),
      byHand('20 mm, 7 800 rpm', 'short form', '24', watts(d20, 'short form')),
    ],
  },
  { ...common, work: 'plain-geometry', place: 'v = π·d·n/60 000', title: 'Speed under the lip', unit: 'm/s', asked: 'lip speed', entries: [byHand('20 mm, 7 800 rpm', 'speed', '8.17', () => lipSpeed.run({ shaftDiameterMm: 20, speedRpm: 7800 }).peripheralSpeedMps)] },
];
