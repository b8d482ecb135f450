import { parseLength } from '../quantity/index.js';
import { CalculationError, invalidInput } from '../result/index.js';
import { longestDesignation } from './internal/designation.js';

export interface InchFitDesignation {
  readonly nominalIn: number;
  readonly fitClass: string;
}

const pattern = /^(.*?)\s*((?:RC|LC|LT|LN|FN)\s*\d{1,2})\s*$/iu;
const understood = 'a size and a class of inch fit, such as 3/4 FN2 or 1 3/8 in RC5';

/**
 * True for text that ends in a class of inch fit: `3/4 FN2`.
 * @example isInchFitDesignation('3/4 FN2') // true
 */
export function isInchFitDesignation(text: string): boolean {
  return text.length <= longestDesignation && pattern.test(text);
}

/**
 * Reads an inch fit as people write it: `3/4 FN2`, `1 3/8 in RC5`, `19.05 mm LN2`. A size without a unit is in inches.
 * @returns nominalIn [in], fitClass as the standard writes it
 * @throws CalculationError invalid-input
 * @source ansi-b4-1-1967 (held as: page)
 * @example parseInchFitDesignation('3/4 fn 2').fitClass // 'FN2'
 */
export function parseInchFitDesignation(text: string): InchFitDesignation {
  if (text.length > longestDesignation) throw invalidInput('', text, understood);
  const [, size = '', fitClass = ''] = pattern.exec(text) ?? [];
  if (fitClass === '') throw invalidInput('', text, understood);
  if (size.trim() === '') throw invalidInput('nominalIn', text, understood, `no size before the class; expected ${understood}`);
  try {
    return { nominalIn: Math.round(((parseLength(size, { defaultUnit: 'in' }).valueMm * 5) / 127) * 1e9) / 1e9, fitClass: fitClass.replace(/\s+/gu, '').toUpperCase() };
  } catch (error) {
    throw error instanceof CalculationError ? error.within('nominalIn') : error;
  }
}
