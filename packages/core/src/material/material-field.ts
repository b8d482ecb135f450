import * as z from 'zod/mini';
import { numberField, rulesInSchema, textField } from '../result/index.js';

/** A material of the workshop's own. */
export const materialField = z
  .strictObject({
    id: textField({ label: 'material id' }),
    name: z.optional(textField({ label: 'material name' })),
    youngsModulusGpa: numberField({ label: "Young's modulus", unit: 'GPa', over: 0, upTo: 1000 }),
    poissonRatio: numberField({ label: "Poisson's ratio", unit: '', from: 0, below: 0.5 }),
    expansionMinPerK: numberField({ label: 'linear expansion coefficient, low', unit: '1/K', from: -1e-5, upTo: 1e-3 }),
    expansionMaxPerK: numberField({ label: 'linear expansion coefficient, high', unit: '1/K', from: -1e-5, upTo: 1e-3 }),
    yieldMpa: z.optional(numberField({ label: 'yield strength', unit: 'MPa', over: 0, upTo: 5000 })),
    densityKgPerM3: z.optional(numberField({ label: 'density', unit: 'kg/m³', over: 0, upTo: 30000 })),
    source: z.optional(textField({ label: 'where the numbers come from' })),
  })
  .check(z.refine((material) => material.expansionMinPerK <= material.expansionMaxPerK, { error: 'expansionMinPerK must not exceed expansionMaxPerK' }), rulesInSchema([], ['expansionMinPerK must not exceed expansionMaxPerK']));

export type OwnMaterial = z.infer<typeof materialField>;
