import { expect, test } from 'vitest';
import { bearingSeat } from '@seatwright/core/bearing';

const steel = { youngsModulusGpa: 206, poissonRatio: 0.3, expansionPerK: 12.5e-6 };
const thickAluminium = { youngsModulusGpa: 71, poissonRatio: 0.33, expansionPerK: 23e-6 };
const rings = { ringMaterial: { youngsModulusGpa: 206, poissonRatio: 0.3, expansionPerK: 11.5e-6 }, shaftMaterial: { youngsModulusGpa: 206, poissonRatio: 0.3, expansionPerK: 11.5e-6 } };

/** Worked by hand: 40 mm, 23 against 11.5 µm/(m·K), so 0.46 µm for each kelvin; deviations of ISO 286-2 and ISO 492. */
test.each([
  ['H7', 20, 20],
  ['N7', 20, 91.7],
  ['P7', 33.0, 111.3],
] as const)('6203 in a thick aluminium bore %s lets go between %d and %d °C', (housingClass, earliest, latest) => {
  const { housingSeat } = bearingSeat.run({ designation: '6203', shaftClass: 'k5', housingClass, housingMaterial: thickAluminium, ...rings });
  expect(housingSeat?.looseFromC?.earliest).toBeCloseTo(earliest, 1);
  expect(housingSeat?.looseFromC?.latest).toBeCloseTo(latest, 1);
});

/**
 * Resultant fits of bearing handbooks' shaft and housing tables (Normal class): shaft tables print the tightest and loosest fit.
 * Recomputed from the printed deviations: bore 17 (0, −8), k5 (+9, +1); outside 40 (0, −11), J7 (+14, −11), K7 (+7, −18).
 */
test.each([
  ['6203', 'k5', 'J7', [1, 17], [-25, 11]],
  ['6203', 'k5', 'K7', [1, 17], [-18, 18]],
  ['6208', 'k5', 'H7', [2, 25], [-43, 0]],
] as const)('%s %s %s: resultant fits of both seats', (designation, shaftClass, housingClass, shaft, housing) => {
  const output = bearingSeat.run({ designation, shaftClass, housingClass, housingMaterial: 'gjl250' });
  expect([output.shaftSeat?.at20C.leastInterferenceUm, output.shaftSeat?.at20C.mostInterferenceUm]).toEqual(shaft);
  expect([output.housingSeat?.at20C.leastInterferenceUm, output.housingSeat?.at20C.mostInterferenceUm]).toEqual(housing);
});

/** Bearing handbooks: a solid steel shaft raises the raceway of its ring by k·I, k = d/Di; here 17/21.6 of the smoothed interference. */
test('raceway of the inner ring on a solid shaft grows by k times the interference', () => {
  const { shaftSeat } = bearingSeat.run({ designation: '6203', shaftClass: 'k5', housingClass: 'H7', housingMaterial: 'gjl250', shaftMaterial: steel, ringMaterial: steel });
  expect(shaftSeat?.racewayChangeUm.high).toBeCloseTo((17 * 17) / 19 * (17 / 21.6), 6);
});

/** Bearing handbooks, fitting surface pressure: p = (E/2)(I/d)(1 − k²) on a solid shaft, E 206 GPa. */
test('pressure of an inner ring on a solid shaft', () => {
  const { shaftSeat } = bearingSeat.run({ designation: '6203', shaftClass: 'k5', housingClass: 'H7', housingMaterial: 'gjl250', shaftMaterial: steel, ringMaterial: steel });
  const k = 17 / 21.6;
  expect(shaftSeat?.contactPressureMpa.high).toBeCloseTo(((206_000 / 2) * (((17 * 17) / 19) / 1000 / 17)) * (1 - k * k), 4);
});

/** Japanese bearing handbook 10.3.3: 0.08·√(d·Fr/B), here √(17·800/12). */
test('interference that the load takes', () => {
  const { shaftSeat } = bearingSeat.run({ designation: '6203', shaftClass: 'k5', housingClass: 'H7', housingMaterial: 'gjl250', radialLoadN: 800 });
  expect(shaftSeat?.interferenceLostToLoadUm).toBeCloseTo(2.693, 3);
});
