import { invalidInput } from '../result/index.js';
import { readClassName } from './internal/class-names.js';
import { classPattern, longestDesignation, readNominalMm } from './internal/designation.js';

export interface ZoneDesignation {
  readonly nominalMm: number;
  readonly toleranceClass: string;
}

const pattern = new RegExp(String.raw`^(.*?)${classPattern}\s*$`, 'u');
const isFit = new RegExp(String.raw`${classPattern}\s*[/⁄∕–-]?\s*${classPattern}\s*$`, 'u');
const understood = 'a size and a class, such as 25 p6, ø40 H7 or 1 3/8 in h11';

/**
 * Reads a size with its tolerance class as people write it: `25 p6`, `ø40H7`, `1 3/8 in h11`.
 * @returns nominalMm [mm], toleranceClass as the standard writes it
 * @throws CalculationError invalid-input | no-such-class
 * @source iso-286-1-2010, clause 4.3 (held as: memory)
 * @example parseZoneDesignation('ø25 p 6').toleranceClass // 'p6'
 */
export function parseZoneDesignation(text: string): ZoneDesignation {
  if (text.length > longestDesignation) throw invalidInput('', text, understood);
  const [, size = '', letter = '', grade = ''] = pattern.exec(text) ?? [];
  if (letter === '') throw invalidInput('', text, understood);
  if (size.trim() === '') throw invalidInput('nominalMm', text, understood, `no size before the class; expected ${understood}`);
  if (isFit.test(text)) throw invalidInput('toleranceClass', text, understood, 'two classes make a fit, and this reads one: ask for the fit, or for each class by itself');
  const { text: toleranceClass } = readClassName(`${letter}${grade}`, 'toleranceClass');
  return { nominalMm: readNominalMm(size, `${letter}${grade}`, 'toleranceClass'), toleranceClass };
}
