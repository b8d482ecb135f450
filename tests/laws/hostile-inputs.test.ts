import fc from 'fast-check';
import { expect, test } from 'vitest';
import * as z from 'zod/mini';
import { CalculationError, tablesEdition } from '@seatwright/core';
import { calculations } from '@seatwright/core/registry';
import { numbersIn } from './internal/expect-words.js';
import { exampleInputs, replaced } from './internal/example-inputs.js';
import { numRuns } from './internal/num-runs.js';

const junk = fc.constantFrom<unknown>(Number.NaN, Infinity, -Infinity, -1, 0, 1e308, 5e-324, '', ' ', 'x', '1e999', '∞', '3/0 in', '-5 mm', '<b>1</b>', '__proto__', null, undefined, true, [], {}, [[]], { __proto__: null }, '9'.repeat(400));

const covered = calculations.filter(({ name }) => exampleInputs.has(name));

test('nearly every calculation has an example to start from', () => {
  expect(covered.length).toBeGreaterThan(calculations.length * 0.85);
});

test.each(covered.map((calculation) => [calculation.name, calculation] as const))('%s: a spoilt input is an answer without NaN or one clear error, and never anything else', (name, calculation) => {
  fc.assert(
    fc.property(fc.array(fc.nat(30), { maxLength: 9 }), junk, (path, by) => {
      const input = replaced(exampleInputs.get(name), path, by);
      try {
        const output: unknown = calculation.run(input);
        expect(numbersIn(output).filter((number) => !Number.isFinite(number))).toEqual([]);
      } catch (error) {
        expect(error, JSON.stringify(input)).toBeInstanceOf(CalculationError);
        expect((error as CalculationError).message).not.toMatch(/undefined|\[object|NaN at/u);
      }
      expect(({} as Record<string, unknown>)['polluted']).toBeUndefined();
    }),
    { numRuns: Math.min(numRuns, 4000) },
  );
});

test.each(covered.map((calculation) => [calculation.name, calculation] as const))('%s: what is run is what its schema says, and leaves no mark on what is computed afterwards', (name, calculation) => {
  const input = exampleInputs.get(name);
  const output = calculation.run(input);
  expect(z.safeParse(calculation.output, output).error?.issues ?? []).toEqual([]);
  expect(output.tablesEdition).toBe(tablesEdition);
  // A job sheet bears the stamp by itself.
  if (name !== 'job') expect(calculation.compute(calculation.parse(input))).not.toHaveProperty('tablesEdition');
});
