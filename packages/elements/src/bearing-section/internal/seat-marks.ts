import type { BearingSeatOutput } from '@seatwright/core/bearing';
import { trustedSize, type MeasuredSize } from '@seatwright/core/measure';
import { CalculationError } from '@seatwright/core/result';
import type { ElementWords } from '../../words/element-words.js';
import type { GapMarks, GapSide } from '../../section/internal/gap-marks.js';
import type { SectionBearing } from './bearing-geometry.js';

/** One seat of a bearing for the magnified detail: its ring as ISO 492 lets it be made, the seat as read or as its class allows. */
export function seatMarksOf(where: 'shaft' | 'housing', bearing: SectionBearing | null, seats: BearingSeatOutput | null, words: ElementWords['section']): GapMarks | null {
  const seat = where === 'shaft' ? seats?.shaftSeat : seats?.housingSeat;
  if (seat == null || bearing === null) return null;
  const { seatMm, ringDeviationUm, lowerLimitOfSizeMm, upperLimitOfSizeMm, at20C } = seat;
  const um = (mm: number) => Math.round((mm - seatMm) * 1e9) / 1e6;
  const read = readSeat(where, bearing);
  const toleranceClass = where === 'shaft' ? bearing.shaftClass : bearing.housingClass;
  const ring: GapSide = { made: { lowUm: ringDeviationUm.low, highUm: ringDeviationUm.high, label: words.bearing.ringMade }, read: null, wanted: null };
  const own: GapSide =
    read === null
      ? { made: null, read: null, wanted: { lowUm: um(lowerLimitOfSizeMm), highUm: um(upperLimitOfSizeMm), label: `${words.bearing[where]} ${toleranceClass ?? ''}`.trim() } }
      : { made: null, wanted: null, read: { lowUm: um(read.smallestMm), highUm: um(read.largestMm), meanUm: um(read.meanMm), uncertaintyUm: read.expandedUncertaintyMm * 1000, label: where === 'shaft' ? words.bearing.shaftRead : words.bearing.housingRead } };
  return {
    nominalMm: seatMm,
    outer: where === 'shaft' ? ring : own,
    inner: where === 'shaft' ? own : ring,
    interference: { lowUm: at20C.leastInterferenceUm, highUm: at20C.mostInterferenceUm },
  };
}

function readSeat(where: 'shaft' | 'housing', { shaftReadings, housingReadings, instruments }: SectionBearing): MeasuredSize | null {
  try {
    const path = `${where}Readings`;
    return trustedSize((where === 'shaft' ? shaftReadings : housingReadings) ?? [], where === 'shaft' ? 'outside' : 'inside', { measured: `measured-${where}-seat`, path }, instruments).size;
  } catch (error) {
    if (error instanceof CalculationError) return null;
    throw error;
  }
}
