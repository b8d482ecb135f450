import { afterAll, beforeAll, expect, test } from 'vitest';
import { bearingRemoval, bearingSeat, type BearingSeatInput } from '@seatwright/core/bearing';
import { bearingDriver, driverSearch, extractionPlan, seatingPlan } from '@seatwright/core/handwork';
import { sealCheck } from '@seatwright/core/seal';
import type { SeatSection } from '@seatwright/elements/seat-section.js';
import { germanWords } from '@seatwright/elements/words.js';
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
        // Out from inside by a tube, and by a punch where the shaft keeps every drill away.
        const otherWays = [{ ...situation, reachableFrom: 'inside' as const }, { ...situation, shaft: { ...situation.shaft, protrusionMm: 900 } }].map((other) => ({ situation: other, extraction: extractionPlan.compute(other) }));
        const what = `${shaftMm} × ${outsideMm} × ${widthMm}, ${seat.kind}`;
        return widths.flatMap((width) =>
          (['mm', 'in'] as const).flatMap((lengthUnit) => [
            { name: `${what}, in, ${width} px, ${lengthUnit}`, tag: 'seat-section' as const, width, given: { ...given, driver, lengthUnit } },
            { name: `${what}, out, ${width} px, ${lengthUnit}`, tag: 'seat-section' as const, width, given: { ...given, extraction, mode: 'taking out', lengthUnit, highlight: 'depth' } },
            ...otherWays.map((other) => ({ name: `${what}, ${other.extraction.method}, ${width} px, ${lengthUnit}`, tag: 'seat-section' as const, width, given: { ...given, ...other, mode: 'taking out', lengthUnit } })),
          ]),
        );
      }),
    ),
  );
}

/** Series from thin to wide, rollers, one with needles, and one larger than the tables; measured and by class. */
const bearings: readonly BearingSeatInput[] = [
  ...['61800', '608', '6000-2Z', '6202 2RS', '6203-2RS C3', '6305', '61820', '6410', '6220', 'NU 204', 'NJ 2206', 'N 210', 'NUP 2310', 'NU 1020'].map((designation) => ({ designation, shaftClass: 'k5', housingClass: 'H7' })),
  { boreMm: 6, outsideMm: 13, widthMm: 5, shaftClass: 'j5', housingClass: 'H7' },
  { boreMm: 20, outsideMm: 28, widthMm: 16, bearingKind: 'cylindrical-roller', shaftClass: 'h5', housingClass: 'K7' },
  { boreMm: 400, outsideMm: 500, widthMm: 46, shaftClass: 'm6', housingClass: 'H7' },
  { designation: '6204', shaftReadings: [{ instrument: 'outside-micrometer', valuesMm: [20.006, 20.009] }], housingReadings: [{ instrument: 'inside-micrometer-rod', valuesMm: [47.01, 47.02] }] },
];

function bearingCases(): readonly DrawnCase[] {
  return bearings.flatMap((asked) => {
    const bearing = bearingSeat.parse({ ...asked, housingMaterial: 'al-a380' });
    const seats = bearingSeat.compute(bearing);
    const search = bearingDriver.compute(bearing);
    const given = { bearing, seats, removal: bearingRemoval.compute(bearing), bearingDriver: search.candidates[0] ?? null };
    const { boreMm, outsideMm } = seats;
    const name = asked.designation ?? `${boreMm} × ${outsideMm}`;
    // Alone; behind a seal in the same bore; behind a smaller one, which it cannot pass.
    const places = [
      { what: 'alone', situation: { shaft: { diameterMm: boreMm } } },
      ...[outsideMm, boreMm + (outsideMm - boreMm) * 0.6].map((sealOutsideMm) => ({
        what: `behind a seal of ${sealOutsideMm}`,
        situation: { seal: { shaftMm: boreMm, outsideMm: sealOutsideMm, widthMm: Math.max((outsideMm - boreMm) * 0.25, 4) }, seat: { kind: 'depth', depthMm: 0.6 }, behind: 'bearing', clearBehindMm: 2 },
      })),
    ];
    return places.flatMap(({ what, situation }) =>
      widths.flatMap((width) =>
        (['as driven', 'bearing in', 'bearing out'] as const).flatMap((mode) =>
          (['mm', 'in'] as const).map((lengthUnit) => ({ name: `${name} ${what}, ${mode}, ${width} px, ${lengthUnit}`, tag: 'seat-bearing-section' as const, width, given: { ...given, situation, mode, lengthUnit } })),
        ),
      ),
    );
  });
}

test('no two texts of a drawing meet, from the smallest shaft to the largest, in both units', async () => {
  const cases = sealCases();
  expect(cases.length).toBeGreaterThan(500);
  expect(await troublesOfLabels(open.page, cases)).toEqual([]);
});

test('nor with a bearing in it, of any series, alone or behind a seal', async () => {
  const cases = bearingCases();
  expect(cases.length).toBeGreaterThan(700);
  expect(await troublesOfLabels(open.page, cases)).toEqual([]);
});

test('nor in German, whose words are longer', async () => {
  const german = { words: germanWords, decimalMark: ',' };
  const cases = [...sealCases(), ...bearingCases()].filter(({ given, width }) => width === 358 && given['lengthUnit'] === 'mm').map((drawn) => ({ ...drawn, given: { ...drawn.given, ...german } }));
  expect(await troublesOfLabels(open.page, [...cases, { name: 'nothing known', tag: 'seat-section', width: 358, given: german }, { name: 'no bearing known', tag: 'seat-bearing-section', width: 358, given: german }])).toEqual([]);
});

test('a drawing that is drawn anew does not have the page laid out for it', async () => {
  const situation = sealCheck.parse({ seal: { shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' } });
  const asked = await open.page.evaluate(async (given) => {
    const section: SeatSection = Object.assign(document.createElement('seat-section'), given);
    document.body.append(section);
    // Its size is known, and with it the font of the place.
    for (let i = 0; i < 3; i += 1) await new Promise(requestAnimationFrame);
    let count = 0;
    const ask = globalThis.getComputedStyle;
    globalThis.getComputedStyle = (...which) => {
      count += 1;
      return ask(...which);
    };
    for (const highlight of ['depth', 'bore', '']) {
      section.highlight = highlight;
      await section.updateComplete;
    }
    globalThis.getComputedStyle = ask;
    section.remove();
    return count;
  }, { situation, check: sealCheck.compute(situation) });
  expect(asked).toBe(0);
});
