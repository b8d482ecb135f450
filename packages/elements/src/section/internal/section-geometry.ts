import type { DriverSearchOutput, ExtractionPlanOutput, SeatingPlanOutput } from '@seatwright/core/handwork';
import type { Obstacle, Situation } from '@seatwright/core/seal';

/** What is known so far of a place: the seal itself may still be missing. */
export type SectionSituation = Omit<Situation, 'seal'> & { readonly seal?: Partial<Situation['seal']> | undefined };

type Candidate = DriverSearchOutput['candidates'][number];

/** A driver as the drawing needs it: a candidate of the driver search, or one to turn. */
export interface SectionDriver extends Pick<Candidate, 'name' | 'outsideMm' | 'insideMm' | 'role'> {
  readonly kind: Candidate['kind'];
  readonly collarOutsideMm?: number | null | undefined;
}

export type SectionMode = 'as driven' | 'taking out' | 'bearing in' | 'bearing out';

export interface SectionInput {
  readonly situation: SectionSituation | null;
  readonly extraction: ExtractionPlanOutput | null;
  readonly seating: SeatingPlanOutput | null;
  readonly driver: SectionDriver | null;
  readonly mode: SectionMode;
}

interface DrawnDriver {
  readonly name: string;
  readonly outsideRadiusMm: number;
  readonly insideRadiusMm: number;
  /** Where its end stands, inward from the housing face. */
  readonly endMm: number;
  readonly collarRadiusMm: number | null;
}

/** A tube that pushes the old seal out from inside, up to its inner end. */
interface DrawnTube {
  readonly outsideRadiusMm: number;
  readonly insideRadiusMm: number;
  readonly endMm: number;
}

interface DrawnDrill {
  readonly radiusMm: number;
  readonly diameterMm: number;
  readonly pointMm: number;
  /** Where the stop lands, and where the point ends, inward from the housing face. */
  readonly stopMm: number;
  readonly tipMm: number;
  readonly stopLengthMm: number;
  readonly freeWidthMm: number;
  /** A punch with a collar, in place of a drill with its stop. */
  readonly isPunch: boolean;
}

/** Everything the drawing shows, in mm. Axial places count inward from the housing face, radii from the axis. */
export interface SectionGeometry {
  readonly mode: SectionMode;
  readonly shaftMm: number;
  readonly boreMm: number;
  readonly outsideMm: number;
  readonly widthMm: number;
  /** Which of the drawn sizes stand for something known; the rest is a stand-in. */
  readonly known: { readonly shaft: boolean; readonly bore: boolean; readonly width: boolean; readonly depth: boolean };
  /** Outer face of the seal below the housing face. */
  readonly depthMm: number;
  readonly lipFacing: 'inward' | 'outward';
  readonly isCovered: boolean;
  readonly isRibbed: boolean;
  readonly hasDustLip: boolean;
  readonly caseMm: number;
  readonly coverMm: number;
  readonly boreDepthMm: number | null;
  readonly innerEnd: 'shoulder' | 'open' | null;
  readonly shoulderRadiusMm: number;
  readonly chamfer: { readonly lengthMm: number; readonly riseMm: number };
  readonly faceRadiusMm: number | null;
  readonly behind: NonNullable<Situation['behind']> | null;
  readonly clearBehindMm: number | null;
  readonly protrusionMm: number | null;
  readonly shaftEnd: { readonly lengthMm: number; readonly dropMm: number };
  readonly obstacles: readonly Obstacle[];
  readonly wearTrack: { readonly fromFaceMm: number; readonly widthMm: number } | null;
  readonly driver: DrawnDriver | null;
  readonly drill: DrawnDrill | null;
  readonly pushTube: DrawnTube | null;
}

/** Sizes drawn while nothing is known, so that an empty sheet shows what to measure. */
const standIn = { shaftMm: 20, ringMm: 7.5, widthMm: 7 } as const;

