import { source, type SourceReference } from '../result/index.js';
import { boreToleranceRmaInch } from '../tables/generated/bore-tolerance-rma-inch.js';
import { findHalfOpenRow } from '../tables/half-open-range.js';
import { zoneOfClass } from '../tolerance/index.js';
import type { RequirementSet } from './requirement-set.js';

/** A permitted band around a nominal size. */
export interface Band {
  readonly lowerMm: number;
  readonly upperMm: number;
  readonly label: string;
  readonly source: SourceReference;
}

export const mmPerInch = 25.4;

/**
 * Band of the bore that a seal is made for: H8 (ISO, DIN, RMA metric), or RMA's inch table.
 * @param nominalMm [mm] outside diameter marked on the seal
 * @throws CalculationError outside-table
 * @example boreBandOf('iso-6194-1', 35).upperMm // 0.039
 */
export function boreBandOf(set: RequirementSet, nominalMm: number): Band {
  if (set === 'rma-inch') {
    const { columns } = boreToleranceRmaInch;
    const i = findHalfOpenRow(columns.overIn, columns.upToIn, (nominalMm * 5) / 127);
    const lowerIn = columns.lowerIn[i];
    const upperIn = columns.upperIn[i];
    if (lowerIn !== undefined && upperIn !== undefined) {
      return { lowerMm: lowerIn * mmPerInch, upperMm: upperIn * mmPerInch, label: 'RMA bore', source: source('rma-os-4', 'page', 'bore') };
    }
  }
  const zone = zoneOfClass({ nominalMm, toleranceClass: 'H8' });
  return { lowerMm: zone.lowerLimitDeviationUm / 1000, upperMm: zone.upperLimitDeviationUm / 1000, label: 'H8', source: source('din-3760-1996', 'page', 'bore H8') };
}
