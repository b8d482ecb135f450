/** An entry of a document as a field shows it: a number with the decimal mark in use, a text as it was typed. */
export function writtenNumber(stored: number | string, decimalMark: '.' | ','): string {
  return typeof stored === 'number' ? String(stored).replace('.', decimalMark) : stored;
}
