// Generated from reference/handwork/sheet-metal-pilot-holes.csv by reference/generate.mjs: do not edit.
import type { Held } from '../held.js';
import { among } from '../among.js';
import { runs } from '../runs.js';

/** Pilot holes of sheet-metal screws (source din-7975; held as: page). */
export const sheetMetalPilotHoles: {
  readonly id: string;
  readonly source: string;
  readonly clause: string;
  readonly held: Held;
  readonly rowCount: number;
  readonly columns: {
    readonly designation: readonly string[];
    readonly set: readonly ('din-7975' | 'hole-group-1b')[];
    readonly sheetOverMm: readonly number[];
    readonly sheetUpToMm: readonly number[];
    readonly pilotMm: readonly number[];
    readonly held: readonly ('page')[];
  };
  readonly marks: Readonly<Record<never, readonly Held[]>>;
} = {
  id: 'sheet-metal-pilot-holes',
  source: 'din-7975',
  clause: 'pilot holes',
  held: 'page',
  rowCount: 69,
  columns: {
    designation: among(['ST 2.2', 'ST 2.9', 'ST 3.5', 'ST 4.2', 'ST 4.8'], 'aaaaaabbbbbbbbcccccccdddddeeeeeaaaaaaaabbbbbbbbbbccccccccdddddddeeeee'),
    set: runs([['hole-group-1b', 31], ['din-7975', 38]]),
    sheetOverMm: among([0, 0.56, 0.75, 0.88, 1.13, 1.38, 0.63, 1.25, 1.75, 0.5, 0.8, 0.9, 1, 1.1, 1.2, 1.3, 1.4, 1.5, 1.6, 1.7, 1.8, 1.9, 2], 'abcdefabgcdhfiabcdhfijgdefjcefiklmnopqrnopqrstuvwpqrstuvwqrstuvwstuvw'),
    sheetUpToMm: among([0.56, 0.75, 0.88, 1.13, 1.38, 1.5, 0.63, 1.25, 1.75, 2.5, 0.8, 0.9, 1, 1.1, 1.2, 1.3, 1.4, 1.6, 1.7, 1.8, 1.9, 2], 'abcdefagbcheijabcheijgcdejbdeijklmnopqfnopqfrstuvpqfrstuvqfrstuvrstuv'),
    pilotMm: among([1.6, 1.7, 1.8, 1.9, 2.2, 2.3, 2.4, 2.5, 2.6, 2.7, 2.8, 2.9, 3, 3.2, 3.3, 3.5, 3.7, 3.9, 4, 3.1, 3.4, 3.6, 3.8], 'abccddeffggghiijjkklmnnnopqqrrsbbbbbbcceeeefffgggijjjjkkltnnnoouvqwwr'),
    held: runs([['page', 69]]),
  },
  marks: {
  },
};
