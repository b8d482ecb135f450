import type { Catalogue } from './catalogue.js';
import { plainStyle, writeValue, type WritingStyle } from './write-value.js';

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
  return template.replace(placeholder, (whole, name: string, one?: string, many?: string) => {
    const value = parameters[name];
    if (value === undefined) return whole;
    if (one !== undefined && many !== undefined) return value === 1 ? one : many;
    return typeof value === 'string' ? (catalogue.values[value] ?? value) : writeValue(name, value, style);
  });
}

/**
 * Names of the placeholders of a sentence, in order.
 * @example placeholdersOf('up to {forceN} at {warmPartC}') // forceN,warmPartC
 */
export function placeholdersOf(template: string): readonly string[] {
  return [...template.matchAll(placeholder)].map((match) => match[1] ?? '');
}
