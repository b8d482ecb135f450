// Generated from reference/seal/seal-limits.csv by reference/generate.mjs: do not edit.
import type { Held } from '../held.js';
import { among } from '../among.js';
import { runs } from '../runs.js';

/** Single limits and spans for a seal, its track and its bore (source common-practice; held as: practice). */
export const sealLimits: {
  readonly id: string;
  readonly source: string;
  readonly clause: string;
  readonly held: Held;
  readonly rowCount: number;
  readonly columns: {
    readonly name: readonly string[];
    readonly lowMm: readonly (number | null)[];
    readonly highMm: readonly (number | null)[];
    readonly lowDeg: readonly (number | null)[];
    readonly highDeg: readonly (number | null)[];
    readonly lowHrc: readonly (number | null)[];
    readonly fromMps: readonly (number | null)[];
    readonly lowK: readonly (number | null)[];
    readonly highK: readonly (number | null)[];
    readonly lowMpa: readonly (number | null)[];
    readonly highMpa: readonly (number | null)[];
    readonly lowCoefficient: readonly (number | null)[];
    readonly highCoefficient: readonly (number | null)[];
    readonly lowFactor: readonly (number | null)[];
    readonly highFactor: readonly (number | null)[];
    readonly lowC: readonly (number | null)[];
    readonly rowSource: readonly string[];
    readonly clause: readonly string[];
    readonly held: readonly ('page' | 'memory' | 'practice')[];
  };
  readonly marks: Readonly<Record<never, readonly Held[]>>;
} = {
  id: 'seal-limits',
  source: 'common-practice',
  clause: '',
  held: 'practice',
  rowCount: 31,
  columns: {
    name: ['track-hardness', 'track-hardness-fast', 'lead-angle', 'runout', 'runout-recommended', 'offset', 'edge-radius', 'edge-radius-dust-lip', 'bore-chamfer-angle', 'bore-spare-depth', 'bearing-share', 'lip-rise', 'case-thickness', 'case-yield', 'friction-pushing-in', 'friction-holding', 'sleeve-wall', 'retaining-gap', 'lip-rise-dust-lip', 'friction-torque-fkm', 'friction-torque-nbr', 'friction-power-short', 'track-sleeve-wall', 'track-move', 'half-rubber-metal-share', 'rubber-cover', 'inch-size-rounding', 'inch-size-nearer-by', 'inch-parts-made', 'inch-parts-marked', 'size-reading-error'],
    lowMm: among([null, 0.6, 1, 0.3, 0.8, 2, 0.25, 0.5, 0.03, 0.1, 0.05], 'aaaaaabcadaaeaaafaaaaagcahijaak'),
    highMm: among([null, 0.25, 0.13, 1.2, 3, 0.15, 0.28, 1], 'aaabcbaaaaaadaaaefaaaagaahaaaaa'),
    lowDeg: runs([[null, 8], 10, [null, 22]]),
    highDeg: runs([[null, 2], 0.05, [null, 5], 20, [null, 22]]),
    lowHrc: runs([45, 55, [null, 29]]),
    fromMps: runs([0, 4, [null, 29]]),
    lowK: runs([[null, 11], 20, [null, 6], 20, [null, 12]]),
    highK: runs([[null, 11], 50, [null, 19]]),
    lowMpa: runs([[null, 13], 140, [null, 17]]),
    highMpa: runs([[null, 13], 280, [null, 17]]),
    lowCoefficient: runs([[null, 14], 0.1, 0.05, [null, 3], 0.003737, 0.002429, [null, 10]]),
    highCoefficient: runs([[null, 14], 0.15, 0.1, [null, 15]]),
    lowFactor: among([null, 0.85, 0.00000769, 0.4, 16, 32], 'aaaaaaaaaabaaaaaaaaaacaadaaaefa'),
    highFactor: runs([[null, 10], 1, [null, 13], 0.6, [null, 6]]),
    lowC: runs([[null, 31]]),
    rowSource: among(['din-3760-1996', 'rma-os-1', 'seal-handbook-reprints', 'tribology-handbook-b23', 'seal-selection-article-2018', 'common-practice', 'en-10130', 'din-7190-2001', 'iso-tr-14179-1', 'iso-tr-14179-2', 'general-memory', 'seal-trade-pages'], 'aabbcdaaaaaefgfhffeiijklfffffff'),
    clause: ['shaft hardness', 'shaft hardness', 'lead', 'radial runout', 'radial runout', 'misalignment', 'radius instead of chamfer', 'radius instead of chamfer', 'bore chamfer 10 to 20°', 't2 = b + 0.3', 't1 = 0.85 b', '', '', 'DC01', '', 'steel on aluminium', '', '', 'a dust lip adds more than 20 K', 'seal loss of gear units', 'seal loss of gear units', 'short form of the seal loss', 'wall of a thin repair sleeve', 'lip moved about 1 mm off the track', 'share of the width that is bare metal', '', '', '', '', '', ''],
    held: among(['page', 'practice', 'memory'], 'aaaaaaaaaaaabcbcbbaccccabbbbbbb'),
  },
  marks: {
  },
};
