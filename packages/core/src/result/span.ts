import * as z from 'zod/mini';
import { outputNumber } from './field.js';

/** A range that an unknown or scattering value spans; `low` never exceeds `high`. The unit stands in the name of the field. */
export interface Span {
  readonly low: number;
  readonly high: number;
}

/**
 * Schema of a span in an output.
 * @example spanField('wall', 'mm').safeParse({ low: 1, high: 2 }).success // true
 */
export function spanField(label: string, unit: string) {
  return z.strictObject({ low: outputNumber(`${label}, low`, unit), high: outputNumber(`${label}, high`, unit) });
}
