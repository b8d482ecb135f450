import fc from 'fast-check';
import { expect, test } from 'vitest';
import { CalculationError } from '@seatwright/core';
import { chooseFit, pressJoint, type ChooseFitInput, type ChooseFitOutput } from '@seatwright/core/joint';
import { fit } from '@seatwright/core/tolerance';
import { expectWorkingHolds } from './internal/evaluate-working.js';
import { numRuns } from './internal/num-runs.js';

const runs = Math.min(numRuns, 300);

/** Signed: interference above zero. */
function limitsOf(nominalMm: number, hole: string, shaft: string): readonly [number, number] {
  const { maximumClearanceUm, minimumClearanceUm, maximumInterferenceUm, minimumInterferenceUm } = fit.compute({ nominalMm, hole, shaft });
  return [minimumInterferenceUm > 0 ? minimumInterferenceUm : -maximumClearanceUm + 0, maximumInterferenceUm > 0 ? maximumInterferenceUm : -minimumClearanceUm + 0];
}

function tried(input: ChooseFitInput): ChooseFitOutput | null {
  try {
    return chooseFit.compute(input);
  } catch (error) {
    if (error instanceof CalculationError && error.code === 'no-solution') return null;
    throw error;
  }
}

test('every fit listed keeps to the window, is what `fit` says it is, and stands in order of preference', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 500 }), fc.integer({ min: -200, max: 200 }), fc.integer({ min: 5, max: 200 }), (nominalMm, leastInterferenceUm, width) => {
      const output = tried({ nominalMm, leastInterferenceUm, mostInterferenceUm: leastInterferenceUm + width, maximumCandidateCount: 50 });
      if (output === null) return;
      const order = ['first', 'second', 'none'];
      output.candidates.forEach((candidate, i) => {
        expect([candidate.leastInterferenceUm, candidate.mostInterferenceUm]).toEqual(limitsOf(nominalMm, candidate.hole, candidate.shaft));
        expect(candidate.leastInterferenceUm).toBeGreaterThanOrEqual(leastInterferenceUm);
        expect(candidate.mostInterferenceUm).toBeLessThanOrEqual(leastInterferenceUm + width);
        expect(order.indexOf(candidate.preference)).toBeGreaterThanOrEqual(order.indexOf(output.candidates[i - 1]?.preference ?? 'first'));
      });
    }),
    { numRuns: runs },
  );
});

test('a fit that exists is found by its own window', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 500 }), fc.constantFrom('H7/p6', 'H7/g6', 'H8/f7', 'P7/h6', 'H6/k5', 'H11/c11', 'H7/s6', 'K7/h6'), (nominalMm, name) => {
      const [hole = '', shaft = ''] = name.split('/');
      const [least, most] = limitsOf(nominalMm, hole, shaft);
      const { candidates } = chooseFit.compute({ nominalMm, leastInterferenceUm: least, mostInterferenceUm: most, maximumCandidateCount: 200 });
      expect(candidates.map((candidate) => `${candidate.hole}/${candidate.shaft}`)).toContain(name);
    }),
    { numRuns: runs },
  );
});

test('a wider window never loses a fit', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 500 }), fc.integer({ min: -100, max: 100 }), fc.integer({ min: 5, max: 100 }), fc.integer({ min: 0, max: 50 }), (nominalMm, least, width, more) => {
      const narrow = tried({ nominalMm, leastInterferenceUm: least, mostInterferenceUm: least + width })?.candidateCount ?? 0;
      const wide = tried({ nominalMm, leastInterferenceUm: least - more, mostInterferenceUm: least + width + more })?.candidateCount ?? 0;
      expect(wide).toBeGreaterThanOrEqual(narrow);
    }),
    { numRuns: runs },
  );
});

const joint = { shaftBoreMm: 0, hubOutsideMm: 80, lengthMm: 40, shaft: 'steel-c45', hub: 'steel-c45' } as const;

test('a load, a press and a hub that stays elastic: each fit listed does what it promises in press-joint', () => {
  fc.assert(
    fc.property(fc.integer({ min: 20, max: 600 }), fc.integer({ min: 20_000, max: 200_000 }), fc.integer({ min: -20, max: 150 }), (torqueNm, pressLimitN, hubTemperatureC) => {
      const output = tried({ nominalMm: 40, joint: { ...joint, hub: 'gjs500', hubTemperatureC }, torqueNm, pressLimitN, mustStayElastic: true, mustStayTight: true });
      if (output === null) return;
      for (const { leastInterferenceUm, mostInterferenceUm, torqueNm: carries, pressForceN } of output.candidates) {
        const loosest = pressJoint.compute({ jointDiameterMm: 40, ...joint, hub: 'gjs500', hubTemperatureC, interferenceUm: leastInterferenceUm });
        const tightest = pressJoint.compute({ jointDiameterMm: 40, ...joint, hub: 'gjs500', interferenceUm: mostInterferenceUm });
        expect(carries).toBeGreaterThanOrEqual(torqueNm - 1e-6);
        // press-joint counts the probable expansion, choose-fit the worse end: it promises no more.
        expect(loosest.torqueNm).toBeGreaterThanOrEqual((carries ?? Infinity) - 1e-6);
        expect(tightest.pressForceN).toBeCloseTo(pressForceN ?? Number.NaN, 6);
        expect(tightest.pressForceN).toBeLessThanOrEqual(pressLimitN + 1e-6);
        expect(tightest.elasticPlastic).toBeNull();
      }
    }),
    { numRuns: runs },
  );
});

