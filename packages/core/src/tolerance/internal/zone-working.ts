import { plainGeometry, source, type FormulaStep, type LookupStep, type SourceReference, type WorkingStep } from '../../result/index.js';
import type { ClassName } from './class-names.js';
import { deviationRuleOf, gradeNumber, isBelowIncrements, isUpToH, toleranceCell, type Cell, type DeviationRule } from './deviation-rule.js';
import { rangeText, sizeStepOf } from './size-steps.js';
import type { Zone } from './zone.js';

/**
 * Working of one zone. Holes use the standard's ES and EI, shafts es and ei; `D` is the nominal size.
 * `given` is the nominal size as it came in: a step of rounding stands first where it was finer than a millionth.
 */
export function zoneWorking(zone: Zone, name: ClassName, given: number): readonly WorkingStep[] {
  const step = sizeStepOf(zone.nominalMm);
  const symbols = symbolsOf(zone);
  const tolerance = toleranceCell(name, step);
  const steps: WorkingStep[] = [];
  if (given !== zone.nominalMm) steps.push(roundingStep(zone, given));
  steps.push(
    {
      kind: 'choice',
      symbol: 'kind',
      meaning: 'what the class is for',
      value: zone.kind,
      unit: '',
      why: zone.kind === 'hole' ? `${zone.letter} is a capital: a hole` : `${zone.letter} is small: a shaft`,
      source: source('iso-286-1-2010', 'page'),
    },
    lookup('IT', `standard tolerance, grade ${zone.grade}`, tolerance, zone.standardToleranceUm),
  );
  const rule = deviationRuleOf(name, step);
  if (rule !== null) steps.push(...deviationSteps(zone, name, rule, symbols));
  if (isBelowIncrements(name, step)) {
    steps.push({
      kind: 'choice',
      symbol: 'Delta',
      meaning: 'increment of holes K to ZC',
      value: 0,
      unit: 'µm',
      why: 'increments are given from grade 3; finer grades are taken without one',
      source: source('iso-286-1-2010', 'memory', 'Tables 2 and 3'),
    });
  }
  steps.push(limitOfSize(zone, symbols, 'upper'), limitOfSize(zone, symbols, 'lower'));
  return steps;
}

interface Symbols {
  readonly upper: string;
  readonly lower: string;
}

function symbolsOf({ kind }: Zone): Symbols {
  return kind === 'hole' ? { upper: 'ES', lower: 'EI' } : { upper: 'es', lower: 'ei' };
}

function deviationSteps(zone: Zone, name: ClassName, rule: DeviationRule, symbols: Symbols): readonly WorkingStep[] {
  if (rule.form === 'even') return evenSteps(zone, name, symbols);
  const isUpper = isUpToH(name.holeLetter) === (zone.kind === 'shaft');
  const near = isUpper ? symbols.upper : symbols.lower;
  const nearMeaning = isUpper ? 'upper limit deviation' : 'lower limit deviation';
  return [...fundamentalSteps(rule, near, nearMeaning, zone), isUpper ? lowerFromUpper(zone, symbols) : upperFromLower(zone, symbols)];
}

function fundamentalSteps(
  rule: Exclude<DeviationRule, { form: 'even' }>,
  symbol: string,
  meaning: string,
  zone: Zone,
): readonly WorkingStep[] {
  const { base } = rule;
  if (rule.form === 'plain') return [lookup(symbol, `${meaning}, the fundamental deviation of ${zone.letter}`, base, zone.fundamentalDeviationUm)];
  const baseUm = base.valueUm ?? 0;
  const incrementUm = rule.increment.valueUm ?? 0;
  const parts = [
    lookup(`${symbol}_base`, `fundamental deviation of ${zone.letter} before the increment`, base, baseUm),
    lookup('Delta', `increment of grade ${zone.grade}`, rule.increment, incrementUm),
  ];
  const sum: FormulaStep = {
    kind: 'formula',
    symbol: rule.form === 'exception' ? `${symbol}_rule` : symbol,
    meaning: rule.form === 'exception' ? 'what the rule alone would give' : `${meaning}, the fundamental deviation`,
    formula: `${symbol}_base + Delta`,
    scope: { [`${symbol}_base`]: baseUm, Delta: incrementUm },
    value: baseUm + incrementUm,
    unit: 'µm',
    source: source('iso-286-1-2010', 'page', 'Tables 2 and 3'),
  };
  if (rule.form === 'with-increment') return [...parts, sum];
  return [
    ...parts,
    sum,
    {
      kind: 'choice',
      symbol,
      meaning: `${meaning}, the fundamental deviation`,
      value: rule.printedUm,
      unit: 'µm',
      why: 'the standard prints its own value for M6 over 250, up to and including 315 mm',
      source: source('iso-286-1-2010', rule.held, 'Table 2'),
    },
  ];
}

