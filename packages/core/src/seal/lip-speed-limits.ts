import type { SourceReference } from '../result/index.js';
import { generalLimitOf, strictestLimitOf } from './internal/checks/lip-speed-check.js';
import type { LipMaterial } from './seal-field.js';

/** A limit of the speed under a lip: the general one, or the rubber's own, each with the source of its row. */
export interface LipSpeedLimit {
  readonly of: 'any' | LipMaterial;
  readonly limitMps: number;
  readonly source: SourceReference;
}

/**
 * The limits that the speed under a lip is judged by: the general one first, then the strictest of its rubber, where one is at hand.
 * @throws CalculationError outside-table
 * @example lipSpeedLimits('NBR', 20).map(({ of, limitMps }) => `${of} ${limitMps.toFixed(2)}`).join(', ') // 'any 8.38, NBR 14.00'
 */
export function lipSpeedLimits(lipMaterial: LipMaterial, shaftMm: number): readonly LipSpeedLimit[] {
  const general = generalLimitOf(shaftMm);
  const own = strictestLimitOf(lipMaterial, shaftMm);
  return [
    { of: 'any', limitMps: general.speedMaxMps, source: general.source },
    ...(own === null ? [] : [{ of: lipMaterial, limitMps: own.speedMaxMps, source: own.source }]),
  ];
}
