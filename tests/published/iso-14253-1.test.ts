import { expect, test } from 'vitest';
import { conformity, decisionZones } from '@seatwright/core/measure';

/** ISO 14253-1:1998 and 2013, clause 5 (held as: memory): U off the zone for conformity, U outside it for nonconformity. */
const shaft = { measures: 'outside', lowerLimitMm: 49.9, upperLimitMm: 50.1, expandedUncertaintyMm: 0.02 } as const;

test.each([
  [49.8799, 'does not conform'],
  [49.88, 'cannot be proven'],
  [49.9, 'cannot be proven'],
  [49.9199, 'cannot be proven'],
  [49.92, 'conforms'],
  [50, 'conforms'],
  [50.08, 'conforms'],
  [50.0801, 'cannot be proven'],
  [50.1, 'cannot be proven'],
  [50.12, 'cannot be proven'],
  [50.1201, 'does not conform'],
])('clause 5: %d mm with U = 0.02 mm, limits 49.9 and 50.1 mm: %s', (measuredMm, decision) => {
  expect(conformity.run({ ...shaft, measuredMm }).decision).toBe(decision);
});

test('an uncertainty of half the tolerance leaves one size that can be proven, a larger one none', () => {
  expect(conformity.run({ ...shaft, expandedUncertaintyMm: 0.1, measuredMm: 50 })).toMatchObject({ decision: 'conforms' });
  expect(conformity.run({ ...shaft, expandedUncertaintyMm: 0.101, measuredMm: 50 })).toMatchObject({ decision: 'cannot be proven', acceptFromMm: null });
});

test('2017 (held as: memory): with one limit active the guard band is 1.65 u, that is 0.82 U', () => {
  const { guardBandMm } = decisionZones({ lowerLimitMm: 0, upperLimitMm: 100 }, { standardUncertaintyMm: 1, expandedUncertaintyMm: 2 }, 'probability-95');
  expect(guardBandMm).toBeCloseTo(1.645, 3);
  expect((guardBandMm / 2).toFixed(2)).toBe('0.82');
});
