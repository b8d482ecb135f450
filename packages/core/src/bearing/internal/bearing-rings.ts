import { source, type SourceReference } from '../../result/index.js';
import { practiceValue } from './bearing-practice.js';
import type { BearingKind } from './bearing-choices.js';

/** The two rings of a bearing with the mean diameters of their raceways. */
export interface BearingRings {
  readonly boreMm: number;
  readonly outsideMm: number;
  readonly widthMm: number;
  readonly innerRaceMm: number;
  readonly outerRaceMm: number;
  /** Diameter of a ball or roller, from race to race. */
  readonly elementMm: number;
  /** Share of the section that a ring takes. */
  readonly ringShare: number;
  readonly raceSource: SourceReference;
}

/**
 * Raceways of a bearing, estimated from its boundary dimensions.  ball: Di = (4d + D)/5, De = (d + 4D)/5;  roller: (3d + D)/4, (d + 3D)/4
 * Good to about 5 %.
 * @source bearing-handbook-reprints (ball: page; roller: memory)
 */
export function ringsOf({ boreMm, outsideMm, widthMm }: { readonly boreMm: number; readonly outsideMm: number; readonly widthMm: number }, kind: BearingKind): BearingRings {
  const share = kind === 'deep-groove-ball' ? practiceValue('race-of-ball-bearing', 'Factor') : practiceValue('race-of-roller-bearing', 'Factor');
  const wall = share.low * (outsideMm - boreMm);
  return {
    boreMm,
    outsideMm,
    widthMm,
    innerRaceMm: boreMm + wall,
    outerRaceMm: outsideMm - wall,
    elementMm: (outsideMm - boreMm) / 2 - wall,
    ringShare: share.low,
    raceSource: source(share.source.id, share.source.held, share.source.clause),
  };
}
