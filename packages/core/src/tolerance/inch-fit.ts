import * as z from 'zod/mini';
import { inchField } from '../quantity/index.js';
import {
  candourFields,
  choiceField,
  defineCalculation,
  noSuchClass,
  nothingAssumed,
  outputNumber,
  outsideTable,
  plainGeometry,
  source,
  textField,
  type HeldMark,
  type WorkingStep,
} from '../result/index.js';
import type { FitKind } from './fit.js';
import { findInchFitRow, inchFitClasses, inchFitTable, type InchFitRow } from './internal/inch-fit-rows.js';

/** Limits of one part in thousandths of an inch from the nominal size. */
export interface InchLimits {
  readonly upperThou: number;
  readonly lowerThou: number;
}

/** Limits of hole and shaft in an inch fit, and what they leave between the parts; diametral. */
export interface InchFitLimits {
  readonly nominalIn: number;
  readonly fitClass: string;
  readonly kind: FitKind;
  readonly hole: InchLimits;
  readonly shaft: InchLimits;
  /** Signed clearance: interference is negative. */
  readonly minimumThou: number;
  readonly maximumThou: number;
  readonly holeLargestIn: number;
  readonly holeSmallestIn: number;
  readonly shaftLargestIn: number;
  readonly shaftSmallestIn: number;
  readonly held: HeldMark;
}

const limitsField = z.strictObject({
  upperThou: outputNumber('upper limit deviation', 'thou'),
  lowerThou: outputNumber('lower limit deviation', 'thou'),
});

/**
 * Limits of hole and shaft in an American standard inch fit.  c_min = hole lower − shaft upper, c_max = hole upper − shaft lower
 * @returns hole, shaft [thou]; minimumThou ≤ maximumThou [thou], clearance positive, interference negative; scalar
 * @throws CalculationError invalid-input | no-such-class | outside-table
 * @source ansi-b4-1-1967, tables of RC, LC, LT, LN and FN fits (held as: row by row, see `held`)
 * @example inchFit.compute({ nominalIn: 1, fitClass: 'RC5' }).minimumThou // 1.6
 */
export const inchFit = defineCalculation({
  name: 'inch-fit',
  summary: 'Limits of hole and shaft in an ANSI B4.1 inch fit',
  input: z.strictObject({
    nominalIn: inchField({ label: 'nominal size', over: 0, upTo: 1000, unit: 'in', typical: '1', help: 'a number of inches, or text such as 3/4 or 1 3/8' }),
    fitClass: textField({ label: 'class of fit', help: 'RC running, LC clearance, LT transition, LN interference, FN force', typical: 'FN2', longest: 16 }),
  }),
  output: z.strictObject({
    nominalIn: outputNumber('nominal size', 'in'),
    fitClass: textField({ label: 'class of fit' }),
    kind: choiceField(['clearance', 'transition', 'interference'], { label: 'kind of fit' }),
    hole: limitsField,
    shaft: limitsField,
    minimumThou: outputNumber('smallest clearance, interference negative', 'thou'),
    maximumThou: outputNumber('largest clearance, interference negative', 'thou'),
    holeLargestIn: outputNumber('largest hole', 'in'),
    holeSmallestIn: outputNumber('smallest hole', 'in'),
    shaftLargestIn: outputNumber('largest shaft', 'in'),
    shaftSmallestIn: outputNumber('smallest shaft', 'in'),
    held: choiceField(['page', 'computed', 'memory', 'practice'], { label: 'how its row is held' }),
    ...candourFields,
  }),
  compute(input) {
    const { name, row } = rowFor(input.nominalIn, input.fitClass);
    const nominalIn = settled(input.nominalIn);
    const minimumThou = settled(row.holeLowerThou - row.shaftUpperThou);
    const maximumThou = settled(row.holeUpperThou - row.shaftLowerThou);
    return {
      nominalIn,
      fitClass: name,
      kind: kindOf(minimumThou, maximumThou),
      hole: { upperThou: row.holeUpperThou, lowerThou: row.holeLowerThou },
      shaft: { upperThou: row.shaftUpperThou, lowerThou: row.shaftLowerThou },
      minimumThou,
      maximumThou,
      holeLargestIn: settled(nominalIn + row.holeUpperThou / 1000),
      holeSmallestIn: settled(nominalIn + row.holeLowerThou / 1000),
      shaftLargestIn: settled(nominalIn + row.shaftUpperThou / 1000),
      shaftSmallestIn: settled(nominalIn + row.shaftLowerThou / 1000),
      held: row.held,
      assumptions: nothingAssumed.assumptions,
      notChecked: notLookedAt,
    };
  },
  explain: (_, output) => working(output),
});

