// Generated from reference/seal/surface-limits.csv by reference/generate.mjs: do not edit.
import type { Held } from '../held.js';
import { among } from '../among.js';

/** Roughness Ra of lip track and bore (source din-3760-1996; held as: page). */
export const surfaceLimits: {
  readonly id: string;
  readonly source: string;
  readonly clause: string;
  readonly held: Held;
  readonly rowCount: number;
  readonly columns: {
    readonly set: readonly ('din-3760' | 'jis-b-2402-1' | 'rma')[];
    readonly what: readonly ('shaft-ra' | 'bore-ra')[];
    readonly construction: readonly string[];
    readonly lowerUm: readonly (number | null)[];
    readonly upperUm: readonly number[];
    readonly rowSource: readonly string[];
    readonly held: readonly ('page' | 'memory')[];
  };
  readonly marks: Readonly<Record<never, readonly Held[]>>;
} = {
  id: 'surface-limits',
  source: 'din-3760-1996',
  clause: 'roughness',
  held: 'page',
  rowCount: 8,
  columns: {
    set: ['din-3760', 'din-3760', 'din-3760', 'jis-b-2402-1', 'jis-b-2402-1', 'rma', 'rma', 'rma'],
    what: among(['shaft-ra', 'bore-ra'], 'abbababb'),
    construction: ['', 'rubber-covered', 'metal-case', '', '', '', 'metal-case', 'rubber-covered'],
    lowerUm: [0.2, 1.6, 0.8, 0.1, 1.6, 0.2, null, null],
    upperUm: [0.8, 6.3, 3.2, 0.32, 3.2, 0.43, 2.5, 3.75],
    rowSource: among(['din-3760-1996', 'jis-b-2402-1-2013', 'rma-os-1'], 'aaabbccc'),
    held: among(['page', 'memory'], 'aabaaaaa'),
  },
  marks: {
  },
};
