import type { Catalogue } from './catalogue.js';
import { plainStyle, writeValue, type WritingStyle } from './write-value.js';

/** Puts parameters into a sentence: `{lipTravelKm}` becomes "49 km". A text parameter is looked up in `values` first. */
export function fill(
  template: string,
  parameters: Readonly<Record<string, number | string>>,
  catalogue: Catalogue,
  style: WritingStyle = plainStyle,
): string {
  return template.replace(/\{([A-Za-z][A-Za-z0-9]*)\}/g, (whole, name: string) => {
    const value = parameters[name];
    if (value === undefined) return whole;
    return typeof value === 'string' ? (catalogue.values[value] ?? value) : writeValue(name, value, style);
  });
}

/** Names of the placeholders of a sentence, in order. */
export function placeholdersOf(template: string): readonly string[] {
  return [...template.matchAll(/\{([A-Za-z][A-Za-z0-9]*)\}/g)].map((match) => match[1] ?? '');
}