export type InchFitInput = Readonly<Parameters<typeof inchFit.compute>[0]>;

export type InchFit = Readonly<ReturnType<typeof inchFit.compute>>;

const notLookedAt: readonly string[] = Object.freeze(['fit-away-from-20-c', 'form-and-roughness']);

function rowFor(nominalIn: number, fitClass: string): { readonly name: string; readonly row: InchFitRow } {
  const name = fitClass.replace(/\s+/gu, '').toUpperCase();
  const group = inchFitClasses.get(name);
  if (group === undefined) {
    const known = [...inchFitClasses.keys()];
    const family = known.filter((each) => each.slice(0, 2) === name.slice(0, 2));
    throw noSuchClass('fitClass', fitClass, family, `ANSI B4.1 has ${known.join(', ')}`);
  }
  const row = findInchFitRow(group, nominalIn);
  if (row === undefined) {
    const { overIn, upToIn } = group;
    throw outsideTable(`ANSI B4.1 ${name}`, 'nominalIn', nominalIn, { over: overIn[0] ?? 0, upTo: upToIn.at(-1) ?? 0, unit: 'in' });
  }
  return { name, row };
}

/** Sums and differences of table values land on the decimal number that is meant; never −0. */
function settled(value: number): number {
  return Math.round(value * 1e7) / 1e7 + 0;
}

function working(output: InchFitLimits): readonly WorkingStep[] {
  const row = rowFor(output.nominalIn, output.fitClass).row;
  const from = source(inchFitTable.source, row.held, inchFitTable.clause);
  const lookups = [
    ['H_upper', 'upper limit deviation of the hole', 'holeUpperThou', row.holeUpperThou],
    ['H_lower', 'lower limit deviation of the hole', 'holeLowerThou', row.holeLowerThou],
    ['S_upper', 'upper limit deviation of the shaft', 'shaftUpperThou', row.shaftUpperThou],
    ['S_lower', 'lower limit deviation of the shaft', 'shaftLowerThou', row.shaftLowerThou],
  ] as const;
  const differences = [
    ['c_min', 'smallest clearance, interference negative', 'H_lower - S_upper', { H_lower: row.holeLowerThou, S_upper: row.shaftUpperThou }, output.minimumThou],
    ['c_max', 'largest clearance, interference negative', 'H_upper - S_lower', { H_upper: row.holeUpperThou, S_lower: row.shaftLowerThou }, output.maximumThou],
  ] as const;
  const sizes = [
    ['D_hole_max', 'largest hole', row.holeUpperThou, output.holeLargestIn],
    ['D_hole_min', 'smallest hole', row.holeLowerThou, output.holeSmallestIn],
    ['D_shaft_max', 'largest shaft', row.shaftUpperThou, output.shaftLargestIn],
    ['D_shaft_min', 'smallest shaft', row.shaftLowerThou, output.shaftSmallestIn],
  ] as const;
  const range = `${output.fitClass}, over ${row.overIn}, up to and including ${row.upToIn} in`;
  return [
    ...lookups.map(
      ([symbol, meaning, column, value]): WorkingStep => ({ kind: 'lookup', symbol, meaning, table: inchFitTable.id, row: range, column, value, unit: 'thou', source: from }),
    ),
    ...differences.map(
      ([symbol, meaning, formula, scope, value]): WorkingStep => ({ kind: 'formula', symbol, meaning, formula, scope, value, unit: 'thou', source: from }),
    ),
    ...sizes.map(
      ([symbol, meaning, deviationThou, value]): WorkingStep => ({
        kind: 'formula',
        symbol,
        meaning,
        formula: 'D + dev / 1000',
        scope: { D: output.nominalIn, dev: deviationThou },
        value,
        unit: 'in',
        source: plainGeometry,
      }),
    ),
  ];
}

function kindOf(minimumThou: number, maximumThou: number): 'clearance' | 'transition' | 'interference' {
  if (minimumThou >= 0) return 'clearance';
  return maximumThou <= 0 ? 'interference' : 'transition';
}
