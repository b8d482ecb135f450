import * as z from 'zod/mini';
import { hoursField, lengthField, rotationalSpeedField } from '../quantity/index.js';
import { candourFields, defineCalculation, nothingAssumed, outputNumber, plainGeometry } from '../result/index.js';
import { peripheralSpeedMps } from './internal/peripheral-speed.js';

/** Peripheral speed of the shaft under the seal lip.  v = π·d·n / 60 000
 * @returns peripheralSpeedMps [m/s]; lipTravelKm [km] when hours are given; scalars
 * @throws CalculationError invalid-input
 * @source plain-geometry (held as: computed)
 * @example lipSpeed.run({ shaftDiameterMm: 20, speedRpm: 7800 }).peripheralSpeedMps.toFixed(2) // '8.17'
 */
export const lipSpeed = defineCalculation({
  name: 'lip-speed',
  summary: 'Peripheral speed of the shaft under the seal lip, and how far the lip has slid',
  input: z.strictObject({
    shaftDiameterMm: lengthField({ label: 'shaft diameter at the lip', unit: 'mm', over: 0, upTo: 500, typical: '20' }),
    speedRpm: rotationalSpeedField({ label: 'shaft speed', unit: 'rpm', from: 0, upTo: 100_000, typical: '7800' }),
    hours: z.optional(hoursField({ label: 'running hours', unit: 'h', from: 0, upTo: 1_000_000, typical: '100' })),
  }),
  output: z.strictObject({
    peripheralSpeedMps: outputNumber('peripheral speed under the lip', 'm/s'),
    lipTravelKm: z.optional(outputNumber('distance the lip has slid', 'km')),
    ...candourFields,
  }),
  compute({ shaftDiameterMm, speedRpm, hours }) {
    const speedMps = peripheralSpeedMps(shaftDiameterMm, speedRpm);
    return hours === undefined
      ? { peripheralSpeedMps: speedMps, ...nothingAssumed }
      : { peripheralSpeedMps: speedMps, lipTravelKm: speedMps * hours * 3.6, ...nothingAssumed };
  },
  explain({ shaftDiameterMm, speedRpm, hours }, { peripheralSpeedMps: speedMps, lipTravelKm }) {
    const speed = {
      kind: 'formula',
      symbol: 'v',
      meaning: 'peripheral speed under the lip',
      formula: 'pi * d * n / 60000',
      scope: { d: shaftDiameterMm, n: speedRpm },
      value: speedMps,
      unit: 'm/s',
      source: plainGeometry,
    } as const;
    if (hours === undefined || lipTravelKm === undefined) return [speed];
    return [
      speed,
      { kind: 'formula', symbol: 's', meaning: 'distance the lip has slid', formula: 'v * t * 3.6', scope: { v: speedMps, t: hours }, value: lipTravelKm, unit: 'km', source: plainGeometry },
    ];
  },
});
