import { CalculationError } from '../../result/index.js';

export type Attempted<T> = { readonly value: T } | { readonly error: CalculationError }

/** Runs a calculation; a `CalculationError` of it comes back instead of being thrown. */
export function attempt<T>(compute: () => T): Attempted<T> {
  try {
    return { value: compute() }
  } catch (error) {
    if (error instanceof CalculationError) return { error }
    throw error;
  }
}
