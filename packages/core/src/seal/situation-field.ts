import * as z from 'zod/mini';
import { instrumentField } from '../measure/index.js';
import { materialField } from '../material/index.js';
import { lengthField } from '../quantity/index.js';
import { choiceField, yesNoField } from '../result/index.js';
import { boreField } from './bore-field.js';
import { requirementSetField } from './requirement-set.js';
import { runningField } from './running-field.js';
import { sealField } from './seal-field.js';
import { shaftField } from './shaft-field.js';

const seatKind = <const K extends string>(kind: K) => z.literal(kind).check(z.meta({ label: 'where the seal ends', unit: '' }));

export const seatField = z.discriminatedUnion('kind', [
  z.strictObject({ kind: seatKind('flush') }),
  z.strictObject({ kind: seatKind('shoulder') }),
  z.strictObject({ kind: seatKind('depth'), depthMm: lengthField({ label: 'depth of the outer face of the seal below the housing face', unit: 'mm', from: -20, upTo: 500 }) }),
]);
export type Seat = z.infer<typeof seatField>;

export const wearTrackField = z.strictObject({
  fromFaceMm: z.optional(lengthField({ label: 'middle of the groove, inward from the housing face', unit: 'mm', from: -100, upTo: 500 })),
  widthMm: z.optional(lengthField({ label: 'width of the groove', unit: 'mm', over: 0, upTo: 50 })),
  depthMm: z.optional(lengthField({ label: 'depth of the groove, radial', unit: 'mm', from: 0, upTo: 5 })),
  catchesNail: z.optional(yesNoField({ label: 'a fingernail catches in it' })),
});
export type WearTrack = z.infer<typeof wearTrackField>;

/** One seal in one place: what every calculation about renewing it may ask for. Nothing but the seal itself is required. */
export const situationShape = {
  shaft: z.optional(shaftField),
  bore: z.optional(boreField),
  seal: sealField,
  running: z.optional(runningField),
  seat: z.optional(seatField),
  /** Side that the sealing lip (the open side with the spring) faces. */
  lipFacing: z.optional(choiceField(['inward', 'outward'], { label: 'side the sealing lip faces' })),
  fluidSide: z.optional(choiceField(['inside', 'outside', 'both'], { label: 'side the fluid is on' })),
  rotation: z.optional(choiceField(['clockwise', 'counter-clockwise', 'both'], { label: 'rotation of the shaft seen from outside' })),
  wearTrack: z.optional(wearTrackField),
  oldDepthMm: z.optional(
    z.array(lengthField({ label: 'depth of the old seal below the housing face', unit: 'mm', from: -50, upTo: 500 })).check(z.minLength(1), z.maxLength(12)),
  ),
  clearBehindMm: z.optional(lengthField({ label: 'room from the inner face of the seal to what lies behind it', unit: 'mm', from: 0, upTo: 1000 })),
  behind: z.optional(choiceField(['bearing', 'gear', 'shoulder', 'open space', 'second seal'], { label: 'what lies behind the seal' })),
  retainedBy: z.optional(choiceField(['nothing', 'circlip', 'plate', 'staking'], { label: 'what holds the old seal besides its fit' })),
  reachableFrom: z.optional(choiceField(['outside', 'inside', 'both'], { label: 'side the seal can be reached from' })),
  requirementSet: z.optional(requirementSetField),
  instruments: z.optional(z.array(instrumentField).check(z.maxLength(200))),
  materials: z.optional(z.array(materialField).check(z.maxLength(200))),
};

export const situationField = z.strictObject(situationShape);
export type Situation = z.infer<typeof situationField>;
