import * as z from 'zod/mini';
import { lengthField } from '../quantity/index.js';
import { candourFields, choiceField, defineCalculation, exactlyOne, findingField, given, notBoth, numberField, outputNumber, rulesInSchema, source, sourceField, supporting, textField, yesNoField, type Finding, type WorkingStep } from '../result/index.js';
import { seatClasses as table } from '../tables/generated/seat-classes.js';
import { markAt } from '../tables/table.js';
import { practiceValue } from './internal/bearing-practice.js';
import { bearingKinds } from './internal/bearing-choices.js';
import { bearingSize } from './internal/bearing-table.js';
import { readSuffixes } from './internal/read-suffixes.js';
import { ringLoads } from './internal/bearing-seat-fields.js';

const magnitudes = ['light', 'normal', 'heavy', 'shock'] as const;
const loads = [...ringLoads, 'axial'] as const;

const inputField = z
  .strictObject({
    designation: z.optional(textField({ label: 'designation of the bearing', typical: '6203', longest: 40 })),
    boreMm: z.optional(lengthField({ label: 'bore of the bearing', unit: 'mm', over: 0, upTo: 1000 })),
    bearingKind: z.optional(choiceField(bearingKinds, { label: 'kind of bearing' })),
    innerRingLoad: choiceField(loads, { label: 'load against the inner ring' }),
    outerRingLoad: choiceField(loads, { label: 'load against the outer ring' }),
    magnitude: z.optional(choiceField(magnitudes, { label: 'how heavy the load is' })),
    loadRatio: z.optional(numberField({ label: 'equivalent load over the basic dynamic load rating, P/C', unit: '', from: 0, upTo: 10, typical: '0.05' })),
    isSplitHousing: z.optional(yesNoField({ label: 'the housing is split through the bore' })),
    isThinWalled: z.optional(yesNoField({ label: 'the housing is thin around the bore' })),
    isLightAlloy: z.optional(yesNoField({ label: 'the housing is of light alloy' })),
    hasHeatThroughShaft: z.optional(yesNoField({ label: 'heat comes in through the shaft' })),
    mustSlideOnShaft: z.optional(yesNoField({ label: 'a ring under standing load must slide on the shaft by hand' })),
  })
  .check(
    z.refine((input) => (input.designation === undefined) !== (input.boreMm === undefined), { error: 'give the designation or boreMm', path: ['boreMm'] }),
    z.refine((input) => input.magnitude === undefined || input.loadRatio === undefined, { error: 'give the magnitude or P/C, not both', path: ['loadRatio'] }),
    rulesInSchema([exactlyOne(given('designation'), given('boreMm')), notBoth('magnitude', 'loadRatio')]),
  );

const recommendationField = z.strictObject({
  toleranceClass: z.string().check(z.meta({ label: 'tolerance class', unit: '' })),
  set: choiceField(['abma-7', 'handbook'], { label: 'set of recommendations' }),
  condition: z.string().check(z.meta({ label: 'for what', unit: '' })),
  source: sourceField,
});

const outputField = z.strictObject({
  boreMm: outputNumber('bore', 'mm'),
  magnitude: choiceField(magnitudes, { label: 'how heavy the load is' }),
  shaft: z.readonly(z.array(recommendationField)),
  housing: z.readonly(z.array(recommendationField)),
  tighterHousing: z.readonly(z.array(z.string().check(z.meta({ label: 'the next tighter class, for light alloy', unit: '' })))),
  findings: z.readonly(z.array(findingField)),
  ...candourFields,
});

export type SeatClassesInput = z.infer<typeof inputField>;
export type SeatClassesOutput = z.infer<typeof outputField>;
type Recommendation = SeatClassesOutput['shaft'][number];

/** Which tolerance classes shaft and housing of a bearing should have, by how the load moves against each ring and how heavy it is.
 * P/C up to 0.06 counts as light, up to 0.13 as normal. Where the housing is of light alloy the tables say "tighter than listed" and no more:
 * the next tighter class is named, and the seats must be looked at hot.
 * @returns classes of two sets of recommendations, each with its condition and source
 * @throws CalculationError invalid-input | no-such-class
 * @source ansi-abma-7, bearing-handbook-reprints (held as: page)
 * @example seatClasses.run({ designation: '6205', innerRingLoad: 'rotating', outerRingLoad: 'stationary', magnitude: 'normal' }).shaft[0].toleranceClass // 'k5'
 */
