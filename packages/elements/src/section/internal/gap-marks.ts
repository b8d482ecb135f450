import { boreBandOf, type SealCheckOutput, type Situation } from '@seatwright/core/seal';
import type { ElementWords } from '../../words/element-words.js';

/** A band of sizes, as diametral deviations from the marked size, in µm, and what it is called. */
interface GapBand {
  readonly lowUm: number;
  readonly highUm: number;
  readonly label: string;
}

/** What is known of one of the two parts that meet: as it may be made, as it was read, or as it should be while it was not read. */
export interface GapSide {
  readonly made: GapBand | null;
  /** Band of the readings, and what the instrument leaves open around their mean. */
  readonly read: (GapBand & { readonly meanUm: number; readonly uncertaintyUm: number }) | null;
  readonly wanted: GapBand | null;
}

/** The sizes on both sides of one joint. */
export interface GapMarks {
  readonly nominalMm: number;
  readonly outer: GapSide;
  readonly inner: GapSide;
  readonly interference: { readonly lowUm: number; readonly highUm: number } | null;
}

/** What the magnified detail of a seal shows; null where there is neither a seal's tolerance nor a reading. */
export function gapMarksOf(check: SealCheckOutput | null, outsideMm: number, words: ElementWords['section']): GapMarks | null {
  if (check === null) return null;
  const um = (mm: number) => (mm - outsideMm) * 1000;
  const { bore, sealOutsideMm, interferenceUm } = check;
  if (bore === null && sealOutsideMm === null) return null;
  return {
    nominalMm: outsideMm,
    outer: {
      made: null,
      read: bore === null ? null : { lowUm: um(bore.smallestMm), highUm: um(bore.largestMm), meanUm: um(bore.meanMm), uncertaintyUm: bore.expandedUncertaintyMm * 1000, label: words.boreRead },
      wanted: bore === null ? wantedBand(check.requirementSet, outsideMm, words.boreWanted) : null,
    },
    inner: { made: sealOutsideMm === null ? null : { lowUm: um(sealOutsideMm.low), highUm: um(sealOutsideMm.high), label: words.sealAsMade }, read: null, wanted: null },
    interference: interferenceUm === null ? null : { lowUm: interferenceUm.low, highUm: interferenceUm.high },
  };
}

function wantedBand(set: NonNullable<Situation['requirementSet']>, outsideMm: number, label: string): GapBand | null {
  try {
    const band = boreBandOf(set, outsideMm);
    return { lowUm: band.lowerMm * 1000, highUm: band.upperMm * 1000, label };
  } catch {
    return null;
  }
}

/** Whole range that has to fit, with some air. */
export function rangeOf({ outer, inner }: Pick<GapMarks, 'outer' | 'inner'>): { readonly lowUm: number; readonly highUm: number } {
  const all = [0];
  for (const { made, read, wanted } of [outer, inner]) {
    for (const band of [made, read, wanted]) if (band !== null) all.push(band.lowUm, band.highUm);
    if (read !== null) all.push(read.meanUm - read.uncertaintyUm, read.meanUm + read.uncertaintyUm);
  }
  const low = Math.min(...all);
  const high = Math.max(...all);
  const air = Math.max((high - low) * 0.16, 6);
  return { lowUm: low - air, highUm: high + air };
}

const series = [1, 1.5, 2, 2.5, 3, 4, 5, 6, 8] as const;

/** The largest round magnification that is not over the given one. */
export function roundMagnification(most: number): number {
  if (!(most > 1)) return 1;
  const decade = 10 ** Math.floor(Math.log10(most));
  return (series.findLast((step) => step * decade <= most) ?? 1) * decade;
}
