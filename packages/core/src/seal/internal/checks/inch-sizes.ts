import { source, supporting } from '../../../result/index.js';
import type { Check } from '../check-report.js';
import { inchFractionWithin } from '../inch-fraction.js';

/** [mm] What is marked in inches and typed in millimetres is rounded to a hundredth, at times to half a tenth. */
const roundedMm = 0.03;

/** A seal marked in inches is made to the RMA's inch tolerances; another set judges it by limits that are not its own. */
export const inchSizes: Check = ({ situation, set }) => {
  const { shaftMm, outsideMm } = situation.seal;
  const [shaft, outside] = [shaftMm, outsideMm].map((mm) => inchFractionWithin(mm, roundedMm));
  if (set === 'rma-inch' || shaft == null || outside == null) return { findings: [] };
  if (shaft.denominator > 32 || outside.denominator > 32 || (isMetric(shaftMm) && isMetric(outsideMm))) return { findings: [] };
  return { findings: [supporting('sizes-are-inch', 'note', { shaftInches: shaft.text, outsideInches: outside.text, set }, source('rma-os-4', 'page', 'press-fit allowance'))] };
};

/** Metric seals are marked in whole and half millimetres. */
function isMetric(mm: number): boolean {
  return Math.abs(mm * 2 - Math.round(mm * 2)) < 2 * roundedMm;
}
