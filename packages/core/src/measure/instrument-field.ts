import * as z from 'zod/mini';
import { lengthField } from '../quantity/index.js';
import { choiceField, textField } from '../result/index.js';

/** An instrument of the workshop's own, with the error its maker or its calibration states. */
export const instrumentField = z.strictObject({
  id: textField({ label: 'instrument id' }),
  name: z.optional(textField({ label: 'instrument name' })),
  measures: choiceField(['outside', 'inside', 'depth'], { label: 'what it measures' }),
  resolutionMm: lengthField({ label: 'scale interval or digital step', unit: 'mm', over: 0, upTo: 1 }),
  permissibleErrorMm: lengthField({ label: 'maximum permissible error, plus or minus', unit: 'mm', over: 0, upTo: 1 }),
});

export type OwnInstrument = z.infer<typeof instrumentField>;
