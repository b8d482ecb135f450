import { deciding, plainGeometry, source, supporting, type Finding, type SourceReference } from '../../result/index.js';
import { zoneOfClass } from '../../tolerance/index.js';
import type { BearingSeatInput, BearingSeatOutput, RingLoad, SeatResult } from './bearing-seat-fields.js';
import { practiceValue } from './bearing-practice.js';
import { interferenceOf, smoothed } from './race-change.js';
import type { SeatPart, SeatProblem } from './seat-parts.js';

const fits = source('bearing-handbook-reprints', 'page', 'load and fit');
const iso1 = source('iso-1-2022', 'page', 'reference temperature 20 °C');

type Outcome = Pick<BearingSeatOutput, 'shaftSeat' | 'housingSeat' | 'runningClearanceUm' | 'coldClearanceUm' | 'preloadProbability' | 'axialGrowthUm'>;

/** What the numbers of a bearing seat mean. */
export function seatFindings(problem: SeatProblem, input: BearingSeatInput, outcome: Outcome): readonly Finding[] {
  const { shaft, housing, doubts } = problem;
  return [
    ...doubts.shaft,
    ...(shaft === null || outcome.shaftSeat === null ? doubts.shaft.length > 0 ? [] : [deciding('shaft-seat-not-given', 'unknown', { boreMm: problem.rings.boreMm }, fits, 'shaftReadings')] : ofSeat(problem, shaft, outcome.shaftSeat, problem.innerLoad, input)),
    ...doubts.housing,
    ...(housing === null || outcome.housingSeat === null ? doubts.housing.length > 0 ? [] : [deciding('housing-seat-not-given', 'unknown', { outsideMm: problem.rings.outsideMm }, fits, 'housingReadings')] : ofSeat(problem, housing, outcome.housingSeat, problem.outerLoad, input)),
    ...ofClearance(problem, outcome),
    ...ofSeals(problem),
    ...(outcome.axialGrowthUm === null ? [] : [supporting('case-grows-along', 'note', { lowGrowthUm: outcome.axialGrowthUm.low, highGrowthUm: outcome.axialGrowthUm.high }, iso1)]),
  ];
}

/** Whether a ring stays where it is, and how tight it is. */
function ofSeat(problem: SeatProblem, part: SeatPart, seat: SeatResult, load: RingLoad, input: BearingSeatInput): readonly Finding[] {
  const isInner = part.where === 'shaft';
  const ring = isInner ? 'inner' : 'outer';
  const findings: Finding[] = [];
  const { leastUm, mostUm, probableLowUm } = interferenceOf(part);
  /** What fit and heat leave, less smoothing and what the load takes. */
  const remaining = (um: number, hotShiftUm: number) => smoothed(part, um) + hotShiftUm - seat.interferenceLostToLoadUm;
  const [lowShift, midShift, highShift] = [seat.atTemperature.leastInterferenceUm - leastUm, seat.atTemperature.probableInterferenceUm - (leastUm + mostUm) / 2, seat.atTemperature.mostInterferenceUm - mostUm];
  const least = Math.min(remaining(leastUm, 0), remaining(leastUm, lowShift));
  const most = Math.max(remaining(mostUm, 0), remaining(mostUm, highShift));
  const hotMost = Math.min(remaining(mostUm, 0), remaining(mostUm, highShift));
  const probableLow = Math.min(remaining(probableLowUm, 0), remaining(probableLowUm, midShift));
  const numbers = { leastUm: least, mostUm: most };
  if (load === 'stationary') {
    findings.push(...standing(problem, part, seat, numbers, hotMost, input));
  } else if (least > 0) {
    findings.push(deciding(`${ring}-ring-stays`, 'good', numbers, fits));
  } else if (hotMost <= 0) {
    findings.push(deciding(`${ring}-ring-creeps`, 'bad', { ...numbers, gapUm: -least }, fits));
  } else if (probableLow > 0) {
    findings.push(deciding(`${ring}-ring-hardly-creeps`, 'care', numbers, fits));
  } else {
    findings.push(deciding(`${ring}-ring-may-creep`, part.isMeasured ? 'care' : 'unknown', numbers, fits, part.isMeasured ? undefined : `${part.where}Readings`));
  }
  const stress = practiceValue('ring-stress-usual', 'Mpa');
  // Where even the loosest pair stretches the ring so far over what is usual, it is the wrong size, not a tight fit.
  const refused = practiceValue('ring-stress-refused', 'Factor');
  if (seat.ringHoopStressMpa.low > refused.low * stress.low) findings.push(deciding('ring-stress-far-too-high', 'bad', { lowMpa: seat.ringHoopStressMpa.low, highMpa: seat.ringHoopStressMpa.high, usualMpa: stress.low, timesFactor: refused.low }, refused.source));
  else if (seat.ringHoopStressMpa.high > stress.low) findings.push(supporting('ring-stress-high', 'care', { stressMpa: seat.ringHoopStressMpa.high, usualMpa: stress.low }, stress.source));
  const share = practiceValue('interference-usual', 'Factor');
  if (mostUm > share.low * part.nominalMm * 1000) findings.push(supporting(`${ring}-ring-very-tight`, 'care', { mostUm, usualUm: share.low * part.nominalMm * 1000 }, share.source));
  if (isInner && problem.shaftBoreMm > problem.rings.boreMm / 2) findings.push(supporting('hollow-shaft-gives', 'note', { shaftBoreMm: problem.shaftBoreMm }, source('bearing-handbook-reprints', 'page', 'radial clearance standard')));
  return findings;
}

