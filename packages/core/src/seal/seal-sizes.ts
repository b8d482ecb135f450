import * as z from 'zod/mini';
import { lengthField } from '../quantity/index.js';
import { CalculationError, candourFields, choiceField, deciding, defineCalculation, findingField, outputNumber, plainGeometry, source, spanField, supporting, verdictField, verdictOf, verdicts, type Finding, type Span, type WorkingStep } from '../result/index.js';
import { standardSizes } from '../tables/generated/standard-sizes.js';
import { boreBandOf } from './bore-band.js';
import { newLipInterferenceMm } from './internal/checks/shaft-size.js';
import { halfStandardStepMm, inchPartsMade, standardSizeSource } from './internal/half-step.js';
import { inchFractionWithin, nearestInchFraction } from './internal/inch-fraction.js';
import { sealLimit } from './internal/seal-limit.js';
import { standardListsOf } from './internal/standard-lists.js';
import { pressFitAllowanceOf } from './press-fit-allowance.js';
import { requirementSetField, type RequirementSet } from './requirement-set.js';
import { constructions, type Construction } from './seal-field.js';
import { shaftBandOf } from './shaft-band.js';

const inputField = z.strictObject({
  shaftMm: lengthField({ label: 'shaft as measured', unit: 'mm', over: 0, upTo: 500, typical: '20' }),
  boreMm: lengthField({ label: 'bore as measured', unit: 'mm', over: 0, upTo: 530, typical: '35' }),
  widthMm: z.optional(lengthField({ label: 'width of the old seal', unit: 'mm', over: 0, upTo: 60 })),
  readingErrorMm: z.optional(lengthField({ label: 'the readings may be off by, plus or minus', unit: 'mm', from: 0, upTo: 1, typical: '0.05' })),
  construction: z.optional(choiceField(constructions, { label: 'outside of the seal' })),
  requirementSet: z.optional(requirementSetField),
});

const dimensions = ['shaft', 'bore', 'width'] as const;
const maybe = (label: string, unit: string) => z.nullable(outputNumber(label, unit));

const sizeField = z.strictObject({
  shaftMm: outputNumber('shaft marked on the seal', 'mm'),
  outsideMm: outputNumber('outside marked on the seal', 'mm'),
  widthMm: outputNumber('width marked on the seal', 'mm'),
  lists: z.readonly(z.array(z.string().check(z.meta({ label: 'list that has it', unit: '' })))),
  verdict: verdictField,
  differs: z.readonly(z.array(choiceField(dimensions, { label: 'what differs' }))),
  shaftDifferenceMm: outputNumber('shaft as measured less the marked one', 'mm'),
  boreDifferenceMm: outputNumber('bore as measured less the marked outside', 'mm'),
  widthDifferenceMm: maybe('width of the old seal less the marked one', 'mm'),
  lipInterferenceMm: z.nullable(spanField('lip interference on this shaft, diametral', 'mm')),
  caseInterferenceUm: z.nullable(spanField('interference of the outside in this bore, diametral', 'µm')),
  findings: z.readonly(z.array(findingField)),
});

const inchField = z.strictObject({
  dimension: choiceField(dimensions, { label: 'what was measured' }),
  measuredMm: outputNumber('as measured', 'mm'),
  fraction: z.string().check(z.meta({ label: 'nearest sixteenth of an inch', unit: '' })),
  fractionMm: outputNumber('that, in millimetres', 'mm'),
  differenceMm: outputNumber('measured less that', 'mm'),
});

const outputField = z.strictObject({
  exact: z.readonly(z.array(sizeField)),
  near: z.readonly(z.array(sizeField)),
  inchEquivalents: z.readonly(z.array(inchField)),
  isInchLikely: z.boolean().check(z.meta({ label: 'the sizes look like inch sizes', unit: '' })),
  findings: z.readonly(z.array(findingField)),
  ...candourFields,
});

export type SealSizesInput = z.infer<typeof inputField>;
export type SealSizesOutput = z.infer<typeof outputField>;
type Size = SealSizesOutput['exact'][number];

/** [mm] What a calliper may be off by, where nobody says. */
const usualError = sealLimit('size-reading-error', 'Mm');
const nearCount = 12;
/** How far another shaft or bore may lie to be worth a repair: the wall of a sleeve on both sides, and more. */
const nearReachMm = 6;

/** Which standard seals fit a shaft and a bore as measured, which nearly do and what the difference means, and whether it is an inch size.
 * A size is exact where shaft and bore may lie within the bands that the seal is made for. The lists are held from memory: the measured
 * part decides. lip = made interference + (shaft − marked);  outside = allowance + marked − bore
 * @returns exact and near sizes, each with what differs and what that does to lip and outside; inch equivalents
 * @throws CalculationError invalid-input
 * @source iso-6194-1-2007, din-3760-1996 (sizes held as: memory); gb-9877-1-1988 (lip interference, page)
 * @example sealSizes.run({ shaftMm: '3/4 in', boreMm: '1 3/8 in' }).isInchLikely // true
 */
