import { trustedSize, type MeasuredSize, type ReadPart } from '../measure/index.js';
import { CalculationError, readWithin, source, type Finding, type SourceReference } from '../result/index.js';
import { pressFitAllowanceOf } from './press-fit-allowance.js';
import type { Situation } from './situation-field.js';

/** The three sizes that a seal depends on; a shaft or a bore whose readings cannot be trusted counts as not measured. */
export interface Sizes {
  readonly shaft: MeasuredSize | null;
  readonly bore: MeasuredSize | null;
  readonly sealOutside: SealOutside | null;
  /** What is doubtful about the readings of each. */
  readonly doubts: Readonly<Record<'shaft' | 'bore' | 'sealOutside', readonly Finding[]>>;
}

export interface SealOutside {
  readonly leastMm: number;
  readonly mostMm: number;
  readonly basis: 'measured' | 'allowance';
  readonly source: SourceReference;
}

/**
 * Shaft and bore as measured; outside of the seal as measured or, unmeasured, as the set of requirements lets it be made.
 * @throws CalculationError invalid-input, with the path of the reading
 * @example sizesOf({ bore: { readings: [{ instrument: 'inside-micrometer-rod', valuesMm: [35.012, 35.015] }], material: 'al-a380' }, seal: { shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' } }).bore.meanMm // 35.0135
 */
export function sizesOf(situation: Situation): Sizes {
  const own = situation.instruments ?? [];
  const { shaft, bore, seal } = situation;
  const read = (readings: typeof seal.outsideReadings, measures: 'outside' | 'inside', measured: ReadPart['measured'], path: string) => readWithin(path, () => trustedSize(readings ?? [], measures, { measured, path }, own));
  const outside = read(seal.outsideReadings, 'outside', 'measured-seal-outside', 'seal.outsideReadings');
  const onShaft = read(shaft?.readings, 'outside', 'measured-shaft', 'shaft.readings');
  const inBore = read(bore?.readings, 'inside', 'measured-bore', 'bore.readings');
  return {
    shaft: onShaft.size,
    bore: inBore.size,
    sealOutside: outside.size === null ? allowedOutside(situation) : outsideFrom(outside.size),
    doubts: { shaft: onShaft.doubts, bore: inBore.doubts, sealOutside: outside.doubts },
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
