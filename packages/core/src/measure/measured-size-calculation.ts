import * as z from 'zod/mini';
import { candourFields, choiceField, commonPractice, defineCalculation, findingField, outputNumber, yesNoField, type Assumption } from '../result/index.js';
import { contacts, outlierSignificance } from './internal/analysed-readings.js';
import { budgetField } from './internal/budget-field.js';
import { explainMeasuredSize } from './internal/explain-measured-size.js';
import { grubbsSource, readingFindings } from './internal/reading-findings.js';
import { sizeAnalysis, wavinessStepsCount, type SizeAnalysis } from './internal/size-analysis.js';
import { thermalFields } from './internal/thermal-correction.js';
import { instrumentField } from './instrument-field.js';
import { readingsField } from './readings-field.js';

/**
 * What a mechanic's readings say: size, oval, taper, waviness, a reading that stands apart, and the uncertainty.
 *   U = k·√(MPE²/3 + step²/12 + s²/n + temperatures), sets weighted by 1/U²; k = 2 while only stated limits are known
 * Readings are diameters. Touched at two opposite points at angles around the axis, they give the least-squares circle (its
 * diameter), the second harmonic (oval: largest less smallest, and where the largest lies) and the slope over depth; lobes of
 * odd number show alike in every direction and are not seen. Three-point and V-block readings carry no oval of that kind: none is given.
 * @returns sizes [mm] at the temperature of measuring; sizeAt20CMm [mm] where temperatures are given; scalars and budget lines
 * @throws CalculationError invalid-input | outside-table (size beyond the instrument)
 * @source jcgm-100-2008, clauses 4.2, 4.3, 5.1 and G.4 (held as: memory)
 * @example measuredSizeCalculation.run({ measures: 'outside', readings: [{ instrument: 'vernier-calliper-005', valuesMm: [35] }] }).expandedUncertaintyMm.toFixed(4) // '0.0645'
 */
