import * as z from 'zod/mini';
import { choiceField, outputNumber, textField } from '../../result/index.js';

/** Schema of a zone, to be spread into an output. */
export const zoneFields = {
  nominalMm: outputNumber('nominal size', 'mm'),
  toleranceClass: textField({ label: 'tolerance class' }),
  kind: choiceField(['hole', 'shaft'], { label: 'hole or shaft' }),
  letter: textField({ label: 'letter of the fundamental deviation' }),
  grade: textField({ label: 'standard tolerance grade' }),
  upperLimitDeviationUm: outputNumber('upper limit deviation', 'µm'),
  lowerLimitDeviationUm: outputNumber('lower limit deviation', 'µm'),
  standardToleranceUm: outputNumber('standard tolerance', 'µm'),
  fundamentalDeviationUm: outputNumber('fundamental deviation', 'µm'),
  upperLimitOfSizeMm: outputNumber('upper limit of size', 'mm'),
  lowerLimitOfSizeMm: outputNumber('lower limit of size', 'mm'),
  held: choiceField(['page', 'computed', 'memory', 'practice'], { label: 'how its least trusted cell is held' }),
};

/** Schema of a zone inside an output. */
export const zoneField = z.strictObject(zoneFields);