export const seatClasses = defineCalculation({
  name: 'seat-classes',
  summary: 'Which tolerance classes shaft and housing of a bearing should have',
  input: inputField,
  output: outputField,
  compute(input): SeatClassesOutput {
    const size = input.designation === undefined ? null : bearingSize(readSuffixes(input.designation).basic);
    const boreMm = input.boreMm ?? size?.boreMm ?? 0;
    const kind = input.bearingKind ?? size?.kind ?? 'deep-groove-ball';
    const magnitude = input.magnitude ?? magnitudeOf(input.loadRatio);
    const shaft = matching('shaft', kind, input.innerRingLoad, magnitude, boreMm).filter(({ condition }) => condition !== (input.mustSlideOnShaft === true ? 'need-not-slide' : 'slides-easily'));
    const housing = matching('housing', 'any', input.outerRingLoad, magnitude, null).filter(({ condition }) => suits(condition, input));
    return {
      boreMm,
      magnitude,
      shaft,
      housing,
      tighterHousing: input.isLightAlloy === true ? [...new Set(housing.map(({ toleranceClass }) => tighter(toleranceClass)))] : [],
      findings: findingsOf(input, shaft, housing),
      assumptions: input.magnitude === undefined && input.loadRatio === undefined ? [{ name: 'load-is-normal', value: 'normal', unit: '', source: source('common-practice', 'practice'), effect: 'which-seat-class' }] : [],
      notChecked: ['seat-when-hot', 'makers-drawing-first'],
    };
  },
  explain: (_, output): readonly WorkingStep[] =>
    [...output.shaft.map((one) => ['shaft', one] as const), ...output.housing.map((one) => ['housing', one] as const)].map(([seat, { toleranceClass, set, condition, source: by }], i) => ({
      kind: 'choice', symbol: `c_${i + 1}`, meaning: `class of the ${seat}: ${toleranceClass}`, value: i + 1, unit: '', why: `${set}, ${output.magnitude} load, ${condition}`, source: by,
    })),
});

function magnitudeOf(loadRatio: number | undefined): (typeof magnitudes)[number] {
  if (loadRatio === undefined) return 'normal';
  if (loadRatio <= practiceValue('load-light-up-to', 'Factor').low) return 'light';
  return loadRatio <= practiceValue('load-normal-up-to', 'Factor').low ? 'normal' : 'heavy';
}

function matching(seat: 'shaft' | 'housing', kind: string, load: string, magnitude: string, boreMm: number | null): readonly Recommendation[] {
  const { columns } = table;
  const found: Recommendation[] = [];
  for (let i = 0; i < table.rowCount; i += 1) {
    if (columns.seat[i] !== seat || columns.ringLoad[i] !== load || columns.bearingKind[i] !== kind) continue;
    const wanted = columns.magnitude[i];
    if (wanted !== magnitude && !(magnitude === 'shock' && wanted === 'heavy' && seat === 'shaft')) continue;
    if (boreMm !== null && (boreMm <= (columns.overMm[i] ?? 0) || boreMm > (columns.upToMm[i] ?? Infinity))) continue;
    found.push({ toleranceClass: columns.toleranceClass[i] ?? '', set: columns.set[i] === 'handbook' ? 'handbook' : 'abma-7', condition: columns.condition[i] ?? 'any', source: source(columns.rowSource[i] ?? table.source, markAt(table, 'toleranceClass', i), 'recommended seat classes') });
  }
  return found;
}

/** A row of a housing counts unless it speaks of another one. */
function suits(condition: string, { isSplitHousing, isThinWalled, hasHeatThroughShaft }: SeatClassesInput): boolean {
  if (condition === 'heat-through-shaft') return hasHeatThroughShaft === true;
  if (condition === 'thin-wall') return isThinWalled === true;
  if (condition === 'split') return isSplitHousing === true;
  if (condition === 'not-split') return isSplitHousing !== true;
  return condition !== 'plummer-block';
}

const letters = ['F', 'G', 'H', 'J', 'K', 'M', 'N', 'P', 'R'] as const;

/** The class of the next letter: J and JS count as one. */
function tighter(toleranceClass: string): string {
  const [, letter = '', grade = ''] = /^([A-Z]+)(\d+)$/u.exec(toleranceClass) ?? [];
  const at = letters.indexOf((letter === 'JS' ? 'J' : letter) as (typeof letters)[number]);
  return `${letters[at + 1] ?? letter}${grade}`;
}

function findingsOf(input: SeatClassesInput, shaft: readonly Recommendation[], housing: readonly Recommendation[]): readonly Finding[] {
  const by = source('ansi-abma-7', 'page', 'shaft and housing fits');
  const findings: Finding[] = [];
  if (shaft.length === 0) findings.push(supporting('no-shaft-class-listed', 'note', {}, by));
  if (housing.length === 0) findings.push(supporting('no-housing-class-listed', 'note', {}, by));
  if (input.isLightAlloy === true) findings.push(supporting('light-alloy-wants-tighter', 'care', {}, source('bearing-handbook-reprints', 'page', 'light alloy housings: tighter than listed')));
  if (input.isSplitHousing === true && input.outerRingLoad !== 'stationary') findings.push(supporting('split-housing-not-for-this', 'care', {}, by));
  return findings;
}
