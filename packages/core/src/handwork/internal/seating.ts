import type { Span } from '../../result/index.js';
import { trackMoveWantedMm, type Obstacle, type Situation } from '../../seal/index.js';
import { lipInterference } from '../../tables/generated/lip-interference.js';
import { findHalfOpenRow } from '../../tables/half-open-range.js';
import { calliperUncertainty } from './calliper.js';
import { finalDepthOf, oldDepthOf, tiltShare, type FinalDepth } from './final-depth.js';
import { isFixed, largestOnShaft, midwayMm, sectionOf, type LargestOnShaft, type Section } from './section.js';
import { practiceValue } from './practice-value.js';

/** What the depth gauge must read at four points around. Negative: the seal stands out. */
interface Gauge {
  readonly targetMm: number;
  readonly lowMm: number;
  readonly highMm: number;
  readonly largestSpreadMm: number;
  readonly pointCount: number;
}

/** Everything a seating plan rests on, as numbers. */
export interface Seating {
  readonly situation: Situation;
  readonly section: Section;
  readonly final: FinalDepth;
  readonly gauge: Gauge | null;
  /** Length of the outside that grips plain bore. */
  readonly engagedMm: (Span & { readonly nominal: number }) | null;
  readonly leastEngagedMm: number;
  readonly chamferLengthMm: number;
  readonly isChamferKnown: boolean;
  /** What is left of the bore behind the seal; negative where it does not go in. */
  readonly boreLeftMm: Span | null;
  /** Room from the seal to what lies behind. */
  readonly roomBehindMm: Span | null;
  readonly oldDepth: ReturnType<typeof oldDepthOf>;
  /** New outer face deeper than the old one by this; negative: further out. */
  readonly moveMm: number | null;
  /** How far the lip should move from a groove that a nail catches in. */
  readonly moveWantedMm: number | null;
  readonly onShaft: LargestOnShaft;
  readonly isBlocked: boolean;
  /** Bore of the lip while it is free, at the least; null where no span is known for this shaft. */
  readonly lipFreeMm: number | null;
  /** What could cut the lip on its way, the largest of each kind. */
  readonly cutsLip: readonly CuttingPart[];
}

interface CuttingPart {
  readonly part: string;
  readonly partMm: number;
}

/** Seat length that DIN 3760 asks for, as a share of the width. */
export const seatShare = practiceValue('seat-share', 'Factor').low;
/** [mm] Longest usual bore chamfer, by the width of the seal. */
const usualChamferMm = (widthMm: number) => (widthMm <= 10 ? 1 : 1.3);

/** Works out where the new seal ends, and what that leaves around it. */
export function seatingOf(situation: Situation): Seating {
  const section = sectionOf(situation);
  const final = finalDepthOf(situation);
  const oldDepth = oldDepthOf(situation);
  const { bore, seal, wearTrack } = situation;
  const chamferLengthMm = bore?.leadIn?.lengthMm ?? usualChamferMm(seal.widthMm);
  const onShaft = largestOnShaft(situation, section, final.depthMm?.nominal ?? 0);
  return {
    situation,
    section,
    final,
    gauge: gaugeOf(final, seal.outsideMm),
    engagedMm: engagedOf(final, section.widthMm, seal.widthMm, chamferLengthMm, bore?.depthMm ?? Infinity),
    leastEngagedMm: seatShare * seal.widthMm,
    chamferLengthMm,
    isChamferKnown: bore?.leadIn !== undefined,
    boreLeftMm: boreLeft(situation, section, final),
    roomBehindMm: roomBehind(situation, section, final, oldDepth?.meanMm ?? null),
    oldDepth,
    moveMm: oldDepth === null || final.depthMm === null ? null : final.depthMm.nominal - oldDepth.meanMm,
    moveWantedMm: wearTrack?.catchesNail === true ? trackMoveWantedMm(wearTrack) : null,
    onShaft,
    isBlocked: onShaft.kind !== 'shaft' && onShaft.largestMm >= midwayMm(situation),
    lipFreeMm: lipFreeOf(seal.shaftMm),
    cutsLip: cutsLip(situation, final.depthMm?.nominal ?? 0),
  };
}