export const sealSizes = defineCalculation({
  name: 'seal-sizes',
  summary: 'Which standard seals fit a shaft and a bore, which nearly do, and whether it is an inch size',
  input: inputField,
  output: outputField,
  compute(input): SealSizesOutput {
    const judged = everySize(input);
    const exact = judged.filter(({ differs }) => differs.length === 0);
    const near = judged.filter(({ differs }) => differs.length > 0).slice(0, nearCount);
    const inchEquivalents = inchesOf(input);
    const isInchLikely = looksLikeInch(input, exact.length > 0 || judged.some(({ differs }) => differs.length === 1 && differs[0] === 'width'));
    return {
      exact,
      near,
      inchEquivalents,
      isInchLikely,
      findings: findingsOf(input, exact, inchEquivalents, isInchLikely),
      assumptions: input.readingErrorMm === undefined ? [{ name: 'reading-error', value: usualError.low, unit: 'mm', source: usualError.source, effect: 'which-size' }] : [],
      notChecked: ['sizes-beyond-the-lists'],
    };
  },
  explain: (input, output): readonly WorkingStep[] =>
    output.inchEquivalents.map(({ dimension, fractionMm }) => {
      const sixteenths = Math.round((fractionMm * 80) / 127);
      return { kind: 'formula', symbol: `f_${dimension}`, meaning: `nearest sixteenth of an inch to the ${dimension}`, formula: 'n / 16 * 25.4', scope: { n: sixteenths }, value: fractionMm, unit: 'mm', source: plainGeometry };
    }),
});

/** All listed sizes within reach, once each, best first: by verdict, then by how far they lie off. */
function everySize(input: SealSizesInput): readonly Size[] {
  const { columns } = standardSizes;
  const seen = new Set<string>();
  const sizes: Size[] = [];
  for (let i = 0; i < standardSizes.rowCount; i += 1) {
    const [shaftMm = 0, outsideMm = 0, widthMm = 0] = [columns.shaftMm[i], columns.outsideMm[i], columns.widthMm[i]];
    const key = `${shaftMm} ${outsideMm} ${widthMm}`;
    const shaftOff = Math.abs(input.shaftMm - shaftMm);
    const boreOff = Math.abs(input.boreMm - outsideMm);
    if (seen.has(key) || Math.min(shaftOff, boreOff) > halfStandardStepMm || Math.max(shaftOff, boreOff) > nearReachMm) continue;
    seen.add(key);
    sizes.push(sizeOf(input, shaftMm, outsideMm, widthMm));
  }
  const off = ({ shaftDifferenceMm, boreDifferenceMm, widthDifferenceMm }: Size) => Math.abs(shaftDifferenceMm) + Math.abs(boreDifferenceMm) + Math.abs(widthDifferenceMm ?? 0) / 10;
  return sizes.toSorted((a, b) => verdicts.indexOf(a.verdict) - verdicts.indexOf(b.verdict) || a.differs.length - b.differs.length || off(a) - off(b));
}

function sizeOf(input: SealSizesInput, shaftMm: number, outsideMm: number, widthMm: number): Size {
  const set = input.requirementSet ?? 'iso-6194-1';
  const errorMm = input.readingErrorMm ?? usualError.low;
  const shaftDifferenceMm = settled(input.shaftMm - shaftMm);
  const boreDifferenceMm = settled(input.boreMm - outsideMm);
  const widthDifferenceMm = input.widthMm === undefined ? null : settled(input.widthMm - widthMm);
  const shaftBand = shaftBandOf(set, shaftMm);
  const boreBand = boreBandOf(set, outsideMm);
  const differs: Size['differs'][number][] = [];
  if (outsideBand(shaftDifferenceMm, errorMm, shaftBand)) differs.push('shaft');
  if (outsideBand(boreDifferenceMm, errorMm, boreBand)) differs.push('bore');
  if (widthDifferenceMm !== null && Math.abs(widthDifferenceMm) > errorMm + halfStandardStepMm / 2) differs.push('width');
  const made = newLipInterferenceMm(shaftMm);
  const lip = made === null || Math.abs(shaftDifferenceMm) > halfStandardStepMm ? null : { low: made.low + shaftDifferenceMm, high: made.high + shaftDifferenceMm };
  const allowance = allowanceOf(set, input.construction ?? 'metal-case', outsideMm);
  const outside = allowance === null || Math.abs(boreDifferenceMm) > halfStandardStepMm ? null : { low: 1000 * (allowance.low - boreDifferenceMm), high: 1000 * (allowance.high - boreDifferenceMm) };
  const findings: Finding[] = [];
  if (differs.includes('shaft')) findings.push(shaftFinding(shaftDifferenceMm, shaftMm, lip));
  if (differs.includes('bore')) findings.push(boreFinding(boreDifferenceMm, outsideMm, outside));
  if (differs.includes('width') && widthDifferenceMm !== null) findings.push(supporting(widthDifferenceMm > 0 ? 'size-narrower' : 'size-wider', 'care', { differenceMm: Math.abs(widthDifferenceMm), markedMm: widthMm }, standardSizeSource));
  return { shaftMm, outsideMm, widthMm, lists: standardListsOf({ shaftMm, outsideMm, widthMm }), verdict: verdictOf(findings), differs, shaftDifferenceMm, boreDifferenceMm, widthDifferenceMm, lipInterferenceMm: lip, caseInterferenceUm: outside, findings };
}

