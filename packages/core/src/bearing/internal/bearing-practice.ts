import { bearingPractice } from '../../tables/generated/bearing-practice.js';
import { namedValue, type NamedValue } from '../../tables/named-value.js';

/** One value of common practice for seats and clearances of bearings. */
export function practiceValue(name: string, unit: string): NamedValue {
  return namedValue(bearingPractice, name, unit);
}
