import { measuredSize, type MeasuredSize } from '../measure/index.js';
import { CalculationError, readWithin, source, type SourceReference } from '../result/index.js';
import { pressFitAllowanceOf } from './press-fit-allowance.js';
import type { Situation } from './situation-field.js';

/** The three sizes that a seal depends on. */
export interface Sizes {
  readonly shaft: MeasuredSize | null;
  readonly bore: MeasuredSize | null;
  readonly sealOutside: SealOutside | null;
}

export interface SealOutside {
  readonly leastMm: number;
  readonly mostMm: number;
  readonly basis: 'measured' | 'allowance';
  readonly source: SourceReference;
}

/**
 * Shaft and bore as measured; outside of the seal as measured or, unmeasured, as the set of requirements lets it be made.
 * @throws CalculationError invalid-input | outside-table, with the path of the reading
 * @example sizesOf({ bore: { readings: [{ instrument: 'inside-micrometer-rod', valuesMm: [35.012, 35.015] }], material: 'al-a380' }, seal: { shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' } }).bore.meanMm // 35.0135
 */
export function sizesOf(situation: Situation): Sizes {
  const own = situation.instruments ?? [];
  const { shaft, bore, seal } = situation;
  const outside = readWithin('seal.outsideReadings', () => measuredSize(seal.outsideReadings ?? [], 'outside', own));
  return {
    shaft: readWithin('shaft.readings', () => measuredSize(shaft?.readings ?? [], 'outside', own)),
    bore: readWithin('bore.readings', () => measuredSize(bore?.readings ?? [], 'inside', own)),
    sealOutside: outside === null ? allowedOutside(situation) : outsideFrom(outside),
  };
}

function outsideFrom(size: MeasuredSize): SealOutside {
  return {
    leastMm: size.meanMm - size.expandedUncertaintyMm,
    mostMm: size.meanMm + size.expandedUncertaintyMm,
    basis: 'measured',
    source: source('jcgm-100-2008', 'memory', 'readings'),
  };
}

function allowedOutside({ seal, requirementSet = 'iso-6194-1' }: Situation): SealOutside | null {
  try {
    const allowance = pressFitAllowanceOf(requirementSet, seal.construction, seal.outsideMm);
    return {
      leastMm: seal.outsideMm + allowance.allowanceMinMm,
      mostMm: seal.outsideMm + allowance.allowanceMaxMm,
      basis: 'allowance',
      source: allowance.source,
    };
  } catch (error) {
    if (error instanceof CalculationError && error.code === 'outside-table') return null;
    throw error;
  }
}
