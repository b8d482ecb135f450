import type { HeldMark } from '../../result/index.js';
import { classNames, type ClassName } from './class-names.js';
import { deviationRuleOf, exclusionOf, isUpToH, toleranceCell } from './deviation-rule.js';
import { sizeStepCount } from './size-steps.js';
import { settledUm } from './settled.js';

/** Limit deviations of one class at one size step. */
export interface ClassLimits {
  readonly toleranceUm: number;
  readonly fundamentalUm: number;
  readonly upperUm: number;
  readonly lowerUm: number;
  /** The worst mark of the cells used. */
  readonly held: HeldMark;
}

const columns: ((ClassLimits | null)[] | undefined)[] = classNames.map(() => undefined);

/** Limits of a class at a size step, or null where the standard does not give it. Worked out once for each class. */
export function classLimitsAt(name: ClassName, step: number): ClassLimits | null {
  const column = (columns[name.place] ??= Array.from({ length: sizeStepCount }, (_, each) => workOut(name, each)));
  return column[step] ?? null;
}

function workOut(name: ClassName, step: number): ClassLimits | null {
  const tolerance = toleranceCell(name, step);
  const rule = deviationRuleOf(name, step);
  if (tolerance.valueUm === null || rule === null || exclusionOf(name, step) !== null) return null;
  const toleranceUm = tolerance.valueUm;
  if (rule.form === 'even') {
    const halfUm = settledUm(toleranceUm / 2);
    return { toleranceUm, fundamentalUm: halfUm, upperUm: halfUm, lowerUm: -halfUm, held: tolerance.held };
  }
  if (rule.base.valueUm === null) return null;
  const isException = rule.form === 'exception';
  const incrementUm = rule.form === 'plain' ? 0 : (rule.increment.valueUm ?? 0);
  const fundamentalUm = isException ? rule.printedUm : settledUm(rule.base.valueUm + incrementUm);
  const held = worstHeld(tolerance.held, rule.base.held, rule.form === 'plain' ? 'page' : rule.increment.held, isException ? rule.held : 'page');
  const isUpper = isUpToH(name.holeLetter) === (name.kind === 'shaft');
  return isUpper
    ? { toleranceUm, fundamentalUm, upperUm: fundamentalUm, lowerUm: settledUm(fundamentalUm - toleranceUm), held }
    : { toleranceUm, fundamentalUm, upperUm: settledUm(fundamentalUm + toleranceUm), lowerUm: fundamentalUm, held };
}

const heldInOrder = ['page', 'computed', 'memory', 'practice'] as const;

/** The least trusted of some marks. */
export function worstHeld(...marks: readonly HeldMark[]): HeldMark {
  let worst = 0;
  for (const mark of marks) worst = Math.max(worst, heldInOrder.indexOf(mark));
  return heldInOrder[worst] ?? 'practice';
}
