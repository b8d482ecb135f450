import { handworkPractice } from '../../tables/generated/handwork-practice.js';
import { namedValue, type NamedValue } from '../../tables/named-value.js';

/** A value of `reference/handwork/handwork-practice.csv`, with its own source: most are common practice. */
export function practiceValue(name: string, unit: string): NamedValue {
  return namedValue(handworkPractice, name, unit);
}
