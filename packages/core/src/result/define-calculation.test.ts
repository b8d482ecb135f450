import { expect, test } from 'vitest';
import * as z from 'zod/mini';
import { defineCalculation, jsonSchemasOf } from './define-calculation.js';
import { libraryVersion, tablesEdition } from './edition.js';
import { numberField, outputNumber } from './field.js';

const doubled = defineCalculation({
  name: 'doubled',
  summary: 'Twice the size',
  input: z.strictObject({ sizeMm: numberField({ label: 'size', unit: 'mm', over: 0 }) }),
  output: z.strictObject({ doubledMm: outputNumber('twice the size', 'mm') }),
  compute: ({ sizeMm }) => ({ doubledMm: 2 * sizeMm }),
  explain: () => [],
});

test('what is run says what it was computed with; what is computed inside does not pay for it', () => {
  expect(doubled.run({ sizeMm: 4 })).toEqual({ doubledMm: 8, libraryVersion, tablesEdition });
  expect(doubled.compute({ sizeMm: 4 })).toEqual({ doubledMm: 8 });
  expect(tablesEdition).toMatch(/^\d{4}\.\d\d-[0-9a-f]{8}$/);
});

test('the schema of an output names them', () => {
  const { output } = jsonSchemasOf(doubled) as { output: { properties: object; required: readonly string[] } };
  expect(Object.keys(output.properties)).toEqual(['doubledMm', 'libraryVersion', 'tablesEdition']);
  expect(output.required).toEqual(['doubledMm']);
});
