import { contradiction, invalidInput, type Assumption } from '../../result/index.js';
import type { PartMaterial } from '../../material/index.js';
import { zoneOfClass } from '../../tolerance/index.js';
import type { SizeLimits } from '../conformance-probability.js';
import { findInstrument, type Measures } from '../find-instrument.js';
import type { OwnInstrument } from '../instrument-field.js';
import { expandedUncertaintyMm } from '../measured-size.js';
import type { Readings } from '../readings-field.js';
import { combineBudget, type BudgetLine, type CombinedUncertainty } from '../uncertainty-budget.js';
import { analysedReadings, bestSet, instrumentLines } from './analysed-readings.js';
import { thermalCorrection, type ThermalCorrection } from './thermal-correction.js';

/** What is judged, and against what. */
export interface ConformityAsked {
  readonly measures: Measures;
  readonly readings?: readonly Readings[] | undefined;
  readonly measuredMm?: number | undefined;
  readonly instrument?: string | undefined;
  readonly expandedUncertaintyMm?: number | undefined;
  readonly instruments?: readonly OwnInstrument[] | undefined;
  readonly nominalMm?: number | undefined;
  readonly toleranceClass?: string | undefined;
  readonly lowerLimitMm?: number | undefined;
  readonly upperLimitMm?: number | undefined;
  readonly partTemperatureC?: number | undefined;
  readonly instrumentTemperatureC?: number | undefined;
  readonly partMaterial?: PartMaterial | undefined;
  readonly temperatureUncertaintyK?: number | undefined;
}

/** The local sizes judged, at 20 °C where temperatures are given, with the uncertainty of one of them. */
export interface ConformitySubject {
  readonly lowMm: number;
  readonly highMm: number;
  /** The same as read, before any temperature. */
  readonly readLowMm: number;
  readonly readHighMm: number;
  readonly readingCount: number;
  readonly instrumentName: string | null;
  /** What one instrument alone leaves, k = 2; the stated uncertainty where that was given. */
  readonly instrumentUncertaintyMm: number;
  readonly budget: readonly BudgetLine[];
  readonly combined: CombinedUncertainty;
  readonly thermal: ThermalCorrection | null;
  readonly hasOtherSets: boolean;
}

/**
 * Smallest and largest local size with the uncertainty of one reading: instrument, scatter of repeats, temperature.
 * Of several instruments the best one is judged.
 * @throws CalculationError contradiction (given twice) | invalid-input (given not at all, unknown instrument) | outside-table
 */
export function conformitySubject(input: ConformityAsked): ConformitySubject {
  const { readings, measuredMm, measures, instruments: own = [] } = input;
  if (readings !== undefined && measuredMm !== undefined) throw contradiction(['measuredMm', 'readings'], 'give one of the two');
  if (readings !== undefined) {
    for (const path of ['instrument', 'expandedUncertaintyMm'] as const) if (input[path] !== undefined) throw contradiction([path, 'readings'], 'readings name their instrument themselves');
    const sets = analysedReadings(readings, measures, own);
    const best = bestSet(sets);
    if (best === undefined) throw invalidInput('readings', readings, 'at least one set of readings');
    const values = best.points.map((point) => point.valueMm);
    const scatter = best.repeatability?.kind === 'same-place' ? best.repeatability : null;
    const scatterLines: readonly BudgetLine[] = scatter === null ? [] : [
      { component: 'repeatability', instrument: best.instrument.id, standardUncertaintyMm: scatter.deviationMm, distribution: 'normal', sensitivityFactor: 1, degreesOfFreedomCount: scatter.degreesOfFreedomCount },
    ];
    return finished(input, Math.min(...values), Math.max(...values), [...instrumentLines(best.instrument, 1), ...scatterLines], {
      readingCount: values.length, instrumentName: best.instrument.name, instrumentUncertaintyMm: best.instrumentUncertaintyMm, hasOtherSets: sets.length > 1,
    });
  }
  if (measuredMm === undefined) throw invalidInput('measuredMm', undefined, 'a measured size, or readings', 'missing; expected a measured size, or readings');
  const { instrument, expandedUncertaintyMm: stated } = input;
  if (instrument !== undefined && stated !== undefined) throw contradiction(['expandedUncertaintyMm', 'instrument'], 'give one of the two');
  const common = { readingCount: 1, hasOtherSets: false };
  if (stated !== undefined) {
    const line: BudgetLine = { component: 'stated', instrument: null, standardUncertaintyMm: stated / 2, distribution: 'normal', sensitivityFactor: 1, degreesOfFreedomCount: null };
    return finished(input, measuredMm, measuredMm, [line], { ...common, instrumentName: null, instrumentUncertaintyMm: stated });
  }
  if (instrument === undefined) throw invalidInput('instrument', undefined, 'an instrument, or expandedUncertaintyMm', 'missing; a size without its uncertainty proves nothing');
  const found = findInstrument(instrument, measures, measuredMm, own);
  return finished(input, measuredMm, measuredMm, instrumentLines(found, 1), { ...common, instrumentName: found.name, instrumentUncertaintyMm: expandedUncertaintyMm(found) });
}

