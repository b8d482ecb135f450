import fc from 'fast-check';
import { readFileSync, readdirSync } from 'node:fs';
import { expect, test } from 'vitest';
import { CalculationError } from '@seatwright/core';
import { calculations } from '@seatwright/core/registry';
import { numbersIn } from './internal/expect-words.js';
import { numRuns } from './internal/num-runs.js';

const source = new URL('../../packages/core/src/', import.meta.url);

/** A good input for as many calculations as their doc comments give one; the rest gets the input of the sheet below. */
const examples = new Map<string, unknown>();
for (const path of readdirSync(source, { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith('.ts') && !name.endsWith('.test.ts'))) {
  const text = readFileSync(new URL(path, source), 'utf8');
  const [, name] = /defineCalculation\(\{\s*name: '([a-z-]+)'/u.exec(text) ?? [];
  const [, input] = /@example \w+\.run\((\{.*\})\)[.\s[]/u.exec(text) ?? [];
  // eslint-disable-next-line @typescript-eslint/no-implied-eval
  if (name !== undefined && input !== undefined) examples.set(name, (new Function(`return (${input});`) as () => unknown)());
}
const sample = JSON.parse(readFileSync(new URL('../../apps/bench/public/samples/bearing-outboard-crank.json', import.meta.url), 'utf8')) as unknown;
examples.set('job', { workshop: sample });
examples.set('service-record', { workshop: sample });

const junk = fc.constantFrom<unknown>(Number.NaN, Infinity, -Infinity, -1, 0, 1e308, 5e-324, '', ' ', 'x', '1e999', '∞', '3/0 in', '-5 mm', '<b>1</b>', '__proto__', null, undefined, true, [], {}, [[]], { __proto__: null }, '9'.repeat(400));

/** The value with one leaf, or one whole branch, replaced. */
function replaced(value: unknown, path: readonly number[], by: unknown): unknown {
  const [head, ...rest] = path;
  if (head === undefined || typeof value !== 'object' || value === null) return by;
  if (Array.isArray(value)) return value.length === 0 ? [by] : value.map((item: unknown, i) => (i === head % value.length ? replaced(item, rest, by) : item));
  const keys = Object.keys(value);
  if (keys.length === 0) return by;
  const key = keys[head % keys.length] ?? '';
  return { ...value, [key]: replaced((value as Readonly<Record<string, unknown>>)[key], rest, by) };
}

const covered = calculations.filter(({ name }) => examples.has(name));

test('nearly every calculation has an example to start from', () => {
  expect(covered.length).toBeGreaterThan(calculations.length * 0.85);
});

test.each(covered.map((calculation) => [calculation.name, calculation] as const))('%s: a spoilt input is an answer without NaN or one clear error, and never anything else', (name, calculation) => {
  fc.assert(
    fc.property(fc.array(fc.nat(30), { maxLength: 9 }), junk, (path, by) => {
      const input = replaced(examples.get(name), path, by);
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