function evenSteps(zone: Zone, name: ClassName, symbols: Symbols): readonly WorkingStep[] {
  const grade = gradeNumber(name);
  const isRoundedElsewhere = grade >= 7 && grade <= 11 && zone.standardToleranceUm % 2 === 1;
  return [
    {
      kind: 'choice',
      symbol: 'position',
      meaning: 'where the zone lies',
      value: 'even',
      unit: '',
      why: isRoundedElsewhere
        ? `${zone.letter} lies half the tolerance to either side; older editions let the half be rounded down to a whole µm, here it is exact`
        : `${zone.letter} lies half the tolerance to either side`,
      source: source('iso-286-1-2010', 'page'),
    },
    formula(symbols.upper, 'upper limit deviation', 'IT / 2', { IT: zone.standardToleranceUm }, zone.upperLimitDeviationUm),
    formula(symbols.lower, 'lower limit deviation', '-IT / 2', { IT: zone.standardToleranceUm }, zone.lowerLimitDeviationUm),
  ];
}

function lowerFromUpper(zone: Zone, { upper, lower }: Symbols): FormulaStep {
  const scope = { [upper]: zone.upperLimitDeviationUm, IT: zone.standardToleranceUm };
  return formula(lower, 'lower limit deviation', `${upper} - IT`, scope, zone.lowerLimitDeviationUm);
}

function upperFromLower(zone: Zone, { upper, lower }: Symbols): FormulaStep {
  const scope = { [lower]: zone.lowerLimitDeviationUm, IT: zone.standardToleranceUm };
  return formula(upper, 'upper limit deviation', `${lower} + IT`, scope, zone.upperLimitDeviationUm);
}

function formula(symbol: string, meaning: string, text: string, scope: FormulaStep['scope'], value: number): FormulaStep {
  return { kind: 'formula', symbol, meaning, formula: text, scope, value, unit: 'µm', source: source('iso-286-1-2010', 'page') };
}

function limitOfSize(zone: Zone, symbols: Symbols, side: 'upper' | 'lower'): FormulaStep {
  const deviation = symbols[side];
  const isUpper = side === 'upper';
  return {
    kind: 'formula',
    symbol: isUpper ? 'D_max' : 'D_min',
    meaning: isUpper ? 'upper limit of size' : 'lower limit of size',
    formula: `D + ${deviation} / 1000`,
    scope: { D: zone.nominalMm, [deviation]: isUpper ? zone.upperLimitDeviationUm : zone.lowerLimitDeviationUm },
    value: isUpper ? zone.upperLimitOfSizeMm : zone.lowerLimitOfSizeMm,
    unit: 'mm',
    source: plainGeometry,
  };
}

function roundingStep(zone: Zone, given: number): FormulaStep {
  return {
    kind: 'formula',
    symbol: 'D',
    meaning: 'nominal size, settled to a millionth of a millimetre',
    formula: 'round(D_given * 1000000) / 1000000',
    scope: { D_given: given },
    value: zone.nominalMm,
    unit: 'mm',
    source: plainGeometry,
  };
}

function lookup(symbol: string, meaning: string, cell: Cell, value: number): LookupStep {
  const { overMm, upToMm } = cell.table.columns;
  return {
    kind: 'lookup',
    symbol,
    meaning,
    table: cell.table.id,
    row: rangeText(numberAt(overMm, cell.row), numberAt(upToMm, cell.row)),
    column: cell.column,
    value,
    unit: 'µm',
    source: cellSource(cell),
  };
}

function cellSource(cell: Cell): SourceReference {
  return source(cell.table.source, cell.held, cell.table.clause);
}

function numberAt(cells: readonly unknown[] | undefined, at: number): number | undefined {
  const cell = cells?.[at];
  return typeof cell === 'number' ? cell : undefined;
}
