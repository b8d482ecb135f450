import { expect, test } from 'vitest';
import { toleranceZone } from '@seatwright/core/tolerance';
import { expectListed, type Departure } from './internal/departures.js';
import { cellOf, printedTable } from './internal/printed-table.js';

/**
 * ISO 286 worked anew from the rules of the system, without its tables: geometric mean of a range of sizes, tolerance unit,
 * formula of the letter, rounding. Ranges, formulas and steps of rounding are those of ISO 286-1:1988, annex A (from memory).
 * Where the printed standard departs from its own rule, the cell stands in `iso-286-departures.md`, no more and no fewer.
 */
const mainEnds = [3, 6, 10, 18, 30, 50, 80, 120, 180, 250, 315, 400, 500, 630, 800, 1000, 1250, 1600, 2000, 2500, 3150];
const betweenEnds = [14, 24, 40, 65, 100, 140, 160, 200, 225, 280, 355, 450, 560, 710, 900, 1120, 1400, 1800, 2240, 2800];
const fineEnds = [...mainEnds, ...betweenEnds].sort((a, b) => a - b);

interface Range {
  readonly over: number;
  readonly upTo: number;
}
const rangesOf = (ends: readonly number[]): readonly Range[] => ends.map((upTo, i) => ({ over: ends[i - 1] ?? 0, upTo }));
const mean = ({ over, upTo }: Range): number => Math.sqrt(Math.max(1, over) * upTo);
const mainRange = (size: number): Range => rangesOf(mainEnds).find(({ over, upTo }) => size > over && size <= upTo) ?? { over: 0, upTo: 0 };

/** Rows: value up to which a step of rounding holds. */
type Rounding = readonly (readonly [upTo: number, step: number])[];
const gradesTo500: Rounding = [[100, 1], [200, 5], [500, 10]];
const gradesOver500: Rounding = [[60, 1], [100, 2], [200, 5], [500, 10], [1000, 20], [2000, 50], [5000, 100]];
const clearanceLetters: Rounding = [[45, 1], [60, 2], [200, 5], [560, 10], [1000, 20], [2000, 50]];
const interferenceLetters: Rounding = [[100, 1], [300, 2], [600, 5], [800, 10], [1000, 20], [2000, 50], [5000, 100]];
const lettersOver500: Rounding = [[60, 1], [100, 2], [200, 5], [500, 10], [1000, 20], [2000, 50], [5000, 100]];

const stepOf = (value: number, rounding: Rounding): number => rounding.find(([upTo]) => Math.abs(value) <= upTo)?.[1] ?? Number.NaN;

/** Printed value against formula and rounded formula; null where the rounded formula is what is printed. */
function departure({ over, upTo }: Range, column: string, printed: number, formula: number, rounding: Rounding): Departure | null {
  const step = stepOf(formula, rounding);
  const rounded = Math.round(formula / step) * step;
  return printed === rounded ? null : { over, upTo, column, printed, formula, rounded, step };
}

const units = [7, 10, 16, 25, 40, 64, 100];
const unitOf = (range: Range): number => (range.upTo > 500 ? 0.004 * mean(range) + 2.1 : 0.45 * Math.cbrt(mean(range)) + 0.001 * mean(range));

const zoneOf = (nominalMm: number, toleranceClass: string) => toleranceZone.run({ nominalMm, toleranceClass });
/** Just over the lower end, in the middle, at the upper end. */
const sizesIn = ({ over, upTo }: Range): readonly number[] => [over + 0.001, (over + upTo) / 2, upTo];

/** The one value that a quantity has over a range. */
function onlyOne(range: Range, quantity: (size: number) => number): number {
  const [value = Number.NaN, ...others] = new Set(sizesIn(range).filter((size) => size > 1).map(quantity));
  expect(others).toEqual([]);
  return value;
}

test('grades 5 to 18 over all sizes are the rounded multiples of i and I; from 12 on ten times the one five grades finer', () => {
  const found: (Departure | null)[] = [];
  for (const range of rangesOf(mainEnds)) {
    const toleranceUm = (number: number): number => onlyOne(range, (size) => zoneOf(size, `h${number}`).standardToleranceUm);
    for (const [index, multiple] of units.entries()) {
      found.push(departure(range, `IT${index + 5}`, toleranceUm(index + 5), multiple * unitOf(range), range.upTo > 500 ? gradesOver500 : gradesTo500));
    }
    for (let number = 12; number <= 18; number += 1) expect(toleranceUm(number)).toBe(10 * toleranceUm(number - 5));
  }
  expectListed('grades', found);
});

test('grades 1 to 4 over 500 mm are 2, 2.7, 3.7 and 5 of I', () => {
  const found: (Departure | null)[] = [];
  for (const range of rangesOf(mainEnds).filter(({ over }) => over >= 500)) {
    for (const [index, multiple] of [2, 2.7, 3.7, 5].entries()) {
      found.push(departure(range, `IT${index + 1}`, onlyOne(range, (size) => zoneOf(size, `h${index + 1}`).standardToleranceUm), multiple * unitOf(range), gradesOver500));
    }
  }
  expectListed('finest grades', found);
});

interface Letter {
  readonly letter: string;
  /** The deviation is one over a whole main step (true), or over each part of it. */
  readonly byMain: boolean;
  readonly from?: number;
  readonly upTo: number;
  readonly rounding: Rounding;
  /** µm; D is the geometric mean, `it` the tolerance of a grade there. */
  deviation(D: number, it: (number: number) => number): number;
}

