import { readFileSync, readdirSync } from 'node:fs';
import { expect, test } from 'vitest';
import * as z from 'zod/mini';
import * as bearing from '@seatwright/core/bearing';
import * as handwork from '@seatwright/core/handwork';
import * as material from '@seatwright/core/material';
import * as measure from '@seatwright/core/measure';
import * as quantity from '@seatwright/core/quantity';
import * as seal from '@seatwright/core/seal';
import * as tolerance from '@seatwright/core/tolerance';
import * as joint from '@seatwright/core/joint';
import { calculations } from '@seatwright/core/registry';

const source = new URL('../../packages/core/src/', import.meta.url);
const names: Readonly<Record<string, unknown>> = { ...quantity, ...material, ...tolerance, ...measure, ...joint, ...seal, ...bearing, ...handwork };

const examples = readdirSync(source, { recursive: true, encoding: 'utf8' })
  .filter((path) => path.endsWith('.ts') && !path.endsWith('.test.ts') && !path.includes('generated'))
  .flatMap((path) => [...readFileSync(new URL(path, source), 'utf8').matchAll(/@example (.+?) \/\/ (.+)$/gm)].map(([, expression = '', value = '']) => ({ path, expression, value })));

/** Runs one expression of a doc comment with everything that core exports. */
function run(expression: string): unknown {
  const used = Object.keys(names).filter((name) => new RegExp(`\\b${name}\\b`).test(expression));
  // eslint-disable-next-line @typescript-eslint/no-implied-eval, @typescript-eslint/no-unsafe-call -- the text is our own doc comment
  return new Function(...used, `return (${expression});`)(...used.map((name) => names[name]));
}

test.each(examples)('$path: $expression', ({ expression, value }) => {
  const found = run(expression);
  const shown = typeof found === 'string' ? `'${found.replaceAll('\u00a0', ' ')}'` : String(found);
  expect(shown).toBe(value.trim());
});

test('there are examples to run', () => {
  expect(examples.length).toBeGreaterThanOrEqual(13);
});

test('every calculation says in one line what it answers, and its schemas can be written', () => {
  for (const { name, summary, input, output } of calculations) {
    expect(name).toMatch(/^[a-z]+(-[a-z]+)*$/);
    expect(summary).toMatch(/^[A-Z].*[^.]$/);
    expect(() => [z.toJSONSchema(input, { io: 'input' }), z.toJSONSchema(output, { io: 'output' })]).not.toThrow();
  }
});
