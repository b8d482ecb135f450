import * as z from 'zod/mini';
import { materialField, partMaterialField } from '../../material/index.js';
import { lengthField, temperatureField } from '../../quantity/index.js';
import { anyGiven, candourFields, choiceField, exactlyOne, given, neither, notBoth, outputNumber, rulesInSchema, spanField, textField, wholeNumberField } from '../../result/index.js';
import { partLimitsField } from '../part-limits-field.js';
import { nominalField } from './nominal-field.js';
import { coldestC, hottestC } from './warm-range.js';

const temperature = (label: string) => temperatureField({ label, unit: '°C', from: coldestC, upTo: hottestC });

export const inputField = z
  .strictObject({
    nominalMm: nominalField,
    hole: z.optional(partLimitsField),
    shaft: z.optional(partLimitsField),
    fitClass: z.optional(textField({ label: 'class of inch fit, for both parts', typical: 'FN2', longest: 16 })),
    holeMaterial: partMaterialField,
    shaftMaterial: partMaterialField,
    temperatureC: z.optional(temperature('temperature of both parts')),
    holeTemperatureC: z.optional(temperature('temperature of the part with the hole')),
    shaftTemperatureC: z.optional(temperature('temperature of the shaft')),
    fromC: z.optional(temperature('coldest end of the curve')),
    toC: z.optional(temperature('hottest end of the curve')),
    curvePointCount: z.optional(wholeNumberField({ label: 'points of the curve', unit: '', from: 2, upTo: 2000, typical: '35' })),
    lengthMm: z.optional(lengthField({ label: 'length along the shaft that grows', unit: 'mm', over: 0, upTo: 10_000 })),
    materials: z.optional(z.array(materialField).check(z.maxLength(200))),
  })
  .check(
    z.refine((input) => (input.fitClass === undefined ? input.hole !== undefined && input.shaft !== undefined : input.hole === undefined && input.shaft === undefined), {
      error: 'give hole and shaft, or a fitClass for both',
    }),
    z.refine((input) => input.temperatureC === undefined || (input.holeTemperatureC === undefined && input.shaftTemperatureC === undefined), {
      error: 'give one temperature for both parts, or one for each',
      path: ['temperatureC'],
    }),
    z.refine((input) => (input.fromC ?? -20) < (input.toC ?? 150), { error: 'fromC must be below toC', path: ['toC'] }),
    rulesInSchema(
      [exactlyOne(given('fitClass'), given('hole', 'shaft')), neither({ ...given('fitClass'), ...anyGiven('hole', 'shaft') }), notBoth('temperatureC', 'holeTemperatureC'), notBoth('temperatureC', 'shaftTemperatureC')],
      ['fromC must be below toC'],
    ),
  );

const stateField = z.strictObject({
  leastInterferenceUm: outputNumber('smallest interference; clearance below zero', 'µm'),
  probableInterferenceUm: outputNumber('interference of parts of middle size', 'µm'),
  mostInterferenceUm: outputNumber('largest interference; clearance below zero', 'µm'),
});

const crossingField = z.nullable(
  z.strictObject({
    earliest: outputNumber('earliest, over tolerances and spread of expansion', '°C'),
    probable: z.nullable(outputNumber('for parts of middle size; none: not within reach', '°C')),
    latest: z.nullable(outputNumber('latest; none: not within reach', '°C')),
  }),
);

export const outputField = z.strictObject({
  kind: choiceField(['clearance', 'transition', 'interference'], { label: 'kind of fit at these temperatures' }),
  at20C: stateField,
  atTemperature: stateField,
  thermalInterferenceUm: spanField('interference gained by temperature', 'µm'),
  curve: z.readonly(z.array(z.strictObject({ ...stateField.shape, bothAtC: outputNumber('temperature of both parts', '°C') }))),
  looseFromC: crossingField,
  looseBelowC: crossingField,
  tightFromC: crossingField,
  tightBelowC: crossingField,
  axialGrowthUm: z.nullable(spanField('the part with the hole grows this much more than the shaft, along it', 'µm')),
  ...candourFields,
});

export type FitAtTemperatureInput = z.infer<typeof inputField>;
export type FitAtTemperatureOutput = z.infer<typeof outputField>;
