import fc from 'fast-check';
import { expect, test } from 'vitest';
import { verdictOf, verdicts, type Verdict } from '@seatwright/core';
import { extractionPlan, seatingPlan } from '@seatwright/core/handwork';
import { sealCheck, type Situation } from '@seatwright/core/seal';
import { numRuns } from './internal/num-runs.js';
import { situations } from './internal/situations.js';

const rank = (verdict: Verdict) => verdicts.indexOf(verdict);

/** Every length of a situation written in another unit, as text. */
function rewritten(value: unknown, write: (mm: number) => string, name = ''): unknown {
  if (typeof value === 'number' && /Mm$/.test(name)) return write(value);
  if (Array.isArray(value)) return value.map((item) => rewritten(item, write, name));
  if (typeof value === 'object' && value !== null) return Object.fromEntries(Object.entries(value).map(([key, item]) => [key, rewritten(item, write, /Mm$/.test(name) ? name : key)]));
  return value;
}

test.each([
  ['inches', (mm: number) => `${(mm / 25.4).toFixed(9)} in`],
  ['thou', (mm: number) => `${((mm / 25.4) * 1000).toFixed(6)} thou`],
  ['micrometres', (mm: number) => `${(mm * 1000).toFixed(3)} µm`],
  ['millimetres with a comma', (mm: number) => mm.toFixed(6).replace('.', ',')],
])('the same place written in %s gets the same answer', (_, write) => {
  fc.assert(
    fc.property(situations, (situation) => {
      const written = rewritten(situation, write);
      expect(sealCheck.run(written)).toMatchObject(sealCheck.compute(situation));
      expect(extractionPlan.run(written)).toMatchObject(extractionPlan.compute(situation));
      expect(seatingPlan.run(written)).toMatchObject(seatingPlan.compute(situation));
    }),
    { numRuns: Math.min(numRuns, 300) },
  );
});

const at = (instrument: { readonly id: string; readonly permissibleErrorMm: number }, boreMm: number): Situation => ({
  bore: { readings: [{ instrument: instrument.id, valuesMm: [boreMm] }], material: 'gjl250' },
  seal: { shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' },
  instruments: [{ ...instrument, measures: 'inside', resolutionMm: 0.001 }],
});
const isUncertain = (situation: Situation) => sealCheck.compute(situation).findings.some(({ code }) => code === 'outside-hold-cannot-tell' || code === 'outside-holds-unproved');

test('with the same reading a better instrument never turns certain into uncertain', () => {
  fc.assert(
    fc.property(fc.integer({ min: 34_900, max: 35_300 }), fc.integer({ min: 1, max: 100 }), fc.integer({ min: 1, max: 100 }), (boreUm, coarseUm, share) => {
      const coarse = { id: 'coarse', permissibleErrorMm: coarseUm / 1000 };
      const fine = { id: 'fine', permissibleErrorMm: (coarseUm * share) / 100_000 };
      if (!isUncertain(at(coarse, boreUm / 1000))) expect(isUncertain(at(fine, boreUm / 1000))).toBe(false);
    }),
    { numRuns },
  );
});

test('more speed or more pressure never improves the verdict', () => {
  fc.assert(
    fc.property(situations, fc.integer({ min: 0, max: 5000 }), fc.integer({ min: 0, max: 100 }), (situation, moreRpm, moreKpa) => {
      const running = situation.running ?? {};
      const verdict = (changed: typeof running) => rank(sealCheck.compute({ ...situation, running: changed }).verdict);
      if (running.speedRpm !== undefined) expect(verdict({ ...running, speedRpm: running.speedRpm + moreRpm })).toBeGreaterThanOrEqual(verdict(running));
      const { pressureMpa, pressureLowMpa, pressureHighMpa, ...rest } = running;
      if (pressureMpa !== undefined && pressureMpa >= 0 && pressureLowMpa === undefined && pressureHighMpa === undefined) {
        expect(verdict({ ...rest, pressureMpa: pressureMpa + moreKpa / 1000 })).toBeGreaterThanOrEqual(verdict({ ...rest, pressureMpa }));
      }
    }),
    { numRuns },
  );
});

test('more heat above 20 °C never improves the verdict', () => {
  fc.assert(
    fc.property(situations, fc.integer({ min: 20, max: 200 }), fc.integer({ min: 0, max: 60 }), (situation, c, more) => {
      const running = situation.running ?? {};
      const verdict = (changed: typeof running) => rank(sealCheck.compute({ ...situation, running: changed }).verdict);
      expect(verdict({ ...running, fluidTemperatureC: c + more, housingTemperatureC: c + more })).toBeGreaterThanOrEqual(verdict({ ...running, fluidTemperatureC: c, housingTemperatureC: c }));
    }),
    { numRuns },
  );
});

test('the reading that is named would change the verdict, and nothing is named where none alone would', () => {
  fc.assert(
    fc.property(situations, (situation) => {
      const { decidingReading, findings, verdict } = sealCheck.compute(situation);
      const without = (path: string) => verdictOf(findings.filter(({ missing }) => missing !== path));
      const missing = findings.flatMap((finding) => (finding.missing === undefined ? [] : [finding.missing]));
      if (decidingReading === null) for (const path of missing) expect(without(path)).toBe(verdict);
      else {
        expect(without(decidingReading.path)).toBe(decidingReading.bestVerdict);
        expect(rank(decidingReading.bestVerdict)).toBeLessThan(rank(verdict));
      }
    }),
    { numRuns },
  );
});

test('a place that lacks the bore alone names the bore', () => {
  const { decidingReading } = sealCheck.compute({
    shaft: { readings: [{ instrument: 'outside-micrometer', valuesMm: [19.98] }] },
    bore: { material: 'gjl250' },
    seal: { shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' },
    running: { speedRpm: 1450, fluid: 'mineral-oil', fluidTemperatureC: 60 },
    lipFacing: 'inward',
    fluidSide: 'inside',
  });
  expect(decidingReading?.path).toBe('bore.readings');
});
