import * as z from 'zod/mini';
import { candourFields, choiceField, findingField, outputNumber, verdictField } from '../../result/index.js';
import { bearingSeatShape } from './bearing-seat-fields.js';

const kinds = ['none needed', 'retaining compound', 'sleeve', 'plating'] as const;
const maybe = (label: string, unit: string) => z.nullable(outputNumber(label, unit));

const optionField = z.strictObject({
  kind: choiceField(kinds, { label: 'repair' }),
  verdict: verdictField,
  findings: z.readonly(z.array(findingField)),
  sleeveOutsideMm: maybe('outside of the sleeve', 'mm'),
  sleeveInsideMm: maybe('inside of the sleeve', 'mm'),
  sleeveFit: z.nullable(z.string().check(z.meta({ label: 'fit of the sleeve', unit: '' }))),
});

export const outputField = z.strictObject({
  verdict: verdictField,
  seat: choiceField(['shaft', 'housing'], { label: 'which seat' }),
  mostGapUm: outputNumber('largest gap on the diameter; interference below zero', 'µm'),
  leastGapUm: outputNumber('smallest gap on the diameter; interference below zero', 'µm'),
  findings: z.readonly(z.array(findingField)),
  options: z.readonly(z.array(optionField)),
  refused: z.readonly(z.array(z.string().check(z.meta({ label: 'what is not a repair', unit: '' })))),
  ...candourFields,
});

export const inputField = z.strictObject({ ...bearingSeatShape, seat: choiceField(['shaft', 'housing'], { label: 'which seat' }) });

export type SeatRepairInput = z.infer<typeof inputField>;
export type SeatRepairOutput = z.infer<typeof outputField>;