/** A ring on which the load stands still may be loose; hot and held by nothing it may wander. */
function standing(problem: SeatProblem, part: SeatPart, seat: SeatResult, numbers: { readonly leastUm: number; readonly mostUm: number }, hotMost: number, input: BearingSeatInput): readonly Finding[] {
  const ring = part.where === 'shaft' ? 'inner' : 'outer';
  if (numbers.leastUm > 0) return [deciding(`${ring}-ring-stays`, 'good', numbers, fits)];
  const worn = beyondTheLoosest(part, seat, ring);
  if (worn !== null) return [worn];
  const held = ring === 'outer' ? input.outerRingHeldBy : undefined;
  const isLooseCold = seat.at20C.mostInterferenceUm <= 0;
  const at: SourceReference = isLooseCold ? fits : iso1;
  const gap = { gapUm: Math.max(0, -numbers.leastUm), runningC: Math.max(...problem.running.map(({ housingC }) => housingC)) };
  if (ring === 'inner') return [deciding('inner-ring-may-slide', 'good', gap, fits)];
  if (held !== undefined && held !== 'nothing') return [deciding('outer-ring-loose-but-held', 'good', { ...gap, heldBy: held }, at)];
  const surely = hotMost <= 0;
  const code = isLooseCold ? 'outer-ring-slides' : surely ? 'outer-ring-lets-go-hot' : 'outer-ring-may-let-go-hot';
  return [deciding(code, held === 'nothing' ? 'care' : isLooseCold ? 'good' : 'care', gap, at)];
}

/** Loosest classes that the tables recommend for a ring on which the load stands still: H8 for plummer blocks, g6 where the ring slides easily. */
const loosest = { housing: { toleranceClass: 'H8', source: fits }, shaft: { toleranceClass: 'g6', source: source('ansi-abma-7', 'page', 'shaft and housing fits') } } as const;

/** A gap wider than the loosest recommended class ever leaves is wear, not a sliding fit; null where parts of middle size keep within it. */
function beyondTheLoosest({ where, nominalMm, ring: deviations }: SeatPart, { at20C }: SeatResult, ring: 'inner' | 'outer'): Finding | null {
  const { toleranceClass, source: by } = loosest[where];
  const zone = zoneOfClass({ nominalMm, toleranceClass });
  const limitUm = where === 'housing' ? zone.upperLimitDeviationUm - deviations.low : deviations.high - zone.lowerLimitDeviationUm;
  if (-at20C.probableInterferenceUm <= limitUm) return null;
  return deciding(`${ring}-ring-seat-worn`, -at20C.mostInterferenceUm > limitUm ? 'bad' : 'care', { lowUm: Math.max(0, -at20C.mostInterferenceUm), highUm: -at20C.leastInterferenceUm, limitUm, toleranceClass }, by);
}

/** Rubber seals of a bearing are of NBR unless the maker says otherwise. */
function ofSeals({ hasRubberSeals, running }: SeatProblem): readonly Finding[] {
  const limit = practiceValue('seals-working-limit', 'C');
  const runningC = Math.max(...running.map(({ outerC }) => outerC));
  return hasRubberSeals && runningC > limit.low ? [deciding('bearing-seals-run-hot', 'care', { runningC, limitC: limit.low }, limit.source)] : [];
}

function ofClearance(problem: SeatProblem, { runningClearanceUm: running, coldClearanceUm: cold, preloadProbability }: Outcome): readonly Finding[] {
  if (problem.clearance === null) return [supporting('clearance-not-listed', 'note', { boreMm: problem.rings.boreMm }, source('iso-5753-1', 'page'))];
  if (running === null || preloadProbability === null) return [];
  const numbers = { lowUm: running.probableLow, highUm: running.probableHigh };
  const by = problem.clearance.source;
  const findings: Finding[] = [];
  if (running.probableHigh < 0) findings.push(deciding('runs-without-clearance', 'bad', numbers, by));
  else if (running.probableLow < 0) findings.push(deciding('may-run-without-clearance', 'care', { ...numbers, sharePercent: preloadProbability * 100 }, by));
  else if (running.min < 0) findings.push(deciding('clearance-nearly-always', 'good', { ...numbers, leastUm: running.min }, by));
  else findings.push(deciding('keeps-its-clearance', 'good', numbers, by));
  if (cold !== null && cold.probableLow < 0 && cold.probableLow < running.probableLow) findings.push(deciding('tight-when-cold', cold.probableHigh < 0 ? 'bad' : 'care', { lowUm: cold.probableLow, highUm: cold.probableHigh }, plainGeometry));
  return findings;
}
