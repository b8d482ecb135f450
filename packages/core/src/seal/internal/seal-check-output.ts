import * as z from 'zod/mini';
import { candourFields, findingField, outputNumber, spanField, verdictField } from '../../result/index.js';
import { requirementSetField } from '../requirement-set.js';

const measuredField = z.strictObject({
  meanMm: outputNumber('mean size', 'mm'),
  smallestMm: outputNumber('smallest reading', 'mm'),
  largestMm: outputNumber('largest reading', 'mm'),
  expandedUncertaintyMm: outputNumber('expanded uncertainty, k = 2', 'mm'),
  ovalityUm: z.nullable(outputNumber('ovality', 'µm')),
  taperUm: z.nullable(outputNumber('taper', 'µm')),
  readingCount: outputNumber('readings', ''),
  instrument: z.string().check(z.meta({ label: 'instrument', unit: '' })),
});

const celsiusSpan = z.strictObject({
  earliest: outputNumber('earliest', '°C'),
  probable: outputNumber('probable', '°C'),
  latest: outputNumber('latest', '°C'),
});

/** Schema of the answer. */
export const outputField = z.strictObject({
  verdict: verdictField,
  requirementSet: requirementSetField,
  findings: z.readonly(z.array(findingField)),
  shaft: z.nullable(measuredField),
  bore: z.nullable(measuredField),
  sealOutsideMm: z.nullable(spanField('outside diameter of the new seal', 'mm')),
  interferenceUm: z.nullable(spanField('interference seal to bore, diametral', 'µm')),
  heldUm: z.nullable(spanField('elastic part of the interference that goes on holding', 'µm')),
  contactPressureMpa: z.nullable(spanField('pressure between case and bore', 'MPa')),
  pushInForceN: z.nullable(spanField('force to push it in', 'N')),
  holdingForceN: z.nullable(spanField('axial force it withstands, cold', 'N')),
  looseFromC: z.nullable(celsiusSpan),
  lipInterferenceMm: z.nullable(spanField('lip interference on this shaft, diametral', 'mm')),
  peripheralSpeedMps: z.nullable(outputNumber('peripheral speed under the lip', 'm/s')),
  /** The one reading that alone would change the verdict, and the best that it could become. */
  decidingReading: z.nullable(z.strictObject({ path: z.string().check(z.meta({ label: 'reading that would change the verdict', unit: '' })), bestVerdict: verdictField })),
  standardSizeLists: z.readonly(z.array(z.string().check(z.meta({ label: 'list of standard sizes that has this seal', unit: '' })))),
  ...candourFields,
});

export type SealCheckOutput = z.infer<typeof outputField>;
