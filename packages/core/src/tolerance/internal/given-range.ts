import { contradiction, invalidInput } from '../../result/index.js';
import { settledUm } from './settled.js';

/** The forms in which a part's limits may be given. Exactly one of them is used. */
export interface GivenLimits {
  readonly nominalMm: number;
  readonly upperLimitDeviationUm?: number | undefined;
  readonly lowerLimitDeviationUm?: number | undefined;
  readonly largestMm?: number | undefined;
  readonly smallestMm?: number | undefined;
  readonly sizesMm?: readonly number[] | undefined;
}

/** A range of deviations, and what it was made from. */
export interface GivenRange {
  readonly form: 'deviations' | 'limits-of-size' | 'sizes';
  readonly upperUm: number;
  readonly lowerUm: number;
  /** The sizes behind it; absent when deviations were given. */
  readonly largestMm?: number;
  readonly smallestMm?: number;
}

const pairs = [
  ['upperLimitDeviationUm', 'lowerLimitDeviationUm'],
  ['largestMm', 'smallestMm'],
] as const;

const understood = 'upperLimitDeviationUm with lowerLimitDeviationUm, largestMm with smallestMm, or sizesMm';

/** The range that was given, whichever the form. Throws `CalculationError` `invalid-input` | `contradiction`. */
export function givenRange(given: GivenLimits): GivenRange {
  const forms = [...pairs.flat(), 'sizesMm' as const].filter((field) => given[field] !== undefined);
  for (const [upper, lower] of pairs) {
    const present = [upper, lower].filter((field) => given[field] !== undefined);
    const missing = [upper, lower].find((field) => given[field] === undefined);
    if (present.length === 1 && missing !== undefined) throw invalidInput(missing, undefined, `a number beside ${present.join('')}`, `missing; expected a number beside ${present.join('')}`);
  }
  if (forms.length === 0) throw invalidInput('', undefined, understood, `no limits given; expected ${understood}`);
  if (forms.length > 2 || (forms.length === 2 && forms.includes('sizesMm'))) throw contradiction(forms, 'give the limits in one form only');
  return given.sizesMm === undefined ? fromPair(given) : fromSizes(given.nominalMm, given.sizesMm);
}

function fromPair(given: GivenLimits): GivenRange {
  const { nominalMm, upperLimitDeviationUm, lowerLimitDeviationUm, largestMm, smallestMm } = given;
  if (upperLimitDeviationUm !== undefined && lowerLimitDeviationUm !== undefined) {
    if (upperLimitDeviationUm < lowerLimitDeviationUm) throw contradiction(pairs[0], 'the upper limit lies below the lower one');
    return { form: 'deviations', upperUm: settledUm(upperLimitDeviationUm), lowerUm: settledUm(lowerLimitDeviationUm) };
  }
  const [largest, smallest] = [largestMm ?? Number.NaN, smallestMm ?? Number.NaN];
  if (largest < smallest) throw contradiction(pairs[1], 'the largest size is smaller than the smallest');
  return { form: 'limits-of-size', ...between(nominalMm, smallest, largest) };
}

function fromSizes(nominalMm: number, sizesMm: readonly number[]): GivenRange {
  let smallest = Infinity;
  let largest = -Infinity;
  for (const size of sizesMm) {
    smallest = Math.min(smallest, size);
    largest = Math.max(largest, size);
  }
  return { form: 'sizes', ...between(nominalMm, smallest, largest) };
}

function between(nominalMm: number, smallestMm: number, largestMm: number): Omit<GivenRange, 'form'> {
  return { upperUm: deviationUm(largestMm, nominalMm), lowerUm: deviationUm(smallestMm, nominalMm), largestMm, smallestMm };
}

/** Deviation of a size, settled to a millionth of a millimetre. */
function deviationUm(sizeMm: number, nominalMm: number): number {
  return Math.round((sizeMm - nominalMm) * 1_000_000) / 1000 + 0;
}
