import * as z from 'zod/mini';
import { readingsField } from '../measure/index.js';
import { angleField, lengthField } from '../quantity/index.js';
import { choiceField, numberField, textField, yesNoField } from '../result/index.js';

/** What a driver or a lip meets on the shaft outside the seal: a thread, a key, a sleeve. */
export const obstacleField = z.strictObject({
  kind: choiceField(['thread', 'keyway', 'key', 'spline', 'circlip groove', 'collar', 'sleeve', 'cross hole', 'step'], { label: 'what it is' }),
  diameterMm: lengthField({ label: 'largest diameter', unit: 'mm', over: 0, upTo: 1000 }),
  fromMm: lengthField({ label: 'where it begins, outward from the housing face', unit: 'mm', from: -500, upTo: 5000 }),
  lengthMm: z.optional(lengthField({ label: 'length along the shaft', unit: 'mm', over: 0, upTo: 5000 })),
  hasSharpEdge: z.optional(yesNoField({ label: 'has an edge that could cut the lip' })),
});

/** The shaft at the seal, as drawn and as measured. */
export const shaftField = z.strictObject({
  diameterMm: z.optional(lengthField({ label: 'nominal shaft diameter', unit: 'mm', over: 0, upTo: 500 })),
  readings: z.optional(z.array(readingsField).check(z.maxLength(20))),
  material: z.optional(textField({ label: 'shaft material' })),
  roughnessRaUm: z.optional(numberField({ label: 'roughness Ra of the lip track', unit: 'µm', over: 0, upTo: 100 })),
  hardnessHrc: z.optional(numberField({ label: 'hardness of the lip track', unit: 'HRC', from: 0, upTo: 75 })),
  leadAngleDeg: z.optional(angleField({ label: 'lead (twist) of the ground surface', unit: '°', from: -5, upTo: 5 })),
  leadIn: z.optional(
    z.strictObject({
      kind: choiceField(['chamfer', 'radius', 'none'], { label: 'edge that the lip passes on the way in' }),
      diameterReductionMm: z.optional(lengthField({ label: 'shaft diameter less the small end of the chamfer', unit: 'mm', over: 0, upTo: 50 })),
      angleDeg: z.optional(angleField({ label: 'chamfer angle to the axis', unit: '°', over: 0, below: 90 })),
      radiusMm: z.optional(lengthField({ label: 'edge radius', unit: 'mm', over: 0, upTo: 50 })),
    }),
  ),
  protrusionMm: z.optional(lengthField({ label: 'how far the shaft stands out of the housing face', unit: 'mm', from: -500, upTo: 5000 })),
  obstacles: z.optional(z.array(obstacleField).check(z.maxLength(50))),
  runoutMm: z.optional(lengthField({ label: 'runout of the turning shaft (full indicator movement)', unit: 'mm', from: 0, upTo: 5 })),
  offsetMm: z.optional(lengthField({ label: 'offset of the shaft to the bore (full indicator movement)', unit: 'mm', from: 0, upTo: 5 })),
});

export type Shaft = z.infer<typeof shaftField>;
export type Obstacle = z.infer<typeof obstacleField>;
