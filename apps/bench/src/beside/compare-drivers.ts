import type { BearingDriverOutput, DriverSearchOutput } from '@seatwright/core/handwork';
import type { Finding, Verdict } from '@seatwright/core/result';
import { markedFinding, wordFor, writeValue, type WritingStyle } from '@seatwright/core/wording';
import { words } from '../words/index.js';
import { sentences } from '../words/sentences.js';
import type { Row } from './compare-rows.js';

/** A driver as it stands beside another: the same rows for all of one search. */
export interface ComparableDriver {
  readonly name: string;
  readonly origin: 'own' | 'standard';
  readonly verdict: Verdict;
  readonly rows: readonly Row[];
  /** What speaks against it, worst first. */
  readonly against: readonly string[];
  /** Near misses cannot be drawn at their end: they do not serve. */
  readonly serves: boolean;
}

/** What serves for a seal, best first; then what is at hand and does not. */
export function sealDrivers({ candidates, nearMisses }: DriverSearchOutput, style: WritingStyle): readonly ComparableDriver[] {
  const serving = candidates.map((candidate): ComparableDriver => ({
    ...told(candidate, style),
    serves: true,
    rows: [
      ...sizeRows(candidate, style),
      [words.drivers.meets, words.drivers.roles[candidate.role]],
      [words.drivers.toBore, mm(candidate.clearanceToBoreMm, style)],
      [words.drivers.landing, mm(candidate.landingMm, style)],
      [words.drivers.toShaft, mm(candidate.clearanceToShaftMm, style)],
      [words.drivers.overRim, mm(candidate.reachOverRimMm, style)],
      [words.drivers.ontoFace, mm(candidate.reachOntoFaceMm, style)],
      [words.drivers.least, mm(candidate.leastMarginMm, style)],
      [words.drivers.reserve, times(candidate.reserveFactor)],
    ],
  }));
  const missing = nearMisses.filter(({ origin }) => origin === 'own').map((miss): ComparableDriver => ({
    ...told(miss, style),
    serves: false,
    rows: [...sizeRows(miss, style), ...['meets', 'toBore', 'landing', 'toShaft', 'overRim', 'ontoFace'].map((key): Row => [words.drivers[key as 'meets'], '']), [words.drivers.least, miss.missMm === null ? '' : mm(-miss.missMm, style)], [words.drivers.reserve, '']],
  }));
  return [...serving, ...missing];
}

/** What serves for a bearing, best first; then what is at hand and does not. */
export function bearingDrivers({ candidates, nearMisses, ring }: BearingDriverOutput, style: WritingStyle): readonly ComparableDriver[] {
  const all = [...candidates.map((tool) => ({ tool, serves: true })), ...nearMisses.filter(({ origin }) => origin === 'own').map((tool) => ({ tool, serves: false }))];
  return all.map(({ tool, serves }) => ({
    ...told(tool, style),
    serves,
    rows: [[words.drivers.ring, wordFor(ring, sentences)], ...sizeRows(tool, style), [words.drivers.least, mm(tool.leastMarginMm, style)], [words.drivers.reserve, times(tool.reserveFactor)]],
  }));
}

type Tool = DriverSearchOutput['nearMisses'][number] | DriverSearchOutput['candidates'][number] | BearingDriverOutput['candidates'][number];

function told({ name, origin, verdict, reasons }: Tool, style: WritingStyle): Pick<ComparableDriver, 'name' | 'origin' | 'verdict' | 'against'> {
  const speaks = (finding: Finding) => ['bad', 'unknown', 'care'].includes(finding.severity);
  return { name, origin, verdict, against: reasons.filter(speaks).map((finding) => markedFinding(finding, sentences, style)) };
}

function sizeRows({ origin, outsideMm, insideMm }: Tool, style: WritingStyle): readonly Row[] {
  const span = ({ low, high }: Tool['outsideMm']) => (low === high ? mm(low, style) : `${mm(low, style)} – ${mm(high, style)}`);
  return [
    [words.drivers.from, words.drivers.origins[origin]],
    [words.drivers.outside, span(outsideMm)],
    [words.drivers.inside, span(insideMm)],
  ];
}

function mm(value: number | null, style: WritingStyle): string {
  return value === null ? '' : writeValue('valueMm', Math.round(value * 100) / 100, style);
}

function times(value: number | null): string {
  return value === null ? '' : `${value >= 10 ? '> 10' : value.toFixed(1)} ${words.drivers.times}`;
}
