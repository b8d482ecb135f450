import { source, type Assumption, type SourceReference, type Span } from '../../result/index.js';
import type { Situation } from '../../seal/index.js';
import { finalDepthOf, type FinalDepth } from './final-depth.js';
import { largestOnShaft, midwayMm, sectionOf, type Section } from './section.js';
import { practiceValue } from './practice-value.js';

/** What a driver for this seal in this place must meet, as diameters and lengths. */
export interface DriverNeed {
  readonly situation: Situation;
  readonly section: Section;
  readonly final: FinalDepth;
  /** Outside from here up: the push goes straight into the case wall. */
  readonly rimFromMm: number;
  /** Outside from here up: on the bend where case turns into face; with the open side out, on part of the wall's edge. */
  readonly bendFromMm: number;
  /** Inside up to here: lands on the flat of the face. */
  readonly faceUpToMm: number;
  /** Inside below this: at least half the case wall is pushed on. */
  readonly touchBelowMm: number;
  /** Inside from here up: clear of what bends. */
  readonly rimAloneFromMm: number;
  /** What passes through the driver: the largest thing on the shaft; null where the shaft does not reach it. */
  readonly clearOver: { readonly mm: number; readonly by: string } | null;
  /** Mouth of the bore, chamfer included. */
  readonly mouthMm: Span;
  readonly faceDiameterMm: number | null;
  /** Whether the driver has to follow the seal into the bore. */
  readonly mustEnter: 'yes' | 'no' | 'unknown' | 'perhaps';
  /** How far the shaft reaches into the driver when the seal is home; null: not known. Zero or less: not at all. */
  readonly lengthOverMm: number | null;
  readonly pushForceN: Span | null;
  readonly assumptions: readonly Assumption[];
}

/** Bore chamfers run 10 to 30° to the axis between the standards; the longest on the flattest-cut page is 1.0 mm up to 10 mm width, 1.3 mm above. */
const usualChamfer = { lengthMm: (widthMm: number) => (widthMm <= 10 ? 1 : 1.3), angleDeg: practiceValue('bore-chamfer-angle-usual', 'Deg'), source: source('jis-b-2402-1-2013', 'page', 'bore chamfer') };

/** The window for a driver, from the seal, the seat and what stands in the way. */
export function driverNeedOf(situation: Situation): DriverNeed {
  const section = sectionOf(situation);
  const final = finalDepthOf(situation);
  const { sealOutsideMm, coverMm, caseThicknessMm, boreMm } = section;
  const mouth = mouthOf(situation, boreMm);
  const deepestMm = final.depthMm?.high ?? Math.max(situation.bore?.depthMm ?? 0, 0);
  const protrusionMm = situation.shaft?.protrusionMm;
  const reachesMm = protrusionMm === undefined || final.depthMm === null ? null : protrusionMm + final.depthMm.high;
  const onShaft = largestOnShaft(situation, section, deepestMm);
  const { assumptions } = section;
  const { wallShare, bendMm } = outerEnd(section);
  const isInHold = section.hold?.assumptions.some(({ name }) => name === 'case-thickness') ?? false;
  return {
    situation,
    section,
    final,
    rimFromMm: sealOutsideMm.high - 2 * coverMm.low - wallShare * caseThicknessMm.low,
    bendFromMm: sealOutsideMm.high - 2 * (coverMm.low + caseThicknessMm.low + bendMm.low),
    faceUpToMm: sealOutsideMm.low - 2 * coverMm.high - wallShare * Math.max(bendMm.high, caseThicknessMm.high),
    touchBelowMm: sealOutsideMm.low - 2 * coverMm.low - caseThicknessMm.low,
    rimAloneFromMm: midwayMm(situation),
    clearOver: reachesMm !== null && reachesMm <= 0 ? null : { mm: onShaft.largestMm, by: onShaft.kind },
    mouthMm: mouth.band,
    faceDiameterMm: situation.bore?.faceDiameterMm ?? null,
    mustEnter: mustEnter(final),
    lengthOverMm: reachesMm,
    pushForceN: section.hold?.pushInForceN ?? null,
    assumptions: [
      ...assumptions.shaft, ...assumptions.bore, ...assumptions.sealOutside, ...assumptions.cover, ...assumptions.edge,
      ...(isInHold ? [] : assumptions.case), ...assumptions.lip, ...(section.hold?.assumptions ?? []), ...mouth.assumptions, ...final.assumptions,
    ],
  };
}

/**
 * What the driver meets at the outer end of the seal. Closed face out: the case wall, a bend, then the flat of the face.
 * Open side out: the bare edge of the wall, of which at least half is to be covered.
 */
export function outerEnd({ lipFacing, edgeRadiusMm }: Pick<Section, 'lipFacing' | 'edgeRadiusMm'>): { readonly wallShare: 1 | 2; readonly bendMm: Span } {
  return lipFacing === 'inward' ? { wallShare: 2, bendMm: edgeRadiusMm } : { wallShare: 1, bendMm: { low: 0, high: 0 } };
}

function mustEnter({ depthMm }: FinalDepth): DriverNeed['mustEnter'] {
  if (depthMm === null) return 'unknown';
  if (depthMm.high <= 0) return 'no';
  return depthMm.low > 0 ? 'yes' : 'perhaps';
}

function mouthOf({ bore, seal }: Situation, boreMm: Span): { readonly band: Span; readonly assumptions: readonly Assumption[] } {
  const radians = (degrees: number) => (degrees * Math.PI) / 180;
  const { leadIn } = bore ?? {};
  if (leadIn?.angleDeg !== undefined) {
    const wider = 2 * leadIn.lengthMm * Math.tan(radians(leadIn.angleDeg));
    return { band: { low: boreMm.low + wider, high: boreMm.high + wider }, assumptions: [] };
  }
  const { angleDeg, source: from } = usualChamfer;
  const lengthMm = leadIn?.lengthMm ?? usualChamfer.lengthMm(seal.widthMm);
  const wider = { low: leadIn === undefined ? 0 : 2 * lengthMm * Math.tan(radians(angleDeg.low)), high: 2 * lengthMm * Math.tan(radians(angleDeg.high)) };
  return {
    band: { low: boreMm.low + wider.low, high: boreMm.high + wider.high },
    assumptions: [{ name: 'bore-chamfer', value: wider.low, upToValue: wider.high, unit: 'mm', source: from, effect: 'where-a-wide-driver-lands' }],
  };
}

export const rimSource: SourceReference = source('us-army-tm', 'page', 'TM 5-4210-233-14&P para 4-9 i: even force on the outer edge');
