import { source } from '../result/index.js';
import { shaftToleranceRmaInch } from '../tables/generated/shaft-tolerance-rma-inch.js';
import { shaftToleranceRma } from '../tables/generated/shaft-tolerance-rma.js';
import { findHalfOpenRow } from '../tables/half-open-range.js';
import { zoneOfClass } from '../tolerance/index.js';
import { mmPerInch, type Band } from './bore-band.js';
import type { RequirementSet } from './requirement-set.js';

/**
 * Band of the shaft that a lip is made for: h11 (ISO, DIN), or RMA's ± bands in mm or inch.
 * @param nominalMm [mm] shaft diameter marked on the seal
 * @example shaftBandOf('iso-6194-1', 20).lowerMm // -0.13
 */
export function shaftBandOf(set: RequirementSet, nominalMm: number): Band {
  if (set === 'rma-metric') {
    const i = findHalfOpenRow(shaftToleranceRma.columns.overMm, shaftToleranceRma.columns.upToMm, nominalMm);
    const toleranceUm = shaftToleranceRma.columns.toleranceUm[i];
    if (toleranceUm !== undefined) return { lowerMm: -toleranceUm / 1000, upperMm: toleranceUm / 1000, label: 'RMA shaft', source: source('rma-metric', 'page', 'shaft') };
  }
  if (set === 'rma-inch') {
    const i = findHalfOpenRow(shaftToleranceRmaInch.columns.overIn, shaftToleranceRmaInch.columns.upToIn, (nominalMm * 5) / 127);
    const toleranceIn = shaftToleranceRmaInch.columns.toleranceIn[i];
    if (toleranceIn !== undefined) return { lowerMm: -toleranceIn * mmPerInch, upperMm: toleranceIn * mmPerInch, label: 'RMA shaft', source: source('rma-os-4', 'page', 'shaft') };
  }
  const zone = zoneOfClass({ nominalMm, toleranceClass: 'h11' });
  return { lowerMm: zone.lowerLimitDeviationUm / 1000, upperMm: zone.upperLimitDeviationUm / 1000, label: 'h11', source: source('din-3760-1996', 'page', 'shaft h11') };
}
