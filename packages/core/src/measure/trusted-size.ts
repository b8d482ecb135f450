import { CalculationError, commonPractice, deciding, supporting, type Finding } from '../result/index.js';
import type { OwnInstrument } from './instrument-field.js';
import { instrumentReach, type Measures } from './find-instrument.js';
import { measuredSize, type MeasuredSize } from './measured-size.js';
import type { Readings } from './readings-field.js';

/** What was read: the code by which a sentence names it, and the field that holds the readings. */
export interface ReadPart {
  readonly measured: 'measured-shaft' | 'measured-bore' | 'measured-seal-outside' | 'measured-shaft-seat' | 'measured-housing-seat';
  readonly path: string;
}

/** A size to judge by, or none where the readings cannot be trusted; and what is doubtful about them. */
export interface TrustedSize {
  readonly size: MeasuredSize | null;
  readonly doubts: readonly Finding[];
}

/** [mm], and share of the size: readings of one part never differ by more than the larger of both, worn grooves included. Common practice. */
const mostSpreadMm = 1;
const mostSpreadShare = 0.01;
/** A reading that stands this many times further off than the others among themselves, and than its instrument errs, is told. Common practice. */
const farRatio = 3;
const errorsRatio = 2;

/**
 * The size that readings tell, unless they contradict each other or lie beyond what the instrument measures: a slip of the pen must not
 * become a verdict. Where two instruments disagree, the uncertainty reaches to both.
 * @param readings sets of readings, one instrument each
 * @param measures `outside` for a shaft, `inside` for a bore
 * @param part names the part in the doubts
 * @throws CalculationError invalid-input (instrument unknown or for something else)
 * @source common-practice
 * @example trustedSize([{ instrument: 'outside-micrometer', valuesMm: [34.98, 3.498] }], 'outside', { measured: 'measured-shaft', path: 'shaft.readings' }).size // null
 */
export function trustedSize(readings: readonly Readings[], measures: Measures, part: ReadPart, own: readonly OwnInstrument[] = []): TrustedSize {
  const values = readings.flatMap(valuesOf);
  const [lowMm, highMm] = [Math.min(...values), Math.max(...values)];
  const limitMm = Math.max(mostSpreadMm, mostSpreadShare * highMm);
  if (highMm - lowMm > limitMm) {
    return { size: null, doubts: [deciding('readings-contradict', 'unknown', { measured: part.measured, lowMm, highMm, limitMm }, commonPractice, part.path)] };
  }
  try {
    const size = measuredSize(readings, measures, own);
    if (size === null) return { size, doubts: [] };
    const disagreement = disagreementOf(readings, measures, own, part);
    const apart = readings.flatMap((set) => farReading(valuesOf(set), size.expandedUncertaintyMm, part));
    return disagreement === null ? { size, doubts: apart } : { size: { ...size, expandedUncertaintyMm: Math.max(size.expandedUncertaintyMm, disagreement.reachMm(size.meanMm)) }, doubts: [disagreement.finding, ...apart] };
  } catch (error) {
    if (!(error instanceof CalculationError) || error.code !== 'outside-table') throw error;
    const beyond = readings.find((set) => meanOf(valuesOf(set)) === error.received);
    if (beyond === undefined) throw error;
    return { size: null, doubts: [beyondInstrument(meanOf(valuesOf(beyond)), beyond.instrument, measures, part)] };
  }
}

function valuesOf({ points, valuesMm }: Readings): readonly number[] {
  return points?.map(({ valueMm }) => valueMm) ?? valuesMm ?? [];
}

function beyondInstrument(readingMm: number, instrument: string, measures: Measures, { measured, path }: ReadPart): Finding {
  const { name, overMm, upToMm } = instrumentReach(instrument, measures);
  return deciding('readings-beyond-instrument', 'unknown', { measured, readingMm, instrument: name, overMm, upToMm }, commonPractice, path);
}

/** Two sets should meet within their uncertainties. */
function disagreementOf(readings: readonly Readings[], measures: Measures, own: readonly OwnInstrument[], { measured }: ReadPart): { readonly finding: Finding; readonly reachMm: (meanMm: number) => number } | null {
  if (readings.length < 2) return null;
  const sets = readings.flatMap((set) => measuredSize([set], measures, own) ?? []).toSorted((a, b) => a.meanMm - b.meanMm);
  const [low, high] = [sets[0], sets.at(-1)];
  if (low === undefined || high === undefined) return null;
  const apartMm = high.meanMm - low.meanMm;
  const allowedMm = Math.hypot(low.expandedUncertaintyMm, high.expandedUncertaintyMm);
  if (apartMm <= allowedMm * (1 + 1e-9)) return null;
  const finding = supporting('instruments-tell-two-sizes', 'care', { measured, lowMm: low.meanMm, highMm: high.meanMm, instrument: low.instrument.name, otherInstrument: high.instrument.name }, commonPractice);
  return { finding, reachMm: (meanMm) => Math.max(high.meanMm - meanMm, meanMm - low.meanMm) };
}

/** One reading far from three or more that agree: dirt, a burr, or a slip. */
function farReading(values: readonly number[], uncertaintyMm: number, { measured }: ReadPart): readonly Finding[] {
  if (values.length < 3) return [];
  const meanMm = meanOf(values);
  const farthest = values.reduce((found, value) => (Math.abs(value - meanMm) > Math.abs(found - meanMm) ? value : found), meanMm);
  const others = values.toSpliced(values.indexOf(farthest), 1);
  const [lowMm, highMm] = [Math.min(...others), Math.max(...others)];
  const awayMm = Math.max(lowMm - farthest, farthest - highMm);
  if (awayMm <= Math.max(farRatio * (highMm - lowMm), errorsRatio * uncertaintyMm)) return [];
  return [supporting('reading-far-from-others', 'care', { measured, readingMm: farthest, lowMm, highMm }, commonPractice)];
}

function meanOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
