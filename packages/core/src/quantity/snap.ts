/** [mm] Snaps a length to 1e-6 mm, so that a limit of a table is hit from either unit system. */
export function snapMm(valueMm: number): number {
  const snapped = Math.round(valueMm * 1e6) / 1e6;
  return snapped === 0 ? 0 : snapped;
}
