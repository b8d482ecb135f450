import type { ClassName } from './class-names.js';

/** Whether the standard's selection of classes names one first, second, or not at all. */
export type Preference = 'first' | 'second' | 'none';

/** Preference of a class. */
export function preferenceOf(_name: ClassName): Preference {
  return 'none';
}
