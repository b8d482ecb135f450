import * as z from 'zod/mini';
import { candourFields, defineCalculation, textField } from '../result/index.js';
import { readClassName } from './internal/class-names.js';
import { nominalField } from './internal/nominal-field.js';
import { zoneFields } from './internal/zone-fields.js';
import { zoneOfClass } from './internal/zone-of-class.js';
import { zoneWorking } from './internal/zone-working.js';

/**
 * Limits of a part by its nominal size and tolerance class.  ES = EI + IT, es = ei + IT
 * @returns upperLimitDeviationUm, lowerLimitDeviationUm [µm] with their sign, limits of size [mm]; scalar, at 20 °C
 * @throws CalculationError invalid-input | no-such-class | outside-table
 * @source iso-286-1-2010, Tables 1 to 5 (held as: cell by cell, see `held`)
 * @example toleranceZone.compute({ nominalMm: 25, toleranceClass: 'p6' }).upperLimitDeviationUm // 35
 */
export const toleranceZone = defineCalculation({
  name: 'tolerance-zone',
  summary: 'Limits of a hole or shaft by its nominal size and ISO 286 tolerance class',
  input: z.strictObject({
    nominalMm: nominalField,
    toleranceClass: textField({ label: 'tolerance class', help: 'Capital letters for holes, small ones for shafts', typical: 'H7', longest: 16 }),
  }),
  output: z.strictObject({ ...zoneFields, ...candourFields }),
  compute: zoneOfClass,
  explain(input, output) {
    return zoneWorking(output, readClassName(input.toleranceClass, 'toleranceClass'), input.nominalMm);
  },
});

export type ToleranceZoneInput = Readonly<Parameters<typeof toleranceZone.compute>[0]>;

export type ToleranceZone = Readonly<ReturnType<typeof toleranceZone.compute>>;
