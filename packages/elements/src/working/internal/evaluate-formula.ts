import { normalProbability } from '@seatwright/core/measure';
import type { Formula } from './formula.js';

const functions: Readonly<Record<string, (...parts: readonly number[]) => number>> = {
  sqrt: (x = NaN) => Math.sqrt(x),
  abs: (x = NaN) => Math.abs(x),
  exp: (x = NaN) => Math.exp(x),
  log: (x = NaN) => Math.log(x),
  sin: (x = NaN) => Math.sin(x),
  cos: (x = NaN) => Math.cos(x),
  tan: (x = NaN) => Math.tan(x),
  ceil: (x = NaN) => Math.ceil(x),
  floor: (x = NaN) => Math.floor(x),
  round: (x = NaN) => Math.sign(x) * Math.round(Math.abs(x)),
  erf: (x = NaN) => 2 * normalProbability(x * Math.SQRT2) - 1,
  max: (...parts) => Math.max(...parts),
  min: (...parts) => Math.min(...parts),
};

/** What a formula gives with these numbers; null where it gives none, or uses what it was not given. */
export function evaluateFormula(formula: Formula, scope: Readonly<Record<string, number>>): number | null {
  const value = valueOf(formula, scope);
  return Number.isFinite(value) ? value : null;
}

function valueOf(formula: Formula, scope: Readonly<Record<string, number>>): number {
  const of = (part: Formula) => valueOf(part, scope);
  switch (formula.kind) {
    case 'number':
      return Number(formula.text);
    case 'name':
      return Object.hasOwn(scope, formula.name) ? (scope[formula.name] ?? NaN) : formula.name === 'pi' ? Math.PI : NaN;
    case 'minus':
      return -of(formula.of);
    case 'call':
      return functions[formula.name]?.(...formula.parts.map(of)) ?? NaN;
    case 'either':
      return of(formula.condition) === 1 ? of(formula.then) : of(formula.otherwise);
    case 'operation': {
      const [left, right] = [of(formula.left), of(formula.right)];
      switch (formula.operator) {
        case '+': return left + right;
        case '-': return left - right;
        case '*': return left * right;
        case '/': return left / right;
        case '^': return left ** right;
        case '<': return Number(left < right);
        case '<=': return Number(left <= right);
        case '>': return Number(left > right);
        case '>=': return Number(left >= right);
      }
    }
  }
}
