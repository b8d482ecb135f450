import { parseLength } from '../../quantity/index.js';
import { readClassName } from './class-names.js';
import { CalculationError } from '../../result/index.js';

/** Longest designation that is read at all, in characters. */
export const longestDesignation = 80;

/** A class in a designation: known letters of two signs before single ones, so that a unit before them stands alone. */
export const classPattern = String.raw`([Cc][Dd]|[Ee][Ff]|[Ff][Gg]|[Jj][Ss]|[Zz][A-Ca-c]|[Ii][Tt]|[A-Za-z])\s*(\d{1,2})`;

/**
 * The size that stands before the classes. Letters that belong to no unit belong to the class: `25 zz7` has no such class.
 * @param first letter and grade of the class that was split off
 * @throws CalculationError invalid-input (path `nominalMm`) | no-such-class (path as given)
 */
export function readNominalMm(text: string, first: string, path: string): number {
  try {
    return parseLength(text.trim()).valueMm;
  } catch (error) {
    const [, size = '', letters = ''] = /^(.*?[\d\s"'])([A-Za-z]{1,3})$/u.exec(text) ?? [];
    if (letters !== '' && isLength(size)) readClassName(`${letters}${first}`, path);
    throw error instanceof CalculationError ? error.within('nominalMm') : error;
  }
}

function isLength(text: string): boolean {
  try {
    parseLength(text.trim());
    return true;
  } catch {
    return false;
  }
}
