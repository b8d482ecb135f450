import { CalculationError } from '../result/index.js';
import { parseLength } from './parse-length.js';
import type { DecimalMark } from './write-number.js';

/**
 * An entry of a document as a form shows it for changing: a number with the decimal mark in use, a text as it was typed.
 * @example asTyped(7.5, ',') // '7,5'
 */
export function asTyped(stored: number | string, decimalMark: DecimalMark = '.'): string {
  return typeof stored === 'number' ? String(stored).replace('.', decimalMark) : stored;
}

/**
 * A length of a document as a form shows it for changing: what was typed stays as it was typed. A number, and a text without a unit, are
 * millimetres in a document; a form in inches has to say so, since it takes a bare number for inches.
 * @param stored a number in mm, or a text with or without a unit; a text that is no length comes back as it is
 * @example lengthAsTyped(19.05, 'in') // '19.05 mm'
 */
export function lengthAsTyped(stored: number | string, formUnit: 'mm' | 'in', decimalMark: DecimalMark = '.'): string {
  const text = asTyped(stored, decimalMark);
  return formUnit === 'in' && isBare(text) ? `${text.trim()} mm` : text;
}

/** Whether a text means one thing in a form in mm and another in one in inches. */
function isBare(text: string): boolean {
  try {
    return parseLength(text, { defaultUnit: 'mm' }).valueMm !== parseLength(text, { defaultUnit: 'in' }).valueMm;
  } catch (error) {
    if (error instanceof CalculationError) return false;
    throw error;
  }
}
