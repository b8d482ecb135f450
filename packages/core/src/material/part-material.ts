import * as z from 'zod/mini';
import { numberField, source, textField } from '../result/index.js';
import { findMaterial, type Material } from './find-material.js';
import type { OwnMaterial } from './material-field.js';

/** What a part is made of: a material id, or its numbers where the material is in no table. */
export const partMaterialField = z.union(
  [
    textField({ label: 'material id', typical: 'steel-c45' }),
    z.strictObject({
      youngsModulusGpa: numberField({ label: "Young's modulus", unit: 'GPa', over: 0, upTo: 1000 }),
      poissonRatio: numberField({ label: "Poisson's ratio", unit: '', from: 0, below: 0.5 }),
      expansionPerK: numberField({ label: 'linear expansion coefficient', unit: '1/K', from: -1e-5, upTo: 1e-3 }),
      yieldMpa: z.optional(numberField({ label: 'yield strength', unit: 'MPa', over: 0, upTo: 5000 })),
      densityKgPerM3: z.optional(numberField({ label: 'density', unit: 'kg/m³', over: 0, upTo: 30000 })),
    }),
  ],
  { error: 'a material id, or {youngsModulusGpa, poissonRatio, expansionPerK, yieldMpa?, densityKgPerM3?}' },
);

export type PartMaterial = z.infer<typeof partMaterialField>;

/**
 * The data behind what was given for a part: looked up by id (the workshop's own first), or as stated.
 * A stated expansion coefficient is taken as exact: its low, probable and high are one number.
 * @param path field named by an error
 * @throws CalculationError invalid-input (unknown id)
 * @example partMaterial('steel-c45').youngsModulusGpa // 207
 */
export function partMaterial(given: PartMaterial, own: readonly OwnMaterial[] = [], path = 'material'): Material {
  if (typeof given === 'string') return findMaterial(given, own, path);
  const { youngsModulusGpa, poissonRatio, expansionPerK, yieldMpa, densityKgPerM3 } = given;
  return {
    id: 'stated',
    name: 'as stated',
    family: 'own',
    youngsModulusGpa,
    poissonRatio,
    expansionPerK: { low: expansionPerK, probable: expansionPerK, high: expansionPerK },
    isExpansionSpanAssumed: false,
    yieldMpa: yieldMpa ?? null,
    densityKgPerM3: densityKgPerM3 ?? null,
    source: source('common-practice', 'practice', 'stated with the part'),
  };
}
