import { boreBandOf, type SealCheckOutput, type Situation } from '@seatwright/core/seal';

/** The sizes at the outside of the seal, as diametral deviations from the marked size, in µm. */
export interface GapMarks {
  readonly nominalMm: number;
  /** Outside of a new seal: as it may be made, or as measured. */
  readonly seal: { readonly lowUm: number; readonly highUm: number } | null;
  /** Band of the readings, and what the instrument leaves open around their mean. */
  readonly bore: { readonly lowUm: number; readonly highUm: number; readonly meanUm: number; readonly uncertaintyUm: number } | null;
  /** Where the bore should lie; shown while it is not measured. */
  readonly wanted: { readonly lowUm: number; readonly highUm: number; readonly label: string } | null;
  readonly interference: { readonly lowUm: number; readonly highUm: number } | null;
}

/** What the magnified detail shows; null where there is neither a seal's tolerance nor a reading. */
export function gapMarksOf(check: SealCheckOutput | null, outsideMm: number): GapMarks | null {
  if (check === null) return null;
  const um = (mm: number) => (mm - outsideMm) * 1000;
  const { bore, sealOutsideMm, interferenceUm } = check;
  if (bore === null && sealOutsideMm === null) return null;
  return {
    nominalMm: outsideMm,
    seal: sealOutsideMm === null ? null : { lowUm: um(sealOutsideMm.low), highUm: um(sealOutsideMm.high) },
    bore: bore === null ? null : { lowUm: um(bore.smallestMm), highUm: um(bore.largestMm), meanUm: um(bore.meanMm), uncertaintyUm: bore.expandedUncertaintyMm * 1000 },
    wanted: bore === null ? wantedBand(check.requirementSet, outsideMm) : null,
    interference: interferenceUm === null ? null : { lowUm: interferenceUm.low, highUm: interferenceUm.high },
  };
}

function wantedBand(set: NonNullable<Situation['requirementSet']>, outsideMm: number): GapMarks['wanted'] {
  try {
    const band = boreBandOf(set, outsideMm);
    return { lowUm: band.lowerMm * 1000, highUm: band.upperMm * 1000, label: band.label };
  } catch {
    return null;
  }
}

/** Whole range that has to fit, with some air. */
export function rangeOf({ seal, bore, wanted }: GapMarks): { readonly lowUm: number; readonly highUm: number } {
  const all = [0];
  if (seal !== null) all.push(seal.lowUm, seal.highUm);
  if (bore !== null) all.push(bore.lowUm, bore.highUm, bore.meanUm - bore.uncertaintyUm, bore.meanUm + bore.uncertaintyUm);
  if (wanted !== null) all.push(wanted.lowUm, wanted.highUm);
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
