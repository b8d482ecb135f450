import { source, type SourceReference } from '../../result/index.js';
import { preferredToleranceClasses as table } from '../../tables/generated/preferred-tolerance-classes.js';
import type { ClassName } from './class-names.js';

/** Whether the selection for general purposes names a class first, second, or not at all. */
export type Preference = 'first' | 'second' | 'none';

/** Where the selection comes from: names of classes only. */
export const preferenceSource: SourceReference = source(table.source, table.held, 'selection of tolerance zones');

const preferences = new Map<string, Preference>(table.columns.toleranceClass.map((text, i) => [text, table.columns.preference[i] ?? 'none']));

/** Preference of a class. */
export function preferenceOf({ text }: ClassName): Preference {
  return preferences.get(text) ?? 'none';
}
