import { bearingDimensions, type BearingDimensionsOutput, type BearingSeatInput, type BearingSeatOutput } from '@seatwright/core/bearing';
import { CalculationError } from '@seatwright/core/result';

/** Sizes and form of a bearing as it is drawn, and which of them are known. */
export interface BearingSizes {
  readonly boreMm: number;
  readonly outsideMm: number;
  readonly widthMm: number;
  /** Raceways: as `bearing-seat` estimates them, or stood in for. */
  readonly innerRaceMm: number;
  readonly outerRaceMm: number;
  readonly cornerMm: number;
  readonly known: { readonly bore: boolean; readonly outside: boolean; readonly width: boolean };
  readonly isRoller: boolean;
  /** Which ring keeps the rollers: both rims, the outer one's alone, … */
  readonly rims: { readonly inner: 0 | 1 | 2; readonly outer: 0 | 2 };
  readonly closure: BearingDimensionsOutput['seal'];
  readonly closedSideCount: number;
}

type Marked = Pick<BearingDimensionsOutput, 'seal' | 'closedSideCount'> & { readonly size: BearingDimensionsOutput['matches'][number] | undefined };

/** The bearing of a designation, or of what is measured of it so far; a stand-in of usual proportions for the rest. */
export function bearingSizesOf(bearing: BearingSeatInput | null, seats: BearingSeatOutput | null, shaftMm: number | undefined): BearingSizes {
  const marked = readMark(bearing?.designation);
  const given = { boreMm: seats?.boreMm ?? marked?.size?.boreMm ?? bearing?.boreMm, outsideMm: seats?.outsideMm ?? marked?.size?.outsideMm ?? bearing?.outsideMm, widthMm: seats?.widthMm ?? marked?.size?.widthMm ?? bearing?.widthMm };
  const boreMm = given.boreMm ?? (given.outsideMm === undefined ? (shaftMm ?? 20) : given.outsideMm * 0.5);
  const outsideMm = given.outsideMm !== undefined && given.outsideMm > boreMm ? given.outsideMm : boreMm * 1.6 + 12;
  const isRoller = (bearing?.bearingKind ?? marked?.size?.kind) === 'cylindrical-roller';
  const wall = (isRoller ? 0.25 : 0.2) * (outsideMm - boreMm);
  const widthMm = given.widthMm ?? (outsideMm - boreMm) * 0.52;
  return {
    boreMm,
    outsideMm,
    widthMm,
    innerRaceMm: seats?.innerRacewayMm ?? boreMm + wall,
    outerRaceMm: seats?.outerRacewayMm ?? outsideMm - wall,
    cornerMm: Math.min(marked?.size?.cornerMinMm ?? widthMm * 0.06, wall * 0.35, widthMm * 0.15),
    known: { bore: given.boreMm !== undefined, outside: given.outsideMm !== undefined && given.outsideMm > boreMm, width: given.widthMm !== undefined },
    isRoller,
    rims: rimsOf(bearing?.designation ?? ''),
    closure: marked?.seal ?? 'open',
    closedSideCount: marked?.closedSideCount ?? 0,
  };
}

/** NU, NJ and NUP keep their rollers in the outer ring, N in the inner one. */
function rimsOf(designation: string): BearingSizes['rims'] {
  const [, kind = 'NU'] = /^\s*(NUP|NU|NJ|N)(?=\s*\d)/iu.exec(designation) ?? [];
  const inner = ({ NU: 0, NJ: 1, NUP: 2, N: 2 } as const)[kind.toUpperCase() as 'NU' | 'NJ' | 'NUP' | 'N'];
  return { inner, outer: kind.toUpperCase() === 'N' ? 0 : 2 };
}

function readMark(designation: string | undefined): Marked | null {
  if (designation === undefined) return null;
  try {
    const { matches, seal, closedSideCount } = bearingDimensions.run({ designation });
    return { size: matches[0], seal, closedSideCount };
  } catch (error) {
    if (error instanceof CalculationError) return null;
    throw error;
  }
}
