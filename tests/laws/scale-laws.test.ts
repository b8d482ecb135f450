import fc from 'fast-check';
import { expect, test } from 'vitest';
import { driverSearch, extractionPlan } from '@seatwright/core/handwork';
import { pressJoint, ringStack } from '@seatwright/core/joint';
import { measuredSizeCalculation } from '@seatwright/core/measure';
import { lipSpeed } from '@seatwright/core/seal';
import { numRuns } from './internal/num-runs.js';

const times = fc.constantFrom(0.5, 2, 4);
const place = fc.record({ shaftMm: fc.integer({ min: 12, max: 60 }), ringMm: fc.integer({ min: 12, max: 30 }), widthMm: fc.integer({ min: 6, max: 12 }), thicknessTenths: fc.integer({ min: 6, max: 12 }), protrusionMm: fc.integer({ min: 1, max: 60 }) });

/** Everything given, so that nothing of the standards' own sizes enters: a place twice as large has a plan twice as large. */
const placeAt = ({ shaftMm, ringMm, widthMm, thicknessTenths, protrusionMm }: { shaftMm: number; ringMm: number; widthMm: number; thicknessTenths: number; protrusionMm: number }, k: number) => {
  const sheet = (thicknessTenths / 10) * k;
  return {
    seal: { shaftMm: shaftMm * k, outsideMm: (shaftMm + ringMm) * k, widthMm: widthMm * k, construction: 'metal-case', lipMaterial: 'NBR', caseThicknessMm: sheet, faceThicknessMm: sheet, edgeRadiusMm: sheet },
    shaft: { diameterMm: shaftMm * k, protrusionMm: protrusionMm * k },
    bore: { diameterMm: (shaftMm + ringMm) * k, depthMm: (widthMm + 3) * k, innerEnd: 'open', leadIn: { lengthMm: k, angleDeg: 15 }, faceDiameterMm: (shaftMm + ringMm + 20) * k },
    seat: { kind: 'flush' },
  };
};

test('the place of the hole and the window of the driver grow with the seal, bore and shaft', () => {
  fc.assert(
    fc.property(place, times, (drawn, k) => {
      const [one, other] = [extractionPlan.run(placeAt(drawn, 1)).hole, extractionPlan.run(placeAt(drawn, k)).hole];
      for (const name of ['holeCircleRadiusMm', 'innerLimitRadiusMm', 'outerLimitRadiusMm'] as const) expect(other[name] / k).toBeCloseTo(one[name], 6);
      const window = (size: number) => driverSearch.run({ ...placeAt(drawn, size), includeStandardTubes: false }).required;
      const [small, large] = [window(1), window(k)];
      for (const name of ['insideOverMm', 'insideRimAloneMm', 'outsideUpToMm', 'lengthOverMm', 'flushOutsideUpToMm'] as const) {
        if (small[name] === null) expect(large[name]).toBeNull();
        else expect((large[name] ?? Number.NaN) / k).toBeCloseTo(small[name], 6);
      }
    }),
    { numRuns: Math.min(numRuns, 200) },
  );
});

test('joints: all lengths and the interference larger alike, the same pressure and stress', () => {
  fc.assert(
    fc.property(fc.integer({ min: 5, max: 100 }), fc.integer({ min: 120, max: 300 }), fc.integer({ min: 1, max: 60 }), times, (jointMm, hubShare, interferenceUm, k) => {
      const at = (size: number) => pressJoint.compute({ jointDiameterMm: jointMm * size, shaftBoreMm: 0, hubOutsideMm: (jointMm * hubShare * size) / 100, lengthMm: 20 * size, interferenceUm: interferenceUm * size, shaft: 'steel-c45', hub: 'al-a380' });
      expect(at(k).contactPressureMpa / at(1).contactPressureMpa).toBeCloseTo(1, 9);
      expect(at(k).hubVonMisesMpa / at(1).hubVonMisesMpa).toBeCloseTo(1, 9);
      const stack = (size: number) => ringStack.compute({ rings: [{ insideMm: 0, outsideMm: jointMm * size, material: 'steel-c45' }, { insideMm: jointMm * size, outsideMm: 2 * jointMm * size, material: 'gjl250' }, { insideMm: 2 * jointMm * size, outsideMm: 4 * jointMm * size, material: 'al-a380' }], interferencesUm: [interferenceUm * size, 10 * size] });
      stack(k).joints.forEach((joint, i) => expect(joint.contactPressureMpa).toBeCloseTo(stack(1).joints[i]?.contactPressureMpa ?? Number.NaN, 6));
    }),
    { numRuns },
  );
});

test('speed under the lip grows with the shaft; oval and taper grow with the readings', () => {
  fc.assert(
    fc.property(fc.integer({ min: 5, max: 120 }), fc.integer({ min: 1, max: 9000 }), fc.array(fc.integer({ min: -50, max: 50 }), { minLength: 4, maxLength: 4 }), times, (shaftDiameterMm, speedRpm, deviations, k) => {
      const v = (size: number) => lipSpeed.compute({ shaftDiameterMm: shaftDiameterMm * size, speedRpm }).peripheralSpeedMps;
      expect(v(k) / v(1)).toBeCloseTo(k, 9);
      const size = (factor: number) =>
        measuredSizeCalculation.run({ measures: 'outside', readings: [{ instrument: 'outside-micrometer', points: deviations.map((um, i) => ({ valueMm: (30 + um / 1000) * factor, angleDeg: (i % 2) * 90, depthMm: Math.floor(i / 2) * 5 })) }] });
      expect((size(k).ovalityUm ?? 0) / k).toBeCloseTo(size(1).ovalityUm ?? 0, 3);
    }),
    { numRuns: Math.min(numRuns, 500) },
  );
});
