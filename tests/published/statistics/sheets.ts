import {
  combineBudget,
  conformanceProbability,
  conformity,
  decisionZones,
  effectiveDegreesOfFreedom,
  grubbsCriticalRatio,
  measuredSizeCalculation,
  normalProbability,
  normalQuantile,
  studentQuantile,
} from '@seatwright/core/measure';
import type { Allowed, Entry, Sheet } from '../ledger/sheet.js';
import { conformance, decisions, grubbs1, grubbs5, normal, normalTail, student, studentLevels, tableG2, tableG2Levels, twentyReadings } from './printed-tables.js';

const common = { kind: 'another page', unit: '', allowed: 'printed digits', layout: 'grid' } as const;
const recalled = (row: string, column: string, printed: string, ours: () => number | string | null | undefined, allowed?: Allowed): Entry => ({ row, column, printed, how: 'memory', ours: () => [ours()], ...(allowed === undefined ? {} : { allowed }) });
const quantiles = (table: Readonly<Record<number, string>>, levels: readonly (readonly [name: string, level: number])[]): readonly Entry[] =>
  Object.entries(table).flatMap(([count, line]) => line.split(' ').map((printed, i) => recalled(count, levels[i]?.[0] ?? '', printed, () => studentQuantile(levels[i]?.[1] ?? Number.NaN, Number(count)))));

const within = (deviations: number) => 2 * normalProbability(deviations) - 1;
const levelOf: Readonly<Record<string, number>> = { '68.27': within(1), '95.45': within(2), '99.73': within(3) };

const lastDigitOff = [3, 8, 15, 16, 18, 20];
/** For three readings no distance above 2/√3 = 1.1547 exists at all, yet 1.155 is printed: the table was made from rounded t values. */
const fromRoundedT: Allowed = { difference: 0.0015, why: 'the table was made from rounded t values; the relation to t that the paper gives is worked with full digits' };

/** H.1: calibration of a 50 mm end gauge; standard uncertainties in nm with their degrees of freedom. */
const endGauge = [{ mm: 25, count: 18 }, { mm: 9.7, count: 25.6 }, { mm: 2.9, count: 50 }, { mm: 16.6, count: 2 }] as const;
const endGaugeBudget = () =>
  combineBudget(endGauge.map(({ mm, count }) => ({ component: 'stated', instrument: null, standardUncertaintyMm: mm, distribution: 'normal', sensitivityFactor: 1, degreesOfFreedomCount: count }) as const));
const twenty = () => measuredSizeCalculation.run({ measures: 'outside', readings: [{ instrument: 'outside-micrometer', valuesMm: twentyReadings }] });
const exactly: Allowed = { difference: 0, why: 'exactly as printed' };

const shaft = { measures: 'outside', lowerLimitMm: 49.9, upperLimitMm: 50.1, expandedUncertaintyMm: 0.02 } as const;
const upTo = (upperLimitMm: number, measured: number, u: number, lowerLimitMm: number | null = null) => conformanceProbability({ lowMm: measured, highMm: measured }, { lowerLimitMm, upperLimitMm }, u);

