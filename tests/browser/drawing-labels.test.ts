import { afterAll, beforeAll, expect, test } from 'vitest';
import { driverSearch, extractionPlan, seatingPlan } from '@seatwright/core/handwork';
import { sealCheck } from '@seatwright/core/seal';
import { Bench, type OpenBench } from './internal/bench.js';
import { troublesOfLabels, type DrawnCase } from './internal/drawn-labels.js';

const elements = new URL('../../packages/elements/dist-single/seatwright.js', import.meta.url).pathname;
const bench = new Bench();
let open: OpenBench;
beforeAll(async () => {
  await bench.start();
  open = await bench.open({ viewport: { width: 1000, height: 900 } });
  // A bare page: the workshop's own would bring its elements along.
  await open.page.goto('about:blank');
  await open.page.setContent('<!doctype html><html lang="en"><title>drawings</title></html>');
  await open.page.addScriptTag({ path: elements, type: 'module' });
  await open.page.waitForFunction(() => customElements.get('seat-section') !== undefined);
});
afterAll(() => bench.stop());

const widths = [260, 358, 620] as const;
const seals = [[6, 16, 5], [10, 22, 7], [20, 35, 7], [25, 62, 10], [45, 60, 8], [80, 100, 10], [120, 150, 12], [230, 260, 15], [400, 440, 20]] as const;
const faces = [{ kind: 'flush' }, { kind: 'depth', depthMm: 1.25 }, { kind: 'depth', depthMm: 12 }, { kind: 'shoulder' }] as const;

function sealCases(): readonly DrawnCase[] {
  return seals.flatMap(([shaftMm, outsideMm, widthMm]) =>
    faces.flatMap((seat) =>
      ([undefined, 2] as const).flatMap((clearBehindMm) => {
        const situation = sealCheck.parse({
          seal: { shaftMm, outsideMm, widthMm, construction: 'metal-case', lipMaterial: 'NBR' },
          shaft: { diameterMm: shaftMm },
          bore: { diameterMm: outsideMm, depthMm: widthMm + 8, innerEnd: 'shoulder', material: 'al-a380' },
          running: { speedRpm: 1000, fluid: 'grease', fluidTemperatureC: 60 },
          seat,
          ...(clearBehindMm === undefined ? {} : { behind: 'bearing', clearBehindMm }),
          wearTrack: { fromFaceMm: widthMm * 0.7, widthMm: 0.6 },
        });
        const given = { situation, check: sealCheck.compute(situation), seating: seatingPlan.compute(situation) };
        const driver = driverSearch.compute(situation).candidates[0] ?? null;
        const extraction = extractionPlan.compute(situation);
        const what = `${shaftMm} × ${outsideMm} × ${widthMm}, ${seat.kind}`;
        return widths.flatMap((width) =>
          (['mm', 'in'] as const).flatMap((lengthUnit) => [
            { name: `${what}, in, ${width} px, ${lengthUnit}`, tag: 'seat-section' as const, width, given: { ...given, driver, lengthUnit } },
            { name: `${what}, out, ${width} px, ${lengthUnit}`, tag: 'seat-section' as const, width, given: { ...given, extraction, mode: 'taking out', lengthUnit, highlight: 'depth' } },
          ]),
        );
      }),
    ),
  );
}

test('no two texts of a drawing meet, from the smallest shaft to the largest, in both units', async () => {
  const cases = sealCases();
  expect(cases.length).toBeGreaterThan(500);
  expect(await troublesOfLabels(open.page, cases)).toEqual([]);
});
