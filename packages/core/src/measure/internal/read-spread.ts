import { commonPractice, contradiction, type Assumption } from '../../result/index.js';
import { type PartKind, zoneOfClass } from '../../tolerance/index.js';
import type { PartSpreadInput } from '../part-spread-field.js';
import { measuredSpread, normalSpread, normalWithin, triangularSpread, uniformSpread, type PartSpread } from './part-distribution.js';

/** A part as it was described: its limits and its spread, in µm from the nominal size. */
export interface ReadSpread {
  readonly lowUm: number;
  readonly highUm: number;
  readonly spread: PartSpread;
  readonly assumptions: readonly Assumption[];
}

const usualDeviationsCount = 3;

/** What was said of one part as a spread about the nominal size. Throws `CalculationError` within the part's path. */
export function readSpread(part: PartSpreadInput, nominalMm: number, kind: PartKind): ReadSpread {
  const fromNominal = (sizeMm: number) => Math.round((sizeMm - nominalMm) * 1e9) / 1e6;
  if (part.valuesMm !== undefined) {
    const spread = measuredSpread(part.valuesMm.map(fromNominal));
    return { lowUm: spread.low, highUm: spread.high, spread, assumptions: [] };
  }
  const { lowUm, highUm } = limitsOf(part, nominalMm, kind, fromNominal);
  const peakUm = part.peakMm === undefined ? (lowUm + highUm) / 2 : fromNominal(part.peakMm);
  if (peakUm < lowUm || peakUm > highUm) throw contradiction([`${kind}.peakMm`], 'the size met most often lies outside the limits');
  const assumptions: Assumption[] = [];
  const shape = part.spread ?? 'normal within limits';
  if (part.spread === undefined) assumptions.push({ name: `spread-of-${kind}`, value: shape, unit: '', source: commonPractice, effect: 'spread-of-fit' });
  if (shape === 'uniform') return { lowUm, highUm, spread: uniformSpread(lowUm, highUm), assumptions };
  if (shape === 'triangular') return { lowUm, highUm, spread: triangularSpread(lowUm, highUm, peakUm), assumptions };
  const count = part.limitDeviationsCount ?? usualDeviationsCount;
  if (part.limitDeviationsCount === undefined) assumptions.push({ name: `deviations-to-limit-of-${kind}`, value: count, unit: '', source: commonPractice, effect: 'spread-of-fit' });
  const nearest = Math.min(peakUm - lowUm, highUm - peakUm);
  if (!(nearest > 0)) throw contradiction([`${kind}.peakMm`], 'a normal spread needs its peak inside the limits');
  const deviation = nearest / count;
  return { lowUm, highUm, spread: shape === 'normal' ? normalSpread(peakUm, deviation) : normalWithin(lowUm, highUm, peakUm, deviation), assumptions };
}

function limitsOf(part: PartSpreadInput, nominalMm: number, kind: PartKind, fromNominal: (sizeMm: number) => number): { readonly lowUm: number; readonly highUm: number } {
  if (part.toleranceClass !== undefined) {
    const zone = zoneOfClass({ nominalMm, toleranceClass: part.toleranceClass });
    if (zone.kind !== kind) throw contradiction([`${kind}.toleranceClass`], `${part.toleranceClass} is a class for a ${zone.kind}`);
    return { lowUm: zone.lowerLimitDeviationUm, highUm: zone.upperLimitDeviationUm };
  }
  return { lowUm: fromNominal(part.lowerMm ?? nominalMm), highUm: fromNominal(part.upperMm ?? nominalMm) };
}
