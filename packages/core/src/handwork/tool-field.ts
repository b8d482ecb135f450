import * as z from 'zod/mini';
import { readingsField } from '../measure/index.js';
import { lengthField } from '../quantity/index.js';
import { anyGiven, atLeastOne, choiceField, notBoth, rulesInSchema, textField } from '../result/index.js';

/** A tube, a socket or a turned piece from the scrap box, as it could drive a seal. */
export const toolField = z
  .strictObject({
    id: z.optional(textField({ label: 'tool id' })),
    name: textField({ label: 'name of the tool', typical: 'offcut of waste pipe' }),
    kind: choiceField(['tube', 'socket', 'turned'], { label: 'kind of tool', help: 'tube: open at both ends; socket: closed behind; turned: made for the job' }),
    outsideMm: lengthField({ label: 'outside diameter at the end that pushes', unit: 'mm', over: 0, upTo: 1000 }),
    insideMm: z.optional(lengthField({ label: 'inside diameter at the end that pushes', unit: 'mm', from: 0, upTo: 1000, help: 'of a socket: the inner edge of its flat face' })),
    wallMm: z.optional(lengthField({ label: 'wall thickness', unit: 'mm', over: 0, upTo: 200 })),
    lengthMm: z.optional(lengthField({ label: 'length', unit: 'mm', over: 0, upTo: 5000 })),
    material: z.optional(textField({ label: 'material', help: 'steel, pvc-u, copper, aluminium, pe, pp, abs, or the id of a material', typical: 'pvc-u' })),
    outsideToleranceMm: z.optional(lengthField({ label: 'outside diameter may differ by, plus or minus', unit: 'mm', from: 0, upTo: 20 })),
    wallToleranceMm: z.optional(lengthField({ label: 'wall may differ by, plus or minus', unit: 'mm', from: 0, upTo: 20 })),
    outOfRoundMm: z.optional(lengthField({ label: 'largest less smallest outside diameter', unit: 'mm', from: 0, upTo: 20 })),
    endSquarenessMm: z.optional(lengthField({ label: 'end out of square, across the diameter', unit: 'mm', from: 0, upTo: 50 })),
    closedEndDepthMm: z.optional(lengthField({ label: 'depth inside to the closed end', unit: 'mm', over: 0, upTo: 2000 })),
    readings: z.optional(z.array(readingsField).check(z.minLength(1), z.maxLength(20), z.meta({ label: 'readings of the outside diameter', unit: '' }))),
  })
  .check(
    z.refine((tool) => tool.kind === 'turned' || tool.insideMm !== undefined || tool.wallMm !== undefined, { error: 'give insideMm or wallMm', path: ['insideMm'] }),
    z.refine((tool) => tool.insideMm === undefined || tool.wallMm === undefined, { error: 'give either insideMm or wallMm, not both', path: ['wallMm'] }),
    z.refine((tool) => (tool.insideMm ?? 0) < tool.outsideMm, { error: 'insideMm must be smaller than outsideMm', path: ['insideMm'] }),
    z.refine((tool) => 2 * (tool.wallMm ?? 0) <= tool.outsideMm, { error: 'wallMm must not exceed half of outsideMm', path: ['wallMm'] }),
    rulesInSchema(
      [atLeastOne({ properties: { kind: { const: 'turned' } } }, anyGiven('insideMm', 'wallMm')), notBoth('insideMm', 'wallMm')],
      ['insideMm must be smaller than outsideMm', 'wallMm must not exceed half of outsideMm'],
    ),
  );

export type Tool = z.infer<typeof toolField>;
