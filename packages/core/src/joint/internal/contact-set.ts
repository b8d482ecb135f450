import { solveTridiagonal, type Tridiagonal } from './tridiagonal.js';

/** Pressures that only push, and the gaps of the joints that stand open. */
export interface Contact {
  readonly pressures: Float64Array;
  readonly gaps: Float64Array;
}

/**
 * Which joints press and which stand open:  gap = K·p − U ≥ 0,  p ≥ 0,  gap·p = 0
 * K has a positive diagonal and no positive neighbour, and is positive definite after scaling its rows: so the set of pressing
 * joints found by adding each one that would overlap only grows, no pressure ever falls, and the search ends after at most n rounds
 * with the one answer there is. A pressure that rounding alone takes below zero, where a joint just touches, is zero.
 * @param matrix growth of the gap [mm] for each MPa @param interference U [mm]; below zero a clearance
 * @source cottle-pang-stone-1992, complementarity with Z-matrices (held as: memory)
 */
export function contactOf(matrix: Tridiagonal, interference: Float64Array): Contact {
  const n = interference.length;
  const presses = new Uint8Array(n);
  const { below, on, above } = matrix;
  let pressures: Float64Array = new Float64Array(n);
  let gaps: Float64Array = interference.map((u) => -u + 0);
  for (let round = 0; round <= n; round += 1) {
    let hasNew = false;
    for (let i = 0; i < n; i += 1) {
      if (presses[i] === 0 && (gaps[i] ?? 0) < 0) {
        presses[i] = 1;
        hasNew = true;
      }
    }
    if (!hasNew) break;
    const kept = (values: Float64Array, otherwise: number) => values.map((value, i) => (presses[i] === 1 ? value : otherwise));
    pressures = solveTridiagonal({ below: kept(below, 0), on: kept(on, 1), above: kept(above, 0) }, kept(interference, 0));
    gaps = gapsOf(matrix, pressures, interference, presses);
  }
  return { pressures: pressures.map((p) => (p > 0 ? p : 0)), gaps };
}

function gapsOf({ below, on, above }: Tridiagonal, p: Float64Array, interference: Float64Array, presses: Uint8Array): Float64Array {
  return interference.map((u, i) => (presses[i] === 1 ? 0 : (below[i] ?? 0) * (p[i - 1] ?? 0) + (on[i] ?? 0) * (p[i] ?? 0) + (above[i] ?? 0) * (p[i + 1] ?? 0) - u));
}