function finished(
  input: ConformityAsked, readLowMm: number, readHighMm: number, lines: readonly BudgetLine[],
  rest: Pick<ConformitySubject, 'readingCount' | 'instrumentName' | 'instrumentUncertaintyMm' | 'hasOtherSets'>,
): ConformitySubject {
  const thermal = thermalCorrection((readLowMm + readHighMm) / 2, input);
  const growthRatio = thermal === null ? 1 : thermal.sizeAt20CMm / ((readLowMm + readHighMm) / 2);
  const budget = [...lines, ...(thermal?.lines ?? [])];
  return { ...rest, readLowMm, readHighMm, lowMm: readLowMm * growthRatio, highMm: readHighMm * growthRatio, budget, combined: combineBudget(budget), thermal };
}

/** Limits as they were given: by class or by numbers. */
export interface GivenLimits extends SizeLimits {
  readonly toleranceClass: string | null;
  readonly assumptions: readonly Assumption[];
}

/**
 * The limits of size.
 * @throws CalculationError contradiction (class and numbers, class for the other part, lower above upper) | invalid-input (none) | no-such-class | outside-table
 */
export function conformityLimits({ measures, nominalMm, toleranceClass, lowerLimitMm, upperLimitMm }: ConformityAsked): GivenLimits {
  const isByNumbers = lowerLimitMm !== undefined || upperLimitMm !== undefined;
  if (toleranceClass === undefined && nominalMm === undefined) {
    if (!isByNumbers) throw invalidInput('lowerLimitMm', undefined, 'a limit, or nominalMm with toleranceClass', 'missing; expected limits, or nominalMm with toleranceClass');
    if (lowerLimitMm !== undefined && upperLimitMm !== undefined && lowerLimitMm >= upperLimitMm) {
      throw contradiction(['lowerLimitMm', 'upperLimitMm'], 'the lower limit must lie below the upper');
    }
    return { lowerLimitMm: lowerLimitMm ?? null, upperLimitMm: upperLimitMm ?? null, toleranceClass: null, assumptions: [] };
  }
  if (isByNumbers) throw contradiction([lowerLimitMm === undefined ? 'upperLimitMm' : 'lowerLimitMm', toleranceClass === undefined ? 'nominalMm' : 'toleranceClass'], 'give limits or a class, not both');
  if (toleranceClass === undefined) throw invalidInput('toleranceClass', undefined, 'a tolerance class', 'missing; a nominal size has no limits without its class');
  if (nominalMm === undefined) throw invalidInput('nominalMm', undefined, 'a nominal size', 'missing; a class has no limits without its nominal size');
  const zone = zoneOfClass({ nominalMm, toleranceClass });
  if ((zone.kind === 'hole') !== (measures === 'inside')) {
    throw contradiction(['toleranceClass', 'measures'], `${zone.toleranceClass} is a class for a ${zone.kind}, but ${measures} was measured`);
  }
  return { lowerLimitMm: zone.lowerLimitOfSizeMm, upperLimitMm: zone.upperLimitOfSizeMm, toleranceClass: zone.toleranceClass, assumptions: zone.assumptions };
}
