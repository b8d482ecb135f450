import * as z from 'zod/mini';
import { isMeant, smallestMagnitude, type Limits } from './limits.js';

/** What a form, a schema and a doc page need to know about one field. */
export interface FieldMeta {
  /** Short name that a mechanic would accept. */
  readonly label: string;
  readonly help?: string;
  readonly typical?: string;
}

export type NumberFieldMeta = FieldMeta & Limits;

/**
 * A finite number with its unit, label and permitted range. The name of the field ends in the unit.
 * @example numberField({ label: 'speed', unit: 'rpm', from: 0, upTo: 100000 }).safeParse(-1).success // false
 */
export function numberField(meta: NumberFieldMeta): z.ZodMiniNumber<number> {
  const { over, from, below, upTo, ...shown } = meta;
  let field = z.number();
  if (over !== undefined) field = field.check(z.gt(over));
  if (from !== undefined) field = field.check(z.gte(from));
  if (below !== undefined) field = field.check(z.lt(below));
  if (upTo !== undefined) field = field.check(z.lte(upTo));
  return field.check(
    z.refine(isMeant, { error: `a number nearer to nothing than ${smallestMagnitude} is a slip` }),
    z.meta(shown),
  );
}

/**
 * A whole number with its permitted range: a count or a seed.
 * @example wholeNumberField({ label: 'seed', unit: '' }).safeParse(1.5).success // false
 */
export function wholeNumberField(meta: NumberFieldMeta): z.ZodMiniNumber<number> {
  return numberField(meta).check(z.refine((value) => Number.isInteger(value), { error: 'expected a whole number' }), z.meta({ multipleOf: 1 }));
}

/**
 * A number of an output: finite, unit in the name, nothing else promised.
 * @example outputNumber('pressure', 'MPa').safeParse(NaN).success // false
 */
export function outputNumber(label: string, unit: string): z.ZodMiniNumber<number> {
  return z.number().check(z.meta({ label, unit }));
}

/**
 * Text with a label, at most `longest` characters.
 * @example textField({ label: 'name' }).safeParse('').success // false
 */
export function textField(meta: FieldMeta & { readonly longest?: number }): z.ZodMiniString<string> {
  const { longest = 200, ...shown } = meta;
  return z.string().check(z.minLength(1), z.maxLength(longest), z.meta({ ...shown, unit: '' }));
}

/**
 * One of a few words.
 * @example choiceField(['NBR', 'FKM'], { label: 'rubber' }).safeParse('wood').success // false
 */
export function choiceField<const T extends readonly [string, ...string[]]>(values: T, meta: FieldMeta): z.ZodMiniEnum<{ [K in T[number]]: K }> {
  return z.enum(values).check(z.meta({ ...meta, unit: '' }));
}

/**
 * Yes or no.
 * @example yesNoField({ label: 'blind' }).safeParse('yes').success // false
 */
export function yesNoField(meta: FieldMeta): z.ZodMiniBoolean<boolean> {
  return z.boolean().check(z.meta({ ...meta, unit: '' }));
}
