import { commonPractice, deciding, plainGeometry, supporting, type Finding } from '../../result/index.js';

/** As much of a seal on the sheet as its neighbour has to know. */
interface PlacedSeal {
  readonly name: string;
  readonly situation: unknown;
  readonly seating: { readonly faceDepthMm: { readonly nominal: number } | null } | null;
}

/** Seals of one bore against each other, outermost first: each needs its own depth, and room for grease and the hole between. */
export function betweenSeals(seals: readonly PlacedSeal[]): readonly Finding[] {
  if (seals.length < 2) return [];
  const findings: Finding[] = [supporting('several-seals-answer', 'note', {}, commonPractice)];
  seals.slice(1).forEach((inner, i) => {
    const outer = seals[i];
    const [outerDepth, innerDepth] = [outer?.seating?.faceDepthMm?.nominal, inner.seating?.faceDepthMm?.nominal];
    const widthMm = widthOf(outer);
    if (outer === undefined || outerDepth === undefined || innerDepth === undefined || widthMm === null) return;
    const gapMm = Math.round((innerDepth - outerDepth - widthMm) * 1e6) / 1e6 + 0;
    const numbers = { outer: outer.name, inner: inner.name, outerDepthMm: outerDepth, innerDepthMm: innerDepth };
    findings.push(gapMm < 0 ? deciding('seals-overlap', 'bad', { ...numbers, overlapMm: -gapMm }, plainGeometry) : supporting('seals-stand-apart', 'note', { ...numbers, gapMm }, plainGeometry));
  });
  return findings;
}

function widthOf(seal: PlacedSeal | undefined): number | null {
  const situation = seal?.situation as { readonly seal?: { readonly widthMm?: number } } | undefined;
  return situation?.seal?.widthMm ?? null;
}
