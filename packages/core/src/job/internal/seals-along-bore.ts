import { finalDepthOf } from '../../handwork/index.js';
import type { Situation } from '../../seal/index.js';
import type { Position, SealPart } from '../workshop-file-field.js';
import { attempt } from './attempt.js';

/** A seal of a position with its own situation, not yet told what lies behind it. */
export interface SealInBore {
  readonly part: SealPart;
  readonly situation: Situation;
}

/** Seals that share a bore, outermost first: by where each ends, or in the order of the file where one of the places is not known. */
export function outermostFirst(seals: readonly SealInBore[]): readonly SealInBore[] {
  if (seals.length < 2) return seals;
  const placed = seals.map((seal) => ({ seal, depthMm: faceDepthMm(seal) }));
  if (placed.some(({ depthMm }) => depthMm === null)) return seals;
  return [...placed].sort((a, b) => (a.depthMm ?? 0) - (b.depthMm ?? 0)).map(({ seal }) => seal);
}

/** The seal parts of a position. */
export function sealPartsOf({ parts }: Position): readonly SealPart[] {
  return parts.filter((part) => part.kind === 'seal');
}

/** [mm] Room between the old seals, where the depths of both were taken; null where they were not. */
export function oldGapMm(outer: SealInBore, inner: SealInBore): number | null {
  const [outerMm, innerMm] = [meanOf(outer.part.oldDepthMm), meanOf(inner.part.oldDepthMm)];
  return outerMm === null || innerMm === null ? null : innerMm - outerMm - outer.part.widthMm;
}

function faceDepthMm({ situation }: SealInBore): number | null {
  const depth = attempt(() => finalDepthOf(situation).depthMm);
  return 'value' in depth ? (depth.value?.nominal ?? null) : null;
}

function meanOf(depths: readonly number[] | undefined): number | null {
  return depths === undefined || depths.length === 0 ? null : depths.reduce((sum, depth) => sum + depth, 0) / depths.length;
}
