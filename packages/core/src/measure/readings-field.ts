import * as z from 'zod/mini';
import { angleField, lengthField } from '../quantity/index.js';
import { exactlyOne, given, rulesInSchema, textField } from '../result/index.js';

const longestMm = 3150;

/** One reading where it was taken. */
const pointField = z.strictObject({
  valueMm: lengthField({ label: 'reading', unit: 'mm', over: 0, upTo: longestMm }),
  angleDeg: z.optional(angleField({ label: 'angle of the reading around the axis', unit: '°', from: -360, upTo: 360 })),
  depthMm: z.optional(lengthField({ label: 'distance of the reading from the housing face', unit: 'mm', from: -1000, upTo: 1000 })),
});

/** Readings of one size with one instrument: plain values, or values with angle and depth. */
export const readingsField = z
  .strictObject({
    instrument: textField({ label: 'instrument', help: 'id of the instrument catalogue or of the workshop file', typical: 'digital-calliper-inside' }),
    valuesMm: z.optional(z.array(lengthField({ label: 'reading', unit: 'mm', over: 0, upTo: longestMm })).check(z.minLength(1), z.maxLength(200))),
    points: z.optional(z.array(pointField).check(z.minLength(1), z.maxLength(200))),
  })
  .check(
    z.refine((readings) => (readings.valuesMm === undefined) !== (readings.points === undefined), {
      error: 'give either valuesMm or points',
    }),
    rulesInSchema([exactlyOne(given('valuesMm'), given('points'))]),
  );

export type Readings = z.infer<typeof readingsField>;
