import type { Catalogue } from './catalogue.js';
import { plainStyle, writeValue, type WritingStyle } from './write-value.js';
import { wordFor } from './word-for.js';

const placeholder = /\{([A-Za-z][A-Za-z0-9]*)(?:\|([^{}|]*)\|([^{}|]*))?\}/g;

/**
 * Puts parameters into a sentence: `{lipTravelKm}` becomes "49 km". A text parameter is looked up in `values` first.
 * `{screwCount|screw|screws}` takes the first word for one and the second for any other number.
 * @example fill('{screwCount} {screwCount|screw|screws} of {drillMm}', { screwCount: 2, drillMm: 2.5 }, english) // '2 screws of 2.5 mm'
 */
export function fill(
  template: string,
  parameters: Readonly<Record<string, number | string>>,
  catalogue: Catalogue,
  style: WritingStyle = plainStyle,
): string {
  // What is plus or minus stays with its sign.
  return template.replaceAll('± ', '±\u00a0').replace(placeholder, (whole, name: string, one?: string, many?: string) => {
    const value = parameters[name];
    if (value === undefined) return whole;
    if (one !== undefined && many !== undefined) return value === 1 ? one : many;
    return typeof value === 'string' ? written(name, value, catalogue, style) : writeValue(name, value, style);
  });
}

/** A text parameter: a word of the catalogue, or a number that was written before (`raText`), with the mark of the language. */
function written(name: string, value: string, catalogue: Catalogue, { decimalMark }: WritingStyle): string {
  return name.endsWith('Text') && decimalMark === ',' ? value.replace('.', ',') : wordFor(value, catalogue);
}

/**
 * Names of the placeholders of a sentence, in order.
 * @example placeholdersOf('up to {forceN} at {warmPartC}') // forceN,warmPartC
 */
export function placeholdersOf(template: string): readonly string[] {
  return [...template.matchAll(placeholder)].map((match) => match[1] ?? '');
}
