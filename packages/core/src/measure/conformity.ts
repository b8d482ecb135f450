import * as z from 'zod/mini';
import { lengthField, snapMm } from '../quantity/index.js';
import { candourFields, choiceField, commonPractice, defineCalculation, findingField, numberField, outputNumber, source, textField, type Assumption } from '../result/index.js';
import { conformanceProbability, type SizeLimits } from './conformance-probability.js';
import { decisionOf, decisionRules, decisions, decisionZones } from './decision-zones.js';
import { instrumentField } from './instrument-field.js';
import { budgetField } from './internal/budget-field.js';
import { conformityFindings } from './internal/conformity-findings.js';
import { conformityLimits, conformitySubject } from './internal/conformity-subject.js';
import { explainConformity } from './internal/explain-conformity.js';
import { decidingInstruments } from './internal/deciding-instruments.js';
import { thermalFields } from './internal/thermal-correction.js';
import { readingsField } from './readings-field.js';

const longestMm = 3150;
/** Share of the tolerance that the uncertainty may take. Common practice: a tenth to a fifth. */
const usualShareRatio = 0.2;

const deciderField = z.nullable(
  z.strictObject({
    id: textField({ label: 'instrument id' }),
    name: textField({ label: 'instrument' }),
    expandedUncertaintyMm: outputNumber('its expanded uncertainty here', 'mm'),
    costRankCount: outputNumber('rank of its cost; 0 for one of the workshop', ''),
  }),
);

/**
 * Whether a measured size keeps its limits, as far as the reading can prove it, and what instrument would prove it.
 *   conforms: T_L + g ≤ smallest and largest ≤ T_U − g;  does not: one of them beyond T_L − g or T_U + g;  else no proof
 *   p = Φ((T_U − largest)/u) − Φ((T_L − smallest)/u)
 * Every local size counts (two-point sizes), so an oval part is judged by its smallest and its largest reading.
 * @returns sizes, limits and guard band [mm] at 20 °C, decision, probability of conformity, instruments that would decide; scalars
 * @throws CalculationError invalid-input | contradiction | no-such-class | outside-table
 * @source iso-14253-1-1998 (g = U, the default here), iso-14253-1-2017 (95 %), jcgm-106-2012 clause 7 (held as: memory); iso-14405-1
 * @example conformity.run({ measures: 'inside', measuredMm: 35.02, instrument: 'digital-calliper', nominalMm: 35, toleranceClass: 'H8' }).decision // 'cannot be proven'
 */
