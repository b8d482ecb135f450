import { findInstrument, type Instrument, type Measures } from '../find-instrument.js';
import { grubbsOutlier, type GrubbsOutlier } from '../grubbs-outlier.js';
import type { OwnInstrument } from '../instrument-field.js';
import { expandedUncertaintyMm } from '../measured-size.js';
import type { Readings } from '../readings-field.js';
import type { BudgetLine } from '../uncertainty-budget.js';
import { formFit, type FormFit, type FormPoint } from './form-fit.js';
import { repeatability, type Repeatability } from './repeatability.js';

/** How the instrument touches: only a touch at two opposite points reads a diameter in one direction. */
export const contacts = ['two-point', 'three-point', 'v-block'] as const;

export type Contact = (typeof contacts)[number];

/** One set of readings, looked at alone. */
export interface AnalysedSet {
  readonly points: readonly FormPoint[];
  readonly meanMm: number;
  readonly instrument: Instrument;
  /** k = 2, the instrument alone. */
  readonly instrumentUncertaintyMm: number;
  /** Share of this set in the size: 1/U² over the sum of all. */
  readonly weightFactor: number;
  readonly fit: FormFit | null;
  readonly repeatability: Repeatability | null;
  readonly outlier: GrubbsOutlier | null;
}

/** Chance of a false alarm in the test for outliers. Common practice. */
export const outlierSignificance = 0.05;

/**
 * Sets of readings, each with its instrument, form, scatter and outlier.
 * The outlier is sought among what form leaves: about the fitted oval and taper where there is a fit with something left over,
 * else among the readings as they are.
 * @throws CalculationError invalid-input (instrument unknown or for something else) | outside-table (size beyond the instrument)
 */
export function analysedReadings(readings: readonly Readings[], measures: Measures, own: readonly OwnInstrument[] = [], contact: Contact = 'two-point'): readonly AnalysedSet[] {
  const sets = readings.map((set) => {
    const points: readonly FormPoint[] = set.points ?? (set.valuesMm ?? []).map((valueMm) => ({ valueMm }));
    const values = points.map((point) => point.valueMm);
    const meanMm = values.reduce((sum, value) => sum + value, 0) / values.length;
    const instrument = findInstrument(set.instrument, measures, meanMm, own);
    const fit = contact === 'two-point' ? formFit(points) : formFit(points.map(({ valueMm, depthMm }) => ({ valueMm, depthMm })));
    const left = fit !== null && fit.degreesOfFreedomCount > 1 ? fit.residualsMm.map((residual) => fit.diameterMm + residual) : values;
    return {
      points,
      meanMm,
      instrument,
      instrumentUncertaintyMm: expandedUncertaintyMm(instrument),
      fit,
      repeatability: repeatability(points, fit),
      outlier: grubbsOutlier(left, instrument.resolutionMm, outlierSignificance),
    };
  });
  const sum = sets.reduce((total, set) => total + 1 / set.instrumentUncertaintyMm ** 2, 0);
  return sets.map((set) => ({ ...set, weightFactor: sets.length === 1 ? 1 : 1 / set.instrumentUncertaintyMm ** 2 / sum }));
}

/** The set of the instrument with the least uncertainty; the first of equals. */
export function bestSet(sets: readonly AnalysedSet[]): AnalysedSet | undefined {
  return sets.reduce<AnalysedSet | undefined>((found, set) => (found === undefined || set.instrumentUncertaintyMm < found.instrumentUncertaintyMm ? set : found), undefined);
}

/** Lines of the budget that the instrument brings: permissible error and step, both as rectangular limits. */
export function instrumentLines({ id, permissibleErrorMm, resolutionMm }: Pick<Instrument, 'id' | 'permissibleErrorMm' | 'resolutionMm'>, sensitivityFactor: number): readonly BudgetLine[] {
  const common = { instrument: id, distribution: 'rectangular', sensitivityFactor, degreesOfFreedomCount: null } as const;
  return [
    { ...common, component: 'permissible-error', standardUncertaintyMm: permissibleErrorMm / Math.sqrt(3) },
    { ...common, component: 'step', standardUncertaintyMm: resolutionMm / Math.sqrt(12) },
  ];
}

/** Lines of the budget of the mean size: every set by its weight, with its own scatter. */
export function meanLines(sets: readonly AnalysedSet[]): readonly BudgetLine[] {
  return sets.flatMap((set): readonly BudgetLine[] => {
    const lines = instrumentLines(set.instrument, set.weightFactor);
    if (set.repeatability === null) return lines;
    const { meanUncertaintyMm, degreesOfFreedomCount } = set.repeatability;
    return [...lines, { component: 'repeatability', instrument: set.instrument.id, standardUncertaintyMm: meanUncertaintyMm, distribution: 'normal', sensitivityFactor: set.weightFactor, degreesOfFreedomCount }];
  });
}