function outsideBand(differenceMm: number, errorMm: number, band: { readonly lowerMm: number; readonly upperMm: number }): boolean {
  return differenceMm + errorMm < band.lowerMm - 1e-9 || differenceMm - errorMm > band.upperMm + 1e-9;
}

function allowanceOf(set: RequirementSet, construction: Construction, outsideMm: number): Span | null {
  try {
    const { allowanceMinMm, allowanceMaxMm } = pressFitAllowanceOf(set, construction, outsideMm);
    return { low: allowanceMinMm, high: allowanceMaxMm };
  } catch (error) {
    if (error instanceof CalculationError && error.code === 'outside-table') return null;
    throw error;
  }
}

function shaftFinding(differenceMm: number, markedMm: number, lip: Span | null): Finding {
  const lipSource = source('gb-9877-1-1988', 'page', 'lip interference');
  const numbers = { differenceMm: Math.abs(differenceMm), markedMm };
  if (Math.abs(differenceMm) > halfStandardStepMm) return deciding('size-for-another-shaft', 'bad', numbers, standardSizeSource);
  if (lip === null) return deciding('size-shaft-a-little-off', 'care', numbers, standardSizeSource);
  const spread = { ...numbers, lipLowMm: lip.low, lipHighMm: lip.high };
  if (lip.low <= 0) return deciding('size-lip-may-not-touch', 'bad', spread, lipSource);
  return deciding(differenceMm > 0 ? 'size-lip-stretched' : 'size-lip-slack', 'care', spread, lipSource);
}

function boreFinding(differenceMm: number, markedMm: number, outside: Span | null): Finding {
  const numbers = { differenceMm: Math.abs(differenceMm), markedMm };
  if (outside === null) return deciding('size-for-another-bore', 'bad', numbers, standardSizeSource);
  const spread = { ...numbers, leastUm: outside.low, mostUm: outside.high };
  const by = source('iso-6194-1-2007', 'memory', 'press-fit allowance');
  if (outside.low <= 0) return deciding('size-outside-may-be-loose', 'bad', spread, by);
  return deciding(differenceMm > 0 ? 'size-outside-holds-less' : 'size-outside-very-tight', 'care', spread, by);
}

function inchesOf({ shaftMm, boreMm, widthMm }: SealSizesInput): SealSizesOutput['inchEquivalents'] {
  const measured = [['shaft', shaftMm], ['bore', boreMm], ...(widthMm === undefined ? [] : [['width', widthMm] as const])] as const;
  return measured.map(([dimension, measuredMm]) => {
    const { text, sizeMm } = nearestInchFraction(measuredMm, inchPartsMade);
    return { dimension, measuredMm, fraction: text, fractionMm: sizeMm, differenceMm: settled(measuredMm - sizeMm) };
  });
}

/** Shaft and bore both lie on a sixteenth of an inch within the error of the readings, and no listed metric size takes them. */
function looksLikeInch({ shaftMm, boreMm, readingErrorMm = usualError.low }: SealSizesInput, hasMetricSize: boolean): boolean {
  const isOnSixteenth = (mm: number) => (inchFractionWithin(mm, readingErrorMm)?.denominator ?? Infinity) <= inchPartsMade;
  return !hasMetricSize && isOnSixteenth(shaftMm) && isOnSixteenth(boreMm);
}

function findingsOf(input: SealSizesInput, exact: readonly Size[], inches: SealSizesOutput['inchEquivalents'], isInchLikely: boolean): readonly Finding[] {
  const findings: Finding[] = [];
  if (exact.length > 0) findings.push(supporting('size-is-listed', 'good', { sizeCount: exact.length }, standardSizeSource));
  else findings.push(supporting('size-not-listed', 'care', {}, standardSizeSource));
  const [shaft, bore] = inches;
  if (isInchLikely && shaft !== undefined && bore !== undefined) findings.push(supporting('inch-size-suspected', 'care', { shaftInches: shaft.fraction, boreInches: bore.fraction }, plainGeometry));
  for (const { dimension, fraction, measuredMm, differenceMm } of inches) {
    const reachMm = Math.max(halfStandardStepMm / 2, input.readingErrorMm ?? usualError.low);
    if (isInchLikely || dimension === 'width' || Math.abs(differenceMm) > reachMm || Math.abs(differenceMm) < 0.001) continue;
    const code = dimension === 'shaft' ? (differenceMm > 0 ? 'inch-seal-grips-more' : 'inch-seal-grips-less') : differenceMm > 0 ? 'inch-seal-sits-looser' : 'inch-seal-sits-tighter';
    findings.push(supporting(code, 'note', { measuredMm, fraction, differenceMm: Math.abs(differenceMm) }, plainGeometry));
  }
  return findings;
}

function settled(mm: number): number {
  return Math.round(mm * 1e6) / 1e6 + 0;
}
