/**
 * [mm] Snaps a length to 1e-6 mm, so that a limit of a table is hit from either unit system.
 * @example snapMm(0.75 * 25.4) // 19.05
 */
export function snapMm(valueMm: number): number {
  const snapped = Math.round(valueMm * 1e6) / 1e6;
  return snapped === 0 ? 0 : snapped;
}
