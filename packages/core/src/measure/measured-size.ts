import type { OwnInstrument } from './instrument-field.js';
import { findInstrument, type Instrument, type Measures } from './find-instrument.js';
import type { Readings } from './readings-field.js';

/** What a set of readings says about one size. */
export interface MeasuredSize {
  readonly meanMm: number;
  readonly smallestMm: number;
  readonly largestMm: number;
  /** k = 2; from the permissible error and the step of the instrument alone. */
  readonly expandedUncertaintyMm: number;
  /** Largest difference between diameters at one depth; null when no depth has two angles. */
  readonly ovalityUm: number | null;
  /** Mean at the deepest less mean at the shallowest depth; null when all were taken at one depth. */
  readonly taperUm: number | null;
  readonly readingCount: number;
  /** The best instrument used. */
  readonly instrument: Instrument;
}

/**
 * Size, ovality and taper from readings.  mean: sets weighted by 1/U²;  U = 2·√((MPE/√3)² + (step/√12)²) for each set
 * @param readings sets of readings, one instrument each; at least one
 * @param measures `outside` for a shaft, `inside` for a bore
 * @throws CalculationError invalid-input (instrument unknown or for something else) | outside-table (size beyond the instrument)
 * @source jcgm-100-2008, clause 4.3 (type B, rectangular limits), held as: memory
 * @example measuredSize([{ instrument: 'inside-micrometer-rod', valuesMm: [35.012, 35.015] }], 'inside').meanMm // 35.0135
 */
export function measuredSize(readings: readonly Readings[], measures: Measures, own: readonly OwnInstrument[] = []): MeasuredSize | null {
  const sets = readings.map((set) => {
    const points = set.points ?? (set.valuesMm ?? []).map((valueMm) => ({ valueMm }));
    const values = points.map((point) => point.valueMm);
    const meanMm = meanOf(values);
    const instrument = findInstrument(set.instrument, measures, meanMm, own);
    return { points, values, meanMm, instrument, uncertaintyMm: expandedUncertaintyMm(instrument) };
  });
  const best = sets.reduce<(typeof sets)[number] | null>((found, set) => (found === null || set.uncertaintyMm < found.uncertaintyMm ? set : found), null);
  if (best === null) return null;
  const weight = sets.reduce((sum, set) => sum + 1 / set.uncertaintyMm ** 2, 0);
  const meanMm = sets.reduce((sum, set) => sum + set.meanMm / set.uncertaintyMm ** 2, 0) / weight;
  return {
    meanMm: sets.length === 1 ? best.meanMm : meanMm,
    smallestMm: Math.min(...best.values),
    largestMm: Math.max(...best.values),
    expandedUncertaintyMm: sets.length === 1 ? best.uncertaintyMm : 1 / Math.sqrt(weight),
    ovalityUm: ovalityOf(best.points),
    taperUm: taperOf(best.points),
    readingCount: sets.reduce((sum, set) => sum + set.values.length, 0),
    instrument: best.instrument,
  };
}

/**
 * U = 2·√((MPE/√3)² + (step/√12)²): both taken as rectangular limits; operator, form and temperature are not in it.
 * @example expandedUncertaintyMm({ permissibleErrorMm: 0.003, resolutionMm: 0.001 }).toFixed(5) // '0.00351'
 */
export function expandedUncertaintyMm({ permissibleErrorMm, resolutionMm }: Pick<Instrument, 'permissibleErrorMm' | 'resolutionMm'>): number {
  return 2 * Math.sqrt(permissibleErrorMm ** 2 / 3 + resolutionMm ** 2 / 12);
}

interface Point {
  readonly valueMm: number;
  readonly angleDeg?: number | undefined;
  readonly depthMm?: number | undefined;
}

/** Without depths, all readings count as taken at one depth; without angles, as taken all round. */
function ovalityOf(points: readonly Point[]): number | null {
  let widest: number | null = null;
  for (const ring of ringsOf(points).values()) {
    if (ring.length < 2) continue;
    const spread = Math.max(...ring) - Math.min(...ring);
    widest = Math.max(widest ?? 0, spread);
  }
  return widest === null ? null : Math.round(widest * 1e6) / 1e3;
}

function taperOf(points: readonly Point[]): number | null {
  const rings = [...ringsOf(points)].sort(([first], [second]) => first - second);
  const shallow = rings[0];
  const deep = rings.at(-1);
  if (shallow === undefined || deep === undefined || rings.length < 2) return null;
  return Math.round((meanOf(deep[1]) - meanOf(shallow[1])) * 1e6) / 1e3;
}

function ringsOf(points: readonly Point[]): ReadonlyMap<number, readonly number[]> {
  const rings = new Map<number, number[]>();
  for (const { valueMm, depthMm } of points) {
    const ring = rings.get(depthMm ?? 0);
    if (ring === undefined) rings.set(depthMm ?? 0, [valueMm]);
    else ring.push(valueMm);
  }
  return rings;
}

function meanOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
