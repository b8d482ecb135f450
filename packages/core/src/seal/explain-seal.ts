import type { WorkingStep } from '../result/index.js';
import { explainSealCheck } from './internal/explain-seal-check.js';
import { contextOf } from './internal/judge-seal.js';
import type { Situation } from './situation-field.js';

/**
 * The working of what `judgeSeal` finds.
 * @throws CalculationError outside-table
 * @example explainSeal({ seal: { shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' }, running: { speedRpm: 3000 } }).some(({ symbol }) => symbol === 'v') // true
 */
export function explainSeal(situation: Situation): readonly WorkingStep[] {
  return explainSealCheck(contextOf(situation));
}
