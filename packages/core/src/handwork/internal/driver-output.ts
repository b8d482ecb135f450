import * as z from 'zod/mini';
import { candourFields, findingField, outputNumber, spanField, verdictField } from '../../result/index.js';

const text = (label: string) => z.string().check(z.meta({ label, unit: '' }));

const toolShape = {
  name: text('tool'),
  origin: z.enum(['own', 'standard']).check(z.meta({ label: 'from the scrap box or from a table', unit: '' })),
  kind: z.enum(['tube', 'socket', 'turned']).check(z.meta({ label: 'kind of tool', unit: '' })),
  material: z.nullable(text('material')),
  outsideMm: spanField('outside diameter', 'mm'),
  insideMm: spanField('inside diameter', 'mm'),
  verdict: verdictField,
  reasons: z.readonly(z.array(findingField)),
};

const candidateField = z.strictObject({
  ...toolShape,
  role: z.enum(['enters', 'stops at the face', 'at the edge']).check(z.meta({ label: 'how it meets the bore', unit: '' })),
  clearanceToBoreMm: z.nullable(outputNumber('radial clearance in the bore', 'mm')),
  clearanceToShaftMm: z.nullable(outputNumber('radial clearance over the shaft', 'mm')),
  reachOverRimMm: outputNumber('outside beyond the inside of the case wall, as a radius', 'mm'),
  reachOntoFaceMm: outputNumber('inside inward of the edge of the face, as a radius', 'mm'),
  landingMm: z.nullable(outputNumber('reach over the mouth of the bore, as a radius', 'mm')),
  leastMarginMm: outputNumber('least of these margins', 'mm'),
  stressMpa: z.nullable(outputNumber('stress in the wall under the largest push', 'MPa')),
  reserveFactor: z.nullable(outputNumber('how many times the largest push it stands', '')),
});

const nearMissField = z.strictObject({
  ...toolShape,
  dimension: z.nullable(text('dimension that misses by most')),
  missMm: z.nullable(outputNumber('misses by', 'mm')),
});

const requiredField = z.strictObject({
  outsideOverMm: outputNumber('outside at least', 'mm'),
  outsideUpToMm: outputNumber('outside below, to enter the bore', 'mm'),
  insideOverMm: z.nullable(outputNumber('inside over, to clear the shaft', 'mm')),
  insideRimAloneMm: outputNumber('inside from which it bears on the rim alone', 'mm'),
  insideUpToMm: outputNumber('inside up to which it lands on the face', 'mm'),
  lengthOverMm: z.nullable(outputNumber('length over, to clear the end of the shaft', 'mm')),
  flushOutsideOverMm: z.nullable(outputNumber('outside over which it stops at the housing face by itself', 'mm')),
  flushOutsideUpToMm: z.nullable(outputNumber('outside up to the edge of the flat face', 'mm')),
});

const turnedField = z.strictObject({
  form: z.enum(['flat plate', 'recessed plate', 'stepped collar', 'plain sleeve']).check(z.meta({ label: 'form', unit: '' })),
  outsideMm: outputNumber('outside of the end that pushes', 'mm'),
  outsideClass: text('its ISO 286 class'),
  outsideDeviationMm: spanField('its deviation', 'mm'),
  insideMm: outputNumber('inside', 'mm'),
  insideClass: text('its ISO 286 class'),
  insideDeviationMm: spanField('its deviation', 'mm'),
  insideDepthMm: outputNumber('depth of the inside', 'mm'),
  collarOutsideMm: z.nullable(outputNumber('outside of the collar', 'mm')),
  recessInsideMm: z.nullable(outputNumber('inside of the recess', 'mm')),
  stepHeightMm: z.nullable(outputNumber('height of the step, or depth of the recess', 'mm')),
  stepClass: z.nullable(text('its ISO 286 class')),
  stepDeviationMm: z.nullable(spanField('its deviation', 'mm')),
  lengthMm: outputNumber('length', 'mm'),
  faceOutOfSquareUpToMm: outputNumber('end out of square, at most', 'mm'),
  isOpenThrough: z.boolean().check(z.meta({ label: 'open right through', unit: '' })),
});

/** Schema of the answer. */
export const outputField = z.strictObject({
  verdict: verdictField,
  findings: z.readonly(z.array(findingField)),
  required: requiredField,
  candidates: z.readonly(z.array(candidateField)),
  candidateCount: outputNumber('tools that may serve, listed or not', ''),
  nearMisses: z.readonly(z.array(nearMissField)),
  nearMissCount: outputNumber('tools that do not serve, listed or not', ''),
  judgedCount: outputNumber('tools looked at', ''),
  turnedDriver: z.nullable(turnedField),
  cautions: z.readonly(z.array(text('caution'))),
  ...candourFields,
});

export type DriverSearchOutput = z.infer<typeof outputField>;
