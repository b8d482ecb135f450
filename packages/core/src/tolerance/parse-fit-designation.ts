import { invalidInput } from '../result/index.js';
import { readClassName } from './internal/class-names.js';
import { classPattern, longestDesignation, readNominalMm } from './internal/designation.js';

export interface FitDesignation {
  readonly nominalMm: number;
  readonly hole: string;
  readonly shaft: string;
}

const pattern = new RegExp(String.raw`^(.*?)${classPattern}\s*[/⁄∕–-]?\s*${classPattern}\s*$`, 'u');
const understood = 'a size, the class of the hole and the class of the shaft, such as 25 H7/p6 or 1 in H7/p6';

/**
 * Reads a fit as people write it: `25 H7/p6`, `ø25H7-p6`, `3/4 in H7 / p6`.
 * @returns nominalMm [mm], hole and shaft as the standard writes them
 * @throws CalculationError invalid-input | no-such-class
 * @source iso-286-1-2010, clause 5.2 (held as: memory)
 * @example parseFitDesignation('25 H7/p6').shaft // 'p6'
 */
export function parseFitDesignation(text: string): FitDesignation {
  if (text.length > longestDesignation) throw invalidInput('', text, understood);
  const parts = pattern.exec(text);
  if (parts === null) throw invalidInput('', text, understood);
  const [, size = '', first = '', firstGrade = '', second = '', secondGrade = ''] = parts;
  if (size.trim() === '') throw invalidInput('nominalMm', text, understood, `no size before the classes; expected ${understood}`);
  const hole = readClassName(`${first}${firstGrade}`, 'hole');
  const shaft = readClassName(`${second}${secondGrade}`, 'shaft');
  if (hole.kind !== 'hole' || shaft.kind !== 'shaft') {
    const isSwapped = hole.kind === 'shaft' && shaft.kind === 'hole';
    const reason = isSwapped ? `the hole comes first: ${shaft.text}/${hole.text}` : 'the hole has capital letters and the shaft small ones';
    throw invalidInput(hole.kind === 'hole' ? 'shaft' : 'hole', text, understood, reason);
  }
  return { nominalMm: readNominalMm(size, `${first}${firstGrade}`, 'hole'), hole: hole.text, shaft: shaft.text };
}
