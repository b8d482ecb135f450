import { readFileSync, readdirSync } from 'node:fs';
import { expect, test } from 'vitest';
import * as z from 'zod/mini';
import * as core from '@seatwright/core';
import * as bearing from '@seatwright/core/bearing';
import * as handwork from '@seatwright/core/handwork';
import * as job from '@seatwright/core/job';
import * as material from '@seatwright/core/material';
import * as measure from '@seatwright/core/measure';
import * as quantity from '@seatwright/core/quantity';
import * as seal from '@seatwright/core/seal';
import * as tables from '@seatwright/core/tables';
import * as tolerance from '@seatwright/core/tolerance';
import * as joint from '@seatwright/core/joint';
import * as registry from '@seatwright/core/registry';
import * as wording from '@seatwright/core/wording';

const source = new URL('../../packages/core/src/', import.meta.url);
const names: Readonly<Record<string, unknown>> = { ...tables, ...core, ...registry, ...wording, ...job, ...quantity, ...material, ...tolerance, ...measure, ...joint, ...seal, ...bearing, ...handwork };

const examples = readdirSync(source, { recursive: true, encoding: 'utf8' })
  .filter((path) => path.endsWith('.ts') && !path.endsWith('.test.ts') && !path.includes('generated'))
  .flatMap((path) => [...readFileSync(new URL(path, source), 'utf8').matchAll(/@example (.+?) \/\/ (.+)$/gm)].map(([, expression = '', value = '']) => ({ path, expression, value })));

/** Runs one expression of a doc comment with everything that core exports. */
function run(expression: string): unknown {
  const used = Object.keys(names).filter((name) => new RegExp(`(?<![.\\w])${name}\\b`).test(expression));
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
  for (const { name, summary, input, output } of registry.calculations) {
    expect(name).toMatch(/^[a-z]+(-[a-z]+)*$/);
    expect(summary).toMatch(/^[A-Z].*[^.]$/);
    expect(() => [z.toJSONSchema(input, { io: 'input' }), z.toJSONSchema(output, { io: 'output' })]).not.toThrow();
  }
});

/** Sources with what each doc comment stands before. */
const sources = readdirSync(source, { recursive: true, encoding: 'utf8' })
  .filter((path) => path.endsWith('.ts') && !path.endsWith('.test.ts') && !path.includes('generated'))
  .map((path) => readFileSync(new URL(path, source), 'utf8'));

test('every public function and every calculation has an example that is run, or says that it is none of the public', () => {
  const isCalculation = (value: unknown) => typeof value === 'object' && value !== null && 'compute' in value;
  const isFunction = (value: unknown) => typeof value === 'function' && !/^class\b/u.test(Function.prototype.toString.call(value)) && !/Field$/u.test(value.name);
  const bare = Object.entries(names).filter(([, value]) => isCalculation(value) || isFunction(value)).filter(([name]) => {
    const doc = sources.map((text) => new RegExp(`/\\*\\*(?:(?!\\*/)[\\s\\S])*?\\*/\\s*export (?:function|const) ${name}\\b`, 'u').exec(text)?.[0]).find((found) => found !== undefined);
    return doc === undefined || !/@example .+ \/\/ |@internal/u.test(doc);
  });
  expect(bare.map(([name]) => name)).toEqual([]);
});