export const measuredSizeCalculation = defineCalculation({
  name: 'measured-size',
  summary: 'Size, oval and taper from readings, with an uncertainty budget and a warning of readings that stand apart',
  input: z.strictObject({
    measures: choiceField(['outside', 'inside'], { label: 'what was measured', help: 'outside for a shaft, inside for a bore' }),
    readings: z.array(readingsField).check(z.minLength(1), z.maxLength(20)),
    instruments: z.optional(z.array(instrumentField).check(z.maxLength(200))),
    contact: z.optional(choiceField(contacts, { label: 'how the instrument touches', help: 'left out: at two opposite points' })),
    ...thermalFields,
  }),
  output: z.strictObject({
    meanMm: outputNumber('mean size', 'mm'),
    smallestMm: outputNumber('smallest reading', 'mm'),
    largestMm: outputNumber('largest reading', 'mm'),
    expandedUncertaintyMm: outputNumber('expanded uncertainty of the mean size (95.45 %)', 'mm'),
    ovalityUm: z.nullable(outputNumber('largest difference at one depth', 'µm')),
    taperUm: z.nullable(outputNumber('mean at the deepest less mean at the shallowest depth', 'µm')),
    readingCount: outputNumber('number of readings', ''),
    permissibleErrorMm: outputNumber('maximum permissible error of the best instrument', 'mm'),
    resolutionMm: outputNumber('step of the best instrument', 'mm'),
    instrumentUncertaintyMm: outputNumber('expanded uncertainty (k = 2) from the instrument alone', 'mm'),
    standardUncertaintyMm: outputNumber('combined standard uncertainty of the mean size', 'mm'),
    effectiveDegreesOfFreedomCount: z.nullable(outputNumber('effective degrees of freedom; null for infinitely many', '')),
    coverageFactor: outputNumber('coverage factor', ''),
    budget: z.readonly(z.array(budgetField)),
    sizeAt20CMm: z.nullable(outputNumber('mean size brought to 20 °C', 'mm')),
    repeatabilityMm: z.nullable(outputNumber('standard deviation of one reading', 'mm')),
    leastSquaresDiameterMm: z.nullable(outputNumber('diameter of the least-squares circle at the middle depth', 'mm')),
    harmonicOvalityUm: z.nullable(outputNumber('oval of the fitted second harmonic, largest less smallest', 'µm')),
    largestAtDeg: z.nullable(outputNumber('direction of the largest diameter', '°')),
    fittedTaperUm: z.nullable(outputNumber('taper of the fitted line over the depths measured', 'µm')),
    taperRatio: z.nullable(outputNumber('change of diameter per length', '')),
    isWavy: z.nullable(yesNoField({ label: 'whether more than oval and taper is in the surface' })),
    outlier: z.nullable(
      z.strictObject({
        valueMm: outputNumber('reading furthest from the others', 'mm'),
        distanceRatio: outputNumber('its distance in standard deviations', ''),
        criticalRatio: outputNumber('distance that chance allows (5 %)', ''),
        isOutlier: yesNoField({ label: 'whether it stands apart' }),
      }),
    ),
    findings: z.readonly(z.array(findingField)),
    ...candourFields,
  }),
  compute(input) {
    const analysis = sizeAnalysis(input);
    const { size, best, combined, thermal, budget, waviness } = analysis;
    const { instrument, expandedUncertaintyMm: instrumentUncertaintyMm, ovalityUm, ...numbers } = size;
    const { fit, outlier } = best;
    return {
      ...numbers,
      ovalityUm: analysis.contact === 'two-point' ? ovalityUm : null,
      permissibleErrorMm: instrument.permissibleErrorMm,
      resolutionMm: instrument.resolutionMm,
      instrumentUncertaintyMm,
      ...combined,
      expandedUncertaintyMm: isInstrumentAlone(analysis) ? instrumentUncertaintyMm : combined.expandedUncertaintyMm,
      budget,
      sizeAt20CMm: thermal?.sizeAt20CMm ?? null,
      repeatabilityMm: best.repeatability?.deviationMm ?? null,
      leastSquaresDiameterMm: fit?.oval == null ? null : fit.diameterMm,
      harmonicOvalityUm: fit?.oval?.ovalityUm ?? null,
      largestAtDeg: fit?.oval?.largestAtDeg ?? null,
      fittedTaperUm: fit?.taper?.taperUm ?? null,
      taperRatio: fit?.taper?.taperRatio ?? null,
      isWavy: waviness === null ? null : waviness.rangeUm > waviness.limitUm,
      outlier:
        outlier === null
          ? null
          : { valueMm: best.points[outlier.index]?.valueMm ?? size.meanMm, distanceRatio: outlier.distanceRatio, criticalRatio: outlier.criticalRatio, isOutlier: outlier.isOutlier },
      findings: readingFindings(analysis),
      assumptions: assumptionsOf(analysis, input.contact === undefined),
      notChecked: notChecked(analysis),
    };
  },
  explain: (input) => explainMeasuredSize(sizeAnalysis(input)),
});

function isInstrumentAlone({ thermal, sets }: SizeAnalysis): boolean {
  return thermal === null && sets.every((set) => set.repeatability === null);
}

function assumptionsOf({ thermal, waviness, best }: SizeAnalysis, isContactAssumed: boolean): readonly Assumption[] {
  const list: Assumption[] = [...(thermal?.assumptions ?? [])];
  if (isContactAssumed && best.fit?.oval != null) list.push({ name: 'two-point-contact', value: 'two-point', unit: '', source: commonPractice, effect: 'oval-and-its-direction' });
  if (waviness !== null) list.push({ name: 'waviness-steps', value: wavinessStepsCount, unit: '', source: commonPractice, effect: 'called-wavy' });
  if (best.outlier !== null) list.push({ name: 'outlier-false-alarm', value: outlierSignificance * 100, unit: '%', source: grubbsSource, effect: 'called-outlier' });
  return list;
}

function notChecked(analysis: SizeAnalysis): readonly string[] {
  if (isInstrumentAlone(analysis)) return ['operator-form-temperature-in-uncertainty'];
  const { thermal, best, sets, contact } = analysis;
  return [
    'form-between-readings',
    ...(thermal === null ? ['temperature-in-uncertainty'] : []),
    ...(sets.some((set) => set.repeatability === null) ? ['repeatability-of-every-set'] : []),
    ...(contact === 'two-point' && best.points.length > 1 ? ['odd-lobes'] : []),
  ];
}
