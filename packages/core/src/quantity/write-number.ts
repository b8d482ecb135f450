export type DecimalMark = '.' | ',';

/**
 * A number with a fixed count of decimals, a true minus sign, and the decimal mark of the reader.
 * @example writeNumber(19.05, 2, ',') // '19,05'
 */
export function writeNumber(value: number, decimals: number, decimalMark: DecimalMark = '.'): string {
  const text = Math.abs(value).toFixed(decimals);
  const isZero = Number(text) === 0;
  return (value < 0 && !isZero ? '−' : '') + (decimalMark === ',' ? text.replace('.', ',') : text);
}
