import type { Situation } from '../../seal/index.js';
import type { Section } from './section.js';
import { practiceValue } from './practice-value.js';

/** Tube that presses the old seal out from behind. */
export interface PushOut {
  readonly outsideUpToMm: number;
  readonly insideOverMm: number;
}

/** [mm] Clearance that a push-out tube wants in the bore, on the diameter, and the least wall it can be made with. */
const clearanceMm = practiceValue('drift-clearance', 'Mm').low;
const leastWallMm = practiceValue('drift-wall', 'Mm').low;

/** Window of a tube that pushes from inside: through bore and shoulder, over the shaft. null where none can pass. */
export function pushOutOf({ reachableFrom, bore }: Situation, { boreMm, shaftMm }: Section): PushOut | null {
  if (reachableFrom !== 'inside' && reachableFrom !== 'both') return null;
  const outsideUpToMm = Math.min(boreMm.low, bore?.shoulderInsideMm ?? Infinity) - clearanceMm;
  const insideOverMm = shaftMm.high;
  return outsideUpToMm - insideOverMm >= 2 * leastWallMm ? { outsideUpToMm, insideOverMm } : null;
}
