// Generated from reference/seal/housing-chamfer.csv by reference/generate.mjs: do not edit.
import type { Held } from '../held.js';

/** Bore chamfer, extra depth and corner radius by seal width (source jis-b-2402-1-2013; held as: page). */
export const housingChamfer: {
  readonly id: string;
  readonly source: string;
  readonly clause: string;
  readonly held: Held;
  readonly rowCount: number;
  readonly columns: {
    readonly set: readonly ('jis-b-2402-1' | 'gb-13871')[];
    readonly overMm: readonly number[];
    readonly upToMm: readonly number[];
    readonly chamferLengthMinMm: readonly (number | null)[];
    readonly chamferLengthMaxMm: readonly (number | null)[];
    readonly extraDepthMm: readonly number[];
    readonly cornerRadiusMaxMm: readonly (number | null)[];
    readonly held: readonly ('page' | 'memory')[];
  };
  readonly marks: Readonly<Record<never, readonly Held[]>>;
} = {
  id: 'housing-chamfer',
  source: 'jis-b-2402-1-2013',
  clause: 'housing table',
  held: 'page',
  rowCount: 4,
  columns: {
    set: ['jis-b-2402-1', 'jis-b-2402-1', 'gb-13871', 'gb-13871'],
    overMm: [0, 10, 0, 10],
    upToMm: [10, 60, 10, 60],
    chamferLengthMinMm: [0.7, 1, null, 1.2],
    chamferLengthMaxMm: [1, 1.3, null, 1.5],
    extraDepthMm: [1.2, 1.5, 0.9, 1.2],
    cornerRadiusMaxMm: [0.5, 0.75, null, null],
    held: ['page', 'page', 'memory', 'memory'],
  },
  marks: {
  },
};
