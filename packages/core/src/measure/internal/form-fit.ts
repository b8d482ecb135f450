import { solveNormal } from './solve-normal.js';

export interface FormPoint {
  readonly valueMm: number;
  readonly angleDeg?: number | undefined;
  readonly depthMm?: number | undefined;
}

/** Form of a bore or journal, fitted to diameters read across two points. */
export interface FormFit {
  /** Constant term at the middle depth: the diameter of the least-squares circle where angles are known. */
  readonly diameterMm: number;
  /** Largest less smallest diameter of the fitted oval, and where the largest lies, from 0 up to 180°. */
  readonly oval: { readonly ovalityUm: number; readonly largestAtDeg: number | null } | null;
  /** Change of diameter over the depths covered, deeper counted positive, and per length. */
  readonly taper: { readonly taperUm: number; readonly taperRatio: number; readonly spanMm: number } | null;
  readonly residualsMm: readonly number[];
  readonly degreesOfFreedomCount: number;
}

/** With a wider gap between directions the oval would be guessed, not measured. */
const widestGapDeg = 120;

/**
 * Least squares of diameters over direction and depth.  D(φ, z) = D₀ + a·cos 2φ + b·sin 2φ + c·(z − z̄)
 * A diameter is the same from either end, so only even lobes are in it: the oval is 2·√(a² + b²), its long way at ½·atan2(b, a).
 * The oval needs three directions with no gap over 120°, the taper two depths.
 * @returns null where neither can be told, or where direction and depth change together and cannot be parted
 */
export function formFit(points: readonly FormPoint[]): FormFit | null {
  const hasOval = points.every((point) => point.angleDeg !== undefined) && directionsSuffice(points);
  const depths = points.every((point) => point.depthMm !== undefined) ? points.map((point) => point.depthMm ?? 0) : [];
  const spanMm = depths.length === 0 ? 0 : Math.max(...depths) - Math.min(...depths);
  if (!hasOval && spanMm === 0) return null;
  const middleMm = depths.length === 0 ? 0 : meanOf(depths);
  const rows = points.map((point) => {
    const turn = ((point.angleDeg ?? 0) * Math.PI) / 90;
    return [1, ...(hasOval ? [Math.cos(turn), Math.sin(turn)] : []), ...(spanMm > 0 ? [((point.depthMm ?? 0) - middleMm) / spanMm] : [])];
  });
  const values = points.map((point) => point.valueMm);
  const baseMm = meanOf(values);
  const coefficients = solveNormal(rows, values.map((value) => value - baseMm));
  if (coefficients === null) return null;
  const [shift = 0] = coefficients;
  const [a = 0, b = 0] = hasOval ? coefficients.slice(1, 3) : [];
  const slopeMm = spanMm > 0 ? (coefficients.at(-1) ?? 0) : 0;
  return {
    diameterMm: baseMm + shift,
    oval: hasOval ? ovalOf(a, b, baseMm) : null,
    taper: spanMm > 0 ? { taperUm: settled(slopeMm * 1000), taperRatio: slopeMm / spanMm, spanMm } : null,
    residualsMm: rows.map((row, i) => (values[i] ?? 0) - baseMm - row.reduce((sum, term, j) => sum + term * (coefficients[j] ?? 0), 0)),
    degreesOfFreedomCount: points.length - coefficients.length,
  };
}

function ovalOf(a: number, b: number, sizeMm: number): FormFit['oval'] {
  const halfMm = Math.sqrt(a * a + b * b);
  if (halfMm <= sizeMm * 1e-12) return { ovalityUm: 0, largestAtDeg: null };
  const degrees = (Math.atan2(b, a) * 90) / Math.PI;
  return { ovalityUm: settled(2000 * halfMm), largestAtDeg: directionDeg(degrees) };
}

/** A direction across the part, from 0 up to 180°. */
export function directionDeg(angleDeg: number): number {
  const turned = Math.round((((angleDeg % 180) + 180) % 180) * 1e6) / 1e6;
  return turned === 180 ? 0 : turned;
}

function directionsSuffice(points: readonly FormPoint[]): boolean {
  const directions = [...new Set(points.map((point) => directionDeg(point.angleDeg ?? 0)))].sort((first, second) => first - second);
  if (directions.length < 3) return false;
  return directions.every((direction, i) => (directions[i + 1] ?? (directions[0] ?? 0) + 180) - direction <= widestGapDeg);
}

function settled(valueUm: number): number {
  return Math.round(valueUm * 1e6) / 1e6 + 0;
}

function meanOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