test('a joint that heat tightens is chosen to hold cold and not to flow hot', () => {
  const warm = { ...joint, shaft: 'al-6061-t6', temperatureC: 120, frictionCoefficient: 0.1 } as const;
  const holds = chooseFit.run({ nominalMm: 40, joint: warm, torqueNm: 100, maximumCandidateCount: 200 });
  const cold = chooseFit.run({ nominalMm: 40, joint: { ...warm, temperatureC: 20 }, torqueNm: 100, maximumCandidateCount: 200 });
  expect(holds.leastInterferenceUm).toBe(cold.leastInterferenceUm);
  expect(holds.candidates[0]?.leastInterferenceUm).toBeGreaterThan(0);
  const elastic = chooseFit.run({ nominalMm: 40, joint: warm, leastInterferenceUm: 5, mustStayElastic: true, maximumCandidateCount: 200 });
  expect(elastic.candidateCount).toBeGreaterThan(0);
  for (const { mostInterferenceUm } of elastic.candidates) {
    for (const temperatureC of [20, 120]) expect(pressJoint.run({ jointDiameterMm: 40, ...warm, temperatureC, interferenceUm: mostInterferenceUm }).elasticPlastic).toBeNull();
  }
});

test('the guarantee of a load holds at 20 °C and at the temperatures of the joint, whatever the pair', () => {
  const metals = ['steel-c45', 'al-6061-t6', 'gjs500', 'mg-az91d'] as const;
  fc.assert(
    fc.property(fc.constantFrom(...metals), fc.constantFrom(...metals), fc.integer({ min: -30, max: 150 }), fc.integer({ min: 20, max: 300 }), fc.boolean(), (shaft, hub, temperatureC, torqueNm, mustStayElastic) => {
      const pair = { ...joint, shaft, hub, frictionCoefficient: 0.12 };
      const output = tried({ nominalMm: 40, joint: { ...pair, temperatureC }, torqueNm, mustStayElastic });
      for (const { leastInterferenceUm, mostInterferenceUm } of output?.candidates ?? []) {
        for (const at of [20, temperatureC]) {
          expect(pressJoint.compute({ jointDiameterMm: 40, ...pair, temperatureC: at, interferenceUm: leastInterferenceUm }).torqueNm).toBeGreaterThanOrEqual(torqueNm - 1e-6);
          if (mustStayElastic) expect(pressJoint.compute({ jointDiameterMm: 40, ...pair, temperatureC: at, interferenceUm: mostInterferenceUm }).elasticPlastic).toBeNull();
        }
      }
    }),
    { numRuns: runs },
  );
});

test.each([
  [{ torqueNm: 300, pressLimitN: 80_000, mustStayElastic: true }, 2],
  [{ torqueNm: 300, mustStayElastic: true }, 2],
  [{ axialForceN: 2000, pressLimitN: 40_000 }, 2],
  [{ leastInterferenceUm: 10, mostInterferenceUm: 80 }, 0],
])('the working of %j holds', (wanted, formulaCount) => {
  const input: ChooseFitInput = { nominalMm: 40, joint: { ...joint, frictionCoefficient: 0.12 }, ...wanted };
  const output = chooseFit.compute(input);
  expect(expectWorkingHolds(chooseFit.explain(input, output))).toBe(formulaCount);
});

test.each([
  [{}, /say what is wanted/],
  [{ torqueNm: 10 }, /torqueNm and joint: needs the joint/],
  [{ leastInterferenceUm: 5, mostClearanceUm: 5 }, /ask for interference or for clearance/],
  [{ leastInterferenceUm: 50, mostInterferenceUm: 20 }, /at least 50 µm.*at most 20 µm/],
  [{ leastInterferenceUm: 50, mostInterferenceUm: 55 }, /no ISO fit guarantees.*nearest: /],
  [{ joint: { ...joint, hub: 'pvc-u' }, torqueNm: 10 }, /a load needs a friction/],
])('%j is refused with what to do', (wanted, message) => {
  expect(() => chooseFit.run({ nominalMm: 40, ...wanted })).toThrow(message);
});
