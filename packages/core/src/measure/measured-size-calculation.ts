import * as z from 'zod/mini';
import { candourFields, choiceField, defineCalculation, invalidInput, nothingAssumed, outputNumber, source, type WorkingStep } from '../result/index.js';
import { instrumentField } from './instrument-field.js';
import { measuredSize } from './measured-size.js';
import { readingsField } from './readings-field.js';

const uncertaintySource = source('jcgm-100-2008', 'memory', '4.3');

/** What a mechanic's readings say: size, ovality, taper and what the instrument leaves open. */
export const measuredSizeCalculation = defineCalculation({
  name: 'measured-size',
  summary: 'Size, ovality and taper from readings, with the uncertainty that the instrument leaves',
  input: z.strictObject({
    measures: choiceField(['outside', 'inside'], { label: 'what was measured', help: 'outside for a shaft, inside for a bore' }),
    readings: z.array(readingsField).check(z.minLength(1), z.maxLength(20)),
    instruments: z.optional(z.array(instrumentField).check(z.maxLength(200))),
  }),
  output: z.strictObject({
    meanMm: outputNumber('mean size', 'mm'),
    smallestMm: outputNumber('smallest reading', 'mm'),
    largestMm: outputNumber('largest reading', 'mm'),
    expandedUncertaintyMm: outputNumber('expanded uncertainty (k = 2) from the instrument alone', 'mm'),
    ovalityUm: z.nullable(outputNumber('largest difference at one depth', 'µm')),
    taperUm: z.nullable(outputNumber('mean at the deepest less mean at the shallowest depth', 'µm')),
    readingCount: outputNumber('number of readings', ''),
    permissibleErrorMm: outputNumber('maximum permissible error of the best instrument', 'mm'),
    resolutionMm: outputNumber('step of the best instrument', 'mm'),
    ...candourFields,
  }),
  compute(input) {
    const size = measuredSize(input.readings, input.measures, input.instruments);
    if (size === null) throw invalidInput('readings', input.readings, 'at least one set of readings');
    const { instrument, ...numbers } = size;
    return {
      ...numbers,
      permissibleErrorMm: instrument.permissibleErrorMm,
      resolutionMm: instrument.resolutionMm,
      assumptions: nothingAssumed.assumptions,
      notChecked: ['operator-form-temperature-in-uncertainty'],
    };
  },
  explain(input, output): readonly WorkingStep[] {
    const steps: WorkingStep[] = [];
    if (input.readings.length === 1) {
      steps.push({
        kind: 'formula',
        symbol: 'U',
        meaning: 'expanded uncertainty of one reading, k = 2',
        formula: '2 * sqrt(MPE^2 / 3 + step^2 / 12)',
        scope: { MPE: output.permissibleErrorMm, step: output.resolutionMm },
        value: output.expandedUncertaintyMm,
        unit: 'mm',
        source: uncertaintySource,
      });
    }
    steps.push({
      kind: 'choice',
      symbol: 'd',
      meaning: 'size used',
      value: output.meanMm,
      unit: 'mm',
      why: input.readings.length === 1 ? 'mean of all readings' : 'means of the sets, weighted by 1/U²',
      source: uncertaintySource,
    });
    return steps;
  },
});
