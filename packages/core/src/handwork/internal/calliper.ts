import { expandedUncertaintyMm, instrumentCatalogue, type Measures } from '../../measure/index.js';
import type { SourceReference } from '../../result/index.js';

/** What a workshop calliper leaves open (k = 2) on a size that was typed without an instrument. */
export interface CalliperUncertainty {
  readonly uncertaintyMm: number;
  readonly source: SourceReference;
}

const calliper = 'vernier-calliper';

/**
 * Uncertainty of a vernier calliper with a 0.05 mm vernier, the commonest on a bench.
 * Beyond its reach the widest row stands in: a longer calliper is no better.
 */
export function calliperUncertainty(measures: Measures, sizeMm: number): CalliperUncertainty {
  const rows = instrumentCatalogue().filter((row) => row.id === `${calliper}-${measures}-005`);
  const row = rows.find((candidate) => sizeMm <= candidate.upToMm) ?? rows.at(-1);
  if (row === undefined) throw new RangeError(`the instrument catalogue has no ${calliper} for ${measures}`);
  return { uncertaintyMm: expandedUncertaintyMm(row), source: row.source };
}
