import { parseLength } from '../../quantity/index.js';
import { CalculationError } from '../../result/index.js';

/** Longest designation that is read at all, in characters. */
export const longestDesignation = 80;

/** A class in a designation: known letters of two signs before single ones, so that a unit before them stands alone. */
export const classPattern = String.raw`([Cc][Dd]|[Ee][Ff]|[Ff][Gg]|[Jj][Ss]|[Zz][A-Ca-c]|[Ii][Tt]|[A-Za-z])\s*(\d{1,2})`;

/** The size that stands before the classes. Throws `CalculationError` with the path `nominalMm`. */
export function readNominalMm(text: string): number {
  try {
    return parseLength(text.trim()).valueMm;
  } catch (error) {
    throw error instanceof CalculationError ? error.within('nominalMm') : error;
  }
}
