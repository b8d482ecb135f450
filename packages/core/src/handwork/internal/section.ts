import { commonPractice, plainGeometry, source, type Assumption, type SourceReference, type Span } from '../../result/index.js';
import { assumedCaseThicknessMm, caseHold, sizesOf, widthToleranceMm, type CaseHold, type Obstacle, type Situation, type Sizes, rubberCover } from '../../seal/index.js';
import { zoneOfClass } from '../../tolerance/index.js';
import { calliperUncertainty } from './calliper.js';

/** The sizes around one seal that handwork meets, each with the band that readings, tolerances and assumptions leave. */
export interface Section {
  readonly sizes: Sizes;
  readonly hold: CaseHold | null;
  readonly shaftMm: Span;
  readonly boreMm: Span;
  /** Outside of a new seal before it goes in. */
  readonly sealOutsideMm: Span;
  readonly widthMm: Span;
  /** Sheet of the case. */
  readonly caseThicknessMm: Span;
  /** Rubber on the outside of the case; zero on a metal case. */
  readonly coverMm: Span;
  /** Radius where the case turns into the face. */
  readonly edgeRadiusMm: Span;
  /** Face to be drilled, rubber included. */
  readonly faceThicknessMm: Span;
  /** Metal of that face: what a thread bites in. */
  readonly sheetMm: Span;
  readonly lipFacing: 'inward' | 'outward';
  readonly isLipFacingKnown: boolean;
  readonly assumptions: Assumptions;
}

/** What had to be assumed, by the size that it stands for; each plan lists only what it used. */
type Assumptions = Readonly<Record<'shaft' | 'bore' | 'sealOutside' | 'case' | 'cover' | 'edge' | 'face' | 'lip', readonly Assumption[]>>;

/** Rubber on the outside of a covered case. */
const assumedCoverMm: Span = { low: rubberCover.low, high: rubberCover.high };

/** What room that was measured behind the seal ends at: something does, whatever is said of the space. */
export function partBehind({ behind }: Situation): string {
  return behind === undefined || behind === 'open space' ? 'part behind' : behind;
}

/** Resolves the sizes of a situation once; what was not measured is taken as marked and listed. */
export function sectionOf(situation: Situation): Section {
  const { seal, shaft, bore } = situation;
  const sizes = sizesOf(situation);
  const hold = caseHold(situation, sizes);
  const shaftNominalMm = shaft?.diameterMm ?? seal.shaftMm;
  const boreNominalMm = bore?.diameterMm ?? seal.outsideMm;
  const caseThicknessMm = hold?.caseThicknessMm ?? (seal.caseThicknessMm === undefined ? assumedCaseThicknessMm : exactly(seal.caseThicknessMm));
  const isCovered = seal.construction !== 'metal-case';
  const coverMm = isCovered ? assumedCoverMm : exactly(0);
  const faceThicknessMm = seal.faceThicknessMm === undefined ? { low: caseThicknessMm.low, high: caseThicknessMm.high + coverMm.high } : exactly(seal.faceThicknessMm);
  const isBareFace = seal.faceThicknessMm !== undefined && !isCovered && seal.caseThicknessMm === undefined;
  const sheetMm = isBareFace ? faceThicknessMm : { low: Math.min(caseThicknessMm.low, faceThicknessMm.high), high: Math.min(caseThicknessMm.high, faceThicknessMm.high) };
  const toleranceMm = widthToleranceMm(situation);
  return {
    sizes,
    hold,
    shaftMm: sizes.shaft === null ? nominalShaft(shaftNominalMm) : measured(sizes.shaft),
    boreMm: sizes.bore === null ? nominalBore(boreNominalMm) : measured(sizes.bore),
    sealOutsideMm: sizes.sealOutside === null ? exactly(seal.outsideMm) : { low: sizes.sealOutside.leastMm, high: sizes.sealOutside.mostMm },
    widthMm: { low: Math.max(seal.widthMm - toleranceMm, 0), high: seal.widthMm + toleranceMm },
    caseThicknessMm,
    coverMm,
    edgeRadiusMm: seal.edgeRadiusMm === undefined ? caseThicknessMm : exactly(seal.edgeRadiusMm),
    faceThicknessMm,
    sheetMm,
    lipFacing: situation.lipFacing ?? 'inward',
    isLipFacingKnown: situation.lipFacing !== undefined,
    assumptions: {
      shaft: sizes.shaft === null ? [assumed('shaft-as-marked', exactly(shaftNominalMm), h8h11, 'clearance-over-shaft')] : [],
      bore: sizes.bore === null ? [assumed('bore-as-marked', nominalBore(boreNominalMm), h8h11, 'clearance-in-bore')] : [],
      sealOutside: sizes.sealOutside === null ? [assumed('seal-outside-as-marked', exactly(seal.outsideMm), plainGeometry, 'where-the-rim-lies')] : [],
      case: seal.caseThicknessMm === undefined && !isBareFace ? [assumed('case-thickness', caseThicknessMm, commonPractice, 'force-and-hold')] : [],
      cover: isCovered ? [assumed('cover-thickness', coverMm, commonPractice, 'where-the-rim-lies')] : [],
      edge: seal.edgeRadiusMm === undefined ? [assumed('edge-radius', caseThicknessMm, commonPractice, 'where-the-rim-lies')] : [],
      face: seal.faceThicknessMm === undefined ? [assumed('face-thickness', faceThicknessMm, commonPractice, 'drill-depth')] : [],
      lip: situation.lipFacing === undefined ? [{ name: 'lip-facing', value: 'inward', unit: '', source: commonPractice, effect: 'which-face-is-outside' }] : [],
    },
  };
}

