import { commonPractice, deciding, plainGeometry, supporting, type Finding, type Span } from '../../../result/index.js';
import { boreBandOf } from '../../bore-band.js';
import type { Check } from '../check-report.js';
import { anotherSize, halfStandardStepMm } from '../half-step.js';
import { holdsByMetal, type Construction } from '../../seal-field.js';
import { sealLimit } from '../seal-limit.js';
import { pressFitAllowanceOf } from '../../press-fit-allowance.js';

/**
 * Does the seal hold in the bore, cold? The question is the bore's function, not its label:
 * the loosest seal in the largest bore that the readings allow must still keep the least interference
 * that the standard itself lets happen (least allowance in the largest permitted bore).
 */
export const outsideFit: Check = ({ situation, sizes, set }) => {
  const { seal } = situation;
  const { bore, sealOutside } = sizes;
  const doubts = [...sizes.doubts.sealOutside, ...sizes.doubts.bore];
  if (sealOutside === null) {
    return { findings: [...doubts, deciding('outside-no-allowance', 'unknown', { outsideMm: seal.outsideMm }, plainGeometry, 'seal.outsideReadings')] };
  }
  const allowance = pressFitAllowanceOf(set, seal.construction, seal.outsideMm);
  const leastUsefulMm = allowance.allowanceMinMm - boreBandOf(set, seal.outsideMm).upperMm;
  const boreUpToMm = sealOutside.leastMm - leastUsefulMm;
  if (bore === null) {
    if (sizes.doubts.bore.length > 0) return { findings: doubts };
    return {
      findings: [
        ...doubts,
        deciding('bore-not-measured', 'unknown', { outsideMm: seal.outsideMm, boreFromMm: sealOutside.mostMm - allowance.allowanceMaxMm, boreUpToMm }, allowance.source, 'bore.readings'),
      ],
    };
  }
  const boreMm = bore.meanMm;
  const uncertaintyMm = bore.expandedUncertaintyMm;
  if (Math.abs(boreMm - seal.outsideMm) > halfStandardStepMm) {
    return { findings: [...doubts, anotherSize('bore', boreMm, seal.outsideMm, { boreMm, outsideMm: seal.outsideMm })] };
  }
  const leastAt = (bore_: number) => sealOutside.leastMm - bore_;
  const numbers = {
    boreMm,
    uncertaintyMm,
    leastUm: leastAt(boreMm) * 1000,
    mostUm: (sealOutside.mostMm - boreMm) * 1000,
    leastWorstUm: leastAt(boreMm + uncertaintyMm) * 1000,
    leastUsefulUm: leastUsefulMm * 1000,
    boreUpToMm,
    instrument: bore.instrument.name,
  };
  const findings: Finding[] = [...doubts, holdFinding(numbers, leastAt(boreMm - uncertaintyMm), allowance.source)];
  const mostMm = sealOutside.mostMm - boreMm;
  if (mostMm > allowance.allowanceMaxMm + uncertaintyMm) {
    findings.push(deciding('outside-tighter-than-standard', 'care', { mostUm: mostMm * 1000, allowanceMaxUm: allowance.allowanceMaxMm * 1000, boreMm }, allowance.source));
  }
  const cover = coverCompression(seal.construction, numbers.leastWorstUm, (sealOutside.mostMm - (boreMm - uncertaintyMm)) * 1000);
  if (cover !== null) findings.push(supporting('rubber-cover-pressed', 'note', { lowPercent: cover.low, highPercent: cover.high }, rubberCover.source));
  if (seal.construction === 'half-rubber') findings.push(supporting('allowance-of-metal-half', 'note', {}, commonPractice));
  if (allowance.set !== set) findings.push(supporting('allowance-from-other-set', 'note', { set, otherSet: allowance.set }, allowance.source));
  return { findings, assumptions: cover === null ? [] : [{ name: 'rubber-cover', value: rubberCover.low, upToValue: rubberCover.high, unit: 'mm', source: rubberCover.source, effect: 'how-far-the-cover-is-pressed' }] };
};

/** [mm] Rubber over the case of a covered seal. */
export const rubberCover = sealLimit('rubber-cover', 'Mm');

/** How far the rubber cover is pressed together [%], over the spread of its thickness; null for bare metal and for a loose fit. */
function coverCompression(construction: Construction, leastUm: number, mostUm: number): Span | null {
  if (holdsByMetal(construction) || mostUm <= 0) return null;
  const percent = (um: number, mm: number) => (Math.max(0, um) / 2000 / mm) * 100;
  return { low: percent(leastUm, rubberCover.high), high: percent(mostUm, rubberCover.low) };
}

type HoldNumbers = Readonly<Record<'boreMm' | 'uncertaintyMm' | 'leastUm' | 'mostUm' | 'leastWorstUm' | 'leastUsefulUm' | 'boreUpToMm', number>> & { readonly instrument: string };

function holdFinding(numbers: HoldNumbers, leastAtSmallestBoreMm: number, allowanceSource: Finding['source']): Finding {
  if (numbers.leastWorstUm >= numbers.leastUsefulUm) return deciding('outside-holds', 'good', numbers, allowanceSource);
  if (numbers.leastWorstUm > 0) {
    const code = numbers.leastUm >= numbers.leastUsefulUm ? 'outside-holds-unproved' : 'outside-holds-less-than-standard';
    return deciding(code, 'care', numbers, allowanceSource);
  }
  if (numbers.leastUm > 0) return deciding('outside-hold-cannot-tell', 'unknown', numbers, allowanceSource, 'bore.readings');
  if (leastAtSmallestBoreMm > 0) return deciding('outside-hold-cannot-tell', 'unknown', numbers, allowanceSource, 'bore.readings');
  // Even the largest seal, even in the smallest bore that the readings allow.
  if (numbers.mostUm + numbers.uncertaintyMm * 1000 < 0) return deciding('outside-is-loose', 'bad', { ...numbers, leastGapUm: -numbers.mostUm, mostGapUm: -numbers.leastUm }, allowanceSource);
  return deciding('outside-may-be-loose', 'bad', numbers, allowanceSource);
}
