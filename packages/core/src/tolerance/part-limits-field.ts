import * as z from 'zod/mini';
import { lengthField } from '../quantity/index.js';
import { contradiction, invalidInput, rulesInSchema, textField } from '../result/index.js';
import { readClassName, type PartKind } from './internal/class-names.js';
import { largestNominalMm } from './internal/size-steps.js';
import { zoneOf } from './internal/zone.js';

const limitsField = z
  .strictObject({
    lowerMm: lengthField({ label: 'lower limit of size', unit: 'mm', over: 0, upTo: 2 * largestNominalMm }),
    upperMm: lengthField({ label: 'upper limit of size', unit: 'mm', over: 0, upTo: 2 * largestNominalMm }),
  })
  .check(z.refine(({ lowerMm, upperMm }) => lowerMm <= upperMm, { error: 'lowerMm must not exceed upperMm', path: ['upperMm'] }), rulesInSchema([], ['lowerMm must not exceed upperMm']));

/** Limits of one part of a fit: a tolerance class, or its limits of size as drawn or measured. */
export const partLimitsField = z.union([textField({ label: 'tolerance class', typical: 'H7', longest: 16 }), limitsField], { error: 'a tolerance class, or {lowerMm, upperMm}' });

export type PartLimits = z.infer<typeof partLimitsField>;

/** Limits as deviations from the nominal size. */
export interface PartDeviations {
  readonly lowerUm: number;
  readonly upperUm: number;
}

/**
 * Deviations of a part from the nominal size.
 * @param path field named by an error
 * @throws CalculationError no-such-class | outside-table | contradiction (limits far from the nominal size)
 * @example partDeviations('p6', 25, 'shaft').upperUm // 35
 */
export function partDeviations(limits: PartLimits, nominalMm: number, kind: PartKind, path: string = kind): PartDeviations {
  if (typeof limits === 'string') {
    const name = readClassName(limits, path);
    if (name.kind !== kind) throw invalidInput(path, limits, `a class for a ${kind}`, `${name.text} is a class for a ${name.kind}`);
    const zone = zoneOf(nominalMm, name, path);
    return { lowerUm: zone.lowerLimitDeviationUm, upperUm: zone.upperLimitDeviationUm };
  }
  const fromNominal = (sizeMm: number) => Math.round((sizeMm - nominalMm) * 1e9) / 1e6;
  const deviations = { lowerUm: fromNominal(limits.lowerMm), upperUm: fromNominal(limits.upperMm) };
  if (Math.max(Math.abs(deviations.lowerUm), Math.abs(deviations.upperUm)) > 100 * nominalMm) {
    throw contradiction([`${path}.lowerMm`, 'nominalMm'], 'the limits lie more than a tenth away from the nominal size');
  }
  return deviations;
}
