import { sealLimits } from '../../tables/generated/seal-limits.js';
import { namedValue, type NamedValue } from '../../tables/named-value.js';

/** A limit or span of `reference/seal/seal-limits.csv`, with its own source. */
export function sealLimit(name: string, unit: string): NamedValue {
  return namedValue(sealLimits, name, unit);
}
