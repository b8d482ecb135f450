import * as z from 'zod/mini';
import { candourFields, choiceField, findingField, outputNumber, planStepField, spanField, verdictField } from '../../result/index.js';
import { bearingFittingShape } from '../bearing-fitting-shape.js';

export const inputField = z.strictObject(bearingFittingShape);

const maybe = (label: string, unit: string) => z.nullable(outputNumber(label, unit));

const wayField = z.strictObject({
  seat: choiceField(['shaft', 'housing'], { label: 'which seat' }),
  mostInterferenceUm: outputNumber('largest interference', 'µm'),
  way: choiceField(['slides', 'heat the bearing', 'heat the case', 'chill too', 'press cold'], { label: 'how it goes together' }),
  feasible: z.boolean().check(z.meta({ label: 'heat alone gives the gap that was wanted', unit: '' })),
  warmPartC: outputNumber('temperature of the warm part', '°C'),
  coldPartC: outputNumber('temperature of the cold part', '°C'),
  noGapC: outputNumber('temperature at which it just slips over, without any gap', '°C'),
  limitC: outputNumber('the warm part must not pass', '°C'),
  gapAtLimitUm: outputNumber('gap at that limit', 'µm'),
  pushForceN: spanField('force to press it in cold', 'N'),
  benchTimeS: z.nullable(spanField('time on the bench before it grips, in still air', 's')),
});

export const outputField = z.strictObject({
  verdict: verdictField,
  ways: z.readonly(z.array(wayField)),
  pushThrough: choiceField(['inner ring', 'outer ring', 'both rings', 'either'], { label: 'ring that the driver must push' }),
  innerDriver: z.strictObject({ insideOverMm: outputNumber('inside over', 'mm'), outsideUpToMm: outputNumber('outside up to', 'mm') }),
  outerDriver: z.strictObject({ insideOverMm: outputNumber('inside over', 'mm'), outsideUpToMm: outputNumber('outside up to', 'mm') }),
  throughBallsLoadN: maybe('static load on the balls when pushed through them', 'N'),
  throughBallsShareRatio: maybe('that over the static load rating', ''),
  steps: z.readonly(z.array(planStepField)),
  findings: z.readonly(z.array(findingField)),
  ...candourFields,
});

export type BearingFittingInput = z.infer<typeof inputField>;
export type BearingFittingOutput = z.infer<typeof outputField>;
