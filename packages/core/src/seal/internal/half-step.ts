import { deciding, plainGeometry, source, type Finding } from '../../result/index.js';
import { standardSizes } from '../../tables/generated/standard-sizes.js';
import { inchFractionWithin } from './inch-fraction.js';
import { sealLimit } from './seal-limit.js';

/**
 * [mm] Half the smallest step between two standard outside diameters (or shaft diameters): 0.5.
 * A part that far from the marked size is another size, not a loose or tight one of this size.
 */
export const halfStandardStepMm = 0.5;

/** The lists of standard sizes are held from memory: a size in them is a hint, the measured part decides. */
export const standardSizeSource = source('iso-6194-1-2007', 'memory', 'nominal dimensions');

/** [mm] What is marked in inches and typed in millimetres is rounded to a hundredth, at times to half a tenth. */
export const inchRoundingMm = sealLimit('inch-size-rounding', 'Mm').low;
/** Parts of an inch that shafts and bores are made in. */
export const inchPartsMade = sealLimit('inch-parts-made', 'Factor').low;
/** [mm] By how much an inch size must lie nearer than a listed one to be believed. */
const nearerByMm = sealLimit('inch-size-nearer-by', 'Mm').low;

/**
 * A part of another size than the marked one: the nearest listed size, where it is another and comes near; else an inch size within a
 * few hundredths; else nothing known.
 */
export function anotherSize(part: 'shaft' | 'bore', sizeMm: number, markedMm: number, numbers: Finding['parameters']): Finding {
  const nearestMm = nearestStandardMm(part === 'shaft' ? 'shaftMm' : 'outsideMm', sizeMm);
  const inch = inchFractionWithin(sizeMm, inchRoundingMm);
  const listedOffMm = nearestMm === markedMm ? Infinity : Math.abs(nearestMm - sizeMm);
  if (inch !== null && inch.denominator <= inchPartsMade && Math.abs(inch.sizeMm - sizeMm) < listedOffMm - nearerByMm) return deciding(`${part}-is-an-inch-size`, 'bad', { ...numbers, fraction: inch.text }, plainGeometry);
  if (listedOffMm > halfStandardStepMm) return deciding(`${part}-is-no-listed-size`, 'bad', numbers, standardSizeSource);
  return deciding(`${part}-is-another-size`, 'bad', { ...numbers, nearestMm }, standardSizeSource);
}

/** The standard size nearest to a measured one. */
export function nearestStandardMm(column: 'shaftMm' | 'outsideMm', sizeMm: number): number {
  let nearest = standardSizes.columns[column][0] ?? sizeMm;
  for (const candidate of standardSizes.columns[column]) if (Math.abs(candidate - sizeMm) < Math.abs(nearest - sizeMm)) nearest = candidate;
  return nearest;
}
