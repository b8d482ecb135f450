/** A tridiagonal system: row i is below[i]·x[i−1] + on[i]·x[i] + above[i]·x[i+1] = right[i]. */
export interface Tridiagonal {
  readonly below: Float64Array;
  readonly on: Float64Array;
  readonly above: Float64Array;
}

/** Solves a tridiagonal system by elimination without exchange of rows: safe where the diagonal outweighs its neighbours, as here. */
export function solveTridiagonal({ below, on, above }: Tridiagonal, right: Float64Array): Float64Array {
  const n = on.length;
  const upper = new Float64Array(n);
  const x = new Float64Array(n);
  for (let i = 0; i < n; i += 1) {
    const left = i === 0 ? 0 : (below[i] ?? 0);
    const pivot = (on[i] ?? 0) - left * (upper[i - 1] ?? 0);
    upper[i] = (above[i] ?? 0) / pivot;
    x[i] = ((right[i] ?? 0) - left * (x[i - 1] ?? 0)) / pivot;
  }
  for (let i = n - 2; i >= 0; i -= 1) x[i] = (x[i] ?? 0) - (upper[i] ?? 0) * (x[i + 1] ?? 0);
  return x;
}
