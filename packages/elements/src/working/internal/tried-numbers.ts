import type { WorkingStep } from '@seatwright/core/result';
import { evaluateFormula } from './evaluate-formula.js';
import { parseFormula } from './formula.js';

/** Numbers that somebody tries in place of the job's own: by step, and by name within it. */
export type Tried = ReadonlyMap<number, Readonly<Record<string, number>>>;

/** What each step gives with the numbers that are tried; undefined where nothing changes, null where it then gives none. */
export function triedValues(steps: readonly WorkingStep[], tried: Tried): readonly (number | null | undefined)[] {
  if (tried.size === 0) return steps.map(() => undefined);
  /** Values that came out otherwise, by symbol and by what they were: a later step that was given the old one takes the new. */
  const changed: { readonly symbol: string; readonly was: number; readonly is: number }[] = [];
  return steps.map((step, i) => {
    if (step.kind !== 'formula') return undefined;
    const own = tried.get(i);
    const scope = Object.fromEntries(Object.entries(step.scope).map(([name, value]) => [name, own?.[name] ?? changed.findLast(({ symbol, was }) => symbol === name && was === value)?.is ?? value]));
    if (Object.entries(scope).every(([name, value]) => value === step.scope[name])) return undefined;
    const formula = parseFormula(step.formula);
    const is = formula === null ? null : evaluateFormula(formula, scope);
    if (is !== null) changed.push({ symbol: step.symbol, was: step.value, is });
    return is;
  });
}
