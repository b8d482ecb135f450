import { expect, test } from 'vitest';
import { english, german, jobSheetDocument, styleOf, writeText, type Catalogue } from '../wording/index.js';
import { jobSheet } from './job-sheet.js';
import { jobSheetInSteps } from './whole-sheet.js';

const seal = { kind: 'seal', shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' };
const sheet = (innerDepthMm: number) =>
  jobSheet.run({
    workshop: {
      format: 'seatwright', version: 1,
      machines: [{ name: 'winch', positions: [{ name: 'drum', parts: [{ ...seal, name: 'outer', seat: { kind: 'depth', depthMm: 0 } }, { ...seal, name: 'inner', seat: { kind: 'depth', depthMm: innerDepthMm } }] }] }],
    },
  });
const codes = (depthMm: number) => sheet(depthMm).fileFindings.map(({ code }) => code);

test('two seals in one bore each need their own depth', () => {
  expect(codes(9)).toContain('seals-stand-apart');
  expect(sheet(9).fileFindings.find(({ code }) => code === 'seals-stand-apart')?.parameters['gapMm']).toBe(2);
  expect(codes(6.5)).toContain('seals-overlap');
  expect(sheet(6.5).verdict).toBe('does not suit');
});

const leg = (parts: readonly object[], more: object = {}) =>
  jobSheet.run({
    workshop: {
      format: 'seatwright', version: 1,
      machines: [{ name: 'leg', positions: [{ name: 'propeller shaft', bore: { diameterMm: 35, depthMm: 20, innerEnd: 'shoulder' }, behind: 'bearing', clearBehindMm: 5, retainedBy: 'circlip', lipFacing: 'inward', fluidSide: 'inside', running: { fluid: 'gear-oil', fluidTemperatureC: 70 }, parts, ...more }] }],
    },
  });
const oil = { ...seal, name: 'oil', seat: { kind: 'shoulder' } };
const water = { ...seal, name: 'water', seat: { kind: 'depth', depthMm: 1 }, lipFacing: 'outward', fluidSide: 'outside', running: { fluid: 'water' } };
const seals = (sheet_: ReturnType<typeof leg>) => sheet_.parts.flatMap((part) => (part.kind === 'seal' ? [part] : []));

test('seals that share a bore come out from outside and go in from inside, in whichever order the file has them', () => {
  for (const parts of [[oil, water], [water, oil]]) {
    const { blocks, fileFindings } = leg(parts);
    const named = (steps: typeof blocks.takeOut) => steps.flatMap(({ code, parameters }) => (code.includes('-now-the-') ? [parameters['name']] : []));
    expect(named(blocks.takeOut)).toEqual(['water', 'oil']);
    expect(named(blocks.putIn)).toEqual(['oil', 'water']);
    // 20 mm of bore less 7 mm of width is 13 mm; the outer one ends at 1 mm + 7 mm.
    expect(fileFindings.find(({ code }) => code === 'seals-stand-apart')?.parameters).toMatchObject({ outer: 'water', inner: 'oil', gapMm: 5 });
  }
});

test('seals that are called the same are told apart by a number', () => {
  const { name: _, ...nameless } = oil;
  expect(seals(leg([{ ...nameless }, { ...nameless, seat: { kind: 'depth', depthMm: 0 } }, water])).map(({ name }) => name)).toEqual(['20 × 35 × 7 (1)', '20 × 35 × 7 (2)', 'water']);
  expect(seals(leg([nameless])).map(({ name }) => name)).toEqual(['20 × 35 × 7']);
});

test('what is done once for the machine is not told for every seal', () => {
  const { blocks } = leg([oil, water]);
  const count = (steps: typeof blocks.takeOut, code: string) => steps.filter((step) => step.code === code).length;
  expect([count(blocks.takeOut, 'out-make-safe'), count(blocks.takeOut, 'out-take-off-circlip'), count(blocks.putIn, 'in-refit-circlip'), count(blocks.putIn, 'in-look-for-leaks')]).toEqual([1, 1, 1, 1]);
  expect(blocks.takeOut[1]?.code).toBe('out-make-safe');
  expect(blocks.putIn.at(-1)?.code).toBe('in-look-for-leaks');
  expect([count(blocks.takeOut, 'out-scrap-old-seal'), count(blocks.putIn, 'in-drive-to-shoulder-depth'), count(blocks.putIn, 'in-drive-to-depth')]).toEqual([2, 1, 1]);
});

test('what a seal of several asks for the whole machine is not lost where the other does not ask it', () => {
  // Petrol behind the inner one, water before the outer one: the vapour, and the test of the crankcase.
  const { blocks } = leg([{ ...oil, running: { fluid: 'petrol-oil-mix' } }, water]);
  expect(blocks.takeOut.find(({ code }) => code === 'out-make-safe')?.cautions).toContain('petrol-vapour');
  const tests = blocks.putIn.flatMap(({ code, cautions }) => (['in-pressure-test-crankcase', 'in-look-for-leaks'].includes(code) ? [[code, cautions.includes('air-leak-seizes-engine')]] : []));
  expect(tests).toEqual([['in-pressure-test-crankcase', true], ['in-look-for-leaks', false]]);
});

test('what is put between two seals goes by what their rubbers bear', () => {
  const between = (...parts: readonly object[]) => leg(parts).blocks.putIn.flatMap(({ code }) => (code.startsWith('in-now-the-next') ? [code] : []));
  expect(between(oil, water)).toEqual(['in-now-the-next-seal']);
  expect(between(oil, { ...water, lipMaterial: 'EPDM' })).toEqual(['in-now-the-next-seal-silicone']);
  expect(between({ ...oil, lipMaterial: 'EPDM', running: { fluid: 'brake-fluid-glycol' } }, water)).toEqual(['in-now-the-next-seal-dry']);
});

test('a seal that keeps water out faces the water, and runs in it', () => {
  const [oilSeal, waterSeal] = seals(leg([oil, water]));
  const codesOf = (part: typeof oilSeal) => part?.findings.map(({ code }) => code) ?? [];
  expect(codesOf(waterSeal)).toContain('lip-faces-fluid');
  expect(codesOf(waterSeal)).not.toContain('lip-faces-away');
  expect(codesOf(oilSeal)).toContain('lip-faces-fluid');
  expect(waterSeal?.situation).toMatchObject({ running: { fluid: 'water', fluidTemperatureC: 70 }, fluidSide: 'outside' });
  expect(oilSeal?.situation).toMatchObject({ running: { fluid: 'gear-oil' }, fluidSide: 'inside' });
});

test('what lies behind an outer seal is the inner one, at the distance that the old ones had', () => {
  const behind = (parts: readonly object[], more: object = {}) => seals(leg(parts, more)).map(({ situation }) => situation as { behind?: string; clearBehindMm?: number; oldDepthMm?: readonly number[] });
  expect(behind([water, oil]).map(({ behind: what, clearBehindMm }) => [what, clearBehindMm])).toEqual([['second seal', undefined], ['bearing', 5]]);
  expect(behind([{ ...water, oldDepthMm: [1, 2] }, { ...oil, oldDepthMm: [13] }]).map(({ clearBehindMm }) => clearBehindMm)).toEqual([4.5, 5]);
  // One depth for the whole position cannot be that of two seals.
  expect(behind([water, oil], { oldDepthMm: [1] }).map(({ oldDepthMm }) => oldDepthMm)).toEqual([undefined, undefined]);
  expect(behind([oil], { oldDepthMm: [1] }).map(({ oldDepthMm }) => oldDepthMm)).toEqual([[1]]);
});

test('unknown fields of another position are not told on this sheet', () => {
  const at = (name: string, more: object = {}) => ({ name, parts: [seal], ...more });
  const told = (machines: readonly object[], more: object = {}) =>
    jobSheet.run({ workshop: { format: 'seatwright', version: 1, machines, ...more }, machine: 'winch', position: 'drum' }).fileFindings.find(({ code }) => code === 'unknown-fields')?.parameters['fields'];
  expect(told([{ name: 'winch', positions: [at('drum'), at('motor', { colour: 'red' })] }, { name: 'pump', colour: 'blue', positions: [at('drive')] }])).toBeUndefined();
  expect(told([{ name: 'winch', colour: 'grey', positions: [at('drum', { colour: 'red' })] }], { town: 'here' })).toBe('machines[0].positions[0].colour, machines[0].colour, town');
});

test('in steps it comes to the same, and what is wrong is said at the first', () => {
  const question = { workshop: { format: 'seatwright', version: 1, machines: [{ name: 'winch', positions: [{ name: 'drum', running: { speedRpm: 900 }, parts: [seal, { kind: 'bearing', designation: '6204', shaftClass: 'k6', housingClass: 'H7' }] }] }] } };
  const steps = jobSheetInSteps(question);
  let step = steps.next();
  let count = 0;
  for (; step.done !== true; step = steps.next()) count += 1;
  expect(step.value).toEqual(jobSheet.run(question));
  expect(count).toBeGreaterThan(8);
  expect(() => jobSheetInSteps({ ...question, workshop: {} }).next()).toThrow('format');
});

const bearingSheet = (part: object, position: object = {}) =>
  jobSheet.run({ workshop: { format: 'seatwright', version: 1, machines: [{ name: 'thruster', positions: [{ name: 'input', bore: { material: 'gjl250' }, ...position, parts: [{ kind: 'bearing', shaftClass: 'k5', housingClass: 'H7', ...part }] }] }] } });
const bearingOf = (part: object) => bearingSheet(part).parts[0];
const sizes = { boreMm: 30, outsideMm: 62, widthMm: 16 };

test('a bearing that the tables do not hold is judged by the sizes beside its designation', () => {
  for (const designation of ['7206', '30/8 BX']) {
    const part = bearingOf({ designation, ...sizes });
    expect(part?.kind === 'bearing' ? part.seat?.outsideMm : null).toBe(62);
    expect(part?.findings[0]).toMatchObject({ code: 'bearing-not-listed', severity: 'note', parameters: { designation } });
  }
  expect(bearingOf({ designation: '7206', boreMm: 30, outsideMm: 62 })?.findings.map(({ code }) => code)).toContain('could-not-compute');
});

test('sizes that are not those of the designation are told', () => {
  const differing = (more: object) => bearingOf({ designation: '6206', ...more })?.findings.find(({ code }) => code === 'bearing-sizes-differ');
  // ISO 15: 6206 is 30 × 62 × 16.
  for (const more of [{}, sizes, { boreMm: 30.08 }]) expect(differing(more)).toBeUndefined();
  expect(differing({ ...sizes, widthMm: 20 })).toMatchObject({ severity: 'care', role: 'deciding', parameters: { designation: '6206', listedBoreMm: 30, listedOutsideMm: 62, listedWidthMm: 16, enteredMm: 20 } });
  expect(differing({ boreMm: 25 })?.parameters['enteredMm']).toBe(25);
});

test('a worn seat comes with its repair', () => {
  expect(bearingOf({ designation: '6206', housingClass: 'D10' })?.findings.map(({ code }) => code)).toEqual(expect.arrayContaining(['outer-ring-seat-worn', 'sleeve-restores-housing-seat']));
});

test('a bearing alone is proved without a word of lips and depths; rings that come apart are told so', () => {
  const { blocks } = bearingSheet({ designation: '6206' });
  expect(blocks.prove.map(({ code }) => code)).toEqual(['prove-turn-bearing', 'prove-run-bearing', 'prove-write-down-seats']);
  const apart = (designation: string, more: object = {}) => [bearingSheet({ designation, ...more }).blocks.takeOut, bearingSheet({ designation, ...more }).blocks.putIn].map((steps) => steps.some(({ code }) => code === 'bearing-rings-come-apart'));
  expect(apart('6206')).toEqual([false, false]);
  expect(apart('NU 206')).toEqual([true, true]);
  expect(apart('nj206')).toEqual([true, true]);
});

test('a place that is off the worn track already is said to be so, and no other way off it is named', () => {
  const codesAt = (depthMm: number) => {
    const place = leg([{ ...seal, seat: { kind: 'depth', depthMm } }], { bore: { diameterMm: 35, depthMm: 20, innerEnd: 'open' }, oldDepthMm: [3], wearTrack: { catchesNail: true, widthMm: 1, depthMm: 0.15 } });
    return seals(place)[0]?.findings.map(({ code }) => code) ?? [];
  };
  expect(codesAt(1)).toEqual(expect.arrayContaining(['track-catches-nail', 'seating-lip-leaves-track']));
  expect(codesAt(1).filter((code) => code.startsWith('track-'))).toEqual(['track-catches-nail']);
  expect(codesAt(3)).toEqual(expect.arrayContaining(['seating-lip-stays-in-track', 'track-left-outward']));
});

test('a slip among the readings leaves the rest of the sheet whole', () => {
  const { parts, verdict } = leg([oil], { shaft: { readings: [{ instrument: 'outside-micrometer', valuesMm: [19.98, 1.998] }] } });
  expect(verdict).toBe('cannot tell');
  expect(parts[0]).toMatchObject({ check: { shaft: null }, seating: { verdict: 'suits with care' } });
  expect(parts[0]?.findings.map(({ code }) => code)).not.toContain('could-not-compute');
});

test('a bearing whose housing is of nobody knows what: its seats are judged, its work is left open, and the material is asked for', () => {
  const part = { kind: 'bearing', designation: '6203', shaftClass: 'k5', housingClass: 'H7' };
  const of = (more: object, place: object = {}) => jobSheet.run({ workshop: { format: 'seatwright', version: 1, machines: [{ name: 'pump', positions: [{ name: 'motor side', parts: [{ ...part, ...more }], ...place }] }] } });
  const bare = of({});
  expect(bare.parts[0]).toMatchObject({ verdict: 'cannot tell', fitting: null, removal: null, seat: { boreMm: 17 } });
  expect(bare.parts[0]?.findings.find(({ code }) => code === 'housing-material-not-given')?.missing).toBe('bore.material');
  expect(bare.parts[0]?.findings.map(({ code }) => code)).not.toContain('could-not-compute');
  // Its own material goes before that of the position.
  const inserted = of({ housingMaterial: 'gjl250', shaftMaterial: 'ss304' }, { bore: { material: 'al-a380' }, shaft: { material: 'steel-c45' } });
  expect(inserted.parts[0]).toMatchObject({ situation: { housingMaterial: 'gjl250', shaftMaterial: 'ss304' } });
  expect(inserted.fileFindings).toEqual([]);
  expect(of({}, { bore: { material: 'al-a380' } }).parts[0]).toMatchObject({ situation: { housingMaterial: 'al-a380' } });
});

test('where a rubber serves for a time, those that serve for good are named', () => {
  const rubbersFor = (fluid: string) => {
    const place = leg([{ ...seal, seat: { kind: 'shoulder' } }], { running: { speedRpm: 3000, fluid, fluidTemperatureC: 60 } });
    return { codes: seals(place)[0]?.findings.map(({ code }) => code) ?? [], rubbers: seals(place)[0]?.findings.find(({ code }) => code === 'rubbers-that-would-do')?.parameters['rubbers'] };
  };
  expect(rubbersFor('petrol-oil-mix').codes).toContain('fluid-limited');
  expect(rubbersFor('petrol-oil-mix').rubbers).toMatch(/FKM/u);
  expect(rubbersFor('petrol-oil-mix').rubbers).not.toMatch(/NBR|EPDM|VMQ/u);
  expect(rubbersFor('engine-oil').rubbers).toBeUndefined();
});

test('an interval by the calendar alone is told, and how long the present part is over it', () => {
  const at = (asOfDate: string, more: object = {}) =>
    jobSheet.run({ asOfDate, workshop: { format: 'seatwright', version: 1, machines: [{ name: 'winch', positions: [{ name: 'drum', parts: [seal], serviceIntervalDays: 730, changes: [{ date: '2023-04-01', renewed: 'seal' }], ...more }] }] } });
  const late = at('2026-11-29');
  expect(late.due).toMatchObject({ intervalHours: null, intervalDays: 730, dueDate: '2028-11-28', remainingDays: -608 });
  expect(late.notChecked).not.toContain('service-interval');
  const text = (sheet_: ReturnType<typeof at>, catalogue: Catalogue) => writeText(jobSheetDocument(sheet_, catalogue, styleOf(catalogue))).replaceAll('\u00a0', ' ');
  expect(text(late, english)).toContain('every 730 days; about 2028-11-28. The present part is overdue by 608 days.');
  expect(text(late, german)).toContain('überfällig seit 608 Tagen.');
  expect(text(at('2025-03-30'), english)).toContain('1 day left on the present part.');
  expect(at('2025-03-31', { changes: [] }).due).toMatchObject({ intervalDays: 730, remainingDays: null });
  expect(at('2025-03-31', { serviceIntervalDays: undefined }).notChecked).toContain('service-interval');
});