export interface LargestOnShaft {
  readonly largestMm: number;
  /** `shaft`, or the kind of obstacle. */
  readonly kind: string;
  /** Its diameter as entered, without what a calliper errs by. */
  readonly markedMm: number;
}

/** What stays on the shaft: keys and sleeves come off before anything else, and go on again last. */
export function isFixed({ kind }: Obstacle): boolean {
  return kind !== 'key' && kind !== 'sleeve';
}

/** Largest thing that stays on the shaft from a depth below the housing face outward: the shaft itself, a thread, a collar. */
export function largestOnShaft(situation: Situation, { shaftMm }: Section, fromDepthMm: number): LargestOnShaft {
  let largest: LargestOnShaft = { largestMm: shaftMm.high, kind: 'shaft', markedMm: shaftMm.high };
  for (const obstacle of situation.shaft?.obstacles ?? []) {
    if (!isFixed(obstacle)) continue;
    if (obstacle.lengthMm !== undefined && obstacle.fromMm + obstacle.lengthMm <= -fromDepthMm) continue;
    const mostMm = obstacle.diameterMm + calliperUncertainty('outside', obstacle.diameterMm).uncertaintyMm;
    if (mostMm > largest.largestMm) largest = { largestMm: mostMm, kind: obstacle.kind, markedMm: obstacle.diameterMm };
  }
  return largest;
}

/** Diameter midway between shaft and seal outside: inward of it lies what bends. */
export function midwayMm(situation: Situation): number {
  return (situation.seal.shaftMm + situation.seal.outsideMm) / 2;
}

const h8h11: SourceReference = source('din-3760-1996', 'page', 'shaft h11, bore H8');

function measured(size: NonNullable<Sizes['shaft']>): Span {
  return { low: size.smallestMm - size.expandedUncertaintyMm, high: size.largestMm + size.expandedUncertaintyMm };
}

function nominalShaft(nominalMm: number): Span {
  return { low: nominalMm + zoneOfClass({ nominalMm, toleranceClass: 'h11' }).lowerLimitDeviationUm / 1000, high: nominalMm };
}

function nominalBore(nominalMm: number): Span {
  return { low: nominalMm, high: nominalMm + zoneOfClass({ nominalMm, toleranceClass: 'H8' }).upperLimitDeviationUm / 1000 };
}

function exactly(value: number): Span {
  return { low: value, high: value };
}

function assumed(name: string, { low, high }: Span, from: SourceReference, effect: string): Assumption {
  return low === high ? { name, value: low, unit: 'mm', source: from, effect } : { name, value: low, upToValue: high, unit: 'mm', source: from, effect };
}
