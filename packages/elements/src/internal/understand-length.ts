import { parseLength, writeLength } from '@seatwright/core/quantity';

/** What a field makes of the text in it. */
export interface Understood {
  readonly value: number;
  /** The value in words, to stand beside what was typed. */
  readonly shown: string;
  /** What to keep in a document, so that it is read the same way without this field. */
  readonly stored: number | string;
}

/**
 * What a length means and how to show it: the unit alone behind plain millimetres, the value where a unit or a fraction had to be read.
 * A number without a unit in an inch field is stored with its unit, since a document counts bare numbers as millimetres.
 */
export function understandLength(text: string, defaultUnit: 'mm' | 'in', decimalMark: '.' | ','): Understood {
  const { valueMm } = parseLength(text, { defaultUnit });
  const hasOwnUnit = defaultUnit === 'mm' || parseLength(text, { defaultUnit: 'mm' }).valueMm === valueMm;
  const short = (written: string) => written.replace(/([.,]\d*?)0+(?=\s)/u, '$1').replace(/[.,](?=\s)/u, '');
  const mm = short(writeLength(valueMm, { decimalMark }));
  const isPlain = defaultUnit === 'mm' && /^\s*\d+([.,]\d+)?\s*(mm)?\s*$/u.test(text);
  return { value: valueMm, stored: hasOwnUnit ? text.trim() : `${text.trim()} in`, shown: isPlain ? (text.includes('mm') ? '' : 'mm') : `= ${mm}` };
}
