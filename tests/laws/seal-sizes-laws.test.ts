import fc from 'fast-check';
import { expect, test } from 'vitest';
import { sealSizes } from '@seatwright/core/seal';
import { standardSizes } from '../../packages/core/src/tables/generated/standard-sizes.js';
import { expectWorkingHolds } from './internal/evaluate-working.js';
import { expectWords, numbersIn } from './internal/expect-words.js';
import { numRuns } from './internal/num-runs.js';
import { numberAt, rowsOf } from './internal/table-rows.js';

test.each(rowsOf(standardSizes).map((row) => [numberAt(row, 'shaftMm'), numberAt(row, 'outsideMm'), numberAt(row, 'widthMm')] as const))('%d × %d × %d finds itself, in millimetres and in inches', (shaftMm, boreMm, widthMm) => {
  for (const input of [{ shaftMm, boreMm, widthMm }, { shaftMm: `${shaftMm / 25.4} in`, boreMm: `${boreMm / 25.4} in`, widthMm: `${widthMm / 25.4} in` }]) {
    expect(sealSizes.run(input).exact.map((size) => [size.shaftMm, size.outsideMm, size.widthMm])).toContainEqual([shaftMm, boreMm, widthMm]);
  }
});

test('words, working and numbers hold; best first; a larger bore never holds tighter, a thinner shaft never grips more', () => {
  const um = (min: number, max: number) => fc.integer({ min, max }).map((value) => value / 1000);
  fc.assert(
    fc.property(um(4_000, 300_000), um(500, 60_000), fc.option(um(2_000, 20_000), { nil: undefined }), um(0, 300), (shaftMm, ringMm, widthMm, moreMm) => {
      const at = (shaft: number, bore: number) => sealSizes.compute({ shaftMm: shaft, boreMm: bore, ...(widthMm === undefined ? {} : { widthMm }) });
      const output = at(shaftMm, shaftMm + ringMm);
      expectWords(output);
      expectWorkingHolds(sealSizes.explain({ shaftMm, boreMm: shaftMm + ringMm }, output));
      expect(numbersIn(output).every(Number.isFinite)).toBe(true);
      for (const size of [...output.exact, ...output.near]) expectWords({ findings: size.findings, assumptions: [], notChecked: [] });
      expect(output.exact.every(({ differs }) => differs.length === 0)).toBe(true);
      const wider = at(shaftMm - moreMm, shaftMm + ringMm + moreMm);
      for (const size of [...output.exact, ...output.near]) {
        const same = [...wider.exact, ...wider.near].find((other) => other.shaftMm === size.shaftMm && other.outsideMm === size.outsideMm && other.widthMm === size.widthMm);
        if (same?.caseInterferenceUm != null && size.caseInterferenceUm !== null) expect(same.caseInterferenceUm.low).toBeLessThanOrEqual(size.caseInterferenceUm.low + 1e-6);
        if (same?.lipInterferenceMm != null && size.lipInterferenceMm !== null) expect(same.lipInterferenceMm.low).toBeLessThanOrEqual(size.lipInterferenceMm.low + 1e-6);
      }
    }),
    { numRuns: Math.min(numRuns, 500) },
  );
});
