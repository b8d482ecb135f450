import { conformanceProbability, type SizeLimits } from './conformance-probability.js';
import { normalQuantile } from './normal-distribution.js';

export const decisionRules = ['expanded-uncertainty', 'probability-95'] as const;

/** `expanded-uncertainty`: guard band U (ISO 14253-1:1998 and 2013); `probability-95`: conformance probability 95 % (2017). */
export type DecisionRule = (typeof decisionRules)[number];

export const decisions = ['conforms', 'does not conform', 'cannot be proven'] as const;

export type Decision = (typeof decisions)[number];

/** Where a size must lie for its conformity, or its nonconformity, to be proven. */
export interface DecisionZones {
  readonly guardBandMm: number;
  /** Null on a side without a limit. */
  readonly acceptance: { readonly lowerMm: number | null; readonly upperMm: number | null };
  /** Whether no size at all could prove conformity: the uncertainty fills the tolerance. */
  readonly isAcceptanceEmpty: boolean;
  readonly rejection: { readonly belowMm: number | null; readonly aboveMm: number | null };
}

const provenProbability = 0.95;
/** Decimal sums that are meant equal differ by less. */
const slackMm = 1e-9;

/**
 * Zones of acceptance and rejection.
 *   expanded-uncertainty: T_L + U … T_U − U accepts; below T_L − U and above T_U + U rejects
 *   probability-95: accepts where the conformance probability reaches 95 % (1.645·u inside a limit that is alone);
 *   rejects 1.645·u outside a limit
 * @param uncertainty both over 0 [mm]
 * @source iso-14253-1-1998, clause 5; iso-14253-1-2017 (held as: memory)
 * @example decisionZones({ lowerLimitMm: 20, upperLimitMm: 20.021 }, { standardUncertaintyMm: 0.002, expandedUncertaintyMm: 0.004 }, 'expanded-uncertainty').acceptance.lowerMm // 20.004
 */
export function decisionZones(limits: SizeLimits, uncertainty: { readonly standardUncertaintyMm: number; readonly expandedUncertaintyMm: number }, rule: DecisionRule): DecisionZones {
  const { standardUncertaintyMm, expandedUncertaintyMm } = uncertainty;
  const outsideMm = rule === 'expanded-uncertainty' ? expandedUncertaintyMm : normalQuantile(provenProbability) * standardUncertaintyMm;
  const insideMm = rule === 'expanded-uncertainty' ? expandedUncertaintyMm : insideGuardMm(limits, standardUncertaintyMm, outsideMm);
  const { lowerLimitMm, upperLimitMm } = limits;
  const lowerMm = lowerLimitMm === null ? null : lowerLimitMm + insideMm;
  const upperMm = upperLimitMm === null ? null : upperLimitMm - insideMm;
  return {
    guardBandMm: insideMm,
    acceptance: { lowerMm, upperMm },
    isAcceptanceEmpty: lowerMm !== null && upperMm !== null && lowerMm > upperMm + slackMm,
    rejection: {
      belowMm: lowerLimitMm === null ? null : lowerLimitMm - outsideMm,
      aboveMm: upperLimitMm === null ? null : upperLimitMm + outsideMm,
    },
  };
}

/**
 * What is proven. Conformity: every local size in the zone of acceptance, its ends included.
 * Nonconformity: some local size in a zone of rejection. Otherwise neither.
 * @example decisionOf({ lowMm: 20.01, highMm: 20.012 }, decisionZones({ lowerLimitMm: 20, upperLimitMm: 20.021 }, { standardUncertaintyMm: 0.002, expandedUncertaintyMm: 0.004 }, 'expanded-uncertainty')) // 'conforms'
 */
export function decisionOf({ lowMm, highMm }: { readonly lowMm: number; readonly highMm: number }, zones: DecisionZones): Decision {
  const { acceptance, rejection } = zones;
  if ((rejection.belowMm !== null && lowMm < rejection.belowMm - slackMm) || (rejection.aboveMm !== null && highMm > rejection.aboveMm + slackMm)) return 'does not conform';
  const isAbove = acceptance.lowerMm === null || lowMm >= acceptance.lowerMm - slackMm;
  const isBelow = acceptance.upperMm === null || highMm <= acceptance.upperMm + slackMm;
  return isAbove && isBelow && !zones.isAcceptanceEmpty ? 'conforms' : 'cannot be proven';
}

/** How far inside both limits the conformance probability is 95 %; over half the tolerance where it never is. */
function insideGuardMm(limits: SizeLimits, standardUncertaintyMm: number, oneSidedMm: number): number {
  const { lowerLimitMm, upperLimitMm } = limits;
  if (lowerLimitMm === null || upperLimitMm === null) return oneSidedMm;
  const probabilityAt = (guardMm: number) => conformanceProbability({ lowMm: lowerLimitMm + guardMm, highMm: lowerLimitMm + guardMm }, limits, standardUncertaintyMm);
  const halfMm = (upperLimitMm - lowerLimitMm) / 2;
  if (halfMm <= oneSidedMm || probabilityAt(halfMm) < provenProbability) return Math.max(oneSidedMm, halfMm + 1e-6);
  let low = oneSidedMm;
  let high = halfMm;
  for (let i = 0; i < 60; i += 1) {
    const middle = (low + high) / 2;
    if (probabilityAt(middle) < provenProbability) low = middle;
    else high = middle;
  }
  return high;
}
