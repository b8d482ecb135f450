import { invalidInput } from '../../result/index.js';
import type { ClearanceGroup } from './bearing-choices.js';

/** A designation taken apart. */
export interface ReadDesignation {
  readonly basic: string;
  readonly seal: 'open' | 'shields' | 'seals';
  /** How many sides are closed. */
  readonly closedSideCount: 0 | 1 | 2;
  readonly clearanceGroup: ClearanceGroup;
  readonly hasSnapRingGroove: boolean;
  readonly unknownSuffixes: readonly string[];
}

const groups: Readonly<Record<string, ClearanceGroup>> = { C2: '2', CN: 'N', C0: 'N', C3: '3', C4: '4', C5: '5' };
const seals = ['2RS', 'RS'];
const shields = ['ZZ', '2Z', 'Z'];
const onOneSide = ['RS', 'Z'];
/** Suffixes that the trade shares; they are also written run together, as in `2RSC3`. */
const shared = /2RS|RS|ZZ|2Z|Z|C[02345N]|NR|N/gu;
const onlyShared = new RegExp(`^(?:${shared.source})+$`, 'u');

const understood = 'a basic designation such as 6203 or NU 205, and suffixes such as 2RS C3; of any other bearing enter bore, outside and width';

/** Reads `6203-2RS C3` and `6203-2RSC3`: digits first, then suffixes, parted or run together. Throws `CalculationError` invalid-input. */
export function readSuffixes(designation: string): ReadDesignation {
  const [, prefix = '', digits = '', rest = ''] = /^\s*(NUP|NU|NJ|N)?\s*(\d{3,5})(.*)$/u.exec(designation.toUpperCase()) ?? [];
  const basic = prefix === '' ? digits : `${prefix} ${digits}`;
  if (digits === '') throw invalidInput('designation', designation, understood, /\d[OIL]|[OIL]\d/iu.test(designation) ? `a letter stands where a digit belongs (O for 0, I or l for 1); expected ${understood}` : undefined);
  const words = rest.split(/[\s\-/.,]+/u).filter((word) => word !== '').flatMap((word) => (onlyShared.test(word) ? (word.match(shared) ?? []) : [word]));
  let seal: ReadDesignation['seal'] = 'open';
  let closedSideCount: ReadDesignation['closedSideCount'] = 0;
  let clearanceGroup: ClearanceGroup = 'N';
  let hasSnapRingGroove = false;
  const unknownSuffixes: string[] = [];
  for (const word of words) {
    const group = groups[word];
    if (group !== undefined) clearanceGroup = group;
    else if (seals.includes(word) || shields.includes(word)) {
      seal = seals.includes(word) ? 'seals' : 'shields';
      closedSideCount = onOneSide.includes(word) ? 1 : 2;
    }
    else if (word === 'N' || word === 'NR') hasSnapRingGroove = true;
    else unknownSuffixes.push(word);
  }
  return { basic, seal, closedSideCount, clearanceGroup, hasSnapRingGroove, unknownSuffixes };
}
