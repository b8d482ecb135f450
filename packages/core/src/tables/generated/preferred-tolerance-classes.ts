// Generated from reference/tolerance/preferred-tolerance-classes.csv by reference/generate.mjs: do not edit.
import type { Held } from '../held.js';
import { runs } from '../runs.js';

/** Tolerance classes for general purposes, by preference (source iso-1829-1975; held as: memory). */
export const preferredToleranceClasses: {
  readonly id: string;
  readonly source: string;
  readonly clause: string;
  readonly held: Held;
  readonly rowCount: number;
  readonly columns: {
    readonly toleranceClass: readonly string[];
    readonly preference: readonly ('first' | 'second')[];
  };
  readonly marks: Readonly<Record<never, readonly Held[]>>;
} = {
  id: 'preferred-tolerance-classes',
  source: 'iso-1829-1975',
  clause: 'selection of tolerance zones',
  held: 'memory',
  rowCount: 92,
  columns: {
    toleranceClass: ['A11', 'B11', 'C11', 'D10', 'E9', 'F8', 'G7', 'H7', 'H8', 'H9', 'H11', 'JS7', 'K7', 'N7', 'P7', 'R7', 'S7', 'a11', 'b11', 'c11', 'd9', 'e8', 'f7', 'g6', 'h6', 'h7', 'h9', 'h11', 'js6', 'k6', 'n6', 'p6', 'r6', 's6', 'D9', 'D11', 'E8', 'E10', 'F7', 'F9', 'G6', 'H6', 'H10', 'JS6', 'JS8', 'K6', 'K8', 'M6', 'M7', 'M8', 'N6', 'N8', 'P6', 'P8', 'R6', 'R8', 'S6', 'T6', 'T7', 'U7', 'X7', 'd8', 'd10', 'e7', 'e9', 'f6', 'f8', 'g5', 'h5', 'h8', 'h10', 'js5', 'js7', 'k5', 'k7', 'm5', 'm6', 'm7', 'n5', 'n7', 'p5', 'p7', 'r5', 'r7', 's5', 's7', 't5', 't6', 't7', 'u6', 'u7', 'x6'],
    preference: runs([['first', 34], ['second', 58]]),
  },
  marks: {
  },
};
