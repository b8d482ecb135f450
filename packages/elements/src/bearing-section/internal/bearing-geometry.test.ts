import { expect, test } from 'vitest';
import { bearingRemoval, bearingSeat } from '@seatwright/core/bearing';
import { englishWords } from '../../words/english.js';
import { bearingGeometry, type BearingInput, type SectionBearing } from './bearing-geometry.js';
import { seatMarksOf } from './seat-marks.js';

const nothing = { extraction: null, seating: null, driver: null, seats: null, removal: null, bearingDriver: null } as const;
const geometryOf = (bearing: SectionBearing | null, more: Partial<BearingInput> = {}) => bearingGeometry({ ...nothing, situation: {}, mode: 'bearing in', bearing, ...more });

test('the sizes of a designation are drawn before anything is computed, and what is not known stands in', () => {
  expect(geometryOf({ designation: '6203-2RS' }).bearing).toMatchObject({ boreMm: 17, outsideMm: 40, widthMm: 12, closure: 'seals', closedSideCount: 2, known: { bore: true, outside: true, width: true } });
  expect(geometryOf({ designation: 'no such' }).bearing.known).toEqual({ bore: false, outside: false, width: false });
  expect(geometryOf({ boreMm: 30 }).bearing).toMatchObject({ boreMm: 30, known: { bore: true, outside: false, width: false } });
});

test('races keep between bore and outside, and balls between the races, whatever the size', () => {
  for (const [boreMm, outsideMm, widthMm] of [[6, 13, 5], [10, 19, 5], [20, 28, 16], [50, 110, 40], [400, 500, 46]] as const) {
    const { bearing } = geometryOf({ boreMm, outsideMm, widthMm });
    const radii = [boreMm / 2, bearing.innerRaceRadiusMm, bearing.innerRimRadiusMm, bearing.outerRimRadiusMm, bearing.outerRaceRadiusMm, outsideMm / 2];
    expect(radii).toEqual(radii.toSorted((a, b) => a - b));
  }
});

test('NU, NJ, NUP and N differ in which ring keeps the rollers', () => {
  expect(['NU 205', 'NJ 205', 'NUP 205', 'N 205'].map((designation) => geometryOf({ designation }).bearing.rims)).toEqual([{ inner: 0, outer: 2 }, { inner: 1, outer: 2 }, { inner: 2, outer: 2 }, { inner: 2, outer: 0 }]);
});

test('behind a seal it stands as far in as was measured; one that cannot pass the bore of the seal goes in from the other side', () => {
  const situation = (outsideMm: number) => ({ seal: { shaftMm: 20, outsideMm, widthMm: 7 }, seat: { kind: 'depth', depthMm: 1 } as const, behind: 'bearing' as const, clearBehindMm: 3 });
  expect(geometryOf({ designation: '6204' }, { situation: situation(35) }).bearing).toMatchObject({ faceMm: 11, isFaceKnown: true, side: 'inner' });
  expect(geometryOf({ designation: '6204' }, { situation: situation(47) }).bearing.side).toBe('outer');
  expect(geometryOf({ designation: '6204' }, { situation: { ...situation(47), clearBehindMm: undefined } }).bearing.isFaceKnown).toBe(false);
});

test('a shoulder that was measured is drawn as measured; others are marked as guessed', () => {
  const guessed = geometryOf({ designation: '6204' }).bearing;
  expect([guessed.housing.at(-1)?.isGuess, guessed.shaft.at(-1)?.isGuess]).toEqual([true, true]);
  const measured = geometryOf({ designation: '6204' }, { situation: { bore: { depthMm: 20, innerEnd: 'shoulder', shoulderInsideMm: 40 } } }).bearing;
  expect(measured).toMatchObject({ faceMm: 6, isFaceKnown: true });
  expect(measured.housing).toEqual([{ fromMm: 20, radiusMm: 20, isGuess: false }]);
  expect(geometryOf({ designation: '6204' }, { situation: { bore: { innerEnd: 'open' } } }).bearing.housing).toEqual([]);
});

test('the puller grips where the plan says, and only while it comes out', () => {
  const bearing = { designation: '6203', shaftClass: 'k5', housingClass: 'H7', housingMaterial: 'al-a380' };
  const removal = bearingRemoval.run(bearing);
  expect(geometryOf(bearing, { removal, mode: 'bearing out' }).bearing.grip).toBe(removal.pullBy);
  expect(geometryOf(bearing, { removal }).bearing.grip).toBeNull();
});

test('a seat in the detail is read or allowed, its ring as it may be made', () => {
  const byClass = { designation: '6203', shaftClass: 'k5', housingMaterial: 'al-a380' };
  const marks = seatMarksOf('shaft', byClass, bearingSeat.run(byClass), englishWords.section);
  expect(marks).toMatchObject({ nominalMm: 17, outer: { made: { lowUm: -8, highUm: 0 } }, inner: { wanted: { lowUm: 1, highUm: 9, label: 'shaft k5' }, read: null } });
  expect(seatMarksOf('housing', byClass, bearingSeat.run(byClass), englishWords.section)).toBeNull();
  const read = bearingSeat.parse({ designation: '6203', shaftReadings: [{ instrument: 'outside-micrometer', valuesMm: [17.004, 17.006] }], housingMaterial: 'al-a380' });
  const band = seatMarksOf('shaft', read, bearingSeat.compute(read), englishWords.section)?.inner.read;
  expect([band?.lowUm, band?.highUm, band?.meanUm].map((um) => um?.toFixed(3))).toEqual(['4.000', '6.000', '5.000']);
  expect(band?.uncertaintyUm).toBeGreaterThan(0);
});
