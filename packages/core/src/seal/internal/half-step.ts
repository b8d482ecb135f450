import { source } from '../../result/index.js';
import { standardSizes } from '../../tables/generated/standard-sizes.js';

/**
 * [mm] Half the smallest step between two standard outside diameters (or shaft diameters): 0.5.
 * A part that far from the marked size is another size, not a loose or tight one of this size.
 */
export const halfStandardStepMm = 0.5;

/** The lists of standard sizes are held from memory: a size in them is a hint, the measured part decides. */
export const standardSizeSource = source('iso-6194-1-2007', 'memory', 'nominal dimensions');

/** The standard size nearest to a measured one. */
export function nearestStandardMm(column: 'shaftMm' | 'outsideMm', sizeMm: number): number {
  let nearest = standardSizes.columns[column][0] ?? sizeMm;
  for (const candidate of standardSizes.columns[column]) if (Math.abs(candidate - sizeMm) < Math.abs(nearest - sizeMm)) nearest = candidate;
  return nearest;
}
