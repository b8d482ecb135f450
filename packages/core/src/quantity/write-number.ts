export type DecimalMark = '.' | ',';

/**
 * As `toFixed`, but half of the last place goes up as it does on paper, though the number in the machine may lie a hair below the half.
 * @example fixedText(28.575, 2) // '28.58'
 */
export function fixedText(value: number, decimals: number): string {
  const scale = 10 ** decimals;
  const scaled = Number((Math.abs(value) * scale).toPrecision(14));
  return scaled > 1e13 ? value.toFixed(decimals) : ((Math.sign(value) * Math.round(scaled)) / scale).toFixed(decimals);
}

/**
 * A number with a fixed count of decimals, a true minus sign, and the decimal mark of the reader.
 * @example writeNumber(19.05, 2, ',') // '19,05'
 */
export function writeNumber(value: number, decimals: number, decimalMark: DecimalMark = '.'): string {
  const text = fixedText(Math.abs(value), decimals);
  const isZero = Number(text) === 0;
  return (value < 0 && !isZero ? '−' : '') + (decimalMark === ',' ? text.replace('.', ',') : text);
}
