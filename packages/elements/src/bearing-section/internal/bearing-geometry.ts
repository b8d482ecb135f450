import type { BearingRemovalOutput, BearingSeatInput, BearingSeatOutput } from '@seatwright/core/bearing';
import { drawnDriver, sectionGeometry, type SectionDriver, type SectionGeometry, type SectionInput } from '../../section/internal/section-geometry.js';
import { bearingSizesOf, type BearingSizes } from './bearing-sizes.js';

/** What is known so far of a bearing and its seats: any of what `bearing-seat` is asked with. */
export type SectionBearing = BearingSeatInput;

/** A tool that pushes the bearing, as a candidate of the search for one is. */
export type BearingPusher = Pick<SectionDriver, 'name' | 'outsideMm' | 'insideMm'>;

type Grip = BearingRemovalOutput['pullBy'];

export interface BearingInput extends SectionInput {
  readonly bearing: SectionBearing | null;
  readonly seats: BearingSeatOutput | null;
  readonly removal: BearingRemovalOutput | null;
  readonly bearingDriver: BearingPusher | null;
}

/** A step of a surface along the axis, inward from the housing face; from there on it has that radius. */
export interface Station {
  readonly fromMm: number;
  readonly radiusMm: number;
  /** Not measured: drawn as a broken line. */
  readonly isGuess: boolean;
}

export interface DrawnBearing extends BearingSizes {
  /** Outer face of the bearing, inward from the housing face. */
  readonly faceMm: number;
  readonly isFaceKnown: boolean;
  readonly innerRaceRadiusMm: number;
  readonly outerRaceRadiusMm: number;
  /** Rims of the rings beside the raceways. */
  readonly innerRimRadiusMm: number;
  readonly outerRimRadiusMm: number;
  /** The side that it goes in from, and comes out to. */
  readonly side: 'outer' | 'inner';
  /** What ends the seat in the housing, and steps of the shaft, from the bearing inward. */
  readonly housing: readonly Station[];
  readonly shaft: readonly Station[];
  readonly heldBy: NonNullable<BearingSeatInput['outerRingHeldBy']>;
  readonly grip: Grip | null;
}

export interface BearingGeometry extends SectionGeometry {
  readonly hasSeal: boolean;
  readonly bearing: DrawnBearing;
}

/** Shoulders that nobody measured stand at this share of the ring's wall. */
const shoulderShare = 0.55;
/** Rims of a ball bearing reach over the bottom of the groove by this share of the ball. */
const rimShare = 0.2;

/** Resolves seal, bearing and their plans to what is drawn. A seal is there where the situation has one. */
export function bearingGeometry(input: BearingInput): BearingGeometry {
  const hasSeal = input.situation?.seal !== undefined;
  const sizes = bearingSizesOf(input.bearing, input.seats, hasSeal ? undefined : input.situation?.shaft?.diameterMm);
  const { situation, extraction, seating, driver, mode } = input;
  const base = sectionGeometry({ extraction, seating, driver, mode, situation: hasSeal ? situation : { ...situation, seal: { shaftMm: sizes.boreMm, outsideMm: sizes.outsideMm } } });
  const face = faceOf(base, sizes, hasSeal, input.bearing?.outerRingHeldBy);
  const innerRaceRadiusMm = sizes.innerRaceMm / 2;
  const outerRaceRadiusMm = sizes.outerRaceMm / 2;
  const elementMm = outerRaceRadiusMm - innerRaceRadiusMm;
  const bearing: DrawnBearing = {
    ...sizes,
    faceMm: face.mm,
    isFaceKnown: face.isKnown,
    innerRaceRadiusMm,
    outerRaceRadiusMm,
    innerRimRadiusMm: innerRaceRadiusMm + rimShare * elementMm,
    outerRimRadiusMm: outerRaceRadiusMm - rimShare * elementMm,
    side: isFromInside(base, sizes, hasSeal) ? 'inner' : 'outer',
    housing: [],
    shaft: [],
    heldBy: input.bearing?.outerRingHeldBy ?? 'nothing',
    grip: base.mode === 'bearing out' ? (input.removal?.pullBy ?? null) : null,
  };
  return {
    ...base,
    hasSeal: hasSeal && !isBearingMode(base.mode),
    behind: null,
    boreDepthMm: hasSeal ? Math.min(base.boreDepthMm ?? Infinity, face.mm) : base.boreDepthMm,
    bearing: { ...bearing, housing: housingOf(base, bearing, hasSeal), shaft: shaftOf(base, bearing, hasSeal) },
    driver: base.mode === 'bearing in' && input.bearingDriver !== null ? drawnDriver({ ...input.bearingDriver, kind: 'tube', role: 'enters' }, face.mm) : base.driver,
  };
}

