import * as z from 'zod/mini';
import { materialField, partMaterialField } from '../../material/index.js';
import { instrumentField, readingsField } from '../../measure/index.js';
import { forceField, lengthField, temperatureField } from '../../quantity/index.js';
import { candourFields, choiceField, exactlyOne, findingField, given, notBoth, outputNumber, rulesInSchema, sourceField, spanField, textField, verdictField } from '../../result/index.js';
import { bearingKinds, clearanceGroups, toleranceClasses } from './bearing-choices.js';

const runningTemperature = (label: string, help?: string) => temperatureField({ label, unit: '°C', from: -100, upTo: 300, ...(help === undefined ? {} : { help }) });

/** How the load moves against a ring: the names of ISO 286 practice for bearing seats. */
export const ringLoads = ['rotating', 'stationary', 'indeterminate'] as const;
export type RingLoad = (typeof ringLoads)[number];
const ringHolders = ['nothing', 'circlip', 'plate', 'staking'] as const;

/** What a bearing seat is asked with: the bearing, both seats, materials, temperatures, load. */
export const bearingSeatShape = {
  designation: z.optional(textField({ label: 'designation of the bearing', typical: '6203', longest: 40 })),
  boreMm: z.optional(lengthField({ label: 'bore of the bearing', unit: 'mm', over: 0, upTo: 500 })),
  outsideMm: z.optional(lengthField({ label: 'outside of the bearing', unit: 'mm', over: 0, upTo: 800 })),
  widthMm: z.optional(lengthField({ label: 'width of the bearing', unit: 'mm', over: 0, upTo: 300 })),
  bearingKind: z.optional(choiceField(bearingKinds, { label: 'kind of bearing' })),
  bearingToleranceClass: z.optional(choiceField(toleranceClasses, { label: 'tolerance class of the bearing (ISO 492)' })),
  clearanceGroup: z.optional(choiceField(clearanceGroups, { label: 'clearance group (ISO 5753-1)' })),
  shaftClass: z.optional(textField({ label: 'tolerance class of the shaft seat', typical: 'k5', longest: 16 })),
  shaftReadings: z.optional(z.array(readingsField).check(z.minLength(1), z.maxLength(50))),
  housingClass: z.optional(textField({ label: 'tolerance class of the housing seat', typical: 'H7', longest: 16 })),
  housingReadings: z.optional(z.array(readingsField).check(z.minLength(1), z.maxLength(50))),
  shaftBoreMm: z.optional(lengthField({ label: 'hole through the shaft', unit: 'mm', from: 0, upTo: 500 })),
  housingOutsideMm: z.optional(lengthField({ label: 'outside of the housing around the seat', unit: 'mm', over: 0, upTo: 5000, help: 'left out: a thick wall' })),
  shaftMaterial: z.optional(partMaterialField),
  housingMaterial: z.optional(partMaterialField),
  ringMaterial: z.optional(partMaterialField),
  seatFinish: z.optional(choiceField(['ground', 'turned'], { label: 'finish of the seats' })),
  temperatureC: z.optional(runningTemperature('temperature of the case while running')),
  shaftTemperatureC: z.optional(runningTemperature('temperature of the shaft while running')),
  innerRingTemperatureC: z.optional(runningTemperature('temperature of the inner ring while running')),
  outerRingTemperatureC: z.optional(runningTemperature('temperature of the outer ring while running')),
  housingTemperatureC: z.optional(runningTemperature('temperature of the housing while running')),
  coldC: z.optional(runningTemperature('temperature of a cold start')),
  innerRingLoad: z.optional(choiceField(ringLoads, { label: 'load against the inner ring' })),
  outerRingLoad: z.optional(choiceField(ringLoads, { label: 'load against the outer ring' })),
  radialLoadN: z.optional(forceField({ label: 'radial load', unit: 'N', from: 0, upTo: 10_000_000 })),
  outerRingHeldBy: z.optional(choiceField(ringHolders, { label: 'what else holds the outer ring' })),
  bearingSpacingMm: z.optional(lengthField({ label: 'distance between the two bearings of the shaft', unit: 'mm', over: 0, upTo: 10_000 })),
  materials: z.optional(z.array(materialField).check(z.maxLength(200))),
  instruments: z.optional(z.array(instrumentField).check(z.maxLength(200))),
};

