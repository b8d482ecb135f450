import * as z from 'zod/mini';
import { fromSchemaIssues } from './from-schema-issues.js';
import { libraryVersion, tablesEdition } from './edition.js';
import type { WorkingStep } from './working-step.js';

export interface CalculationDefinition<I, O> {
  readonly name: string;
  /** One sentence that a mechanic would accept. */
  readonly summary: string;
  readonly input: z.ZodMiniType<I>;
  readonly output: z.ZodMiniType<O>;
  /** Pure, synchronous, quick; trusts its input. */
  compute(input: NoInfer<I>): NoInfer<O>;
  /** Working steps and sources, built only when somebody looks. */
  explain(input: NoInfer<I>, output: NoInfer<O>): readonly WorkingStep[];
}

/** What an output was computed with: another edition of the tables may give another answer. */
export interface Stamp {
  readonly libraryVersion: string;
  readonly tablesEdition: string;
}

export interface Calculation<I, O> extends CalculationDefinition<I, O> {
  /** Validates unknown input. Throws `CalculationError` `invalid-input`. */
  parse(raw: unknown): I;
  /** Validates, then computes; what it was computed with goes along. */
  run(raw: unknown): O & Stamp;
}

/** A calculation whose types are only known at run time, as the registry holds it. */
export type AnyCalculation = Calculation<unknown, unknown>;

/**
 * Makes one calculation: schemas, computation and working as one value.
 * @example defineCalculation({ name: 'area', summary: 'Area of a circle', input: numberField({ label: 'd', unit: 'mm' }), output: spanField('area', 'mm²'), compute: (d) => ({ low: (Math.PI * d * d) / 4, high: (Math.PI * d * d) / 4 }), explain: () => [] }).run(20).low.toFixed(1) // '314.2'
 */
export function defineCalculation<I, O extends object>(definition: CalculationDefinition<I, O>): Calculation<I, O> {
  const parse = (raw: unknown): I => checkedInput(definition.input, raw);
  return {
    ...definition,
    output: withStamp(definition.output),
    parse,
    run(raw) {
      // Written onto the output itself: a copy would cost more than many a calculation.
      const output: O & { -readonly [K in keyof Stamp]?: Stamp[K] } = definition.compute(parse(raw));
      output.libraryVersion = libraryVersion;
      output.tablesEdition = tablesEdition;
      return output as O & Stamp;
    },
  };
}

/** `run` gives these along with every output; what is computed inside, and the lines of a batch, have them elsewhere. */
const stampShape = {
  libraryVersion: z.optional(z.string().check(z.meta({ label: 'version of the library', unit: '' }))),
  tablesEdition: z.optional(z.string().check(z.meta({ label: 'edition of the tables', unit: '' }))),
};

/** The schema of an output, which may bear a stamp. */
function withStamp<O>(output: z.ZodMiniType<O>): z.ZodMiniType<O> {
  return z.extend(output as unknown as z.ZodMiniObject, stampShape) as unknown as z.ZodMiniType<O>;
}

/**
 * Unknown input, checked. Throws `CalculationError` `invalid-input`.
 * @internal
 */
export function checkedInput<I>(field: z.ZodMiniType<I>, raw: unknown): I {
  const parsed = z.safeParse(field, raw);
  if (!parsed.success) throw fromSchemaIssues(parsed.error.issues, raw, field);
  return parsed.data;
}

const beyondSchemas =
  'Beyond a schema: a text with a unit ("3/4 in") is read, and checked against the limits beside it, by Seatwright alone (the unit it is turned into stands under "unit"); lengths are settled to 1e-6 mm first; a number nearer to nothing than 1e-15, other than 0, is refused as a slip; and the rules under "beyond" compare one field with another.';

/**
 * JSON Schema (draft 2020-12) of what is taken in.
 * @example inputSchemaOf(toleranceZone.input).required // nominalMm,toleranceClass
 */
export function inputSchemaOf(field: z.ZodMiniType): Readonly<Record<string, unknown>> {
  const { $schema, ...schema } = z.toJSONSchema(field, { io: 'input' });
  return { $schema, $comment: beyondSchemas, ...schema };
}

/**
 * JSON Schemas (draft 2020-12) of what goes in and what comes out.
 * @example Object.keys(jsonSchemasOf(toleranceZone).output.properties)[0] // 'nominalMm'
 */
export function jsonSchemasOf(calculation: { readonly input: z.ZodMiniType; readonly output: z.ZodMiniType }): {
  readonly input: unknown;
  readonly output: unknown;
} {
  return { input: inputSchemaOf(calculation.input), output: z.toJSONSchema(calculation.output, { io: 'output' }) };
}
