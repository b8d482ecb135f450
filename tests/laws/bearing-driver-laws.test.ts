import fc from 'fast-check';
import { expect, test } from 'vitest';
import { bearingDriver } from '@seatwright/core/handwork';
import { expectWords, numbersIn } from './internal/expect-words.js';
import { numRuns } from './internal/num-runs.js';

const tool = fc.record({ name: fc.constant('scrap'), kind: fc.constantFrom('tube', 'socket'), outsideMm: fc.integer({ min: 15, max: 100 }), wallMm: fc.integer({ min: 1, max: 6 }), material: fc.constantFrom('steel', 'pvc-u') });

test('a driver that is chosen pushes the right ring alone, whatever its sizes come out as', () => {
  fc.assert(
    fc.property(fc.constantFrom('6202', '6204', '6206', '6308'), fc.constantFrom('inner ring', 'outer ring', 'both rings'), fc.array(tool, { maxLength: 8 }), fc.boolean(), (designation, ring, toolsAtHand, includeStandardTubes) => {
      const output = bearingDriver.run({ designation, ring, toolsAtHand, includeStandardTubes });
      expectWords(output);
      expect(numbersIn(output).every(Number.isFinite)).toBe(true);
      for (const candidate of [...output.candidates, ...output.nearMisses]) expectWords({ findings: candidate.reasons, assumptions: [], notChecked: [] });
      for (const { insideMm, outsideMm } of output.candidates) {
        expect(insideMm.low).toBeGreaterThanOrEqual(output.insideOverMm - 1e-9);
        expect(insideMm.high).toBeLessThanOrEqual(output.insideUpToMm + 1e-9);
        expect(outsideMm.low).toBeGreaterThanOrEqual(output.outsideOverMm - 1e-9);
        expect(outsideMm.high).toBeLessThanOrEqual(output.outsideUpToMm + 1e-9);
      }
      for (const { leastMarginMm, reserveFactor } of output.nearMisses) expect(leastMarginMm < 0 || (reserveFactor !== null && reserveFactor < 1)).toBe(true);
    }),
    { numRuns: Math.min(numRuns, 200) },
  );
});