export const bearingSeatField = z
  .strictObject(bearingSeatShape)
  .check(
    z.refine((input) => (input.designation === undefined) !== (input.boreMm === undefined || input.outsideMm === undefined || input.widthMm === undefined), {
      error: 'give the designation, or boreMm, outsideMm and widthMm',
      path: ['designation'],
    }),
    z.refine((input) => input.boreMm === undefined || input.outsideMm === undefined || input.outsideMm > input.boreMm, { error: 'outsideMm must be larger than boreMm', path: ['outsideMm'] }),
    z.refine((input) => input.shaftClass === undefined || input.shaftReadings === undefined, { error: 'give a class or readings of the shaft, not both', path: ['shaftClass'] }),
    z.refine((input) => input.housingClass === undefined || input.housingReadings === undefined, { error: 'give a class or readings of the housing, not both', path: ['housingClass'] }),
    rulesInSchema([exactlyOne(given('designation'), given('boreMm', 'outsideMm', 'widthMm')), notBoth('shaftClass', 'shaftReadings'), notBoth('housingClass', 'housingReadings')], ['outsideMm must be larger than boreMm']),
  );

export type BearingSeatInput = z.infer<typeof bearingSeatField>;

const stateField = z.strictObject({
  leastInterferenceUm: outputNumber('smallest interference; clearance below zero', 'µm'),
  probableInterferenceUm: outputNumber('interference of parts of middle size', 'µm'),
  mostInterferenceUm: outputNumber('largest interference; clearance below zero', 'µm'),
});

const seatField = z.strictObject({
  seatMm: outputNumber('nominal diameter of the seat', 'mm'),
  lowerLimitOfSizeMm: outputNumber('smallest seat', 'mm'),
  upperLimitOfSizeMm: outputNumber('largest seat', 'mm'),
  ringDeviationUm: spanField('deviation of the ring', 'µm'),
  at20C: stateField,
  atTemperature: stateField,
  smoothingUm: spanField('interference lost as the seat smooths', 'µm'),
  contactPressureMpa: spanField('contact pressure at 20 °C', 'MPa'),
  hotContactPressureMpa: spanField('contact pressure while running', 'MPa'),
  racewayChangeUm: spanField('growth of the raceway on the diameter by the fit, at 20 °C', 'µm'),
  ringHoopStressMpa: spanField('hoop stress at the bore of the ring, at 20 °C', 'MPa'),
  looseFromC: z.nullable(
    z.strictObject({
      earliest: outputNumber('earliest, over tolerances and spread of expansion', '°C'),
      probable: z.nullable(outputNumber('for parts of middle size; none: not within reach', '°C')),
      latest: z.nullable(outputNumber('latest; none: not within reach', '°C')),
    }),
  ),
  interferenceLostToLoadUm: outputNumber('interference that the load takes away', 'µm'),
});

const clearanceField = z.strictObject({
  min: outputNumber('smallest clearance, everything at its worst; preload below zero', 'µm'),
  probableLow: outputNumber('smallest probable clearance', 'µm'),
  probable: outputNumber('clearance of parts of middle size', 'µm'),
  probableHigh: outputNumber('largest probable clearance', 'µm'),
  max: outputNumber('largest clearance, everything at its worst', 'µm'),
});

export const bearingSeatOutputField = z.strictObject({
  verdict: verdictField,
  designation: z.nullable(textField({ label: 'basic designation' })),
  boreMm: outputNumber('bore', 'mm'),
  outsideMm: outputNumber('outside', 'mm'),
  widthMm: outputNumber('width', 'mm'),
  innerRacewayMm: outputNumber('raceway of the inner ring, estimated', 'mm'),
  outerRacewayMm: outputNumber('raceway of the outer ring, estimated', 'mm'),
  shaftSeat: z.nullable(seatField),
  housingSeat: z.nullable(seatField),
  unmountedClearanceUm: z.nullable(spanField('radial clearance before fitting', 'µm')),
  mountedClearanceUm: z.nullable(clearanceField),
  runningClearanceUm: z.nullable(clearanceField),
  coldClearanceUm: z.nullable(clearanceField),
  preloadProbability: z.nullable(outputNumber('probability that it runs without clearance', '')),
  clearanceGroups: z.readonly(
    z.array(z.strictObject({ clearanceGroup: choiceField(clearanceGroups, { label: 'clearance group' }), runningClearanceUm: clearanceField, preloadProbability: outputNumber('probability that it runs without clearance', '') })),
  ),
  clearanceGroupThatSuits: z.nullable(choiceField(clearanceGroups, { label: 'smallest group that keeps its clearance' })),
  axialGrowthUm: z.nullable(spanField('the case grows this much more than the shaft, between the bearings', 'µm')),
  dimensionsSource: z.nullable(sourceField),
  findings: z.readonly(z.array(findingField)),
  ...candourFields,
});

export type BearingSeatOutput = z.infer<typeof bearingSeatOutputField>;
export type SeatResult = NonNullable<BearingSeatOutput['shaftSeat']>;
export type RadialClearance = NonNullable<BearingSeatOutput['mountedClearanceUm']>;
