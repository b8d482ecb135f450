/** [mm] What a rule or a calliper on the bench can set: tenths. The plan keeps full precision; its steps say these. */
const tenths = 10;
/** Binary leftovers are not a reason to step a tenth further. */
const settleMm = 1e-6;

/** Down to the next tenth: for what must not be passed. */
export function atMostMm(valueMm: number): number {
  return Math.floor((valueMm + settleMm) * tenths) / tenths;
}

/** Up to the next tenth: for what must be reached. */
export function atLeastMm(valueMm: number): number {
  return Math.ceil((valueMm - settleMm) * tenths) / tenths;
}

/** A span of depths, never wider than computed, in hundredths as a depth gauge shows them. */
export function withinMm(lowMm: number, highMm: number): { readonly lowMm: number; readonly highMm: number } {
  const low = Math.ceil((lowMm - settleMm) * 100) / 100 + 0;
  const high = Math.floor((highMm + settleMm) * 100) / 100;
  return low <= high ? { lowMm: low, highMm: high } : { lowMm, highMm };
}

/** To the nearest tenth: for a mark. */
export function nearMm(valueMm: number): number {
  return Math.round(valueMm * tenths) / tenths;
}
