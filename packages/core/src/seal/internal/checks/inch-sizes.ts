import { source, supporting } from '../../../result/index.js';
import type { Check } from '../check-report.js';
import { inchRoundingMm } from '../half-step.js';
import { inchFractionWithin } from '../inch-fraction.js';
import { sealLimit } from '../seal-limit.js';

/** Parts of an inch that seals are marked in. */
const inchPartsMarked = sealLimit('inch-parts-marked', 'Factor').low;

/** A seal marked in inches is made to the RMA's inch tolerances; another set judges it by limits that are not its own. */
export const inchSizes: Check = ({ situation, set }) => {
  const { shaftMm, outsideMm } = situation.seal;
  const [shaft, outside] = [shaftMm, outsideMm].map((mm) => inchFractionWithin(mm, inchRoundingMm));
  if (set === 'rma-inch' || shaft == null || outside == null) return { findings: [] };
  if (shaft.denominator > inchPartsMarked || outside.denominator > inchPartsMarked || (isMetric(shaftMm) && isMetric(outsideMm))) return { findings: [] };
  return { findings: [supporting('sizes-are-inch', 'note', { shaftInches: shaft.text, outsideInches: outside.text, set }, source('rma-os-4', 'page', 'press-fit allowance'))] };
};

/** Metric seals are marked in whole and half millimetres. */
function isMetric(mm: number): boolean {
  return Math.abs(mm * 2 - Math.round(mm * 2)) < 2 * inchRoundingMm;
}
