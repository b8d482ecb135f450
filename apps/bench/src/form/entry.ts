import * as z from 'zod/mini';
import type { Choice } from '@seatwright/elements/seat-choice-field.js';
import type { QuantityKind } from '@seatwright/elements/seat-quantity-field.js';
import { wordFor } from '@seatwright/core/wording';
import { sentences } from '../words/sentences.js';

/** Whose entry it is: the file's, the machine's, the position's, the seal's or the bearing's. */
export type Scope = 'file' | 'machine' | 'position' | 'seal' | 'bearing';

type EntryKind =
  | { readonly kind: 'length' }
  | { readonly kind: 'quantity'; readonly quantity: QuantityKind; readonly unit: string }
  | { readonly kind: 'choice'; readonly choices: readonly Choice[] }
  | { readonly kind: 'yes-no' }
  | { readonly kind: 'text' };

/** One field of the form. Label, unit, help and choices come from the schema that also checks it. */
export interface Entry {
  readonly scope: Scope;
  readonly path: string;
  readonly label: string;
  /** The label as it stands within a sentence. */
  readonly name: string;
  readonly help: string;
  readonly entry: EntryKind;
  readonly isRequired: boolean;
}

const quantities: Readonly<Record<string, QuantityKind>> = { '°C': 'temperature', rpm: 'rotational-speed', MPa: 'pressure', h: 'hours', '°': 'angle', N: 'force' };

/** The field for one entry of a schema. */
export function entryOf(scope: Scope, path: string, schema: z.core.$ZodType, more: { readonly choices?: readonly Choice[]; readonly isRequired?: boolean; readonly label?: string; readonly help?: string; readonly says?: Readonly<Record<string, string>> } = {}): Entry {
  const inner = unwrapped(schema);
  const meta = z.globalRegistry.get(inner) ?? {};
  const text = (key: string) => (typeof meta[key] === 'string' ? meta[key] : '');
  const name = wordFor(more.label ?? text('label'), sentences);
  return {
    scope,
    path,
    label: capitalised(name),
    name,
    help: more.help ?? '',
    isRequired: more.isRequired ?? false,
    entry: more.choices === undefined ? kindOf(inner, text('unit'), more.says ?? {}) : { kind: 'choice', choices: more.choices },
  };
}

/** The name by which errors, missing readings and dimensions of the drawing find the field. */
export function keyOf({ scope, path }: Pick<Entry, 'scope' | 'path'>): string {
  return scope === 'position' ? path : `${scope}.${path}`;
}

function unwrapped(schema: z.core.$ZodType): z.core.$ZodType {
  const { def } = schema._zod;
  return def.type === 'optional' ? unwrapped((def as z.core.$ZodOptionalDef).innerType) : schema;
}

/** `says` names values that mean something else in other fields. */
function kindOf(schema: z.core.$ZodType, unit: string, says: Readonly<Record<string, string>>): EntryKind {
  const { def } = schema._zod;
  switch (def.type) {
    case 'enum':
      return { kind: 'choice', choices: Object.values((def as z.core.$ZodEnumDef).entries).map((value) => ({ value: String(value), word: wordOf(says[String(value)] ?? String(value)) })) };
    case 'boolean':
      return { kind: 'yes-no' };
    case 'number':
      return { kind: 'quantity', quantity: 'number', unit };
    case 'string':
      return { kind: 'text' };
    default: {
      const quantity = quantities[unit];
      return quantity === undefined ? { kind: 'length' } : { kind: 'quantity', quantity, unit };
    }
  }
}

/** The word for a value: `metal-case` is "metal case". */
export function wordOf(value: string): string {
  return wordFor(value, sentences);
}

export function capitalised(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
