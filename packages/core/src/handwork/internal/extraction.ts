import type { Span } from '../../result/index.js';
import type { Situation } from '../../seal/index.js';
import { chooseScrew, type ScrewChoice } from './choose-screw.js';
import { oldDepthOf } from './final-depth.js';
import { drillDepthOf, freeFaceOf, type DrillDepth, type FreeFace } from './hole-in-face.js';
import { pushOutOf, type PushOut } from './push-out.js';
import { largestOnShaft, midwayMm, sectionOf, type LargestOnShaft, type Section } from './section.js';
import { practiceValue } from './practice-value.js';

export type ExtractionInput = Situation & { readonly leastWallMm?: number | undefined };

export const extractionMethods = ['drill and screw', 'push out from inside', 'pull on the rim'] as const;
type ExtractionMethod = (typeof extractionMethods)[number];

/** [mm] Wall that a drill must leave on each side, and how far it stays from what lies behind. */
export const practice = {
  leastWallMm: practiceValue('wall-beside-hole', 'Mm').low,
  drillReserveMm: practiceValue('drill-reserve', 'Mm').low,
  gripMm: practiceValue('drill-in-chuck', 'Mm').low,
  chuckRadiusMm: practiceValue('chuck-radius', 'Mm').high,
  shortDrillShowsMm: practiceValue('short-drill-shows', 'Mm').high,
  /** No usual drill shows more than this many times its diameter. */
  longestDrillRatio: practiceValue('longest-drill-share', 'Factor').low,
} as const;

/** How much of the screw may go in. */
interface ScrewReach {
  /** Least depth of the point below the outer face of the seal: face, and a point about as long as the thread is thick. */
  readonly tipFromMm: number;
  /** Most: short of what is behind, or of the inner end of the seal where nobody knows what is behind; in open space what it needs. */
  readonly tipUpToMm: number;
  readonly lengthFromMm: number;
  /** Largest head that clears the shaft. */
  readonly headUpToMm: number;
}

/** Everything an extraction plan rests on, as numbers. */
export interface Extraction {
  readonly situation: Situation;
  readonly section: Section;
  readonly oldDepth: ReturnType<typeof oldDepthOf>;
  readonly leastWallMm: number;
  readonly face: FreeFace;
  readonly pushOut: PushOut | null;
  readonly screw: ScrewChoice | null;
  readonly depth: DrillDepth | null;
  readonly reach: ScrewReach | null;
  readonly roomBehindMm: number | null;
  readonly roomNeededMm: number | null;
  /** Free length that the drill needs so that the chuck passes the shaft; null where it does not matter. */
  readonly drillReachMm: number | null;
  /** No usual drill is that long: a punch goes through the face in its place. */
  readonly isPierced: boolean;
  /** Largest thing fixed on the shaft that the seal must come over. */
  readonly onShaft: LargestOnShaft;
  readonly isBlocked: boolean;
  readonly pullForceN: Span | null;
  readonly method: ExtractionMethod;
  readonly feasible: boolean;
}

/** Works out how the old seal comes out: from behind where it can be reached, else by a hole in the face, else by its rim. */
export function extractionOf(input: ExtractionInput): Extraction {
  const { leastWallMm: givenWallMm, ...situation } = input;
  const section = sectionOf(situation);
  const oldDepth = oldDepthOf(situation);
  const depthMm = oldDepth?.meanMm ?? 0;
  const leastWallMm = givenWallMm ?? practice.leastWallMm;
  const face = freeFaceOf(situation, section, depthMm, leastWallMm);
  const pushOut = pushOutOf(situation, section);
  const pullForceN = section.hold?.pushInForceN ?? null;
  const screw = face.largestDrillMm === null ? null : chooseScrew(section, pullForceN, face.largestDrillMm, face.freeWidthMm, leastWallMm);
  const depth = screw === null ? null : drillDepthOf(section, screw.screw.pilotMm);
  const roomBehindMm = depth === null || situation.clearBehindMm === undefined ? null : depth.roomInSealMm + situation.clearBehindMm;
  const roomNeededMm = depth === null ? null : depth.overshootMm + practice.drillReserveMm;
  const reaches = roomBehindMm !== null && roomNeededMm !== null && roomBehindMm < roomNeededMm;
  const method: ExtractionMethod = pushOut !== null ? 'push out from inside' : screw !== null && !reaches ? 'drill and screw' : 'pull on the rim';
  const onShaft = largestOnShaft(situation, section, depthMm);
  const isBlocked = onShaft.kind !== 'shaft' && onShaft.largestMm >= midwayMm(situation);
  const drillReachMm = depth === null ? null : drillReach(situation, face, depth, depthMm);
  return {
    situation,
    section,
    oldDepth,
    leastWallMm,
    face,
    pushOut,
    screw,
    depth,
    reach: screw === null || depth === null ? null : screwReach(screw, depth, face, section, situation, Math.max(depthMm, 0)),
    roomBehindMm,
    roomNeededMm,
    drillReachMm,
    isPierced: drillReachMm !== null && screw !== null && drillReachMm > practice.longestDrillRatio * screw.screw.pilotMm,
    onShaft,
    isBlocked,
    pullForceN,
    method,
    feasible: !isBlocked && !(method === 'drill and screw' && screw?.enough === 'no'),
  };
}

function screwReach({ screw }: ScrewChoice, { faceInSealMm }: DrillDepth, face: FreeFace, { faceThicknessMm, widthMm }: Section, { clearBehindMm, behind }: Situation, depthMm: number): ScrewReach {
  const tipFromMm = faceInSealMm + faceThicknessMm.high + screw.outsideMm;
  const isOpenBehind = clearBehindMm === undefined && behind === 'open space';
  return {
    tipFromMm,
    tipUpToMm: Math.max(widthMm.low + (clearBehindMm ?? 0) - practice.drillReserveMm, isOpenBehind ? tipFromMm : 0),
    lengthFromMm: tipFromMm + depthMm + practice.gripMm,
    headUpToMm: 2 * (face.holeCircleRadiusMm - face.innerLimitRadiusMm),
  };
}

/** The chuck meets a long shaft: then the drill must show past it. */
function drillReach({ shaft }: Situation, face: FreeFace, { drillStopFromSealFaceMm }: DrillDepth, depthMm: number): number | null {
  const standsOutMm = (shaft?.protrusionMm ?? 0) + depthMm;
  const isBeside = face.holeCircleRadiusMm - face.innerLimitRadiusMm < practice.chuckRadiusMm;
  const reachMm = standsOutMm + drillStopFromSealFaceMm;
  return isBeside && standsOutMm > 0 && reachMm > practice.shortDrillShowsMm ? reachMm : null;
}
