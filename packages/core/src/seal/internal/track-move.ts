import type { WearTrack } from '../situation-field.js';
import { sealLimit } from './seal-limit.js';

const usual = sealLimit('track-move', 'Mm');

/**
 * [mm] How far a lip must move to leave the old track: its width where that is known, and no less than the usual millimetre.
 * @example trackMoveWantedMm({ widthMm: 1.5 }) // 1.5
 */
export function trackMoveWantedMm(wearTrack: WearTrack | undefined): number {
  return Math.max(wearTrack?.widthMm ?? 0, usual.low);
}

export const trackMoveSource = usual.source;
