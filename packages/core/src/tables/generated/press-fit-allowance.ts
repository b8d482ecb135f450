// Generated from reference/seal/press-fit-allowance.csv by reference/generate.mjs: do not edit.
import type { Held } from '../held.js';
import { among } from '../among.js';
import { runs } from '../runs.js';

/** Allowance of the seal outside over the nominal bore (source iso-6194-1-2007; held as: page). */
export const pressFitAllowance: {
  readonly id: string;
  readonly source: string;
  readonly clause: string;
  readonly held: Held;
  readonly rowCount: number;
  readonly columns: {
    readonly set: readonly ('iso-6194-1' | 'din-3760' | 'rma-metric')[];
    readonly construction: readonly ('metal-case' | 'rubber-covered' | 'rubber-covered-ribbed')[];
    readonly overMm: readonly number[];
    readonly upToMm: readonly number[];
    readonly allowanceMinMm: readonly number[];
    readonly allowanceMaxMm: readonly number[];
    readonly outOfRoundMaxMm: readonly (number | null)[];
    readonly held: readonly ('page' | 'memory')[];
  };
  readonly marks: Readonly<Record<never, readonly Held[]>>;
} = {
  id: 'press-fit-allowance',
  source: 'iso-6194-1-2007',
  clause: 'press-fit allowance',
  held: 'page',
  rowCount: 47,
  columns: {
    set: runs([['iso-6194-1', 17], ['din-3760', 18], ['rma-metric', 12]]),
    construction: among(['metal-case', 'rubber-covered', 'rubber-covered-ribbed'], 'aaaaaaabbbbbbccccaaaaaabbbbbbccccccaaaaaabbbbbb'),
    overMm: among([0, 50, 80, 120, 180, 300, 440], 'abcdefgabcdefcdefabcdefabcdefabcdefabcdefabcdef'),
    upToMm: among([50, 80, 120, 180, 300, 440, 500, 400], 'abcdefgabcdefcdefabcdegabcdegabcdegabcdehabcdeh'),
    allowanceMinMm: among([0.08, 0.09, 0.1, 0.12, 0.15, 0.2, 0.25, 0.3, 0.13, 0.18, 0.23, 0.35], 'abcdeffeffgghfgghciejfkeffgghfgghhlabcdffeffghh'),
    allowanceMaxMm: among([0.2, 0.23, 0.25, 0.28, 0.35, 0.45, 0.3, 0.55, 0.5, 0.65, 0.4], 'abcdeffgeeffhfihjabcdgegeeffhkffhhjabcdefgeeffh'),
    outOfRoundMaxMm: among([0.18, 0.25, 0.3, 0.4, null, 0.35, 0.5, 0.65, 0.8, 1], 'abcdeeebfghijghijbfghijbfghijbfghijabceeebfgeee'),
    held: among(['page', 'memory'], 'aaaaaabaaaaaabbbbaaaaaaaaaaaabbbbbbaaaaaaaaaaaa'),
  },
  marks: {
  },
};
