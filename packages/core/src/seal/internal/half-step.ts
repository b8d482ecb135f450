import { source } from '../../result/index.js';
import { standardSizes } from '../../tables/generated/standard-sizes.js';
import { inchFractionWithin } from './inch-fraction.js';

/**
 * [mm] Half the smallest step between two standard outside diameters (or shaft diameters): 0.5.
 * A part that far from the marked size is another size, not a loose or tight one of this size.
 */
export const halfStandardStepMm = 0.5;

/** The lists of standard sizes are held from memory: a size in them is a hint, the measured part decides. */
export const standardSizeSource = source('iso-6194-1-2007', 'memory', 'nominal dimensions');

/**
 * What a part of another size than the marked one may be: the nearest listed size, where it is another and comes near; else an inch size within a
 * few hundredths; else nothing known.
 */
export function otherSize(column: 'shaftMm' | 'outsideMm', sizeMm: number, markedMm: number): { readonly nearestMm: number } | { readonly fraction: string } | null {
  const nearestMm = nearestStandardMm(column, sizeMm);
  const inch = inchFractionWithin(sizeMm, 0.03);
  const isInch = inch !== null && inch.denominator <= 16;
  const listedOffMm = nearestMm === markedMm ? Infinity : Math.abs(nearestMm - sizeMm);
  if (isInch && Math.abs(inch.sizeMm - sizeMm) < listedOffMm - 0.1) return { fraction: inch.text };
  return listedOffMm <= halfStandardStepMm ? { nearestMm } : null;
}

/** The standard size nearest to a measured one. */
export function nearestStandardMm(column: 'shaftMm' | 'outsideMm', sizeMm: number): number {
  let nearest = standardSizes.columns[column][0] ?? sizeMm;
  for (const candidate of standardSizes.columns[column]) if (Math.abs(candidate - sizeMm) < Math.abs(nearest - sizeMm)) nearest = candidate;
  return nearest;
}