/** Resolves a situation and its plans to what is drawn. Stand-ins are marked as not known. */
export function sectionGeometry({ situation, extraction, seating, driver, mode }: SectionInput): SectionGeometry {
  const seal = situation?.seal ?? {};
  const { shaft, bore } = situation ?? {};
  const anyShaft = seal.shaftMm ?? shaft?.diameterMm;
  const anyBore = seal.outsideMm ?? bore?.diameterMm;
  const shaftMm = anyShaft ?? (anyBore === undefined ? standIn.shaftMm : Math.max(anyBore - 2 * standIn.ringMm, anyBore * 0.6));
  const outsideMm = anyBore !== undefined && anyBore > shaftMm ? anyBore : shaftMm + 2 * standIn.ringMm;
  const widthMm = seal.widthMm ?? standIn.widthMm;
  const ringMm = (outsideMm - shaftMm) / 2;
  const depth = depthOf(situation, seating, mode, widthMm);
  const isCovered = seal.construction !== undefined && seal.construction !== 'metal-case';
  const radians = ((bore?.leadIn?.angleDeg ?? 20) * Math.PI) / 180;
  const end = shaft?.leadIn;
  const pushTube = mode === 'taking out' ? drawnTube(extraction, depth.mm + widthMm) : null;
  return {
    mode,
    shaftMm,
    boreMm: outsideMm,
    outsideMm,
    widthMm,
    known: {
      shaft: anyShaft !== undefined,
      bore: anyBore !== undefined && anyBore > shaftMm,
      width: seal.widthMm !== undefined,
      depth: depth.isKnown,
    },
    depthMm: depth.mm,
    lipFacing: situation?.lipFacing ?? 'inward',
    isCovered,
    isRibbed: seal.construction === 'rubber-covered-ribbed',
    hasDustLip: seal.hasDustLip === true,
    caseMm: Math.min(seal.caseThicknessMm ?? 1, ringMm * 0.22, widthMm * 0.25),
    coverMm: isCovered ? Math.min(0.75, ringMm * 0.13) : 0,
    boreDepthMm: bore?.depthMm ?? null,
    innerEnd: bore?.innerEnd ?? null,
    shoulderRadiusMm: Math.min((bore?.shoulderInsideMm ?? outsideMm - ringMm * 0.8) / 2, outsideMm / 2),
    chamfer: { lengthMm: bore?.leadIn?.lengthMm ?? 0, riseMm: (bore?.leadIn?.lengthMm ?? 0) * Math.tan(radians) },
    faceRadiusMm: bore?.faceDiameterMm === undefined ? null : bore.faceDiameterMm / 2,
    // Where a tube comes from inside, what lies there is out.
    behind: pushTube === null ? (situation?.behind ?? null) : null,
    clearBehindMm: situation?.clearBehindMm ?? null,
    protrusionMm: shaft?.protrusionMm ?? null,
    shaftEnd: shaftEndOf(end),
    obstacles: shaft?.obstacles ?? [],
    wearTrack: situation?.wearTrack?.fromFaceMm === undefined ? null : { fromFaceMm: situation.wearTrack.fromFaceMm, widthMm: situation.wearTrack.widthMm ?? 0.6 },
    driver: mode !== 'as driven' || driver === null ? null : drawnDriver(driver, depth.mm),
    drill: mode === 'taking out' ? drawnDrill(extraction, depth.mm, widthMm) : null,
    pushTube,
  };
}

function depthOf(situation: SectionSituation | null, seating: SeatingPlanOutput | null, mode: SectionMode, widthMm: number): { readonly mm: number; readonly isKnown: boolean } {
  const old = situation?.oldDepthMm;
  if (mode === 'taking out' && old !== undefined && old.length > 0) return { mm: old.reduce((sum, value) => sum + value, 0) / old.length, isKnown: true };
  if (seating?.faceDepthMm != null) return { mm: seating.faceDepthMm.nominal, isKnown: true };
  const seat = situation?.seat;
  if (seat?.kind === 'depth') return { mm: seat.depthMm, isKnown: true };
  if (seat?.kind === 'flush') return { mm: 0, isKnown: true };
  const boreDepth = situation?.bore?.depthMm;
  if (seat?.kind === 'shoulder' && boreDepth !== undefined) return { mm: boreDepth - widthMm, isKnown: true };
  return { mm: 0, isKnown: false };
}

function shaftEndOf(end: NonNullable<SectionSituation['shaft']>['leadIn']): SectionGeometry['shaftEnd'] {
  if (end?.kind === 'chamfer' && end.diameterReductionMm !== undefined) {
    const dropMm = end.diameterReductionMm / 2;
    return { dropMm, lengthMm: dropMm / Math.tan(((end.angleDeg ?? 20) * Math.PI) / 180) };
  }
  if (end?.kind === 'radius' && end.radiusMm !== undefined) return { dropMm: end.radiusMm, lengthMm: end.radiusMm };
  return { dropMm: 0, lengthMm: 0 };
}

/** A driver at its end position, by sizes in the middle of what they may be. */
export function drawnDriver(driver: SectionDriver, depthMm: number): DrawnDriver {
  const middle = ({ low, high }: { readonly low: number; readonly high: number }) => (low + high) / 2;
  return {
    name: driver.name,
    outsideRadiusMm: middle(driver.outsideMm) / 2,
    insideRadiusMm: middle(driver.insideMm) / 2,
    endMm: driver.role === 'enters' ? depthMm : Math.min(depthMm, 0),
    collarRadiusMm: driver.collarOutsideMm == null ? null : driver.collarOutsideMm / 2,
  };
}

function drawnDrill(extraction: ExtractionPlanOutput | null, depthMm: number, widthMm: number): DrawnDrill | null {
  const hole = extraction?.hole;
  if (extraction?.method !== 'drill and screw' || hole?.drillMm == null || hole.drillStopFromSealFaceMm === null) return null;
  return {
    radiusMm: hole.holeCircleRadiusMm,
    diameterMm: hole.drillMm,
    pointMm: hole.drillPointMm ?? 0.3 * hole.drillMm,
    stopMm: depthMm,
    tipMm: depthMm + hole.drillStopFromSealFaceMm,
    stopLengthMm: widthMm * 0.8,
    freeWidthMm: hole.freeWidthMm,
    isPunch: hole.isPierced,
  };
}

/** The stoutest tube that passes: as wide as bore or shoulder let it, as narrow inside as the shaft lets it. */
function drawnTube(extraction: ExtractionPlanOutput | null, endMm: number): DrawnTube | null {
  const tube = extraction?.method === 'push out from inside' ? extraction.pushOutTube : null;
  return tube === null ? null : { outsideRadiusMm: tube.outsideUpToMm / 2, insideRadiusMm: tube.insideOverMm / 2, endMm };
}
