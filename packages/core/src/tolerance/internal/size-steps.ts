import { outsideTable } from '../../result/index.js';
import { iso2861ShaftDeviations } from '../../tables/generated/iso-286-1-shaft-deviations.js';
import { iso2861StandardTolerances } from '../../tables/generated/iso-286-1-standard-tolerances.js';
import { findHalfOpenRow } from '../../tables/half-open-range.js';

const { overMm, upToMm } = iso2861ShaftDeviations.columns;
const tolerances = iso2861StandardTolerances.columns;

/**
 * Steps of nominal size. The deviation tables have one row more finely split than the tolerance table, and the
 * standard's exceptions split their first row once more at 1 mm: step 0 is up to 1 mm, step n > 0 ends with row n − 1.
 */
export const sizeStepCount = upToMm.length + 1;

/** Row of the deviation tables for a step. */
export function deviationRowOf(step: number): number {
  return step === 0 ? 0 : step - 1;
}

const toleranceRows = upToMm.map((upTo) => findHalfOpenRow(tolerances.overMm, tolerances.upToMm, upTo));

/** Row of the tolerance table for a step. */
export function toleranceRowOf(step: number): number {
  return toleranceRows[deviationRowOf(step)] ?? -1;
}

/** Largest nominal size of the tables. */
export const largestNominalMm = 3150;

/** The step of a nominal size. Throws `CalculationError` `outside-table`. */
export function sizeStepOf(nominalMm: number): number {
  const row = findHalfOpenRow(overMm, upToMm, nominalMm);
  if (row < 0) throw outsideTable('ISO 286-1', 'nominalMm', nominalMm, { over: 0, upTo: largestNominalMm, unit: 'mm' });
  return row === 0 && Math.round(nominalMm * 1e6) <= 1e6 ? 0 : row + 1;
}

/** The row of a table in words, as its range is printed. */
export function rangeText(over: number | undefined, upTo: number | undefined): string {
  return `over ${over ?? 0}, up to and including ${upTo ?? 0} mm`;
}