export const conformity = defineCalculation({
  name: 'conformity',
  summary: 'Whether a measured size is proven within its limits, how likely it is, and which instrument would decide',
  input: z.strictObject({
    measures: choiceField(['outside', 'inside'], { label: 'what was measured', help: 'outside for a shaft, inside for a bore' }),
    readings: z.optional(z.array(readingsField).check(z.minLength(1), z.maxLength(20))),
    measuredMm: z.optional(lengthField({ label: 'measured size', help: 'instead of readings', unit: 'mm', over: 0, upTo: longestMm })),
    instrument: z.optional(textField({ label: 'instrument of the measured size' })),
    expandedUncertaintyMm: z.optional(lengthField({ label: 'expanded uncertainty (k = 2) of the measured size', help: 'instead of an instrument', unit: 'mm', over: 0, upTo: 10 })),
    instruments: z.optional(z.array(instrumentField).check(z.maxLength(200))),
    nominalMm: z.optional(lengthField({ label: 'nominal size', unit: 'mm', over: 0, upTo: longestMm, typical: '35' })),
    toleranceClass: z.optional(textField({ label: 'tolerance class', typical: 'H8', longest: 16 })),
    lowerLimitMm: z.optional(lengthField({ label: 'lower limit of size', unit: 'mm', from: 0, upTo: longestMm })),
    upperLimitMm: z.optional(lengthField({ label: 'upper limit of size', unit: 'mm', over: 0, upTo: longestMm })),
    decisionRule: z.optional(choiceField(decisionRules, { label: 'rule of decision', help: 'left out: a guard band of the whole expanded uncertainty' })),
    largestShareRatio: z.optional(numberField({ label: 'share of the tolerance that the uncertainty may take', unit: '', over: 0, upTo: 1, typical: '0.2' })),
    ...thermalFields,
  }),
  output: z.strictObject({
    decision: choiceField(decisions, { label: 'decision' }),
    conformityProbability: outputNumber('probability that the size keeps its limits', ''),
    smallestMm: outputNumber('smallest local size judged', 'mm'),
    largestMm: outputNumber('largest local size judged', 'mm'),
    expandedUncertaintyMm: outputNumber('expanded uncertainty of one local size (95.45 %)', 'mm'),
    standardUncertaintyMm: outputNumber('combined standard uncertainty', 'mm'),
    effectiveDegreesOfFreedomCount: z.nullable(outputNumber('effective degrees of freedom; null for infinitely many', '')),
    coverageFactor: outputNumber('coverage factor', ''),
    budget: z.readonly(z.array(budgetField)),
    lowerLimitMm: z.nullable(outputNumber('lower limit of size', 'mm')),
    upperLimitMm: z.nullable(outputNumber('upper limit of size', 'mm')),
    toleranceMm: z.nullable(outputNumber('tolerance', 'mm')),
    decisionRule: choiceField(decisionRules, { label: 'rule of decision' }),
    guardBandMm: outputNumber('guard band inside the limits', 'mm'),
    acceptFromMm: z.nullable(outputNumber('proven from here', 'mm')),
    acceptUpToMm: z.nullable(outputNumber('proven up to here', 'mm')),
    rejectBelowMm: z.nullable(outputNumber('disproven below', 'mm')),
    rejectAboveMm: z.nullable(outputNumber('disproven above', 'mm')),
    uncertaintyShareRatio: z.nullable(outputNumber('expanded uncertainty over tolerance', '')),
    capabilityRatio: z.nullable(outputNumber('tolerance over four standard uncertainties', '')),
    deciders: z.strictObject({ forThisSize: deciderField, forTheTolerance: deciderField }),
    findings: z.readonly(z.array(findingField)),
    ...candourFields,
  }),
  compute(input) {
    const { lowerLimitMm, upperLimitMm, assumptions: limitAssumptions } = conformityLimits(input);
    const limits: SizeLimits = { lowerLimitMm, upperLimitMm };
    const subject = conformitySubject(input);
    const { combined, thermal, lowMm, highMm } = subject;
    const rule = input.decisionRule ?? 'expanded-uncertainty';
    const shareRatio = input.largestShareRatio ?? usualShareRatio;
    const zones = decisionZones(limits, combined, rule);
    const decision = decisionOf(subject, zones);
    const conformityProbability = conformanceProbability(subject, limits, combined.standardUncertaintyMm);
    const toleranceMm = lowerLimitMm === null || upperLimitMm === null ? null : snapMm(upperLimitMm - lowerLimitMm);
    const deciders = decidingInstruments({ measures: input.measures, lowMm, highMm, limits, rule, shareRatio, otherLines: thermal?.lines ?? [], own: input.instruments ?? [] });
    return {
      decision,
      conformityProbability,
      smallestMm: lowMm,
      largestMm: highMm,
      ...combined,
      budget: subject.budget,
      lowerLimitMm,
      upperLimitMm,
      toleranceMm,
      decisionRule: rule,
      guardBandMm: zones.guardBandMm,
      acceptFromMm: zones.isAcceptanceEmpty ? null : zones.acceptance.lowerMm,
      acceptUpToMm: zones.isAcceptanceEmpty ? null : zones.acceptance.upperMm,
      rejectBelowMm: zones.rejection.belowMm,
      rejectAboveMm: zones.rejection.aboveMm,
      uncertaintyShareRatio: toleranceMm === null ? null : combined.expandedUncertaintyMm / toleranceMm,
      capabilityRatio: toleranceMm === null ? null : toleranceMm / (4 * combined.standardUncertaintyMm),
      deciders,
      findings: conformityFindings({ subject, limits, zones, decision, conformityProbability, deciders, shareRatio, rule, toleranceMm }),
      assumptions: [...limitAssumptions, ...(thermal?.assumptions ?? []), ...choices(input.decisionRule === undefined, input.largestShareRatio === undefined && toleranceMm !== null)],
      notChecked: [
        'process-before-measuring',
        ...(thermal === null ? ['temperature-in-uncertainty'] : []),
        ...(subject.budget.some((line) => line.component === 'repeatability' || line.component === 'stated') ? [] : ['hand-in-uncertainty']),
        ...(subject.hasOtherSets ? ['other-instruments-in-decision'] : []),
        ...(subject.readingCount === 1 ? ['form-from-one-reading'] : []),
      ],
    };
  },
  explain: (input, output) => explainConformity(conformitySubject(input), conformityLimits(input), output),
});

export type ConformityInput = Readonly<Parameters<typeof conformity.compute>[0]>;

export type Conformity = Readonly<ReturnType<typeof conformity.compute>>;

function choices(isRuleAssumed: boolean, isShareAssumed: boolean): readonly Assumption[] {
  const list: Assumption[] = [];
  if (isRuleAssumed) list.push({ name: 'guard-band-rule', value: 'expanded-uncertainty', unit: '', source: source('iso-14253-1-1998', 'memory'), effect: 'decision-on-size' });
  if (isShareAssumed) list.push({ name: 'uncertainty-share', value: usualShareRatio * 100, unit: '%', source: commonPractice, effect: 'instrument-for-tolerance' });
  return list;
}