export function isBearingMode(mode: SectionGeometry['mode']): boolean {
  return mode === 'bearing in' || mode === 'bearing out';
}

/** Behind a seal it stands as far in as was measured; alone, at the end of its bore. What is not known stands in. */
function faceOf({ depthMm, widthMm, clearBehindMm, boreDepthMm, innerEnd }: SectionGeometry, sizes: BearingSizes, hasSeal: boolean, heldBy: SectionBearing['outerRingHeldBy']): { readonly mm: number; readonly isKnown: boolean } {
  if (hasSeal) {
    const sealEnd = Math.max(depthMm, 0) + widthMm;
    if (clearBehindMm !== null) return { mm: depthMm + widthMm + clearBehindMm, isKnown: true };
    const behindShoulder = innerEnd === 'shoulder' && boreDepthMm !== null ? boreDepthMm + 2 : sealEnd;
    return { mm: Math.max(sealEnd + widthMm * 0.45, behindShoulder), isKnown: false };
  }
  if (boreDepthMm !== null && innerEnd !== 'open') return { mm: boreDepthMm - sizes.widthMm, isKnown: true };
  return { mm: heldBy === 'plate' ? 0 : sizes.widthMm * 0.3, isKnown: false };
}

/** A bearing larger than the bore of the seal before it, or than the shoulder there, goes in from the other side. */
function isFromInside({ boreMm, innerEnd, shoulderRadiusMm }: SectionGeometry, { outsideMm }: BearingSizes, hasSeal: boolean): boolean {
  return hasSeal && (outsideMm > boreMm + 0.1 || (innerEnd === 'shoulder' && shoulderRadiusMm * 2 < outsideMm - 0.1));
}

/** The bore from the bearing inward, and before it where it narrows or widens to the seat. */
function housingOf(base: SectionGeometry, { faceMm, widthMm, outsideMm, outerRimRadiusMm, side }: DrawnBearing, hasSeal: boolean): readonly Station[] {
  const seatR = outsideMm / 2;
  const stations: Station[] = hasSeal ? [{ fromMm: side === 'inner' ? faceMm : Math.max(faceMm - 0.6, 0), radiusMm: seatR, isGuess: false }] : [];
  if (side === 'inner' || (!hasSeal && base.innerEnd === 'open')) return stations;
  const isMeasured = !hasSeal && base.boreDepthMm !== null && base.innerEnd === 'shoulder';
  const guessedR = seatR - shoulderShare * (seatR - outerRimRadiusMm);
  return [...stations, { fromMm: faceMm + widthMm, radiusMm: isMeasured && base.shoulderRadiusMm < seatR ? base.shoulderRadiusMm : guessedR, isGuess: !isMeasured }];
}

/** The shaft from the seal inward: up or down to the bore of the bearing, and the shoulder that the inner ring stands against. */
function shaftOf(base: SectionGeometry, { faceMm, widthMm, boreMm, innerRimRadiusMm, side }: DrawnBearing, hasSeal: boolean): readonly Station[] {
  const seatR = boreMm / 2;
  const shaftR = base.shaftMm / 2;
  // A shoulder stands on the side that the bearing does not come from; before the seal there is none that shows.
  const shoulder: readonly Station[] = side === 'inner' ? [] : [{ fromMm: faceMm + widthMm, radiusMm: seatR + shoulderShare * (innerRimRadiusMm - seatR), isGuess: true }];
  if (!hasSeal || Math.abs(seatR - shaftR) < 0.02) return shoulder;
  // A bearing smaller than the shaft before it went on from the other end, and stands against the shaft there.
  if (seatR < shaftR) return [{ fromMm: faceMm, radiusMm: seatR, isGuess: false }];
  return [{ fromMm: Math.max(faceMm - 0.8, base.depthMm + base.widthMm), radiusMm: seatR, isGuess: false }, ...shoulder];
}
