import * as z from 'zod/mini';
import { readingsField } from '../measure/index.js';
import { angleField, lengthField } from '../quantity/index.js';
import { choiceField, numberField, textField, yesNoField } from '../result/index.js';

/** The bore that holds the seal, as drawn and as measured. */
export const boreField = z.strictObject({
  diameterMm: z.optional(lengthField({ label: 'nominal bore diameter', unit: 'mm', over: 0, upTo: 500 })),
  readings: z.optional(z.array(readingsField).check(z.maxLength(20))),
  material: z.optional(textField({ label: 'housing material' })),
  housingOutsideMm: z.optional(lengthField({ label: 'outside diameter of the housing around the bore', unit: 'mm', over: 0, upTo: 3000 })),
  depthMm: z.optional(lengthField({ label: 'depth of the bore from the housing face to its inner end', unit: 'mm', over: 0, upTo: 1000 })),
  innerEnd: z.optional(choiceField(['shoulder', 'open'], { label: 'what ends the bore inside', help: 'a shoulder that stops the seal, or open through to the bearing' })),
  shoulderInsideMm: z.optional(lengthField({ label: 'hole in the shoulder', unit: 'mm', over: 0, upTo: 500 })),
  leadIn: z.optional(
    z.strictObject({
      lengthMm: lengthField({ label: 'length of the bore chamfer along the axis', unit: 'mm', from: 0, upTo: 20 }),
      angleDeg: z.optional(angleField({ label: 'angle of the bore chamfer to the axis', unit: '°', over: 0, below: 90 })),
    }),
  ),
  roughnessRaUm: z.optional(numberField({ label: 'roughness Ra of the bore', unit: 'µm', over: 0, upTo: 200 })),
  isSplit: z.optional(yesNoField({ label: 'the bore is split' })),
  faceDiameterMm: z.optional(lengthField({ label: 'diameter of the flat face around the bore', unit: 'mm', over: 0, upTo: 3000 })),
});

export type Bore = z.infer<typeof boreField>;
