import { outsideTable, source, type SourceReference } from '../result/index.js';
import { widthToleranceRmaInch as inchTable } from '../tables/generated/width-tolerance-rma-inch.js';
import { widthTolerance as table } from '../tables/generated/width-tolerance.js';
import { markAt } from '../tables/table.js';
import { findHalfOpenRow } from '../tables/half-open-range.js';
import { mmPerInch } from './bore-band.js';
import type { RequirementSet } from './requirement-set.js';
import type { Situation } from './situation-field.js';

/**
 * Permitted deviation of a seal's width, plus or minus, with its source. RMA gives no metric row; DIN 3760 stands in and is named.
 * @example widthToleranceOf('iso-6194-1', 7).toleranceMm // 0.3
 */
export function widthToleranceOf(set: RequirementSet, widthMm: number): { readonly toleranceMm: number; readonly source: SourceReference } {
  if (set === 'rma-inch') {
    const toleranceIn = inchTable.columns.toleranceIn[findHalfOpenRow(inchTable.columns.overIn, inchTable.columns.upToIn, (widthMm * 5) / 127)];
    if (toleranceIn !== undefined) return { toleranceMm: toleranceIn * mmPerInch, source: source('rma-os-4', inchTable.held, 'width tolerance') };
    throw outsideTable('the width tolerances of rma-inch', 'seal.widthMm', widthMm, { over: 0, upTo: 16 * mmPerInch, unit: 'mm' });
  }
  const wanted = set === 'rma-metric' ? 'din-3760' : set;
  for (let i = 0; i < table.rowCount; i += 1) {
    const over = table.columns.overMm[i];
    const upTo = table.columns.upToMm[i];
    const toleranceMm = table.columns.toleranceMm[i];
    if (table.columns.set[i] !== wanted || over == null || upTo == null || toleranceMm == null) continue;
    if (widthMm > over && widthMm <= upTo) {
      return { toleranceMm, source: source(wanted === 'din-3760' ? 'din-3760-1996' : 'gb-13871-1992', markAt(table, 'toleranceMm', i), 'width tolerance') };
    }
  }
  throw outsideTable(`the width tolerances of ${wanted}`, 'seal.widthMm', widthMm, { over: 0, upTo: 400, unit: 'mm' });
}

/**
 * [mm] Permitted deviation of the width of this seal, plus or minus.
 * @example widthToleranceMm({ seal: { shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' } }) // 0.3
 */
export function widthToleranceMm({ seal, requirementSet = 'iso-6194-1' }: Situation): number {
  return widthToleranceOf(requirementSet, seal.widthMm).toleranceMm;
}
