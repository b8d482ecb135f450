import * as z from 'zod/mini';
import type { Assumption } from './assumption.js';
import { outputNumber } from './field.js';
import type { Finding } from './finding.js';
import type { SourceReference } from './source-reference.js';

/** The schema under the type that the code uses: optional properties are left out, never undefined. */
function typed<T>() {
  return (schema: z.ZodMiniType): z.ZodMiniType<T> => schema as z.ZodMiniType<T>;
}

const plainText = (label: string) => z.string().check(z.meta({ label, unit: '' }));

/** Schema of a source reference in an output. */
export const sourceField = typed<SourceReference>()(z.strictObject({
  id: plainText('source'),
  clause: z.optional(plainText('clause')),
  held: z.enum(['page', 'computed', 'memory', 'practice']).check(z.meta({ label: 'how the source is held', unit: '' })),
}));

/** Schema of `assumptions` and `notChecked`, to be spread into every output. */
export const candourFields = {
  assumptions: z.readonly(
    z.array(
      typed<Assumption>()(z.strictObject({
        name: plainText('what was assumed'),
        value: z.union([z.number(), z.string()]).check(z.meta({ label: 'assumed value', unit: 'see unit' })),
        upToValue: z.optional(outputNumber('upper end of the assumed range', 'see unit')),
        unit: plainText('unit of the assumption'),
        source: sourceField,
        effect: plainText('what it changes'),
      })),
    ),
  ),
  notChecked: z.readonly(z.array(plainText('what was not looked at'))),
};

/** Schema of a finding in an output. */
export const findingField = typed<Finding>()(z.strictObject({
  code: plainText('finding'),
  severity: z.enum(['good', 'note', 'care', 'unknown', 'bad']).check(z.meta({ label: 'severity', unit: '' })),
  role: z.enum(['deciding', 'supporting']).check(z.meta({ label: 'role', unit: '' })),
  parameters: z.readonly(z.record(z.string(), z.union([z.number(), z.string()]))),
  source: sourceField,
  missing: z.optional(plainText('reading that would settle it')),
}));

/** Schema of a verdict. */
export const verdictField = z
  .enum(['suits', 'suits with care', 'cannot tell', 'does not suit'])
  .check(z.meta({ label: 'verdict', unit: '' }));
