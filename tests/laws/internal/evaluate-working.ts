import { evaluate } from 'mathjs';
import { expect } from 'vitest';
import type { WorkingStep } from '@seatwright/core/result';

/**
 * Evaluates every formula step in its own scope and expects its value: 1e-9 relative or 1e-12 absolute.
 * Says which step drifted, and returns how many formulas there were.
 */
export function expectWorkingHolds(steps: readonly WorkingStep[]): number {
  let count = 0;
  for (const step of steps) {
    if (step.kind !== 'formula') continue;
    count += 1;
    const found: unknown = evaluate(step.formula, { ...step.scope });
    if (typeof found !== 'number' || !agrees(found, step.value)) {
      expect.fail(`${step.symbol} = ${step.formula} with ${JSON.stringify(step.scope)} gives ${String(found)}, the step says ${step.value}`);
    }
  }
  return count;
}

function agrees(found: number, stated: number): boolean {
  const apart = Math.abs(found - stated);
  return apart <= 1e-12 || apart <= 1e-9 * Math.max(Math.abs(found), Math.abs(stated));
}
