import * as z from 'zod/mini';
import { lengthField } from '../quantity/index.js';
import { anyGiven, atLeastOne, bothOrNone, choiceField, exactlyOne, given, neither, numberField, rulesInSchema, textField } from '../result/index.js';

const longestMm = 3150;

/** How the sizes of one part spread: from a tolerance class, from limits of size, or as measured on a number of parts. */
export const partSpreadField = z
  .strictObject({
    toleranceClass: z.optional(textField({ label: 'tolerance class', typical: 'H7', longest: 16 })),
    lowerMm: z.optional(lengthField({ label: 'lower limit of size', unit: 'mm', over: 0, upTo: longestMm })),
    upperMm: z.optional(lengthField({ label: 'upper limit of size', unit: 'mm', over: 0, upTo: longestMm })),
    valuesMm: z.optional(z.array(lengthField({ label: 'measured size', unit: 'mm', over: 0, upTo: longestMm })).check(z.minLength(2), z.maxLength(10_000))),
    spread: z.optional(
      choiceField(['uniform', 'triangular', 'normal', 'normal within limits'], {
        label: 'how sizes spread between the limits',
        help: 'uniform: every size as likely; triangular: most near the peak; normal: some beyond the limits; normal within limits: those beyond were sorted out',
        typical: 'normal within limits',
      }),
    ),
    peakMm: z.optional(lengthField({ label: 'size met most often', unit: 'mm', over: 0, upTo: longestMm, help: 'middle of the limits if left out' })),
    limitDeviationsCount: z.optional(numberField({ label: 'standard deviations from the peak to the nearer limit', unit: '', from: 0.5, upTo: 10, typical: '3' })),
  })
  .check(
    z.refine((part) => [part.toleranceClass !== undefined, part.lowerMm !== undefined || part.upperMm !== undefined, part.valuesMm !== undefined].filter(Boolean).length === 1, {
      error: 'give a toleranceClass, or lowerMm and upperMm, or valuesMm',
    }),
    z.refine((part) => (part.lowerMm === undefined) === (part.upperMm === undefined), { error: 'give both lowerMm and upperMm' }),
    z.refine((part) => part.lowerMm === undefined || part.upperMm === undefined || part.lowerMm < part.upperMm, { error: 'lowerMm must be smaller than upperMm', path: ['upperMm'] }),
    z.refine((part) => part.valuesMm === undefined || (part.spread === undefined && part.peakMm === undefined && part.limitDeviationsCount === undefined), {
      error: 'measured sizes spread as they were measured: leave out spread, peakMm and limitDeviationsCount',
      path: ['valuesMm'],
    }),
    z.refine((part) => part.limitDeviationsCount === undefined || part.spread === undefined || part.spread.startsWith('normal'), {
      error: 'only a normal spread has limitDeviationsCount',
      path: ['limitDeviationsCount'],
    }),
    z.refine((part) => part.peakMm === undefined || part.spread !== 'uniform', { error: 'a uniform spread has no peak', path: ['peakMm'] }),
    rulesInSchema(
      [
        exactlyOne(given('toleranceClass'), anyGiven('lowerMm', 'upperMm'), given('valuesMm')),
        bothOrNone('lowerMm', 'upperMm'),
        atLeastOne(neither(given('valuesMm')), neither(anyGiven('spread', 'peakMm', 'limitDeviationsCount'))),
        atLeastOne(neither(given('limitDeviationsCount')), { properties: { spread: { enum: ['normal', 'normal within limits'] } } }),
        atLeastOne(neither(given('peakMm')), { properties: { spread: { not: { const: 'uniform' } } } }),
      ],
      ['lowerMm must be smaller than upperMm'],
    ),
  );

export type PartSpreadInput = z.infer<typeof partSpreadField>;
