import * as z from 'zod/mini';
import { temperatureField } from '../quantity/index.js';
import { defineCalculation, numberField, yesNoField } from '../result/index.js';
import { situationShape } from '../seal/index.js';
import { explainDrivers } from './explain-handwork.js';
import { outputField } from './internal/driver-output.js';
import { searchDrivers } from './internal/search-drivers.js';
import { toolField } from './tool-field.js';

export type { DriverSearchOutput } from './internal/driver-output.js';

const inputField = z.strictObject({
  ...situationShape,
  toolsAtHand: z.optional(z.array(toolField).check(z.maxLength(1000))),
  includeStandardTubes: z.optional(yesNoField({ label: 'look through the standard tubes and sockets too' })),
  maximumCandidateCount: z.optional(numberField({ label: 'how many tools to list', unit: '', from: 1, upTo: 200, typical: '12' })),
  workshopTemperatureC: z.optional(temperatureField({ label: 'temperature of the workshop', unit: '°C', from: -50, upTo: 60 })),
});

/** Which tube, socket or turned piece drives this seal home: every tool judged worst case both ways.  rim: D − 2·t ≤ outside < bore;  inside > shaft
 * @returns candidates, best first, with margins and reasons; near misses; the window; one driver to turn
 * @throws CalculationError invalid-input | outside-table
 * @source us-army-tm, workshop-manuals-1995 (held as: page); plain-geometry, plain-mechanics; nasa-sp-8007 (held as: memory)
 * @example driverSearch.run({ seal: { shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' } }).turnedDriver?.insideMm // 27.5
 */
export const driverSearch = defineCalculation({
  name: 'driver-search',
  summary: 'Which tube, socket or turned piece drives the seal home, and which only nearly',
  input: inputField,
  output: outputField,
  compute: searchDrivers,
  explain: explainDrivers,
});
