import * as z from 'zod/mini';
import { forceField, hoursField, lengthField, rotationalSpeedField, temperatureField } from '../../quantity/index.js';
import { candourFields, choiceField, exactlyOne, findingField, given, notBoth, numberField, outputNumber, rulesInSchema, spanField, verdictField } from '../../result/index.js';
import { contaminationLevels } from './iso-281.js';

export const inputField = z
  .strictObject({
    basicDynamicLoadRatingN: forceField({ label: 'basic dynamic load rating C, as the maker of the bearing gives it', unit: 'N', over: 0, upTo: 100_000_000 }),
    basicStaticLoadRatingN: z.optional(forceField({ label: 'basic static load rating C0, as the maker gives it', unit: 'N', over: 0, upTo: 100_000_000 })),
    equivalentLoadN: z.optional(forceField({ label: 'equivalent dynamic load P', unit: 'N', over: 0, upTo: 100_000_000 })),
    radialLoadN: z.optional(forceField({ label: 'radial load', unit: 'N', from: 0, upTo: 100_000_000 })),
    axialLoadN: z.optional(forceField({ label: 'axial load', unit: 'N', from: 0, upTo: 100_000_000 })),
    f0Factor: z.optional(numberField({ label: 'factor f0 of the bearing, as the maker gives it', unit: '', from: 8, upTo: 18, typical: '14' })),
    kind: choiceField(['ball', 'roller'], { label: 'balls or rollers' }),
    speedRpm: rotationalSpeedField({ label: 'speed', unit: 'rpm', over: 0, upTo: 1_000_000 }),
    reliabilityPercent: z.optional(numberField({ label: 'reliability wanted', unit: '%', from: 90, upTo: 99.95, typical: '90' })),
    boreMm: z.optional(lengthField({ label: 'bore of the bearing', unit: 'mm', over: 0, upTo: 5000 })),
    greaseTemperatureC: z.optional(temperatureField({ label: 'temperature of the grease while running', unit: '°C', from: -40, upTo: 120 })),
    meanDiameterMm: z.optional(lengthField({ label: 'mean diameter of the bearing, (d + D)/2', unit: 'mm', over: 0, upTo: 5000 })),
    viscosityMm2PerS: z.optional(numberField({ label: 'viscosity of the oil at working temperature', unit: 'mm²/s', over: 0, upTo: 10_000 })),
    fatigueLoadLimitN: z.optional(forceField({ label: 'fatigue load limit Cu, as the maker gives it', unit: 'N', over: 0, upTo: 10_000_000 })),
    contaminationFactor: z.optional(numberField({ label: 'contamination factor eC', unit: '', from: 0, upTo: 1 })),
    contamination: z.optional(choiceField(contaminationLevels, { label: 'how clean the oil is' })),
    serviceIntervalHours: z.optional(hoursField({ label: 'service interval', unit: 'h', over: 0, upTo: 1_000_000 })),
  })
  .check(
    z.refine((input) => (input.equivalentLoadN === undefined) !== (input.radialLoadN === undefined), { error: 'give equivalentLoadN, or radialLoadN with axialLoadN', path: ['equivalentLoadN'] }),
    z.refine((input) => input.contaminationFactor === undefined || input.contamination === undefined, { error: 'give contaminationFactor or contamination, not both', path: ['contamination'] }),
    rulesInSchema([exactlyOne(given('equivalentLoadN'), given('radialLoadN')), notBoth('contaminationFactor', 'contamination')]),
  );

const maybe = (label: string, unit: string) => z.nullable(outputNumber(label, unit));

export const outputField = z.strictObject({
  verdict: verdictField,
  equivalentLoadN: outputNumber('equivalent dynamic load P', 'N'),
  basicRatingLifeMillionRev: outputNumber('basic rating life L10', '10⁶ turns'),
  basicRatingLifeHours: outputNumber('basic rating life L10h', 'h'),
  reliabilityFactor: outputNumber('factor a1 for the reliability', ''),
  lifeModificationFactor: z.nullable(spanField('factor a_ISO', '')),
  modifiedRatingLifeHours: z.nullable(spanField('modified rating life Lnm', 'h')),
  viscosityRatio: maybe('viscosity ratio κ', ''),
  nominalViscosityMm2PerS: maybe('viscosity that would be wanted, ν1', 'mm²/s'),
  equivalentStaticLoadN: maybe('equivalent static load P0', 'N'),
  staticSafetyFactor: maybe('static safety C0/P0', ''),
  speedFactorMmRpm: maybe('speed factor n·dm', 'mm·rpm'),
  relubricationHours: z.nullable(spanField('grease again after, an estimate', 'h')),
  serviceIntervalsCount: maybe('service intervals in the life', ''),
  findings: z.readonly(z.array(findingField)),
  ...candourFields,
});

export type RatingLifeInput = z.infer<typeof inputField>;
export type RatingLifeOutput = z.infer<typeof outputField>;
