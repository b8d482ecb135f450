import * as z from 'zod/mini';
import { candourFields, findingField, outputNumber, planStepField, spanField, verdictField } from '../../result/index.js';
import { extractionMethods } from './extraction.js';

const holeField = z.strictObject({
  innerLimitRadiusMm: outputNumber('inner limit of the free face, as a radius', 'mm'),
  outerLimitRadiusMm: outputNumber("inside of the case's outer wall, as a radius", 'mm'),
  freeWidthMm: outputNumber('width of the free face', 'mm'),
  holeCircleRadiusMm: outputNumber('radius of the circle that the holes lie on', 'mm'),
  leastWallMm: outputNumber('least wall beside the hole', 'mm'),
  largestDrillMm: z.nullable(outputNumber('largest drill that leaves the least wall', 'mm')),
  drillMm: z.nullable(outputNumber('drill', 'mm')),
  wallToShaftMm: outputNumber('wall between hole and shaft', 'mm'),
  wallToCaseMm: outputNumber("wall between hole and the case's outer wall", 'mm'),
  faceThicknessMm: spanField('thickness of the face', 'mm'),
  drillPointMm: z.nullable(outputNumber('length of the drill point', 'mm')),
  breakthroughMm: z.nullable(outputNumber('travel until the hole is through', 'mm')),
  drillStopFromSealFaceMm: z.nullable(outputNumber('drill past a stop that lands on the seal', 'mm')),
  drillStopFromHousingFaceMm: z.nullable(outputNumber('drill past a stop that lands on the housing face', 'mm')),
  roomInSealMm: z.nullable(outputNumber('room behind the face inside the seal itself', 'mm')),
  roomBehindMm: z.nullable(outputNumber('room behind the face up to what lies there', 'mm')),
  roomNeededMm: z.nullable(outputNumber('room that the drill needs behind the face', 'mm')),
  isPierced: z.boolean().check(z.meta({ label: 'a punch makes it in place of a drill', unit: '' })),
  drillReachMm: z.nullable(outputNumber('free length of drill that passes the shaft', 'mm')),
});

const screwField = z.strictObject({
  designation: z.string().check(z.meta({ label: 'screw', unit: '' })),
  outsideMm: outputNumber('outside diameter of the thread', 'mm'),
  pitchMm: outputNumber('pitch', 'mm'),
  pilotMm: outputNumber('pilot hole', 'mm'),
  sheetMm: spanField('metal of the face', 'mm'),
  turnsOfBiteRatio: outputNumber('turns of bite', ''),
  tipFromMm: outputNumber('point below the outer face of the seal, at least', 'mm'),
  tipUpToMm: outputNumber('point below the outer face of the seal, at most', 'mm'),
  lengthFromMm: outputNumber('length under the head, at least', 'mm'),
  headUpToMm: outputNumber('largest head that clears the shaft', 'mm'),
});

/** Schema of the answer. */
export const outputField = z.strictObject({
  verdict: verdictField,
  method: z.enum(extractionMethods).check(z.meta({ label: 'way out', unit: '' })),
  feasible: z.boolean().check(z.meta({ label: 'it should come out this way', unit: '' })),
  steps: z.readonly(z.array(planStepField)),
  findings: z.readonly(z.array(findingField)),
  hole: holeField,
  screw: z.nullable(screwField),
  screwCount: outputNumber('number of screws', ''),
  pullForceN: z.nullable(spanField('pull that the seal asks for', 'N')),
  stripForceN: z.nullable(spanField('pull at which the threads tear out, all screws', 'N')),
  pushOutTube: z.nullable(z.strictObject({ outsideUpToMm: outputNumber('tube from inside: outside up to', 'mm'), insideOverMm: outputNumber('tube from inside: inside over', 'mm') })),
  ...candourFields,
});

export type ExtractionPlanOutput = z.infer<typeof outputField>;
