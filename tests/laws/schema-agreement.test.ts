import fc from 'fast-check';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { expect, test } from 'vitest';
import * as z from 'zod/mini';
import { inputSchemaOf, jsonSchemasOf } from '@seatwright/core';
import { workshopFileField } from '@seatwright/core/job';
import * as quantity from '@seatwright/core/quantity';
import { calculations } from '@seatwright/core/registry';
import { exampleInputs, replaced } from './internal/example-inputs.js';
import { numRuns } from './internal/num-runs.js';

/** What a text is read as, by the unit that it is turned into: what a validator that knows the keyword `unit` does. */
const readers: Readonly<Record<string, (text: string) => number>> = {
  mm: (text) => quantity.snapMm(quantity.parseLength(text).valueMm),
  in: (text) => Math.round(((quantity.parseLength(text, { defaultUnit: 'in' }).valueMm * 5) / 127) * 1e9) / 1e9,
  'µm': (text) => quantity.parseDeviation(text).valueUm,
  '°C': (text) => quantity.parseTemperature(text).valueC,
  K: (text) => quantity.parseTemperatureDifference(text).valueK,
  rpm: (text) => quantity.parseRotationalSpeed(text).valueRpm,
  'm/s': (text) => quantity.parseSurfaceSpeed(text).valueMps,
  MPa: (text) => quantity.parsePressure(text).valueMpa,
  h: (text) => quantity.parseHours(text).valueHours,
  N: (text) => quantity.parseForce(text).valueN,
  '°': (text) => quantity.parseAngle(text).valueDeg,
};

interface Limits {
  readonly exclusiveMinimum?: number;
  readonly minimum?: number;
  readonly exclusiveMaximum?: number;
  readonly maximum?: number;
  readonly type?: string | readonly string[];
}

/** Sentences of rules that a schema says it cannot check. */
function beyondIn(schema: unknown): readonly string[] {
  if (typeof schema !== 'object' || schema === null) return [];
  return Object.entries(schema).flatMap(([key, value]) => (key === 'beyond' && Array.isArray(value) ? (value as string[]) : beyondIn(value)));
}

const isWithin = (value: number, { exclusiveMinimum = -Infinity, minimum = -Infinity, exclusiveMaximum = Infinity, maximum = Infinity }: Limits) =>
  value > exclusiveMinimum && value >= minimum && value < exclusiveMaximum && value <= maximum && (value === 0 || Math.abs(value) >= 1e-15);

/** A generic validator that also knows what `unit` means, as the comment in each schema tells. */
const ajv = new Ajv2020({ strict: false, validateFormats: false });
ajv.addKeyword({
  keyword: 'unit',
  validate: (unit: string, data: unknown, schema?: Limits) => {
    const { type = [], ...limits } = schema ?? {};
    if (!type.includes('number')) return true;
    // Lengths are settled to 1e-6 mm before anything is compared.
    if (typeof data === 'number') return isWithin(unit === 'mm' && type.includes('string') ? quantity.snapMm(data) : data, limits);
    const read = readers[unit];
    if (typeof data !== 'string' || read === undefined) return true;
    try {
      return isWithin(read(data), limits);
    } catch {
      return false;
    }
  },
});

const texts = fc.constantFrom('3/4 in', '19,05 mm', '25', '-5', '1e3', '7,800 rpm', '180 °F', '0.3 bar', '120 h', '4.5 kN', '15°', '+35 µm', '0.0000001 mm', '2.5 m/s', '500', '501', '3/0 in', '');
// A length less than the settling step below a limit settles on it: no case for a validator that cannot settle.
const leaf = fc.oneof(
  fc.double({ noNaN: true, noDefaultInfinity: true }).map((value) => (value < 0 && value > -1e-6 ? -1e-6 : value)), fc.integer({ min: -10, max: 1000 }), texts, fc.boolean(), fc.constantFrom<unknown>(null, [], {}, [1], { low: 1, high: 2 }, 'NBR', 'metal-case', 'steel-c45', 'x'.repeat(300)),
  fc.constantFrom(5e-324, 1e-16, -0, 0, 1e308),
);

const cases = [
  ...calculations.flatMap((calculation) => (exampleInputs.has(calculation.name) ? [[calculation.name, calculation.input, jsonSchemasOf(calculation).input as object, exampleInputs.get(calculation.name)] as const] : [])),
  ['workshop-file', workshopFileField, inputSchemaOf(workshopFileField), exampleInputs.get('workshop-file')] as const,
];

test.each(cases)('%s: a generic validator and the library take and refuse the same input', (_, field, schema, example) => {
  const validate = ajv.compile(schema);
  const beyond = new Set(beyondIn(schema));
  expect(validate(example), JSON.stringify(validate.errors)).toBe(true);
  fc.assert(
    fc.property(fc.array(fc.nat(30), { maxLength: 9 }), leaf, fc.boolean(), (path, by, isDropped) => {
      const input: unknown = replaced(example, path, isDropped ? undefined : by);
      // What JSON cannot hold is no input: a dropped value is a dropped key.
      const json: unknown = JSON.parse(JSON.stringify(input ?? null));
      const parsed = z.safeParse(field, json);
      const isByWordsAlone = parsed.success ? false : parsed.error.issues.every(({ message }) => beyond.has(message));
      expect(validate(json), JSON.stringify(json)).toBe(parsed.success || isByWordsAlone);
    }),
    { numRuns: Math.min(numRuns, 1000) },
  );
});
