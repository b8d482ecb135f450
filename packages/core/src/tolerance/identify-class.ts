import * as z from 'zod/mini';
import { deviationField, lengthField } from '../quantity/index.js';
import {
  candourFields,
  choiceField,
  defineCalculation,
  outputNumber,
  plainGeometry,
  source,
  textField,
  type HeldMark,
  type WorkingStep,
} from '../result/index.js';
import { classLimitsAt, type ClassLimits } from './internal/class-limits.js';
import { classNames, type ClassName } from './internal/class-names.js';
import { preferenceOf, preferenceSource, type Preference } from './internal/class-preference.js';
import { givenRange, type GivenRange } from './internal/given-range.js';
import { nominalField } from './internal/nominal-field.js';
import { sizeStepOf } from './internal/size-steps.js';
import { settledUm } from './internal/settled.js';

/** A class that may be the one that was meant, with how it lies to what was given. */
export interface ClassCandidate {
  readonly toleranceClass: string;
  /** Whether the selection for general purposes names it first, second, or not at all. */
  readonly preference: Preference;
  readonly upperLimitDeviationUm: number;
  readonly lowerLimitDeviationUm: number;
  readonly standardToleranceUm: number;
  /** Room above the given range; negative where the range reaches beyond the zone. */
  readonly upperMarginUm: number;
  /** Room below the given range; negative where the range reaches beyond the zone. */
  readonly lowerMarginUm: number;
  /** How far both limits are away together, signs left out. */
  readonly differenceUm: number;
  readonly held: HeldMark;
}

const longestList = 12;

const candidates = z.readonly(
  z.array(
    z.strictObject({
      toleranceClass: textField({ label: 'tolerance class' }),
      preference: choiceField(['first', 'second', 'none'], { label: 'preference in the selection for general purposes' }),
      upperLimitDeviationUm: outputNumber('upper limit deviation', 'µm'),
      lowerLimitDeviationUm: outputNumber('lower limit deviation', 'µm'),
      standardToleranceUm: outputNumber('standard tolerance', 'µm'),
      upperMarginUm: outputNumber('room above the given range', 'µm'),
      lowerMarginUm: outputNumber('room below the given range', 'µm'),
      differenceUm: outputNumber('distance of both limits together', 'µm'),
      held: choiceField(['page', 'computed', 'memory', 'practice'], { label: 'how its least trusted cell is held' }),
    }),
  ),
);

const givenDeviation = (label: string) => z.optional(deviationField({ label, from: -100_000, upTo: 100_000, unit: 'µm' }));
const givenSize = (label: string) => z.optional(lengthField({ label, over: 0, upTo: 4000, unit: 'mm' }));

/**
 * Which class is this?  Classes whose zone equals the given range, holds it, or lies nearest to it
 * @returns matching, containing (preferred first, then narrowest), nearest (by |ES − U| + |EI − L|); at most 12 each, with counts
 * @throws CalculationError invalid-input | contradiction | outside-table
 * @source iso-286-1-2010, Tables 1 to 5 (held as: class by class, see `held`); iso-1829-1975, preference (held as: memory)
 * @example identifyClass.run({ nominalMm: 25, kind: 'hole', upperLimitDeviationUm: 21, lowerLimitDeviationUm: 0 }).matching[0].toleranceClass // 'H7'
 */
export const identifyClass = defineCalculation({
  name: 'identify-class',
  summary: 'ISO 286 classes that fit given limits or measured sizes',
  input: z.strictObject({
    nominalMm: nominalField,
    kind: choiceField(['hole', 'shaft'], { label: 'hole or shaft' }),
    upperLimitDeviationUm: givenDeviation('upper limit deviation'),
    lowerLimitDeviationUm: givenDeviation('lower limit deviation'),
    largestMm: givenSize('largest size, permitted or measured'),
    smallestMm: givenSize('smallest size, permitted or measured'),
    sizesMm: z.optional(
      z.array(lengthField({ label: 'measured size', over: 0, upTo: 4000, unit: 'mm' })).check(z.minLength(1), z.maxLength(10_000)),
    ),
  }),
  output: z.strictObject({
    upperUm: outputNumber('upper end of the given range', 'µm'),
    lowerUm: outputNumber('lower end of the given range', 'µm'),
    matching: candidates,
    matchingCount: outputNumber('classes that equal the range', ''),
    containing: candidates,
    containingCount: outputNumber('classes that hold the range', ''),
    nearest: candidates,
    consideredCount: outputNumber('classes that the standard gives for this size', ''),
    ...candourFields,
  }),
  compute(input) {
    const range = givenRange(input);
    const step = sizeStepOf(input.nominalMm);
    const given = classNames.flatMap((name) => {
      if (name.kind !== input.kind) return [];
      const limits = classLimitsAt(name, step);
      return limits === null ? [] : [{ name, limits }];
    });
    const all = given.map(({ name, limits }) => candidate(name, limits, range));
    const matching = all.filter(({ differenceUm }) => differenceUm === 0).sort(byPreferenceThenWidth);
    const containing = all.filter(({ upperMarginUm, lowerMarginUm }) => upperMarginUm >= 0 && lowerMarginUm >= 0).sort(byPreferenceThenWidth);
    const nearest = [...all].sort(byDifference);
    return {
      upperUm: range.upperUm,
      lowerUm: range.lowerUm,
      matching: matching.slice(0, longestList),
      matchingCount: matching.length,
      containing: containing.slice(0, longestList),
      containingCount: containing.length,
      nearest: nearest.slice(0, longestList),
      consideredCount: all.length,
      assumptions: [],
      notChecked: range.form === 'deviations' ? [] : ['measurement-uncertainty'],
    };
  },
  explain(input, output) {
    const range = givenRange(input);
    const [nearest] = output.nearest;
    return [...rangeSteps(input.nominalMm, range), ...(nearest === undefined ? [] : candidateSteps(range, nearest))];
  },
});

