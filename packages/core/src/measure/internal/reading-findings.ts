import { commonPractice, source, supporting, type Finding } from '../../result/index.js';
import type { AnalysedSet } from './analysed-readings.js';
import type { SizeAnalysis } from './size-analysis.js';

export const grubbsSource = source('grubbs-1969', 'memory', 'Table I, 5 %');
const uncertaintySource = source('jcgm-100-2008', 'memory', 'G.6.4');
/** From here on it is the fewness of the readings that widens the uncertainty. */
const wideCoverage = 3;
/** A correction below a tenth of a step is not worth a line. */
const noticeableShare = 0.1;

/** What a second look at the readings tells: none of it decides alone. */
export function readingFindings(analysis: SizeAnalysis): readonly Finding[] {
  return [...analysis.sets.flatMap(outlierFinding), ...disagreement(analysis.sets), ...formFindings(analysis), ...uncertaintyFindings(analysis)];
}

function outlierFinding({ outlier, points, meanMm, instrument }: AnalysedSet): readonly Finding[] {
  if (outlier?.isOutlier !== true) return [];
  const { index, distanceRatio, criticalRatio } = outlier;
  const parameters = { readingMm: points[index]?.valueMm ?? meanMm, meanMm, distanceRatio, criticalRatio, instrument: instrument.name };
  return [supporting('reading-stands-apart', 'care', parameters, grubbsSource)];
}

/** Two sets should meet within their uncertainties: |x₁ − x₂| ≤ √(U₁² + U₂²). */
function disagreement(sets: readonly AnalysedSet[]): readonly Finding[] {
  const low = sets.reduce((found, set) => (set.meanMm < found.meanMm ? set : found), sets[0] as AnalysedSet);
  const high = sets.reduce((found, set) => (set.meanMm > found.meanMm ? set : found), sets[0] as AnalysedSet);
  const apartMm = high.meanMm - low.meanMm;
  const allowedMm = Math.sqrt(low.instrumentUncertaintyMm ** 2 + high.instrumentUncertaintyMm ** 2);
  if (apartMm <= allowedMm * (1 + 1e-9)) return [];
  const parameters = { apartMm, allowedMm, lowMm: low.meanMm, highMm: high.meanMm, instrument: low.instrument.name, otherInstrument: high.instrument.name };
  return [supporting('instruments-disagree', 'care', parameters, uncertaintySource)];
}

function formFindings({ best, contact, waviness, size }: SizeAnalysis): readonly Finding[] {
  const oval = best.fit?.oval;
  const list: Finding[] = [];
  if (contact !== 'two-point' && size.ovalityUm !== null) list.push(supporting('no-ovality-from-this-contact', 'note', { contact, spreadUm: size.ovalityUm }, commonPractice));
  if (oval?.largestAtDeg != null && oval.ovalityUm > best.instrument.resolutionMm * 1000) {
    list.push(supporting('oval-with-direction', 'note', { ovalityUm: oval.ovalityUm, largestAtDeg: oval.largestAtDeg }, source('plain-geometry', 'computed')));
  }
  if (waviness !== null && waviness.rangeUm > waviness.limitUm) {
    list.push(supporting('surface-wavy', 'care', { spreadUm: waviness.rangeUm, limitUm: waviness.limitUm }, commonPractice));
  }
  return list;
}

function uncertaintyFindings({ combined, thermal, size, best }: SizeAnalysis): readonly Finding[] {
  const list: Finding[] = [];
  if (combined.coverageFactor > wideCoverage) {
    list.push(supporting('too-few-readings', 'care', { coverageFactor: combined.coverageFactor, readingCount: size.readingCount, uncertaintyMm: combined.expandedUncertaintyMm }, uncertaintySource));
  }
  if (thermal !== null && Math.abs(thermal.correctionUm) >= noticeableShare * best.instrument.resolutionMm * 1000) {
    list.push(supporting('size-corrected-to-20-c', 'note', { correctionUm: thermal.correctionUm, sizeAt20CMm: thermal.sizeAt20CMm, meanMm: size.meanMm }, source('iso-1-2022', 'page')));
  }
  return list;
}
