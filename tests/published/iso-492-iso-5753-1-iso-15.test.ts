import { describe, expect, it } from 'vitest';
import { bearingDimensions, bearingSeat, seatClasses } from '@seatwright/core/bearing';

/** A second typing of the tables, from memory of their reprints in machinery handbooks, against the tables that were typed from bearing handbooks. */
describe('ISO 492, deviations of the rings, Normal class [µm]', () => {
  const at = (boreMm: number, outsideMm: number, bearingToleranceClass: 'Normal' | '6' | '5' = 'Normal') => {
    const output = bearingSeat.run({ boreMm, outsideMm, widthMm: 10, shaftClass: 'h6', housingClass: 'H7', housingMaterial: 'gjl250', bearingToleranceClass });
    return [output.shaftSeat?.ringDeviationUm.low, output.housingSeat?.ringDeviationUm.low];
  };
  it.each([[8, -8], [10, -8], [17, -8], [20, -10], [30, -10], [45, -12], [60, -15], [100, -20], [150, -25]] as const)('bore %d mm: %d', (boreMm, lower) => {
    expect(at(boreMm, boreMm + 60)[0]).toBe(lower);
  });
  it.each([[16, -8], [26, -9], [40, -11], [62, -13], [90, -15], [140, -18], [170, -25]] as const)('outside %d mm: %d', (outsideMm, lower) => {
    expect(at(8, outsideMm)[1]).toBe(lower);
  });
  it.each([['6', 20, -8], ['5', 20, -6], ['6', 45, -10], ['5', 45, -8]] as const)('class %s, bore %d mm: %d', (toleranceClass, boreMm, lower) => {
    expect(at(boreMm, boreMm + 40, toleranceClass)[0]).toBe(lower);
  });
});

describe('ISO 5753-1, radial clearance of deep groove balls [µm]', () => {
  const groups = ['2', 'N', '3', '4', '5'] as const;
  it.each([
    [10, [[0, 7], [2, 13], [8, 23], [14, 29], [20, 37]]],
    [17, [[0, 9], [3, 18], [11, 25], [18, 33], [25, 45]]],
    [20, [[0, 10], [5, 20], [13, 28], [20, 36], [28, 48]]],
    [25, [[1, 11], [5, 20], [13, 28], [23, 41], [30, 53]]],
    [35, [[1, 11], [6, 20], [15, 33], [28, 46], [40, 64]]],
    [45, [[1, 11], [6, 23], [18, 36], [30, 51], [45, 73]]],
    [60, [[1, 15], [8, 28], [23, 43], [38, 61], [55, 90]]],
    [75, [[1, 15], [10, 30], [25, 51], [46, 71], [65, 105]]],
    [90, [[1, 18], [12, 36], [30, 58], [53, 84], [75, 120]]],
  ] as const)('bore %d mm', (boreMm, spans) => {
    groups.forEach((clearanceGroup, i) => {
      const { unmountedClearanceUm } = bearingSeat.run({ boreMm, outsideMm: boreMm * 2, widthMm: 15, clearanceGroup, shaftClass: 'h6', housingClass: 'H7', housingMaterial: 'gjl250' });
      expect([unmountedClearanceUm?.low, unmountedClearanceUm?.high], clearanceGroup).toEqual(spans[i]);
    });
  });
});

describe('ISO 15, boundary dimensions [mm]', () => {
  it.each([
    ['608', 8, 22, 7], ['6000', 10, 26, 8], ['6001', 12, 28, 8], ['6003', 17, 35, 10], ['6005', 25, 47, 12], ['6010', 50, 80, 16],
    ['6200', 10, 30, 9], ['6201', 12, 32, 10], ['6202', 15, 35, 11], ['6203', 17, 40, 12], ['6204', 20, 47, 14], ['6205', 25, 52, 15], ['6206', 30, 62, 16], ['6207', 35, 72, 17], ['6208', 40, 80, 18], ['6209', 45, 85, 19], ['6210', 50, 90, 20],
    ['6300', 10, 35, 11], ['6301', 12, 37, 12], ['6302', 15, 42, 13], ['6303', 17, 47, 14], ['6304', 20, 52, 15], ['6305', 25, 62, 17], ['6306', 30, 72, 19], ['6308', 40, 90, 23], ['6310', 50, 110, 27],
    ['6403', 17, 62, 17], ['6404', 20, 72, 19], ['61800', 10, 19, 5], ['61804', 20, 32, 7], ['61900', 10, 22, 6], ['61904', 20, 37, 9], ['16005', 25, 47, 8],
  ] as const)('%s: %d × %d × %d', (designation, boreMm, outsideMm, widthMm) => {
    expect(bearingDimensions.run({ designation }).matches[0]).toMatchObject({ boreMm, outsideMm, widthMm });
  });
});

describe('recommended seats, as reprinted', () => {
  it.each([
    [15, 'light', 'h5'], [30, 'light', 'j6'], [15, 'normal', 'j5'], [45, 'normal', 'k5'], [90, 'heavy', 'k5'], [130, 'heavy', 'm5'],
  ] as const)('ball, load turns against the inner ring, bore %d mm, %s: %s', (boreMm, magnitude, toleranceClass) => {
    const { shaft } = seatClasses.run({ boreMm, innerRingLoad: 'rotating', outerRingLoad: 'stationary', magnitude });
    expect(shaft.filter(({ set }) => set === 'abma-7').map((one) => one.toleranceClass)).toEqual([toleranceClass]);
  });
  it.each([['rotating', 'light', ['M6', 'M7']], ['rotating', 'normal', ['N6', 'N7']], ['indeterminate', 'light', ['J6', 'JS7']]] as const)('housing, outer ring load %s, %s', (outerRingLoad, magnitude, classes) => {
    expect(seatClasses.run({ boreMm: 20, innerRingLoad: 'rotating', outerRingLoad, magnitude }).housing.map((one) => one.toleranceClass)).toEqual(classes);
  });
});
