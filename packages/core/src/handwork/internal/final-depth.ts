import { source, type Assumption, type SourceReference } from '../../result/index.js';
import { widthToleranceMm, type Situation } from '../../seal/index.js';
import { calliperUncertainty } from './calliper.js';
import { practiceValue } from './practice-value.js';

/** Where the outer face of the new seal ends, below the housing face; negative stands out. */
export interface FinalDepth {
  readonly kind: 'flush' | 'shoulder' | 'depth';
  /** null: on a shoulder whose depth is not known. */
  readonly depthMm: { readonly low: number; readonly nominal: number; readonly high: number } | null;
  readonly assumptions: readonly Assumption[];
}

export const flushOrShoulder: SourceReference = source('workshop-manuals-1995', 'page', 'to the shoulder; flush where there is none');

/** Flush, on the shoulder (bore depth less width), or at the depth asked for; without a word, the shoulder if there is one, else flush. @internal */
export function finalDepthOf(situation: Situation): FinalDepth {
  const { seat, bore, seal } = situation;
  const kind = seat?.kind ?? (bore?.innerEnd === 'shoulder' ? 'shoulder' : 'flush');
  const assumptions: Assumption[] = seat === undefined ? [{ name: 'seat-kind', value: kind, unit: '', source: flushOrShoulder, effect: 'where-the-seal-ends' }] : [];
  if (seat?.kind === 'depth') return { kind, depthMm: around(seat.depthMm, 0), assumptions };
  if (kind === 'flush') return { kind, depthMm: around(0, 0), assumptions };
  if (bore?.depthMm === undefined) return { kind, depthMm: null, assumptions };
  const { uncertaintyMm, source: from } = calliperUncertainty('depth', bore.depthMm);
  assumptions.push({ name: 'depth-by-calliper', value: uncertaintyMm, unit: 'mm', source: from, effect: 'where-the-seal-ends' });
  return { kind, depthMm: around(bore.depthMm - seal.widthMm, widthToleranceMm(situation) + uncertaintyMm), assumptions };
}

/** Depth of the old seal's outer face: mean, least and most of what was measured. */
export function oldDepthOf({ oldDepthMm }: Situation): { readonly meanMm: number; readonly leastMm: number; readonly mostMm: number } | null {
  if (oldDepthMm === undefined || oldDepthMm.length === 0) return null;
  const meanMm = oldDepthMm.reduce((sum, depth) => sum + depth, 0) / oldDepthMm.length;
  return { meanMm, leastMm: Math.min(...oldDepthMm), mostMm: Math.max(...oldDepthMm) };
}

/** [mm] Largest spread of four depths: 0.5 % of the outside diameter, 1 % at the outside. */
const tilt = practiceValue('face-tilt', 'Factor');
export const tiltShare = { good: tilt.low, most: tilt.high, source: tilt.source } as const;

function around(nominal: number, spread: number): NonNullable<FinalDepth['depthMm']> {
  return { low: nominal - spread, nominal, high: nominal + spread };
}