export type IdentifyClassInput = Readonly<Parameters<typeof identifyClass.compute>[0]>;

export type IdentifiedClasses = Readonly<ReturnType<typeof identifyClass.compute>>;

function candidate(name: ClassName, limits: ClassLimits, range: GivenRange): ClassCandidate {
  const upperMarginUm = settledUm(limits.upperUm - range.upperUm);
  const lowerMarginUm = settledUm(range.lowerUm - limits.lowerUm);
  return {
    toleranceClass: name.text,
    preference: preferenceOf(name),
    upperLimitDeviationUm: limits.upperUm,
    lowerLimitDeviationUm: limits.lowerUm,
    standardToleranceUm: limits.toleranceUm,
    upperMarginUm,
    lowerMarginUm,
    differenceUm: settledUm(Math.abs(upperMarginUm) + Math.abs(lowerMarginUm)),
    held: limits.held,
  };
}

const preferenceRank: Readonly<Record<Preference, number>> = { first: 0, second: 1, none: 2 };

function byPreferenceThenWidth(a: ClassCandidate, b: ClassCandidate): number {
  return (
    preferenceRank[a.preference] - preferenceRank[b.preference] ||
    a.standardToleranceUm - b.standardToleranceUm ||
    a.differenceUm - b.differenceUm
  );
}

function byDifference(a: ClassCandidate, b: ClassCandidate): number {
  return a.differenceUm - b.differenceUm || preferenceRank[a.preference] - preferenceRank[b.preference] || a.standardToleranceUm - b.standardToleranceUm;
}

function rangeSteps(nominalMm: number, range: GivenRange): readonly WorkingStep[] {
  const { largestMm, smallestMm } = range;
  if (largestMm === undefined || smallestMm === undefined) return [];
  const rows = [
    ['U', 'upper end of the given range', 'D_largest', largestMm, range.upperUm],
    ['L', 'lower end of the given range', 'D_smallest', smallestMm, range.lowerUm],
  ] as const;
  return rows.map(([symbol, meaning, size, sizeMm, value]) => ({
    kind: 'formula',
    symbol,
    meaning,
    formula: `round((${size} - D) * 1000000) / 1000`,
    scope: { [size]: sizeMm, D: nominalMm },
    value,
    unit: 'µm',
    source: plainGeometry,
  }));
}

function candidateSteps(range: GivenRange, nearest: ClassCandidate): readonly WorkingStep[] {
  const upper = nearest.upperLimitDeviationUm;
  const lower = nearest.lowerLimitDeviationUm;
  const rows = [
    ['m_upper', 'room above the given range', 'Z_upper - U', { Z_upper: upper, U: range.upperUm }, nearest.upperMarginUm],
    ['m_lower', 'room below the given range', 'L - Z_lower', { L: range.lowerUm, Z_lower: lower }, nearest.lowerMarginUm],
    ['d', 'distance of both limits together', 'abs(m_upper) + abs(m_lower)', { m_upper: nearest.upperMarginUm, m_lower: nearest.lowerMarginUm }, nearest.differenceUm],
  ] as const;
  return [
    {
      kind: 'choice',
      symbol: 'class',
      meaning: 'nearest class',
      value: nearest.toleranceClass,
      unit: '',
      why: nearest.differenceUm === 0 ? 'its limits equal the given ones' : 'of all classes for this size its limits are the least away, both taken together',
      source: source('iso-286-1-2010', nearest.held, 'Tables 1 to 5'),
    },
    {
      kind: 'choice',
      symbol: 'preference',
      meaning: 'preference in the selection for general purposes',
      value: nearest.preference,
      unit: '',
      why: nearest.preference === 'none' ? 'the selection does not name it' : `the selection names it as ${nearest.preference} choice`,
      source: preferenceSource,
    },
    ...rows.map(
      ([symbol, meaning, formula, scope, value]): WorkingStep => ({ kind: 'formula', symbol, meaning, formula, scope, value, unit: 'µm', source: plainGeometry }),
    ),
  ];
}
