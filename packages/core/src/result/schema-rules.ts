import * as z from 'zod/mini';

/** A condition of JSON Schema. */
export type SchemaRule = Readonly<Record<string, unknown>>;

/**
 * All of these fields are given.
 * @internal
 */
export const given = (...names: readonly string[]): SchemaRule => ({ required: names });
/**
 * At least one of these fields is given.
 * @internal
 */
export const anyGiven = (...names: readonly string[]): SchemaRule => ({ anyOf: names.map((name) => given(name)) });
/** @internal */
export const exactlyOne = (...rules: readonly SchemaRule[]): SchemaRule => ({ oneOf: rules });
/** @internal */
export const atLeastOne = (...rules: readonly SchemaRule[]): SchemaRule => ({ anyOf: rules });
/** @internal */
export const neither = (rule: SchemaRule): SchemaRule => ({ not: rule });
/** @internal */
export const notBoth = (one: string, other: string): SchemaRule => neither(given(one, other));
/** @internal */
export const bothOrNone = (one: string, other: string): SchemaRule => ({ dependentRequired: { [one]: [other], [other]: [one] } });

/**
 * Rules between fields for the JSON Schema of an object, beside the refinements that check them here.
 * `beyond` names in words what no schema can check, such as one number over another: the same sentences as the errors.
 * @internal
 */
export function rulesInSchema(rules: readonly SchemaRule[], beyond: readonly string[] = []) {
  return z.meta({ ...(rules.length === 0 ? {} : { allOf: rules }), ...(beyond.length === 0 ? {} : { beyond }) });
}
