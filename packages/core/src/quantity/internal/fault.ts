import { invalidInput, type CalculationError } from '../../result/index.js';
import type { Kind } from './kind.js';

/** A fault in a written quantity: points at the character (counted from 1) and says what would be understood. */
export function fault(kind: Kind, text: string, at: number, reason: string): CalculationError {
  const sign = text.slice(at, at + 1);
  const place = sign === '' ? 'at the end' : `at character ${at + 1} ("${sign}")`;
  return invalidInput('', text, `a ${kind.name}, such as ${kind.examples}`, `${reason} ${place}; understood are ${kind.examples}`);
}
