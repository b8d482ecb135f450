/**
 * Place of the range "over … up to and including" that holds a value, or -1 outside all of them.
 *
 * The value is first snapped to 1e-6 (a millionth of a millimetre), so that 3/4 in and 19.05 mm meet the same limit.
 * Ranges must rise and must not overlap; gaps between them answer -1. A blank (`null`) limit is open.
 * @example findHalfOpenRow([0, 3, 6], [3, 6, 10], 6) // 1
 */
export function findHalfOpenRow(over: readonly (number | null)[], upTo: readonly (number | null)[], value: number): number {
  const snapped = Math.round(value * 1e6) / 1e6;
  let first = 0;
  let last = upTo.length - 1;
  while (first < last) {
    const middle = (first + last) >> 1;
    if (snapped <= (upTo[middle] ?? Infinity)) last = middle;
    else first = middle + 1;
  }
  if (upTo.length === 0 || !(snapped > (over[first] ?? -Infinity)) || !(snapped <= (upTo[first] ?? Infinity))) return -1;
  return first;
}
