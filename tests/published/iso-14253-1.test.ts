import { expect, test } from 'vitest';
import { conformity } from '@seatwright/core/measure';

/** ISO 14253-1:1998 and 2013, clause 5 (held as: memory): U off the zone for conformity, U outside it for nonconformity. */
const shaft = { measures: 'outside', lowerLimitMm: 49.9, upperLimitMm: 50.1, expandedUncertaintyMm: 0.02 } as const;

test('an uncertainty of half the tolerance leaves one size that can be proven, a larger one none', () => {
  expect(conformity.run({ ...shaft, expandedUncertaintyMm: 0.1, measuredMm: 50 })).toMatchObject({ decision: 'conforms' });
  expect(conformity.run({ ...shaft, expandedUncertaintyMm: 0.101, measuredMm: 50 })).toMatchObject({ decision: 'cannot be proven', acceptFromMm: null });
});
