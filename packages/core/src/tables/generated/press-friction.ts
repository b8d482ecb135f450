// Generated from reference/joint/press-friction.csv by reference/generate.mjs: do not edit.
import type { Held } from '../held.js';
import { among } from '../among.js';

/** Friction of a steel shaft pressed lengthwise into a hub (source din-7190-2001; held as: memory). */
export const pressFriction: {
  readonly id: string;
  readonly source: string;
  readonly clause: string;
  readonly held: Held;
  readonly rowCount: number;
  readonly columns: {
    readonly hub: readonly string[];
    readonly family: readonly ('steel' | 'iron' | 'aluminium' | 'copper-alloy' | 'titanium' | 'magnesium')[];
    readonly condition: readonly ('dry' | 'oiled')[];
    readonly releaseCoefficient: readonly number[];
    readonly slipCoefficient: readonly (number | null)[];
  };
  readonly marks: Readonly<Record<never, readonly Held[]>>;
} = {
  id: 'press-friction',
  source: 'din-7190-2001',
  clause: 'friction of longitudinal press fits',
  held: 'memory',
  rowCount: 15,
  columns: {
    hub: ['steel E335', 'steel E335', 'cast steel GE300', 'cast steel GE300', 'steel S235', 'steel S235', 'grey iron GJL-250', 'grey iron GJL-250', 'ductile iron GJS-600', 'ductile iron GJS-600', 'aluminium G-AlSi12(Cu)', 'aluminium G-AlSi12(Cu)', 'lead bronze G-CuPb10Sn', 'titanium TiAl6V4', 'magnesium or aluminium alloy shrink joint'],
    family: ['steel', 'steel', 'steel', 'steel', 'steel', 'steel', 'iron', 'iron', 'iron', 'iron', 'aluminium', 'aluminium', 'copper-alloy', 'titanium', 'magnesium'],
    condition: among(['dry', 'oiled'], 'abababababababa'),
    releaseCoefficient: [0.11, 0.08, 0.11, 0.08, 0.1, 0.07, 0.12, 0.06, 0.1, 0.06, 0.07, 0.05, 0.07, 0.05, 0.15],
    slipCoefficient: [0.08, 0.07, 0.08, 0.07, 0.09, 0.06, 0.11, 0.05, 0.09, 0.05, 0.06, 0.04, 0.06, null, 0.1],
  },
  marks: {
  },
};
