import { invalidInput } from '../../result/index.js';
import type { ClearanceGroup } from './bearing-table.js';

/** A designation taken apart. */
export interface ReadDesignation {
  readonly basic: string;
  readonly seal: 'open' | 'shields' | 'seals';
  readonly clearanceGroup: ClearanceGroup;
  readonly hasSnapRingGroove: boolean;
  readonly unknownSuffixes: readonly string[];
}

const groups: Readonly<Record<string, ClearanceGroup>> = { C2: '2', CN: 'N', C0: 'N', C3: '3', C4: '4', C5: '5' };
const seals = ['2RS', '2RS1', 'RS', 'RS1'];
const shields = ['ZZ', '2Z', 'Z'];

/** Reads `6203-2RS C3`: digits first, then suffixes parted by spaces, hyphens or slashes. Throws `CalculationError` invalid-input. */
export function readSuffixes(designation: string): ReadDesignation {
  const [, prefix = '', digits = '', rest = ''] = /^\s*(NUP|NU|NJ|N)?\s*(\d{3,5})(.*)$/u.exec(designation.toUpperCase()) ?? [];
  const basic = prefix === '' ? digits : `${prefix} ${digits}`;
  if (digits === '') throw invalidInput('designation', designation, 'a basic designation such as 6203 or NU 205, and suffixes such as 2RS C3');
  const words = rest.split(/[\s\-/.,]+/u).filter((word) => word !== '');
  let seal: ReadDesignation['seal'] = 'open';
  let clearanceGroup: ClearanceGroup = 'N';
  let hasSnapRingGroove = false;
  const unknownSuffixes: string[] = [];
  for (const word of words) {
    const group = groups[word];
    if (group !== undefined) clearanceGroup = group;
    else if (seals.includes(word)) seal = 'seals';
    else if (shields.includes(word)) seal = 'shields';
    else if (word === 'N' || word === 'NR') hasSnapRingGroove = true;
    else unknownSuffixes.push(word);
  }
  return { basic, seal, clearanceGroup, hasSnapRingGroove, unknownSuffixes };
}
