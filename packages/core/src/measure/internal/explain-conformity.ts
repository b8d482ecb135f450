import { plainGeometry, source, type FormulaStep, type WorkingStep } from '../../result/index.js';
import type { Decision, DecisionRule } from '../decision-zones.js';
import { budgetWorking } from './budget-working.js';
import { ruleSources } from './conformity-findings.js';
import type { ConformitySubject, GivenLimits } from './conformity-subject.js';
import { gaugeExpansionPerK } from './thermal-correction.js';

interface Decided {
  readonly decision: Decision;
  readonly decisionRule: DecisionRule;
  readonly conformityProbability: number;
  readonly guardBandMm: number;
  readonly acceptFromMm: number | null;
  readonly acceptUpToMm: number | null;
  readonly rejectBelowMm: number | null;
  readonly rejectAboveMm: number | null;
  readonly toleranceMm: number | null;
  readonly uncertaintyShareRatio: number | null;
}

const probabilitySource = source('jcgm-106-2012', 'memory', '7.3 and 7.4');

/** Working of a decision: sizes, uncertainty, guard band, zones, probability. */
export function explainConformity(subject: ConformitySubject, limits: GivenLimits, decided: Decided): readonly WorkingStep[] {
  const { lowMm, highMm, readingCount, combined } = subject;
  const by = ruleSources[decided.decisionRule];
  const U = combined.expandedUncertaintyMm;
  const steps: WorkingStep[] = [];
  const choice = (symbol: string, meaning: string, value: number | string, unit: string, why: string, from = by) => steps.push({ kind: 'choice', symbol, meaning, value, unit, why, source: from });
  const whyJudged = readingCount === 1 ? 'one reading' : `extremes of ${readingCount} readings: every local size must keep the limits`;
  choice('x_min', 'smallest size judged, as read', subject.readLowMm, 'mm', whyJudged, source('iso-14405-1', 'memory'));
  choice('x_max', 'largest size judged, as read', subject.readHighMm, 'mm', whyJudged, source('iso-14405-1', 'memory'));
  steps.push(...thermalSteps(subject), ...budgetWorking(subject.budget, combined));
  const [T_L, T_U] = [limits.lowerLimitMm, limits.upperLimitMm];
  const whence = limits.toleranceClass ?? 'as given';
  if (T_L !== null) choice('T_L', 'lower limit of size', T_L, 'mm', whence, plainGeometry);
  if (T_U !== null) choice('T_U', 'upper limit of size', T_U, 'mm', whence, plainGeometry);
  if (decided.decisionRule === 'expanded-uncertainty') {
    const limit = (symbol: string, meaning: string, formula: string, scope: FormulaStep['scope'], value: number | null) => {
      if (value !== null) steps.push({ kind: 'formula', symbol, meaning, formula, scope, value, unit: 'mm', source: by });
    };
    if (T_L !== null) limit('A_L', 'proven from here', 'T_L + U', { T_L, U }, decided.acceptFromMm);
    if (T_U !== null) limit('A_U', 'proven up to here', 'T_U - U', { T_U, U }, decided.acceptUpToMm);
    if (T_L !== null) limit('R_L', 'disproven below', 'T_L - U', { T_L, U }, decided.rejectBelowMm);
    if (T_U !== null) limit('R_U', 'disproven above', 'T_U + U', { T_U, U }, decided.rejectAboveMm);
  } else {
    choice('g', 'guard band inside the limits', decided.guardBandMm, 'mm', 'where the probability of conformity reaches 95 %; outside a limit, 1.645·u');
  }
  steps.push(probabilityStep(T_L, T_U, { y_min: lowMm, y_max: highMm, u: combined.standardUncertaintyMm }, decided.conformityProbability));
  if (decided.uncertaintyShareRatio !== null && decided.toleranceMm !== null) {
    steps.push({ kind: 'formula', symbol: 'U/T', meaning: 'share of the tolerance that the uncertainty takes', formula: 'U / T', scope: { U, T: decided.toleranceMm }, value: decided.uncertaintyShareRatio, unit: '', source: plainGeometry });
  }
  choice('decision', 'what is proven', decided.decision, '', whyDecided[decided.decision]);
  return steps;
}

const whyDecided: Readonly<Record<Decision, string>> = {
  conforms: 'smallest and largest lie inside both limits by the guard band or more',
  'does not conform': 'the smallest or the largest lies outside its limit by more than the guard band',
  'cannot be proven': 'a limit lies within the reach of the uncertainty',
};

function thermalSteps({ thermal, readLowMm, readHighMm, lowMm, highMm }: ConformitySubject): readonly WorkingStep[] {
  if (thermal === null) return [];
  const scope = { a_i: gaugeExpansionPerK, T_i: thermal.instrumentAboveK, a_p: thermal.material.expansionPerK.probable, T_p: thermal.partAboveK };
  const at20 = (symbol: string, meaning: string, x: number, value: number): FormulaStep => ({
    kind: 'formula', symbol, meaning, formula: 'x * (1 + a_i * T_i) / (1 + a_p * T_p)', scope: { x, ...scope }, value, unit: 'mm', source: source('iso-1-2022', 'page'),
  });
  return [at20('y_min', 'smallest size at 20 °C', readLowMm, lowMm), at20('y_max', 'largest size at 20 °C', readHighMm, highMm)];
}

function probabilityStep(T_L: number | null, T_U: number | null, sizes: { readonly y_min: number; readonly y_max: number; readonly u: number }, value: number): FormulaStep {
  const { y_min, y_max, u } = sizes;
  const upper = '(1 + erf((T_U - y_max) / (u * sqrt(2)))) / 2';
  const lower = '(1 + erf((T_L - y_min) / (u * sqrt(2)))) / 2';
  const common = { kind: 'formula', symbol: 'p', meaning: 'probability that the size keeps its limits', value, unit: '', source: probabilitySource } as const;
  if (T_L === null) return { ...common, formula: upper, scope: { T_U: T_U ?? y_max, y_max, u } };
  if (T_U === null) return { ...common, formula: `1 - ${lower}`, scope: { T_L, y_min, u } };
  return { ...common, formula: `max(0, ${upper} - ${lower})`, scope: { T_L, T_U, y_min, y_max, u } };
}