function gaugeOf({ kind, depthMm }: FinalDepth, outsideMm: number): Gauge | null {
  if (depthMm === null) return null;
  const largestSpreadMm = tiltShare.good * outsideMm;
  const { nominal, low, high } = depthMm;
  const isSetByHand = kind !== 'shoulder';
  return {
    targetMm: nominal,
    lowMm: isSetByHand ? nominal - largestSpreadMm : low,
    highMm: isSetByHand ? nominal + largestSpreadMm : high,
    largestSpreadMm,
    pointCount: 4,
  };
}

function engagedOf({ depthMm }: FinalDepth, widthMm: Span, nominalWidthMm: number, chamferMm: number, boreDepthMm: number): Seating['engagedMm'] {
  if (depthMm === null) return null;
  const engaged = (depth: number, width: number) => Math.max(Math.min(depth + width, boreDepthMm) - Math.max(depth, chamferMm), 0);
  const all = [depthMm.low, depthMm.nominal, depthMm.high].flatMap((depth) => [engaged(depth, widthMm.low), engaged(depth, widthMm.high)]);
  return { low: Math.min(...all), nominal: engaged(depthMm.nominal, nominalWidthMm), high: Math.max(...all) };
}

/** On a shoulder nothing is left by definition; flush or at a depth the bore may end too soon. */
function boreLeft({ bore }: Situation, { widthMm }: Section, { kind, depthMm }: FinalDepth): Span | null {
  if (kind === 'shoulder' || bore?.depthMm === undefined || depthMm === null) return null;
  const { uncertaintyMm } = calliperUncertainty('depth', bore.depthMm);
  return { low: bore.depthMm - uncertaintyMm - depthMm.high - widthMm.high, high: bore.depthMm + uncertaintyMm - depthMm.low - widthMm.low };
}

/** `clearBehindMm` was taken with the old seal where its depth is known, else it is taken for the new place. */
function roomBehind({ clearBehindMm, seal }: Situation, { widthMm }: Section, { depthMm }: FinalDepth, oldDepthMm: number | null): Span | null {
  if (clearBehindMm === undefined || depthMm === null) return null;
  const fromOld = oldDepthMm === null ? { low: 0, high: 0 } : { low: oldDepthMm - depthMm.high, high: oldDepthMm - depthMm.low };
  return { low: clearBehindMm + fromOld.low - (widthMm.high - seal.widthMm), high: clearBehindMm + fromOld.high + (seal.widthMm - widthMm.low) };
}

function lipFreeOf(shaftMm: number): number | null {
  const i = findHalfOpenRow(lipInterference.columns.overMm, lipInterference.columns.upToMm, shaftMm);
  const interferenceMm = lipInterference.columns.lipInterferenceMaxMm[i];
  return interferenceMm === undefined ? null : shaftMm - interferenceMm;
}

const cutting: readonly Obstacle['kind'][] = ['thread', 'keyway', 'spline', 'circlip groove', 'cross hole'];

/** What stays on the shaft outside the seal, is touched by the lip and could cut it. */
function cutsLip({ shaft, seal }: Situation, depthMm: number): readonly CuttingPart[] {
  const lipInsideMm = lipFreeOf(seal.shaftMm) ?? 0;
  const largest = new Map<string, number>();
  for (const obstacle of shaft?.obstacles ?? []) {
    const { kind, diameterMm, fromMm, lengthMm, hasSharpEdge } = obstacle;
    if (!isFixed(obstacle)) continue;
    if (lengthMm !== undefined && fromMm + lengthMm <= -(depthMm + seal.widthMm)) continue;
    const cuts = hasSharpEdge === true || (cutting.includes(kind) && hasSharpEdge !== false);
    if (!cuts || diameterMm <= lipInsideMm) continue;
    largest.set(kind, Math.max(diameterMm, largest.get(kind) ?? 0));
  }
  return [...largest].map(([part, partMm]) => ({ part, partMm })).sort((a, b) => b.partMm - a.partMm);
}