export const statistics: readonly Sheet[] = [
  {
    ...common, work: 'abramowitz-stegun-1964', place: 'Table 26.1', title: 'Normal probability P(x), and 1 − P(−x)', asked: 'normal probability on both sides',
    entries: normal.map(([z, printed]) => ({ ...recalled(`x = ${z}`, 'P', printed, () => null, { difference: 1e-14, why: 'fifteen digits of a double' }), ours: () => [normalProbability(z), 1 - normalProbability(-z)] })),
  },
  { ...common, work: 'abramowitz-stegun-1964', place: 'Table 26.5', title: 'x for the upper tail Q', asked: 'normal quantile', entries: normalTail.map(([tail, printed]) => recalled(`Q = ${tail}`, 'x', printed, () => normalQuantile(1 - tail))) },
  { ...common, work: 'abramowitz-stegun-1964', place: 'Table 26.10', title: "Student's t by degrees of freedom, two-sided", asked: 'quantile of t', entries: quantiles(student, studentLevels.map((level) => [String(level), level])) },
  { ...common, work: 'jcgm-100-2008', place: 'Table G.2', title: "Student's t by degrees of freedom, level in %", asked: 'quantile of t', entries: quantiles(tableG2, tableG2Levels.map((name) => [name, levelOf[name] ?? Number(name) / 100])) },
  {
    ...common, layout: 'list', work: 'jcgm-100-2008', place: 'H.1, end gauge', title: 'Combined uncertainty, degrees of freedom, expanded uncertainty', asked: 'budget of the printed components',
    entries: [
      recalled('H.1.4', 'combined standard uncertainty [nm]', '32', () => endGaugeBudget().standardUncertaintyMm),
      recalled('H.1.6', 'effective degrees of freedom', '16.7', () => effectiveDegreesOfFreedom(endGauge), { difference: 0.1, why: 'the components are printed to two digits; 25 nm alone moves the result by 0.5 within its rounding' }),
      recalled('H.1.6', 'effective degrees of freedom, whole', '16', () => endGaugeBudget().effectiveDegreesOfFreedomCount, exactly),
      recalled('H.1.6', 't (99 %, 16)', '2.92', () => studentQuantile(0.99, 16)),
      recalled('H.1.6', 'expanded uncertainty [nm]', '93', () => studentQuantile(0.99, 16) * 32),
    ],
  },
  {
    ...common, layout: 'list', work: 'jcgm-100-2008', place: '4.4.3, twenty readings', title: 'Mean, standard deviation, that of the mean', asked: 'measured size of the readings',
    entries: [
      recalled('twenty readings', 'mean', '100.145', () => twenty().meanMm),
      recalled('twenty readings', 'standard deviation', '1.489', () => twenty().repeatabilityMm),
      recalled('twenty readings', 'of the mean', '0.333', () => twenty().budget.find(({ component }) => component === 'repeatability')?.standardUncertaintyMm),
    ],
  },
  {
    ...common, layout: 'list', work: 'jcgm-106-2012', place: 'clauses 7 and 8', title: 'Conformance probability', asked: 'conformance probability',
    entries: [
      recalled('7.3.3: −5.47 V, u 0.05 V, limit −5.40 V', 'probability', '0.92', () => upTo(-5.4, -5.47, 0.05)),
      recalled('7.4: 13.6, u 1.8, limits 12.5 and 16.3', 'probability', '0.66', () => upTo(16.3, 13.6, 1.8, 12.5)),
      recalled('7.4', 'Φ(1.5)', '0.93', () => normalProbability(1.5)),
      recalled('7.4', 'Φ(−0.61)', '0.27', () => normalProbability(-0.61)),
      recalled('8.3.2: guard band U = 2 u', 'probability [%]', '97.7', () => upTo(10, 9, 0.5) * 100),
    ],
  },
  { ...common, work: 'jcgm-106-2012', place: 'Table 1', title: 'Distance z from a limit', asked: 'normal quantile', entries: conformance.map(([p, printed]) => recalled(`p = ${p}`, 'z', printed, () => normalQuantile(p))) },
  { ...common, work: 'grubbs-1969', place: 'Table I, 5 % either side (ISO 5725-2, 5 %)', title: 'Critical ratio by number of readings', asked: 'critical ratio', entries: Object.entries(grubbs5).map(([count, printed]) => recalled(count, 'ratio', printed, () => grubbsCriticalRatio(Number(count), 0.05), lastDigitOff.includes(Number(count)) ? fromRoundedT : undefined)) },
  { ...common, work: 'iso-5725-2', place: "critical values of Grubbs' test, 1 % either side", title: 'Critical ratio by number of readings', asked: 'critical ratio', entries: Object.entries(grubbs1).map(([count, printed]) => recalled(count, 'ratio', printed, () => grubbsCriticalRatio(Number(count), 0.01))) },
  { ...common, layout: 'list', work: 'iso-14253-1-1998', place: 'clause 5', title: 'Decision between 49.9 and 50.1 mm with U = 0.02 mm', asked: 'conformity', entries: decisions.map(([measuredMm, decision]) => recalled(`${measuredMm} mm`, 'decision', decision, () => conformity.run({ ...shaft, measuredMm }).decision)) },
  {
    ...common, layout: 'list', work: 'iso-14253-1-2017', place: 'guard band at 95 %, one limit', title: 'Guard band over u and over U', asked: 'decision zones',
    entries: [
      recalled('guard band', 'over u', '1.645', () => decisionZones({ lowerLimitMm: 0, upperLimitMm: 100 }, { standardUncertaintyMm: 1, expandedUncertaintyMm: 2 }, 'probability-95').guardBandMm),
      recalled('guard band', 'over U', '0.82', () => decisionZones({ lowerLimitMm: 0, upperLimitMm: 100 }, { standardUncertaintyMm: 1, expandedUncertaintyMm: 2 }, 'probability-95').guardBandMm / 2),
    ],
  },
];
