import type { PartMaterial } from '../../material/index.js';
import { invalidInput } from '../../result/index.js';
import type { Measures } from '../find-instrument.js';
import type { OwnInstrument } from '../instrument-field.js';
import { measuredSize, type MeasuredSize } from '../measured-size.js';
import type { Readings } from '../readings-field.js';
import { combineBudget, type BudgetLine, type CombinedUncertainty } from '../uncertainty-budget.js';
import { analysedReadings, bestSet, meanLines, type AnalysedSet, type Contact } from './analysed-readings.js';
import { thermalCorrection, type ThermalCorrection } from './thermal-correction.js';

export interface SizeAnalysisInput {
  readonly measures: Measures;
  readonly readings: readonly Readings[];
  readonly instruments?: readonly OwnInstrument[] | undefined;
  readonly contact?: Contact | undefined;
  readonly partTemperatureC?: number | undefined;
  readonly instrumentTemperatureC?: number | undefined;
  readonly partMaterial?: PartMaterial | undefined;
  readonly temperatureUncertaintyK?: number | undefined;
}

/** Everything that readings say, before it is put into fields. */
export interface SizeAnalysis {
  readonly size: MeasuredSize;
  readonly sets: readonly AnalysedSet[];
  readonly best: AnalysedSet;
  readonly contact: Contact;
  readonly thermal: ThermalCorrection | null;
  readonly budget: readonly BudgetLine[];
  readonly combined: CombinedUncertainty;
  /** Residuals of the fitted form and what they are held against; null where the fit leaves fewer than two degrees of freedom. */
  readonly waviness: { readonly rangeUm: number; readonly limitUm: number } | null;
}

/** Steps of the instrument that readings may differ by before the surface is called wavy. Common practice. */
export const wavinessStepsCount = 2;

/** Readings worked through once, for the output and for the working. */
export function sizeAnalysis(input: SizeAnalysisInput): SizeAnalysis {
  const contact = input.contact ?? 'two-point';
  const size = measuredSize(input.readings, input.measures, input.instruments);
  const sets = analysedReadings(input.readings, input.measures, input.instruments, contact);
  const best = bestSet(sets);
  if (size === null || best === undefined) throw invalidInput('readings', input.readings, 'at least one set of readings');
  const thermal = thermalCorrection(size.meanMm, input);
  const budget = [...meanLines(sets), ...(thermal?.lines ?? [])];
  return { size, sets, best, contact, thermal, budget, combined: combineBudget(budget), waviness: wavinessOf(best) };
}

/** Wavy: what oval and taper leave spreads over more than two steps, and over more than four standard deviations of repeats. */
function wavinessOf({ fit, instrument, repeatability }: AnalysedSet): SizeAnalysis['waviness'] {
  if (fit?.oval == null || fit.degreesOfFreedomCount < 2) return null;
  const repeatUm = repeatability?.kind === 'same-place' ? 4000 * repeatability.deviationMm : 0;
  return {
    rangeUm: settledUm((Math.max(...fit.residualsMm) - Math.min(...fit.residualsMm)) * 1000),
    limitUm: Math.max(settledUm(wavinessStepsCount * instrument.resolutionMm * 1000), repeatUm),
  };
}

function settledUm(valueUm: number): number {
  return Math.round(valueUm * 1e6) / 1e6;
}
