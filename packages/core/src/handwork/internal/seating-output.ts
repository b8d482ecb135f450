import * as z from 'zod/mini';
import { candourFields, findingField, outputNumber, planStepField, spanField, verdictField } from '../../result/index.js';

const depthField = z.strictObject({
  low: outputNumber('outer face below the housing face, least', 'mm'),
  nominal: outputNumber('outer face below the housing face', 'mm'),
  high: outputNumber('outer face below the housing face, most', 'mm'),
});

const gaugeField = z.strictObject({
  targetMm: outputNumber('depth gauge should read', 'mm'),
  lowMm: outputNumber('depth gauge, at least', 'mm'),
  highMm: outputNumber('depth gauge, at most', 'mm'),
  largestSpreadMm: outputNumber('largest difference between the points', 'mm'),
  pointCount: outputNumber('points around', ''),
});

const gripField = z.strictObject({
  low: outputNumber('length that grips plain bore, least', 'mm'),
  nominal: outputNumber('length that grips plain bore', 'mm'),
  high: outputNumber('length that grips plain bore, most', 'mm'),
});

/** Schema of the answer. */
export const outputField = z.strictObject({
  verdict: verdictField,
  seat: z.enum(['flush', 'shoulder', 'depth']).check(z.meta({ label: 'where the seal ends', unit: '' })),
  faceDepthMm: z.nullable(depthField),
  gauge: z.nullable(gaugeField),
  engagedMm: z.nullable(gripField),
  leastEngagedMm: outputNumber('length that should grip', 'mm'),
  boreLeftMm: z.nullable(spanField('bore left behind the seal', 'mm')),
  roomBehindMm: z.nullable(spanField('room to what lies behind', 'mm')),
  moveMm: z.nullable(outputNumber('outer face deeper than the old one by', 'mm')),
  needsLipSleeve: z.boolean().check(z.meta({ label: 'the lip needs a sleeve on its way', unit: '' })),
  steps: z.readonly(z.array(planStepField)),
  findings: z.readonly(z.array(findingField)),
  ...candourFields,
});

export type SeatingPlanOutput = z.infer<typeof outputField>;
