import { plainGeometry, source, type FormulaStep, type WorkingStep } from '../../result/index.js';
import type { AnalysedSet } from './analysed-readings.js';
import { budgetWorking } from './budget-working.js';
import { grubbsSource } from './reading-findings.js';
import type { SizeAnalysis } from './size-analysis.js';
import { gaugeExpansionPerK } from './thermal-correction.js';

const typeB = source('jcgm-100-2008', 'memory', '4.3');
const typeA = source('jcgm-100-2008', 'memory', '4.2');

/** Working of the size: each set, its weight, the form, the temperature, the budget. */
export function explainMeasuredSize(analysis: SizeAnalysis): readonly WorkingStep[] {
  const { size, sets, best, thermal } = analysis;
  const steps: WorkingStep[] = sets.flatMap((set, i) => setSteps(set, sets.length === 1 ? '' : `_${i + 1}`));
  steps.push({
    kind: 'choice', symbol: 'd', meaning: 'size used', value: size.meanMm, unit: 'mm',
    why: sets.length === 1 ? 'mean of all readings' : 'means of the sets, weighted by 1/U²', source: typeB,
  });
  if (sets.length > 1) {
    const names = sets.map((_, i) => i + 1);
    steps.push(formula('d', 'size used', `(${names.map((i) => `d${i} / U${i}^2`).join(' + ')}) / (${names.map((i) => `1 / U${i}^2`).join(' + ')})`,
      Object.fromEntries(sets.flatMap((set, i) => [[`d${i + 1}`, set.meanMm], [`U${i + 1}`, set.instrumentUncertaintyMm]])), size.meanMm, 'mm'));
  }
  steps.push(...formSteps(best));
  if (thermal !== null) {
    steps.push({
      ...formula('d_20', 'size at 20 °C', 'd * (1 + a_i * T_i) / (1 + a_p * T_p)',
        { d: size.meanMm, a_i: gaugeExpansionPerK, T_i: thermal.instrumentAboveK, a_p: thermal.material.expansionPerK.probable, T_p: thermal.partAboveK }, thermal.sizeAt20CMm, 'mm'),
      source: source('iso-1-2022', 'page'),
    });
  }
  return [...steps, ...budgetWorking(analysis.budget, analysis.combined)];
}

function setSteps({ instrument, instrumentUncertaintyMm, repeatability, outlier }: AnalysedSet, mark: string): readonly WorkingStep[] {
  const steps: WorkingStep[] = [
    formula(`U${mark}`, `expanded uncertainty of one reading from the instrument alone, k = 2 (${instrument.name})`, '2 * sqrt(MPE^2 / 3 + step^2 / 12)',
      { MPE: instrument.permissibleErrorMm, step: instrument.resolutionMm }, instrumentUncertaintyMm, 'mm'),
  ];
  if (repeatability !== null) {
    const { deviationMm, meanUncertaintyMm, readingCount, kind } = repeatability;
    steps.push(
      { kind: 'choice', symbol: `s${mark}`, meaning: 'standard deviation of one reading', value: deviationMm, unit: 'mm', why: reasons[kind], source: typeA },
      { ...formula(`u_s${mark}`, 'standard uncertainty of the mean from the scatter', 's / sqrt(n)', { s: deviationMm, n: readingCount }, meanUncertaintyMm, 'mm'), source: typeA },
    );
  }
  if (outlier !== null) {
    steps.push({
      kind: 'choice', symbol: `G${mark}`, meaning: 'distance of the furthest reading in standard deviations', value: outlier.distanceRatio, unit: '',
      why: `${outlier.isOutlier ? 'stands apart' : 'does not stand apart'}: chance allows ${outlier.criticalRatio.toFixed(3)}, and a reading must be more than a step away`, source: grubbsSource,
    });
  }
  return steps;
}

const reasons = {
  'same-place': 'from places read more than once, pooled',
  unplaced: 'about the mean of readings without a place: form is in it',
  'about-fit': 'about the fitted oval and taper',
} as const;

function formSteps({ fit, points }: AnalysedSet): readonly WorkingStep[] {
  if (fit === null) return [];
  const list: WorkingStep[] = [];
  if (fit.oval !== null) {
    list.push(
      { kind: 'choice', symbol: 'D_0', meaning: 'diameter of the least-squares circle', value: fit.diameterMm, unit: 'mm', why: `constant term of D_0 + a·cos 2φ + b·sin 2φ through ${points.length} diameters`, source: plainGeometry },
      { kind: 'choice', symbol: 'o', meaning: 'oval, largest less smallest diameter', value: fit.oval.ovalityUm, unit: 'µm', why: fit.oval.largestAtDeg === null ? 'no direction is larger' : `2·√(a² + b²), the largest at ${fit.oval.largestAtDeg.toFixed(1)}°`, source: plainGeometry },
    );
  }
  if (fit.taper !== null) {
    list.push(formula('t', 'taper of the fitted line over the depths measured', 'm * L * 1000', { m: fit.taper.taperRatio, L: fit.taper.spanMm }, fit.taper.taperRatio * fit.taper.spanMm * 1000, 'µm', plainGeometry));
  }
  return list;
}

function formula(symbol: string, meaning: string, text: string, scope: FormulaStep['scope'], value: number, unit: string, by = typeB): FormulaStep {
  return { kind: 'formula', symbol, meaning, formula: text, scope, value, unit, source: by };
}
