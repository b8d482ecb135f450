// Generated from reference/bearing/seat-classes.csv by reference/generate.mjs: do not edit.
import type { Held } from '../held.js';
import { among } from '../among.js';
import { runs } from '../runs.js';

/** Recommended tolerance classes of bearing seats (source ansi-abma-7; held as: page). */
export const seatClasses: {
  readonly id: string;
  readonly source: string;
  readonly clause: string;
  readonly held: Held;
  readonly rowCount: number;
  readonly columns: {
    readonly set: readonly ('abma-7' | 'handbook')[];
    readonly seat: readonly ('housing' | 'shaft')[];
    readonly bearingKind: readonly ('any' | 'cylindrical-roller' | 'deep-groove-ball')[];
    readonly ringLoad: readonly ('axial' | 'indeterminate' | 'rotating' | 'stationary')[];
    readonly magnitude: readonly ('heavy' | 'light' | 'normal' | 'shock')[];
    readonly overMm: readonly (number | null)[];
    readonly upToMm: readonly (number | null)[];
    readonly toleranceClass: readonly string[];
    readonly condition: readonly ('any' | 'heat-through-shaft' | 'need-not-slide' | 'not-split' | 'plummer-block' | 'slides-easily' | 'split' | 'thin-wall')[];
    readonly rowSource: readonly string[];
    readonly held: readonly ('memory' | 'page')[];
  };
  readonly marks: Readonly<Record<never, readonly Held[]>>;
} = {
  id: 'seat-classes',
  source: 'ansi-abma-7',
  clause: 'shaft and housing fits',
  held: 'page',
  rowCount: 129,
  columns: {
    set: runs([['abma-7', 82], ['handbook', 47]]),
    seat: runs([['housing', 18], ['shaft', 64], ['housing', 17], ['shaft', 30]]),
    bearingKind: runs([['any', 18], ['cylindrical-roller', 43], ['deep-groove-ball', 21], ['any', 17], ['deep-groove-ball', 30]]),
    ringLoad: among(['indeterminate', 'rotating', 'stationary', 'axial'], 'aaaabbbbccccccccccdddaaaaaaaaaaaaaaaaabbbbbbbbbbbbbbbbbccccccdddaaaaaabbbbbbccccccaaaabbbbcccccccccaaaaaaaaaaaaaaabbbbbbbbbbbbbbb'),
    magnitude: among(['heavy', 'light', 'normal', 'shock'], 'abcdaabcaaabbbcccdabcaaaaaabbbbbccccccaaaaaabbbbbccccccaabbccabcaabbccaabbccaabbccabcdaabcaabbbcccdaaaaaabbbccccccaaaaaabbbcccccc'),
    overMm: among([null, 0, 40, 65, 140, 200, 500, 320, 100, 18, 10, 17], 'aaaaaaaaaaaaaaaaaabbbbcdefgbcehgbciehgbcdefgbcehgbciehgbbbbbbbbbjibjbjjibjbjbbbbbbaaaaaaaaaaaaaaaaabkliefblibkliefbkliefblibklief'),
    upToMm: among([null, 40, 65, 140, 200, 500, 320, 100, 18, 10, 17], 'aaaaaaaaaaaaaaaaaaaaabcdefabdgfabhdgfabcdefabdgfabhdgfaaaaaaaaaahaiaiahaiaiaaaaaaaaaaaaaaaaaaaaaaaajkhdefkhdjkhdefjkhdefkhdjkhdef'),
    toleranceClass: among(['K6', 'J6', 'M6', 'N6', 'P6', 'G7', 'H6', 'H7', 'j6', 'm5', 'm6', 'n6', 'p6', 'r6', 'r7', 'k6', 'k5', 'h6', 'g6', 'h5', 'j5', 'K7', 'JS7', 'M7', 'N7', 'P7', 'H8', 'js5'], 'abacdecdfghfghfghbiiijklmnoipklmqjklmnjklmnoipklmqjklmnrsrsrsiiiqjtiuqqjtiuqrsrsrsvwvxyzxyhfhfAhfAhBuqjklBipBuqjklBuqjklBipBuqjkl'),
    condition: among(['any', 'thin-wall', 'heat-through-shaft', 'not-split', 'split', 'need-not-slide', 'slides-easily', 'plummer-block'], 'aaaaabaacdecdecdeaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaafgfgfgaaaaaaaaaaaaaaafgfgfgaaaaabaaacachachaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa'),
    rowSource: runs([['ansi-abma-7', 82], ['bearing-handbook-reprints', 47]]),
    held: among(['page', 'memory'], 'abaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaababbaababaabaabbbbbbbbbbbbbbbbbbbbbbbbbbbbbb'),
  },
  marks: {
  },
};
