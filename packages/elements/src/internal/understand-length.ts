import { parseLength } from '@seatwright/core/quantity';
import { writeValue } from '@seatwright/core/wording';

/** What a field makes of the text in it. */
export interface Understood {
  readonly value: number;
  /** The value in words, to stand beside what was typed. */
  readonly shown: string;
  /** What to keep in a document, so that it is read the same way without this field. */
  readonly stored: number | string;
}

/**
 * What a length means and how to show it, in the unit of the field: the unit alone behind a plain number, the value where another unit or a fraction had to be read.
 * A number without a unit in an inch field is stored with its unit, since a document counts bare numbers as millimetres.
 */
export function understandLength(text: string, defaultUnit: 'mm' | 'in', decimalMark: '.' | ','): Understood {
  const { valueMm } = parseLength(text, { defaultUnit });
  const hasOwnUnit = defaultUnit === 'mm' || parseLength(text, { defaultUnit: 'thou' }).valueMm === valueMm;
  const isPlain = /^\s*\d+([.,]\d+)?\s*(?:mm|in)?\s*$/u.test(text) && !text.includes(defaultUnit === 'mm' ? 'in' : 'mm');
  const isNamed = text.includes(defaultUnit);
  return { value: valueMm, stored: hasOwnUnit ? text.trim() : `${text.trim()} in`, shown: isPlain ? (isNamed ? '' : defaultUnit) : `= ${writeValue('lengthMm', valueMm, { lengthUnit: defaultUnit, decimalMark })}` };
}
