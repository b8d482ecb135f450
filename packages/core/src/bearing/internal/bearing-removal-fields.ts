import * as z from 'zod/mini';
import { temperatureField } from '../../quantity/index.js';
import { candourFields, choiceField, findingField, outputNumber, planStepField, spanField, verdictField, yesNoField } from '../../result/index.js';
import { bearingFittingShape } from '../bearing-fitting-shape.js';
import { bearingSeatShape } from './bearing-seat-fields.js';

export const inputField = z.strictObject({
  ...bearingSeatShape,
  isBlindBore: z.optional(yesNoField({ label: 'the bore is blind: nothing reaches behind the bearing' })),
  mustBeReused: z.optional(yesNoField({ label: 'the bearing is to be used again' })),
  isSealedOrGreased: bearingFittingShape.isSealedOrGreased,
  hasPolymerCage: bearingFittingShape.hasPolymerCage,
  caseLimitC: bearingFittingShape.caseLimitC,
  ambientC: z.optional(temperatureField({ label: 'temperature of the workshop', unit: '°C', from: -20, upTo: 50 })),
});

const seatOutField = z.strictObject({
  seat: choiceField(['shaft', 'housing'], { label: 'which seat' }),
  isTight: z.boolean().check(z.meta({ label: 'it may be tight', unit: '' })),
  pullForceN: spanField('force to draw the ring off, clean', 'N'),
  freeByHeatC: z.nullable(outputNumber('the outer of the two parts is free when it alone is as warm as this', '°C')),
  limitC: outputNumber('the outer of the two parts must not pass', '°C'),
});

export const outputField = z.strictObject({
  verdict: verdictField,
  seats: z.readonly(z.array(seatOutField)),
  pullBy: choiceField(['inner ring', 'outer ring', 'both rings', 'either'], { label: 'ring that the puller must grip' }),
  steps: z.readonly(z.array(planStepField)),
  findings: z.readonly(z.array(findingField)),
  ...candourFields,
});

export type BearingRemovalInput = z.infer<typeof inputField>;
export type BearingRemovalOutput = z.infer<typeof outputField>;
