// Generated from reference/seal/din-3760-housing.csv by reference/generate.mjs: do not edit.
import type { Held } from '../held.js';

/** Housing bore for a seal by width (source din-3760-1996; held as: page). */
export const din3760Housing: {
  readonly id: string;
  readonly source: string;
  readonly clause: string;
  readonly held: Held;
  readonly rowCount: number;
  readonly columns: {
    readonly widthMm: readonly number[];
    readonly seatLengthMinMm: readonly number[];
    readonly boreDepthMinMm: readonly number[];
    readonly cornerRadiusMaxMm: readonly number[];
  };
  readonly marks: Readonly<Record<never, readonly Held[]>>;
} = {
  id: 'din-3760-housing',
  source: 'din-3760-1996',
  clause: 'housing table',
  held: 'page',
  rowCount: 6,
  columns: {
    widthMm: [7, 8, 10, 12, 15, 20],
    seatLengthMinMm: [5.95, 6.8, 8.5, 10.3, 12.75, 17],
    boreDepthMinMm: [7.3, 8.3, 10.3, 12.3, 15.3, 20.3],
    cornerRadiusMaxMm: [0.5, 0.5, 0.5, 0.7, 0.7, 0.7],
  },
  marks: {
  },
};
