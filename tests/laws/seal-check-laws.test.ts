import fc from 'fast-check';
import { expect, test } from 'vitest';
import { verdicts, type Verdict } from '@seatwright/core';
import { sealCheck, type Situation } from '@seatwright/core/seal';
import { expectWorkingHolds } from './internal/evaluate-working.js';
import { expectWords } from './internal/expect-words.js';
import { numRuns } from './internal/num-runs.js';
import { situations } from './internal/situations.js';

const rank = (verdict: Verdict) => verdicts.indexOf(verdict);

function numbersIn(value: unknown): readonly number[] {
  if (typeof value === 'number') return [value];
  if (Array.isArray(value)) return value.flatMap(numbersIn);
  if (typeof value === 'object' && value !== null) return Object.values(value).flatMap(numbersIn);
  return [];
}

test('no number of any output is NaN or infinite', () => {
  fc.assert(
    fc.property(situations, (situation) => {
      expect(numbersIn(sealCheck.compute(situation)).every((number) => Number.isFinite(number))).toBe(true);
    }),
    { numRuns },
  );
});

test('what comes out meets the published output schema', () => {
  fc.assert(
    fc.property(situations, (situation) => {
      const parsed = sealCheck.output['~standard'].validate(JSON.parse(JSON.stringify(sealCheck.compute(situation)))) as { readonly issues?: unknown };
      expect(parsed.issues).toBeUndefined();
    }),
    { numRuns },
  );
});

test('every formula of the working gives the value that was computed', () => {
  fc.assert(
    fc.property(situations, (situation) => {
      expectWorkingHolds(sealCheck.explain(situation, sealCheck.compute(situation)));
    }),
    { numRuns: Math.min(numRuns, 300) },
  );
});

test('every finding, assumption and open point has words, and every placeholder a parameter', () => {
  fc.assert(
    fc.property(situations, (situation) => {
      const output = sealCheck.compute(situation);
      expectWords(output);
    }),
    { numRuns },
  );
});

test('a missing deciding reading is never a good verdict', () => {
  fc.assert(
    fc.property(situations, (situation) => {
      const output = sealCheck.compute(situation);
      if (output.findings.some((finding) => finding.role === 'deciding' && finding.severity === 'unknown')) expect(rank(output.verdict)).toBeGreaterThanOrEqual(rank('cannot tell'));
    }),
    { numRuns },
  );
});

test('a larger bore never holds better', () => {
  const at = (boreMm: number): Situation => ({
    bore: { readings: [{ instrument: 'inside-micrometer-rod', valuesMm: [boreMm] }], material: 'gjl250' },
    seal: { shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' },
  });
  fc.assert(
    fc.property(fc.integer({ min: 34_900, max: 35_400 }), fc.integer({ min: 1, max: 200 }), (um, moreUm) => {
      const tight = sealCheck.compute(at(um / 1000));
      const wide = sealCheck.compute(at((um + moreUm) / 1000));
      expect(wide.interferenceUm?.low ?? 0).toBeLessThan(tight.interferenceUm?.low ?? 0);
      expect(wide.heldUm?.high ?? 0).toBeLessThanOrEqual(tight.heldUm?.high ?? 0);
    }),
    { numRuns },
  );
});

test('a hotter light-alloy housing never holds better', () => {
  const at = (housingTemperatureC: number): Situation => ({
    bore: { readings: [{ instrument: 'inside-micrometer-rod', valuesMm: [35.01] }], material: 'al-a380' },
    seal: { shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'FKM' },
    running: { housingTemperatureC },
  });
  const hotRank = (c: number) => ['case-holds-hot', 'case-may-loosen-hot', 'case-loose-hot'].indexOf(sealCheck.compute(at(c)).findings.find((finding) => finding.code.startsWith('case-'))?.code ?? '');
  fc.assert(
    fc.property(fc.integer({ min: 20, max: 250 }), fc.integer({ min: 0, max: 100 }), (c, more) => {
      expect(hotRank(c)).toBeGreaterThanOrEqual(0);
      expect(hotRank(c + more)).toBeGreaterThanOrEqual(hotRank(c));
    }),
    { numRuns },
  );
});

test('a steel case of 35 mm in an aluminium bore begins to let go near 90 °C; its own spring is some 0.03 mm, and the bore gives some more', () => {
  const situation = (material: string, housingOutsideMm?: number): Situation => ({
    bore: { readings: [{ instrument: 'inside-micrometer-rod', valuesMm: [35.01] }], material, ...(housingOutsideMm === undefined ? {} : { housingOutsideMm }) },
    seal: { shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'FKM', caseThicknessMm: 1, caseYieldMpa: 210 },
  });
  const { looseFromC, heldUm } = sealCheck.compute(situation('al-a380'));
  // σy·D/E = 35.5 µm of the case and p·D·(1 + ν)/E = 7.9 µm of an endless aluminium wall, p = 2·t·σy/D = 12 MPa
  expect(heldUm?.high).toBeCloseTo(35.5 + 7.9, 0);
  expect(looseFromC?.earliest).toBeGreaterThan(75);
  expect(looseFromC?.probable).toBeLessThan(170);
  // A thin wall gives more: it springs after the case for longer, but presses no harder.
  const thin = sealCheck.compute(situation('al-a380', 43));
  expect(thin.heldUm?.high).toBeGreaterThan(heldUm?.high ?? Infinity);
  expect(thin.contactPressureMpa?.high).toBeLessThanOrEqual(12 + 1e-9);
  expect(thin.notChecked).not.toContain('housing-stiffness');
});
