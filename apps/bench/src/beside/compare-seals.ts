import type { SealOutcome } from '@seatwright/core/job';
import type { Situation } from '@seatwright/core/seal';
import { markedFinding, writeValue, type WritingStyle } from '@seatwright/core/wording';
import { words } from '../words/index.js';
import { sentences } from '../words/sentences.js';
import { compareRows, type ComparedRow, type Row } from './compare-rows.js';

/** The same rows for both: what is marked, what holds, where it ends. A row that neither can fill is left out. */
export function compareSeals(one: SealOutcome, other: SealOutcome, style: WritingStyle): readonly ComparedRow[] {
  return compareRows(rowsOf(one, style), rowsOf(other, style));
}

/** What speaks against a seal, worst first. */
export function objectionsTo({ findings }: SealOutcome, style: WritingStyle): readonly string[] {
  return findings.filter(({ severity }) => severity === 'bad' || severity === 'unknown' || severity === 'care').map((finding) => markedFinding(finding, sentences, style));
}

function rowsOf({ situation, check, seating }: SealOutcome, style: WritingStyle): readonly Row[] {
  const { seal } = situation as Situation;
  const { labels, values } = sentences;
  const span = (name: string, range: { readonly low: number; readonly high: number } | null | undefined) => (range == null ? '' : `${writeValue(name, range.low, style)} – ${writeValue(name, range.high, style)}`);
  return [
    [words.beside.size, [seal.shaftMm, seal.outsideMm, seal.widthMm].map((mm) => writeValue('sizeMm', mm, style)).join(' × ')],
    [words.beside.construction, values[seal.construction] ?? seal.construction],
    [words.beside.rubber, seal.lipMaterial],
    [labels['interference'] ?? '', span('holdUm', check?.interferenceUm)],
    [words.beside.held, span('holdUm', check?.heldUm)],
    [labels['looseFrom'] ?? '', check?.looseFromC == null ? '' : span('temperatureC', { low: check.looseFromC.earliest, high: check.looseFromC.latest })],
    [labels['pushInForce'] ?? '', span('pushN', check?.pushInForceN)],
    [labels['lip'] ?? '', span('lipMm', check?.lipInterferenceMm)],
    [words.beside.depth, seating?.faceDepthMm == null ? '' : writeValue('depthMm', seating.faceDepthMm.nominal, style)],
    [words.beside.grip, seating?.engagedMm == null ? '' : writeValue('gripMm', seating.engagedMm.nominal, style)],
  ];
}
