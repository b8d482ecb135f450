import { directionDeg, type FormFit, type FormPoint } from './form-fit.js';

/** How far readings of one thing scatter, from the readings themselves (type A). */
export interface Repeatability {
  /** Standard deviation of one reading. */
  readonly deviationMm: number;
  /** Standard uncertainty of the mean. */
  readonly meanUncertaintyMm: number;
  readonly degreesOfFreedomCount: number;
  readonly readingCount: number;
  /** `same-place`: read again at one angle and depth; `unplaced`: no places given, form is in it; `about-fit`: what oval and taper leave. */
  readonly kind: 'same-place' | 'unplaced' | 'about-fit';
}

/**
 * Scatter of the readings: pooled over places read more than once, else about the fitted form.
 *   s = √(Σ(x − x̄)² / ν);  u = s/√n
 * Where several directions were read but the oval cannot be fitted, what is left over is form and not scatter: none is given.
 * @returns null where nothing was read twice and no fit leaves anything over
 * @source jcgm-100-2008, clauses 4.2.2, 4.2.3 and 4.2.4 (held as: memory)
 */
export function repeatability(points: readonly FormPoint[], fit: FormFit | null): Repeatability | null {
  const places = new Map<string, number[]>();
  for (const { valueMm, angleDeg, depthMm } of points) {
    const place = `${angleDeg === undefined ? '' : directionDeg(angleDeg)}|${depthMm ?? ''}`;
    const there = places.get(place);
    if (there === undefined) places.set(place, [valueMm]);
    else there.push(valueMm);
  }
  const readingCount = points.length;
  const repeats = readingCount - places.size;
  if (repeats > 0) {
    let squares = 0;
    for (const values of places.values()) squares += squaresAboutMean(values);
    const deviationMm = Math.sqrt(squares / repeats);
    const isPlaced = points.some((point) => point.angleDeg !== undefined || point.depthMm !== undefined);
    return { deviationMm, meanUncertaintyMm: deviationMm / Math.sqrt(readingCount), degreesOfFreedomCount: repeats, readingCount, kind: isPlaced ? 'same-place' : 'unplaced' };
  }
  if (fit === null || fit.degreesOfFreedomCount < 1 || (fit.oval === null && hasDirections(points))) return null;
  const deviationMm = Math.sqrt(fit.residualsMm.reduce((sum, value) => sum + value ** 2, 0) / fit.degreesOfFreedomCount);
  return { deviationMm, meanUncertaintyMm: deviationMm / Math.sqrt(readingCount), degreesOfFreedomCount: fit.degreesOfFreedomCount, readingCount, kind: 'about-fit' };
}

function squaresAboutMean(values: readonly number[]): number {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  return values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
}

function hasDirections(points: readonly FormPoint[]): boolean {
  return new Set(points.map(({ angleDeg }) => (angleDeg === undefined ? '' : directionDeg(angleDeg)))).size > 1;
}
