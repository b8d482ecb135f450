import { CalculationError } from '@seatwright/core/result';
import { fit, identifyClass, toleranceZone } from '@seatwright/core/tolerance';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { expectWorkingHolds } from './internal/evaluate-working.js';
import { numRuns } from './internal/num-runs.js';

const letters = ['C', 'D', 'E', 'F', 'G', 'H', 'JS', 'K', 'M', 'N', 'P', 'R', 'S', 'U', 'X', 'ZC'];
const size = fc.integer({ min: 1100, max: 500_000 }).map((um) => um / 1000);
const holeClass = fc.tuple(fc.constantFrom(...letters), fc.integer({ min: 1, max: 13 })).map(([letter, grade]) => `${letter}${grade}`);
const shaftClass = holeClass.map((text) => text.toLowerCase());

/** A class that the standard does not give is no counter-example. */
function given<T>(work: () => T): T {
  try {
    return work();
  } catch (error) {
    if (error instanceof CalculationError && error.code === 'no-such-class') fc.pre(false);
    throw error;
  }
}

describe('ISO 286 fits', () => {
  it('vary by the sum of both tolerances, and agree with their kind', () => {
    fc.assert(
      fc.property(size, holeClass, shaftClass, (nominalMm, hole, shaft) => {
        const found = given(() => fit.run({ nominalMm, hole, shaft }));
        const most = found.maximumClearanceUm - found.minimumInterferenceUm;
        const least = found.minimumClearanceUm - found.maximumInterferenceUm;
        expect(most - least).toBeCloseTo(found.fitToleranceUm, 9);
        expect(found.fitToleranceUm).toBeCloseTo(found.holeZone.standardToleranceUm + found.shaftZone.standardToleranceUm, 9);
        expect(found.kind).toBe(least >= 0 ? 'clearance' : most <= 0 ? 'interference' : 'transition');
        for (const value of [found.maximumClearanceUm, found.minimumClearanceUm, found.maximumInterferenceUm, found.minimumInterferenceUm]) {
          expect(value).toBeGreaterThanOrEqual(0);
          expect(Object.is(value, -0)).toBe(false);
        }
        expect(most).toBeCloseTo((found.holeZone.upperLimitOfSizeMm - found.shaftZone.lowerLimitOfSizeMm) * 1000, 6);
      }),
      { numRuns },
    );
  });

  it('hold the same zones as the zone calculation', () => {
    fc.assert(
      fc.property(size, holeClass, shaftClass, (nominalMm, hole, shaft) => {
        const found = given(() => fit.run({ nominalMm, hole, shaft }));
        expect(toleranceZone.run({ nominalMm, toleranceClass: hole })).toMatchObject(found.holeZone);
        expect(toleranceZone.run({ nominalMm, toleranceClass: shaft })).toMatchObject(found.shaftZone);
      }),
      { numRuns },
    );
  });

  it('tighten as the shaft grows thicker', () => {
    const shafts = ['c6', 'd6', 'e6', 'f6', 'g6', 'h6', 'k6', 'm6', 'n6', 'p6', 'r6', 's6', 'u6', 'x6', 'z6'];
    fc.assert(
      fc.property(size, (nominalMm) => {
        const least = shafts.map((shaft) => fit.compute({ nominalMm, hole: 'H7', shaft })).map((found) => found.minimumClearanceUm - found.maximumInterferenceUm);
        expect(least).toEqual([...least].sort((a, b) => b - a));
      }),
      { numRuns },
    );
  });

  it('show working that holds', () => {
    fc.assert(
      fc.property(size, holeClass, shaftClass, (nominalMm, hole, shaft) => {
        const found = given(() => fit.run({ nominalMm, hole, shaft }));
        expect(expectWorkingHolds(fit.explain({ nominalMm, hole, shaft }, found))).toBeGreaterThanOrEqual(10);
      }),
      { numRuns },
    );
  });
});

describe('the reverse question', () => {
  it('finds the class from its own limits, in every form', () => {
    fc.assert(
      fc.property(size, fc.oneof(holeClass, shaftClass), (nominalMm, toleranceClass) => {
        const zone = given(() => toleranceZone.run({ nominalMm, toleranceClass }));
        const kind = zone.kind;
        const forms = [
          { upperLimitDeviationUm: zone.upperLimitDeviationUm, lowerLimitDeviationUm: zone.lowerLimitDeviationUm },
          { largestMm: zone.upperLimitOfSizeMm, smallestMm: zone.lowerLimitOfSizeMm },
          { sizesMm: [zone.lowerLimitOfSizeMm, zone.nominalMm + (zone.upperLimitDeviationUm + zone.lowerLimitDeviationUm) / 2000, zone.upperLimitOfSizeMm] },
        ];
        for (const form of forms) {
          const input = { nominalMm, kind, ...form };
          const found = identifyClass.run(input);
          expect(found.matching.map((each) => each.toleranceClass)).toContain(toleranceClass);
          expect(found.nearest[0]?.differenceUm).toBe(0);
          expect(found.containingCount).toBeGreaterThanOrEqual(found.matchingCount);
          expectWorkingHolds(identifyClass.explain(input, found));
        }
      }),
      { numRuns: numRuns / 4 },
    );
  });

  it('lists only zones that hold the range, with their margins', () => {
    const deviation = fc.integer({ min: -400, max: 400 });
    fc.assert(
      fc.property(size, fc.constantFrom('hole' as const, 'shaft' as const), deviation, deviation, (nominalMm, kind, one, other) => {
        const [lower, upper] = [Math.min(one, other), Math.max(one, other)];
        const found = identifyClass.run({ nominalMm, kind, upperLimitDeviationUm: upper, lowerLimitDeviationUm: lower });
        for (const each of found.containing) {
          const zone = toleranceZone.run({ nominalMm, toleranceClass: each.toleranceClass });
          expect(zone.upperLimitDeviationUm).toBeGreaterThanOrEqual(upper);
          expect(zone.lowerLimitDeviationUm).toBeLessThanOrEqual(lower);
          expect(each.upperMarginUm).toBeCloseTo(zone.upperLimitDeviationUm - upper, 9);
          expect(each.lowerMarginUm).toBeCloseTo(lower - zone.lowerLimitDeviationUm, 9);
        }
      }),
      { numRuns: numRuns / 2 },
    );
  });
});
