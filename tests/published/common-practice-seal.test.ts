import { expect, test } from 'vitest';
import { driverSearch, extractionPlan } from '@seatwright/core/handwork';
import { jobSheet, smallTwoStrokeIntervalHours } from '@seatwright/core/job';
import { lipHeat, type Situation } from '@seatwright/core/seal';

/** Common practice (no source): what every mechanic of the trade would say. */
const seal20x35x7: Situation = {
  shaft: { diameterMm: 20, readings: [{ instrument: 'outside-micrometer', valuesMm: [20] }] },
  bore: { diameterMm: 35, material: 'gjl250', readings: [{ instrument: 'inside-micrometer-rod', valuesMm: [35.01] }] },
  seal: { shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' },
  seat: { kind: 'flush' },
};

test('a 2 mm hole fits midway in the face of a 20 × 35 × 7 seal with wall both sides', () => {
  const plan = extractionPlan.compute(seal20x35x7);
  expect(plan.hole.holeCircleRadiusMm - 1).toBeGreaterThan(10);
  expect(plan.hole.holeCircleRadiusMm + 1).toBeLessThan(17.5 - 1.2);
  expect(plan.hole.largestDrillMm).toBeGreaterThanOrEqual(2);
});

test('a driver over a 20 mm shaft needs more than 20 mm inside', () => {
  expect(driverSearch.compute(seal20x35x7).required.insideOverMm).toBeGreaterThan(20);
});

test('a driver wider than the bore makes a flush seat by itself', () => {
  const search = driverSearch.compute({ ...seal20x35x7, includeStandardTubes: false, toolsAtHand: [{ name: 'wide pipe', kind: 'tube', outsideMm: 42, insideMm: 32, lengthMm: 120, material: 'steel' }] });
  expect(search.candidates[0]).toMatchObject({ name: 'wide pipe' });
  expect(search.candidates[0]?.verdict === 'suits' || search.candidates[0]?.verdict === 'suits with care').toBe(true);
});

test('the same wide driver cannot press a seal to a shoulder below the face', () => {
  const search = driverSearch.compute({
    ...seal20x35x7,
    bore: { ...seal20x35x7.bore, depthMm: 10, innerEnd: 'shoulder' },
    seat: { kind: 'shoulder' },
    includeStandardTubes: false,
    toolsAtHand: [{ name: 'wide pipe', kind: 'tube', outsideMm: 42, insideMm: 32, lengthMm: 120, material: 'steel' }],
  });
  expect(search.candidates.find((candidate) => candidate.name === 'wide pipe')).toBeUndefined();
});

test('shaft seals of small two-strokes are renewed at 100 h', () => {
  expect(smallTwoStrokeIntervalHours).toBe(100);
  const sheet = jobSheet.run({
    workshop: {
      format: 'seatwright',
      version: 1,
      machines: [{ name: 'tender', kind: 'small two-stroke', hourMeterHours: 412, positions: [{ name: 'crank', parts: [{ kind: 'seal', ...seal20x35x7.seal }] }] }],
    },
  });
  expect(sheet.due).toMatchObject({ intervalHours: 100, intervalFrom: 'common practice', dueAtHours: 512 });
});

test('a lip runs 20 to 50 K over the fluid (seal selection article, 2018), with a dust lip more', () => {
  const lip = { shaftDiameterMm: 20, speedRpm: 3000, lipMaterial: 'NBR', fluidTemperatureC: 80 } as const;
  expect(lipHeat.run(lip).lipTemperatureC).toEqual({ low: 100, high: 130 });
  expect(lipHeat.run({ ...lip, hasDustLip: true }).lipRiseK).toEqual({ low: 40, high: 70 });
});
