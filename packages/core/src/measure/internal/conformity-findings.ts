import { commonPractice, deciding, source, supporting, type Finding } from '../../result/index.js';
import type { SizeLimits } from '../conformance-probability.js';
import type { Decision, DecisionRule, DecisionZones } from '../decision-zones.js';
import type { ConformitySubject } from './conformity-subject.js';
import type { Deciders } from './deciding-instruments.js';

export interface ConformityJudged {
  readonly subject: ConformitySubject;
  readonly limits: SizeLimits;
  readonly zones: DecisionZones;
  readonly decision: Decision;
  readonly conformityProbability: number;
  readonly deciders: Deciders;
  readonly shareRatio: number;
  readonly rule: DecisionRule;
  readonly toleranceMm: number | null;
}

export const ruleSources = { 'expanded-uncertainty': source('iso-14253-1-1998', 'memory', 'clause 5'), 'probability-95': source('iso-14253-1-2017', 'memory') } as const;

/** What a mechanic should hear: the decision, then what would settle it, then whether the instrument suits the tolerance. */
export function conformityFindings(judged: ConformityJudged): readonly Finding[] {
  return [decisionFinding(judged), ...deciderFindings(judged), ...toleranceFindings(judged)];
}

function decisionFinding({ subject, limits, zones, decision, conformityProbability, rule }: ConformityJudged): Finding {
  const by = ruleSources[rule];
  const { lowMm, highMm } = subject;
  const { lowerLimitMm, upperLimitMm } = limits;
  // The end that stands nearer to its limit, or further beyond it.
  const isLower = upperLimitMm === null || (lowerLimitMm !== null && lowMm - lowerLimitMm < upperLimitMm - highMm);
  const sizeMm = isLower ? lowMm : highMm;
  const limitMm = (isLower ? lowerLimitMm : upperLimitMm) ?? sizeMm;
  const parameters = { sizeMm, limitMm, guardBandMm: zones.guardBandMm, uncertaintyMm: subject.combined.expandedUncertaintyMm, conformityPercent: conformityProbability * 100, instrument: subject.instrumentName ?? 'stated-uncertainty' };
  if (decision === 'conforms') return deciding('size-conforms', 'good', parameters, by);
  if (decision === 'does not conform') return deciding(isLower ? 'size-below-lower-limit' : 'size-above-upper-limit', 'bad', parameters, by);
  return deciding(isLower ? 'size-not-provable-at-lower-limit' : 'size-not-provable-at-upper-limit', 'unknown', parameters, by);
}

function deciderFindings({ decision, deciders, subject, rule }: ConformityJudged): readonly Finding[] {
  if (decision !== 'cannot be proven') return [];
  const uncertaintyMm = subject.combined.expandedUncertaintyMm;
  const { forThisSize } = deciders;
  const instrument = subject.instrumentName ?? 'stated-uncertainty';
  if (forThisSize === null) return [supporting('no-listed-instrument-decides', 'note', { uncertaintyMm }, ruleSources[rule])];
  // The same instrument can come back: its own scatter, not its error, left the question open.
  if (forThisSize.name === subject.instrumentName) return [supporting('steadier-readings-would-decide', 'note', { instrument, uncertaintyMm, deciderUncertaintyMm: forThisSize.expandedUncertaintyMm }, ruleSources[rule])];
  return [supporting('other-instrument-would-decide', 'note', { instrument, uncertaintyMm, decider: forThisSize.name, deciderUncertaintyMm: forThisSize.expandedUncertaintyMm }, ruleSources[rule])];
}

function toleranceFindings({ subject, zones, deciders, shareRatio, toleranceMm }: ConformityJudged): readonly Finding[] {
  if (toleranceMm === null) return [];
  const uncertaintyMm = subject.combined.expandedUncertaintyMm;
  const instrument = subject.instrumentName ?? 'stated-uncertainty';
  const wantedMm = shareRatio * toleranceMm;
  const list: Finding[] = [];
  if (zones.isAcceptanceEmpty) list.push(supporting('no-reading-could-prove-it', 'care', { instrument, uncertaintyMm, toleranceMm }, commonPractice));
  if (uncertaintyMm <= wantedMm * (1 + 1e-9)) return list;
  const { forTheTolerance } = deciders;
  const parameters = { instrument, uncertaintyMm, toleranceMm, wantedMm };
  if (forTheTolerance === null) return [...list, supporting('no-listed-instrument-for-tolerance', 'note', parameters, commonPractice)];
  return [...list, supporting('instrument-coarse-for-tolerance', 'note', { ...parameters, decider: forTheTolerance.name, deciderUncertaintyMm: forTheTolerance.expandedUncertaintyMm }, commonPractice)];
}
