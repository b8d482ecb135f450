/** Smaller pivots than this share of the diagonal mean that two columns tell the same. */
const singularShare = 1e-9;

/**
 * Least squares over a few columns of the order of one, by Gauss–Jordan elimination of the normal equations.
 * @returns null with fewer rows than columns, or where the columns cannot be told apart
 */
export function solveNormal(rows: readonly (readonly number[])[], values: readonly number[]): readonly number[] | null {
  const size = rows[0]?.length ?? 0;
  if (rows.length < size) return null;
  const matrix = Array.from({ length: size }, (_, i) => [
    ...Array.from({ length: size }, (__, j) => rows.reduce((sum, row) => sum + at(row, i) * at(row, j), 0)),
    rows.reduce((sum, row, k) => sum + at(row, i) * at(values, k), 0),
  ]);
  const diagonal = matrix.map((row, i) => at(row, i));
  for (let pivot = 0; pivot < size; pivot += 1) {
    const head = matrix[pivot] ?? [];
    const scale = at(head, pivot);
    if (!(scale > singularShare * at(diagonal, pivot))) return null;
    const unit = head.map((value) => value / scale);
    matrix[pivot] = unit;
    matrix.forEach((row, i) => {
      if (i === pivot) return;
      const factor = at(row, pivot);
      matrix[i] = row.map((value, j) => value - factor * at(unit, j));
    });
  }
  return matrix.map((row) => at(row, size));
}

function at(list: readonly number[], i: number): number {
  return list[i] ?? 0;
}
