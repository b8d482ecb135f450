import fc from 'fast-check';
import { evaluate } from 'mathjs';
import { readFileSync, readdirSync } from 'node:fs';
import { expect, test } from 'vitest';
import { jobSheet, positionsOf, readWorkshop } from '@seatwright/core/job';
import type { WorkingStep } from '@seatwright/core/result';
import { source } from '@seatwright/core/result';
import { evaluateFormula } from './evaluate-formula.js';
import { parseFormula } from './formula.js';
import { triedValues } from './tried-numbers.js';

const samples = new URL('../../../../../apps/bench/public/samples/', import.meta.url);
const steps = readdirSync(samples).filter((name) => name.endsWith('.json')).flatMap((name) => {
  const workshop = JSON.parse(readFileSync(new URL(name, samples), 'utf8')) as unknown;
  return positionsOf(readWorkshop(workshop).workshop).flatMap(({ machine, position }) => {
    const input = { workshop, machine: machine.name, position: position.name };
    return jobSheet.explain(jobSheet.parse(input), jobSheet.run(input));
  });
});
const formulas = steps.filter((step) => step.kind === 'formula');

test('every formula of every sample is taken apart, and gives what the independent evaluator gives', () => {
  expect(formulas.length).toBeGreaterThan(100);
  for (const { formula, scope, value } of formulas) {
    const parsed = parseFormula(formula);
    if (parsed === null) throw new Error(`not understood: ${formula}`);
    const found = evaluateFormula(parsed, scope) ?? NaN;
    expect(Math.abs(found - (evaluate(formula, { ...scope }) as number))).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(found)));
    expect(Math.abs(found - value)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(value)));
  }
});

test('precedence, signs and powers are those of the independent evaluator', () => {
  const atom = fc.constantFrom('a', 'b', '2', '0.5', '1e-3');
  const { formula } = fc.letrec<{ formula: string }>((tie) => ({
    formula: fc.oneof({ maxDepth: 4 }, atom, fc.tuple(tie('formula'), fc.constantFrom(' + ', ' - ', ' * ', ' / '), tie('formula')).map((parts) => parts.join('')), tie('formula').map((inner) => `(${inner})`), tie('formula').map((inner) => `-${inner}`), tie('formula').map((inner) => `(${inner})^2`), tie('formula').map((inner) => `max(${inner}, a)`)),
  }));
  fc.assert(fc.property(formula, (text) => {
    const scope = { a: 3, b: -1.5 };
    const expected = evaluate(text, { ...scope }) as number;
    const parsed = parseFormula(text);
    if (parsed === null) throw new Error(`not understood: ${text}`);
    const found = evaluateFormula(parsed, scope);
    if (Number.isFinite(expected)) expect(Math.abs((found ?? NaN) - expected)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(expected)));
    else expect(found).toBeNull();
  }));
});

test('what is no formula is none, and a name that was not given gives no value', () => {
  for (const text of ['', '1 +', '(1', 'a b', '2 ** 3', 'x = 3', 'a[1]', '"a"', 'f(']) expect(parseFormula(text)).toBeNull();
  const parsed = parseFormula('constructor + 1');
  expect(parsed === null ? undefined : evaluateFormula(parsed, {})).toBeNull();
});

test('a number that is tried goes on into the steps that use what came of it, and no others', () => {
  const by = source('common-practice', 'practice');
  const chain: readonly WorkingStep[] = [
    { kind: 'formula', symbol: 'v', meaning: 'speed', formula: 'pi * d * n / 60000', scope: { d: 20, n: 6000 }, value: (Math.PI * 20 * 6000) / 60000, unit: 'm/s', source: by },
    { kind: 'formula', symbol: 's', meaning: 'way', formula: 'v * 3.6 * T', scope: { v: (Math.PI * 20 * 6000) / 60000, T: 100 }, value: ((Math.PI * 20 * 6000) / 60000) * 360, unit: 'km', source: by },
    { kind: 'formula', symbol: 'x', meaning: 'another', formula: 'd / 2', scope: { d: 20 }, value: 10, unit: 'mm', source: by },
  ];
  const [v, s, x] = triedValues(chain, new Map([[0, { n: 3000 }]]));
  expect(v).toBeCloseTo(Math.PI, 12);
  expect(s).toBeCloseTo(Math.PI * 360, 9);
  expect(x).toBeUndefined();
  expect(triedValues(chain, new Map())).toEqual([undefined, undefined, undefined]);
  expect(triedValues(chain, new Map([[0, { d: Infinity }]]))[0]).toBeNull();
});