const c = (D: number) => -(D <= 40 ? 52 * D ** 0.2 : 95 + 0.8 * D);
const d = (D: number) => -16 * D ** 0.44;
const e = (D: number) => -11 * D ** 0.41;
const f = (D: number) => -5.5 * D ** 0.41;
const g = (D: number) => -2.5 * D ** 0.34;
const between = (first: number, second: number) => Math.sign(first) * Math.sqrt(first * second);

const small: readonly Letter[] = [
  { letter: 'a', byMain: false, upTo: 500, rounding: clearanceLetters, deviation: (D) => -(D <= 120 ? 265 + 1.3 * D : 3.5 * D) },
  { letter: 'b', byMain: false, upTo: 500, rounding: clearanceLetters, deviation: (D) => -(D <= 160 ? 140 + 0.85 * D : 1.8 * D) },
  { letter: 'c', byMain: false, upTo: 500, rounding: clearanceLetters, deviation: c },
  { letter: 'd', byMain: true, upTo: 500, rounding: clearanceLetters, deviation: d },
  { letter: 'e', byMain: true, upTo: 500, rounding: clearanceLetters, deviation: e },
  { letter: 'ef', byMain: true, upTo: 50, rounding: clearanceLetters, deviation: (D) => between(e(D), f(D)) },
  { letter: 'f', byMain: true, upTo: 500, rounding: clearanceLetters, deviation: f },
  { letter: 'fg', byMain: true, upTo: 50, rounding: clearanceLetters, deviation: (D) => between(f(D), g(D)) },
  { letter: 'g', byMain: true, upTo: 500, rounding: clearanceLetters, deviation: g },
  { letter: 'k', byMain: true, from: 3, upTo: 500, rounding: interferenceLetters, deviation: (D) => 0.6 * Math.cbrt(D) },
  { letter: 'm', byMain: true, upTo: 500, rounding: interferenceLetters, deviation: (_D, it) => it(7) - it(6) },
  { letter: 'n', byMain: true, upTo: 500, rounding: interferenceLetters, deviation: (D) => 5 * D ** 0.34 },
  { letter: 's', byMain: false, from: 50, upTo: 500, rounding: interferenceLetters, deviation: (D, it) => it(7) + 0.4 * D },
  { letter: 't', byMain: false, from: 24, upTo: 500, rounding: interferenceLetters, deviation: (D, it) => it(7) + 0.63 * D },
  { letter: 'u', byMain: false, upTo: 500, rounding: interferenceLetters, deviation: (D, it) => it(7) + D },
  { letter: 'v', byMain: false, from: 14, upTo: 500, rounding: interferenceLetters, deviation: (D, it) => it(7) + 1.25 * D },
  { letter: 'x', byMain: false, upTo: 500, rounding: interferenceLetters, deviation: (D, it) => it(7) + 1.6 * D },
  { letter: 'y', byMain: false, from: 18, upTo: 500, rounding: interferenceLetters, deviation: (D, it) => it(7) + 2 * D },
  { letter: 'z', byMain: false, upTo: 500, rounding: interferenceLetters, deviation: (D, it) => it(7) + 2.5 * D },
  { letter: 'za', byMain: false, upTo: 500, rounding: interferenceLetters, deviation: (D, it) => it(8) + 3.15 * D },
  { letter: 'zb', byMain: false, upTo: 500, rounding: interferenceLetters, deviation: (D, it) => it(9) + 4 * D },
  { letter: 'zc', byMain: false, upTo: 500, rounding: interferenceLetters, deviation: (D, it) => it(10) + 5 * D },
];

const p = (D: number) => 0.072 * D + 37.8;
const s = (D: number, it: (number: number) => number) => it(7) + 0.4 * D;
const overLarge: readonly Letter[] = [
  { letter: 'd', byMain: true, upTo: 3150, rounding: lettersOver500, deviation: d },
  { letter: 'e', byMain: true, upTo: 3150, rounding: lettersOver500, deviation: e },
  { letter: 'f', byMain: true, upTo: 3150, rounding: lettersOver500, deviation: f },
  { letter: 'g', byMain: true, upTo: 3150, rounding: lettersOver500, deviation: g },
  { letter: 'm', byMain: true, upTo: 3150, rounding: lettersOver500, deviation: (D) => 0.024 * D + 12.6 },
  { letter: 'n', byMain: true, upTo: 3150, rounding: lettersOver500, deviation: (D) => 0.04 * D + 21 },
  { letter: 'p', byMain: true, upTo: 3150, rounding: lettersOver500, deviation: p },
  { letter: 's', byMain: false, upTo: 3150, rounding: lettersOver500, deviation: s },
  { letter: 't', byMain: false, upTo: 3150, rounding: lettersOver500, deviation: (D, it) => it(7) + 0.63 * D },
  { letter: 'u', byMain: false, upTo: 3150, rounding: lettersOver500, deviation: (D, it) => it(7) + D },
];
const large = overLarge.map((letter) => ({ ...letter, from: 500 }));

const printedGrades = printedTable('tolerance/iso-286-1-standard-tolerances');

test('fundamental deviations of shafts over all sizes are their rounded formulas, with the grades as printed', () => {
  const found: (Departure | null)[] = [];
  for (const range of rangesOf(fineEnds)) {
    const whole = mainRange(range.upTo);
    const it = (number: number): number => cellOf(printedGrades.find((row) => row['upToMm'] === whole.upTo), `it${number}Um`);
    for (const { letter, byMain, from = 0, upTo, rounding, deviation } of [...small, ...large]) {
      if (range.over < from || range.upTo > upTo) continue;
      const printed = onlyOne(range, (size) => zoneOf(size, `${letter}6`).fundamentalDeviationUm);
      found.push(departure(range, letter, printed, deviation(mean(byMain ? whole : range), it), rounding));
    }
  }
  expectListed('deviations', found);
});
