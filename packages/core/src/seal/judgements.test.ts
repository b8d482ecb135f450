import { describe, expect, test } from 'vitest';
import { expectWorkingHolds } from '../../../../tests/laws/internal/evaluate-working.js';
import { refused } from '../../../../tests/laws/internal/refused.js';
import { generalLimitOf, strictestLimitOf } from './internal/checks/lip-speed-check.js';
import { nearestStandardMm } from './internal/half-step.js';
import { frictionEstimates, lipRiseOf } from './internal/lip-friction.js';
import { largerSealShaftsMm, smallerSealShaftsMm, standardListsOf } from './internal/standard-lists.js';
import { lipSpeed } from './lip-speed.js';
import { pressFitAllowanceOf } from './press-fit-allowance.js';
import { sealCheck } from './seal-check.js';
import type { Situation } from './situation-field.js';
import { widthToleranceOf } from './width-tolerance.js';

const seal: Situation['seal'] = { shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' };
const look = (more: Partial<Situation>) => sealCheck.compute({ seal, ...more });
const told = (more: Partial<Situation>, start: RegExp) => look(more).findings.filter(({ code }) => start.test(code)).map(({ code, severity, parameters }) => [code, severity, parameters]);
const short = (more: Partial<Situation>, start: RegExp) => look(more).findings.filter(({ code }) => start.test(code)).map(({ code, severity }) => `${code} ${severity}`);

describe('which way the lip faces, and which way the shaft turns', () => {
  const facing = (more: Partial<Situation>) => told(more, /^(?:lip-faces|fluid-on)/u);
  test('toward the fluid, away from it, and with fluid on both sides', () => {
    for (const [lipFacing, fluidSide, code] of [['inward', 'inside', 'lip-faces-fluid'], ['outward', 'outside', 'lip-faces-fluid']] as const) expect(facing({ lipFacing, fluidSide })).toEqual([[code, 'good', { lipFacing }]]);
    for (const [lipFacing, fluidSide] of [['inward', 'outside'], ['outward', 'inside']] as const) expect(facing({ lipFacing, fluidSide })).toEqual([['lip-faces-away', 'bad', { lipFacing, fluidSide }]]);
    expect(facing({ lipFacing: 'inward', fluidSide: 'both' })).toEqual([['fluid-on-both-sides', 'care', { lipFacing: 'inward' }]]);
    expect(facing({ lipFacing: 'inward', fluidSide: 'both', seal: { ...seal, hasDustLip: false } })).toEqual([['fluid-on-both-sides', 'care', { lipFacing: 'inward' }]]);
    expect(facing({ lipFacing: 'inward', fluidSide: 'both', seal: { ...seal, hasDustLip: true } })).toEqual([['fluid-on-both-sides', 'note', { lipFacing: 'inward' }]]);
  });

  test('where either is not known it is said to be open', () => {
    for (const more of [{}, { lipFacing: 'inward' }, { fluidSide: 'inside' }] as const) {
      expect(facing(more)).toEqual([]);
      expect(look(more).notChecked).toContain('lip-facing');
    }
    expect(look({ lipFacing: 'inward', fluidSide: 'inside' }).notChecked).not.toContain('lip-facing');
  });

  test('a lip made for one way: missing, right, wrong, and a shaft that turns both ways', () => {
    const turning = (rotation: Situation['rotation'], turns: Situation['seal']['turns'] = 'clockwise') => told({ lipFacing: 'inward', seal: { ...seal, turns }, ...(rotation === undefined ? {} : { rotation }) }, /rotation/u);
    expect(turning(undefined)).toEqual([['rotation-missing', 'unknown', { made: 'clockwise' }]]);
    expect(turning('clockwise')).toEqual([['lip-rotation-right', 'good', { made: 'clockwise' }]]);
    expect(turning('counter-clockwise')).toEqual([['lip-made-for-other-rotation', 'bad', { made: 'clockwise', rotation: 'counter-clockwise' }]]);
    expect(turning('both')).toEqual([['lip-made-for-other-rotation', 'bad', { made: 'clockwise', rotation: 'either way' }]]);
    expect(turning('both', 'either way')).toEqual([]);
    expect(look({ rotation: 'both' }).notChecked).toContain('lip-rotation');
  });
});

describe('fluid and heat', () => {
  // Handbook B23 and its like: NBR works to 100 °C and its rubber stands 125; −40 °C. A lip runs 20 to 50 K hotter, 20 more with a dust lip.
  const heat = (fluidTemperatureC: number, more: Partial<Situation> = {}, running: Situation['running'] = {}) => short({ ...more, running: { fluidTemperatureC, ...running } }, /^(?:temperature|lip-(?:likely|may|within))/u).toSorted((a, b) => b.localeCompare(a));
  test.each([
    [75, ['temperature-within good']], [75.1, ['temperature-within good', 'lip-may-pass-rubber-limit note']], [100, ['temperature-within good', 'lip-may-pass-rubber-limit note']],
    [100.1, ['temperature-over-working-limit bad', 'lip-may-pass-rubber-limit note']], [105, ['temperature-over-working-limit bad', 'lip-may-pass-rubber-limit note']], [105.1, ['temperature-over-working-limit bad', 'lip-likely-over-rubber-limit care']],
  ])('NBR at %d °C: %j', (fluidTemperatureC, expected) => { expect(heat(fluidTemperatureC)).toEqual(expected); });

  test('a dust lip adds its own heat; a shaft at rest makes none', () => {
    expect(heat(55.1, { seal: { ...seal, hasDustLip: true } })).toEqual(['temperature-within good', 'lip-may-pass-rubber-limit note']);
    expect(heat(55, { seal: { ...seal, hasDustLip: true } })).toEqual(['temperature-within good']);
    expect(heat(100, {}, { speedRpm: 0 })).toEqual(['temperature-within good']);
    expect(heat(100, {}, { speedRpm: 1 })).toEqual(['temperature-within good', 'lip-may-pass-rubber-limit note']);
    expect(lipRiseOf(true, false)).toMatchObject({ low: 20, high: 50 });
    expect(lipRiseOf(true, true)).toMatchObject({ low: 40, high: 70 });
    expect(lipRiseOf(false, true)).toMatchObject({ low: 0, high: 0 });
    expect(told({ running: { fluidTemperatureC: 106 } }, /^lip-likely/u)).toEqual([['lip-likely-over-rubber-limit', 'care', { lipMaterial: 'NBR', lipLowC: 126, lipHighC: 156, limitC: 125 }]]);
  });

  test('the limit in a fluid, where it is lower than that of the rubber', () => {
    // NBR in water to 90 °C by DIN 3760's table.
    const water = (fluidTemperatureC: number) => told({ running: { fluid: 'water', fluidTemperatureC, speedRpm: 0 } }, /^temperature/u);
    expect(water(90)).toMatchObject([['temperature-within', 'good', { limitC: 100, fluidTemperatureC: 90 }]]);
    expect(water(90.1)).toMatchObject([['temperature-over-fluid-limit', 'care', { limitC: 90, fluid: 'water', lipMaterial: 'NBR' }]]);
    expect(water(100.1)).toMatchObject([['temperature-over-working-limit', 'bad', { limitC: 100 }]]);
  });

  test('what is not known is asked for, cold only where it is colder than the rubber stands', () => {
    expect(told({}, /^fluid-(?:temperature-)?missing/u)).toEqual([['fluid-missing', 'unknown', { lipMaterial: 'NBR' }], ['fluid-temperature-missing', 'unknown', { lipMaterial: 'NBR' }]]);
    const cold = (coldestC: number) => told({ running: { coldestC } }, /cold/u);
    expect(cold(-40)).toEqual([]);
    expect(cold(-40.1)).toEqual([['too-cold-for-rubber', 'care', { lipMaterial: 'NBR', coldestC: -40.1, limitC: -40 }]]);
    expect(told({ running: { runsDry: true } }, /dry/u)).toEqual([['lip-runs-dry', 'bad', { lipMaterial: 'NBR' }]]);
    expect(told({ seal: { ...seal, lipMaterial: 'PTFE' }, running: { runsDry: true } }, /dry/u)).toEqual([['lip-stands-dry-running', 'good', { lipMaterial: 'PTFE' }]]);
    expect(told({ running: { runsDry: false } }, /dry/u)).toEqual([]);
  });
});

describe('what a lip turns into heat', () => {
  const ask = (more: Partial<Parameters<typeof frictionEstimates>[0]> = {}) => frictionEstimates({ shaftMm: 50, speedRpm: 3000, lipMaterial: 'NBR', ...more });
  const kinds = (more: Partial<Parameters<typeof frictionEstimates>[0]>) => ask(more).map(({ estimate }) => estimate);
  const oil = { fluid: 'gear-oil', fluidTemperatureC: 80, viscosityAt40CMm2PerS: 220 } as const;

  test('each rubber its own torque, another one both; oil and temperature only where all of it is known', () => {
    expect(kinds({})).toEqual(['torque by rubber, nitrile', 'short form']);
    expect(kinds({ lipMaterial: 'FKM' })).toEqual(['torque by rubber, fluoro', 'short form']);
    expect(kinds({ lipMaterial: 'ACM' })).toEqual(['torque by rubber, fluoro', 'torque by rubber, nitrile', 'short form']);
    expect(kinds(oil)).toEqual(['torque by rubber, nitrile', 'short form', 'by oil and temperature']);
    for (const left of ['fluid', 'fluidTemperatureC', 'viscosityAt40CMm2PerS'] as const) expect(kinds({ ...oil, [left]: undefined })).toHaveLength(2);
    for (const fluid of ['grease', 'water', 'petrol-oil-mix'] as const) expect(kinds({ ...oil, fluid })).toHaveLength(2);
    // 145 − 1.6·t + 350·lg lg 220.8 is zero at 171.6 °C.
    expect(kinds({ ...oil, fluidTemperatureC: 171 })).toHaveLength(3);
    expect(kinds({ ...oil, fluidTemperatureC: 172 })).toHaveLength(2);
  });

  test('by hand: 0.002429·50·π·3000/30; 7.69e-6·50²·3000; (145 − 128 + 350·lg lg 220.8)·50²·3000·1e-7', () => {
    expect(ask(oil).map(({ frictionPowerW }) => Number(frictionPowerW.toFixed(3)))).toEqual([Number((0.002429 * 50 * Math.PI * 100).toFixed(3)), Number((7.69e-6 * 2500 * 3000).toFixed(3)), Number(((17 + 350 * Math.log10(Math.log10(220.8))) * 0.75).toFixed(3))]);
    expect(ask(oil).map(({ scope }) => Object.keys(scope))).toEqual([['k', 'd', 'n'], ['k', 'd', 'n'], ['t', 'nu', 'd', 'n']]);
  });
});

test('limits of speed: 8 000 rpm on shafts up to 35 mm, 15 m/s on thicker ones', () => {
  expect(generalLimitOf(20).speedMaxMps).toBeCloseTo((Math.PI * 20 * 8000) / 60_000, 9);
  expect(generalLimitOf(35).speedMaxMps).toBeCloseTo((Math.PI * 35 * 8000) / 60_000, 9);
  expect(generalLimitOf(35.1).speedMaxMps).toBe(15);
  expect(strictestLimitOf('no such rubber', 20)).toBeNull();
});

test('a limit of the rubber and the general one: within both, over one, over both', () => {
  const at = (speedRpm: number, lipMaterial: Situation['seal']['lipMaterial'], shaftMm = 20) => short({ seal: { ...seal, shaftMm, outsideMm: shaftMm + 15, lipMaterial }, running: { speedRpm } }, /^(?:lip-speed|speed)/u);
  expect(told({}, /^speed-missing/u)).toEqual([['speed-missing', 'unknown', {}]]);
  expect(at(0, 'NBR')).toEqual(['lip-speed-within good']);
  const own = strictestLimitOf('NBR', 20)?.speedMaxMps ?? NaN;
  const rpmAt = (mps: number) => (mps * 60_000) / (Math.PI * 20);
  const general = generalLimitOf(20).speedMaxMps;
  expect(own).toBeGreaterThan(general);
  expect(at(rpmAt(general) - 0.01, 'NBR')).toEqual(['lip-speed-within good']);
  expect(at(rpmAt(general) + 0.01, 'NBR')).toEqual(['lip-speed-over-general care']);
  expect(at(rpmAt(own) - 0.01, 'NBR')).toEqual(['lip-speed-over-general care']);
  expect(at(rpmAt(own) + 0.01, 'NBR')).toEqual(['lip-speed-over bad']);
});

test('speed and way of the lip, with their working', () => {
  const input = { shaftDiameterMm: 20, speedRpm: 3000, hours: 100 };
  const output = lipSpeed.run(input);
  expect(output.peripheralSpeedMps).toBeCloseTo(Math.PI, 9);
  // π m/s for 360 000 s.
  expect(output.lipTravelKm).toBeCloseTo(Math.PI * 360, 9);
  const steps = lipSpeed.explain(input, output);
  expectWorkingHolds(steps);
  expect(steps).toMatchObject([{ symbol: 'v', scope: { d: 20, n: 3000 } }, { symbol: 's', scope: { t: 100, v: output.peripheralSpeedMps }, value: output.lipTravelKm }]);
  const still = lipSpeed.run({ shaftDiameterMm: 20, speedRpm: 3000 });
  expect(still).not.toHaveProperty('lipTravelKm');
  expect(lipSpeed.explain({ shaftDiameterMm: 20, speedRpm: 3000 }, still).map(({ symbol }) => symbol)).toEqual(['v']);
});

describe('tables that end', () => {
  test('width: ± 0.3 and 0.4 mm by ISO, 0.2 and 0.3 by DIN, 0.015 in by RMA; rows include their upper end', () => {
    const of = (set: Parameters<typeof widthToleranceOf>[0], widthMm: number) => { const { toleranceMm, source } = widthToleranceOf(set, widthMm); return [Number(toleranceMm.toFixed(6)), source.id]; };
    expect([of('iso-6194-1', 10), of('iso-6194-1', 10.01), of('iso-6194-1', 400)]).toEqual([[0.3, 'gb-13871-1992'], [0.4, 'gb-13871-1992'], [0.4, 'gb-13871-1992']]);
    expect([of('din-3760', 10), of('din-3760', 10.01), of('rma-metric', 10), of('rma-metric', 12)]).toEqual([[0.2, 'din-3760-1996'], [0.3, 'din-3760-1996'], [0.2, 'din-3760-1996'], [0.3, 'din-3760-1996']]);
    expect([of('rma-inch', 8), of('rma-inch', 406.4)]).toEqual([[0.381, 'rma-os-4'], [0.381, 'rma-os-4']]);
    expect(refused(() => of('iso-6194-1', 400.1))).toMatchObject({ code: 'outside-table', path: 'seal.widthMm', allowed: 'over 0, up to and including 400 mm' });
    expect(refused(() => of('rma-inch', 406.5))).toMatchObject({ code: 'outside-table', allowed: 'over 0, up to and including 406.4 mm' });
  });

  test('allowance: rows include their upper end; where ISO ends DIN answers, and beyond all the end is named', () => {
    const of = (set: Parameters<typeof pressFitAllowanceOf>[0], construction: Parameters<typeof pressFitAllowanceOf>[1], boreMm: number) => { const { allowanceMinMm, allowanceMaxMm, set: by } = pressFitAllowanceOf(set, construction, boreMm); return [allowanceMinMm, allowanceMaxMm, by]; };
    expect([of('iso-6194-1', 'metal-case', 50), of('iso-6194-1', 'metal-case', 50.01), of('iso-6194-1', 'half-rubber', 50)]).toEqual([[0.08, 0.2, 'iso-6194-1'], [0.09, 0.23, 'iso-6194-1'], [0.08, 0.2, 'iso-6194-1']]);
    // ISO gives no ribbed row below 80 mm.
    expect(of('iso-6194-1', 'rubber-covered-ribbed', 50)[2]).toBe('din-3760');
    expect(of('din-3760', 'rubber-covered-ribbed', 50)[2]).toBe('din-3760');
    expect(refused(() => of('iso-6194-1', 'metal-case', 500.1))).toMatchObject({ code: 'outside-table', path: 'seal.outsideMm', received: 500.1, allowed: 'over 0, up to and including 500 mm' });
    expect(refused(() => of('rma-metric', 'metal-case', 400.1))).toMatchObject({ allowed: 'over 0, up to and including 400 mm' });
    expect(refused(() => of('rma-metric', 'rubber-covered-ribbed', 50)).code).toBe('outside-table');
    expect(of('rma-metric', 'metal-case', 400)[2]).toBe('rma-metric');
    expect(pressFitAllowanceOf('iso-6194-1', 'metal-case', 480).source).toMatchObject({ id: 'iso-6194-1-2007', held: 'memory' });
    expect(pressFitAllowanceOf('iso-6194-1', 'metal-case', 35).source).toMatchObject({ id: 'gb-13871-1992', held: 'page' });
    expect(pressFitAllowanceOf('din-3760', 'metal-case', 35).source).toMatchObject({ id: 'din-3760-1996', held: 'page' });
  });

  test('standard sizes: lists that hold one, and other shafts for the same outside, in order', () => {
    expect(standardListsOf({ shaftMm: 20, outsideMm: 35, widthMm: 7 })).toEqual(['din-3760', 'iso-6194-1']);
    for (const off of [{ shaftMm: 21 }, { outsideMm: 36 }, { widthMm: 7.5 }]) expect(standardListsOf({ shaftMm: 20, outsideMm: 35, widthMm: 7, ...off })).toEqual([]);
    const [larger, smaller] = [largerSealShaftsMm({ shaftMm: 20, outsideMm: 35 }), smallerSealShaftsMm({ shaftMm: 20, outsideMm: 35 })];
    expect(larger).toEqual(larger.toSorted((a, b) => a - b));
    expect(smaller).toEqual(smaller.toSorted((a, b) => b - a));
    expect(Math.min(...larger)).toBeGreaterThan(20);
    expect(Math.max(...smaller)).toBeLessThan(20);
    expect(larger).toContain(22);
    expect(smaller).toContain(18);
    expect(new Set([...larger, ...smaller]).size).toBe(larger.length + smaller.length);
    expect([nearestStandardMm('shaftMm', 20.2), nearestStandardMm('shaftMm', 19.7), nearestStandardMm('outsideMm', 35.3)]).toEqual([20, 20, 35]);
  });
});

describe('hot and pushed', () => {
  /** A housing that grows 20 to 24e-6, its probable value in the middle; the case is of the table's sheet steel. */
  const alloy = { id: 'any-alloy', youngsModulusGpa: 70, poissonRatio: 0.33, expansionMinPerK: 20e-6, expansionMaxPerK: 24e-6 };
  const fine = { id: 'fine', measures: 'inside', resolutionMm: 1e-6, permissibleErrorMm: 1e-6 } as const;
  const place: Partial<Situation> = { instruments: [fine], materials: [alloy], bore: { material: 'any-alloy', readings: [{ instrument: 'fine', valuesMm: [35.01] }] } };
  const output = look({ ...place, running: { housingTemperatureC: 60 } });

  test('the hold is gone where growth of housing over case has eaten what springs: least over fastest, most over slowest, middle over probable', () => {
    const { low = NaN, high = NaN } = output.heldUm ?? {};
    const { earliest = NaN, probable = NaN, latest = NaN } = output.looseFromC ?? {};
    // Rates from the numbers of the sheet themselves: 35 mm · (20 − most, 24 − least of steel).
    const [slow, fast] = [high / (latest - 20), low / (earliest - 20)];
    expect(fast - slow).toBeGreaterThan(35e3 * 4e-6);
    expect(probable).toBeCloseTo(20 + (low + high) / 2 / ((slow + fast) / 2), 6);
    const verdict = told({ ...place, running: { housingTemperatureC: 60 } }, /^case-/u)[0];
    expect(verdict).toMatchObject([expect.any(String), expect.any(String), { heldLowUm: low, heldHighUm: high, earliestC: earliest, probableC: probable, latestC: latest, housingTemperatureC: 60 }]);
    expect(Number((verdict?.[2] as Record<string, unknown>)['remainingLowUm'])).toBeCloseTo(Math.max(0, low - fast * 40), 6);
    expect(Number((verdict?.[2] as Record<string, unknown>)['remainingHighUm'])).toBeCloseTo(high - slow * 40, 6);
  });

  test.each(['gjl250', 'steel-c45'])('a steel case in %s: heat does not loosen it', (material) => {
    const found = look({ ...place, bore: { ...place.bore, material }, running: { housingTemperatureC: 150 } });
    expect(found.looseFromC).toBeNull();
    expect(found.findings.map(({ code }) => code)).toContain('heat-does-not-loosen');
  });

  test('a housing that may grow no more than the case, in part or probably, does not let go for sure: no temperature is named', () => {
    const grows = (expansionMinPerK: number, expansionMaxPerK: number) => look({ ...place, materials: [{ ...alloy, expansionMinPerK, expansionMaxPerK }] }).looseFromC;
    expect(grows(5e-6, 40e-6)).toBeNull();
    expect(grows(5e-6, 8e-6)).toBeNull();
    expect(grows(20e-6, 24e-6)).not.toBeNull();
  });

  test('what pushes it out is the highest pressure on the ring between shaft and bore; nothing where something else holds it', () => {
    const push = (more: Partial<Situation>, running: Situation['running'] = { pressureMpa: 0.02 }) => told({ ...place, bore: { ...place.bore, material: 'gjl250' }, running, ...more }, /push/u);
    const forceN = (0.02 * Math.PI * (35 ** 2 - 20 ** 2)) / 4;
    expect(push({})).toMatchObject([['pressure-does-not-push-out', 'good', { peakMpa: 0.02, forceN: expect.closeTo(forceN, 9) as number }]]);
    expect(push({}, { pressureLowMpa: -0.03, pressureHighMpa: 0.02 })).toMatchObject([['pressure-does-not-push-out', 'good', { peakMpa: 0.02 }]]);
    expect(push({}, { pressureMpa: -0.02 })).toEqual([]);
    expect(push({}, {})).toEqual([]);
    for (const retainedBy of ['circlip', 'plate', 'staking'] as const) expect(push({ retainedBy })).toEqual([]);
    expect(push({ retainedBy: 'nothing' })).toHaveLength(1);
    // A fluid outside pushes it inward: a shoulder there takes it, an open bore does not.
    expect(push({ fluidSide: 'outside', bore: { ...place.bore, material: 'gjl250', innerEnd: 'shoulder' } })).toEqual([]);
    expect(push({ fluidSide: 'outside', bore: { ...place.bore, material: 'gjl250', innerEnd: 'open' } })).toHaveLength(1);
    expect(push({ fluidSide: 'inside', bore: { ...place.bore, material: 'gjl250', innerEnd: 'shoulder' } })).toHaveLength(1);
    // Just what friction holds at its low end, and at its high one.
    const { holdLowN, holdHighN } = push({})[0]?.[2] as { readonly holdLowN: number; readonly holdHighN: number };
    const pressure = (newtons: number) => (0.02 * newtons) / forceN;
    expect(push({}, { pressureMpa: pressure(holdLowN) * 0.9999 })[0]?.slice(0, 2)).toEqual(['pressure-does-not-push-out', 'good']);
    expect(push({}, { pressureMpa: pressure(holdLowN) * 1.0001 })[0]?.slice(0, 2)).toEqual(['pressure-may-push-out', 'care']);
    expect(push({}, { pressureMpa: pressure(holdHighN) * 0.9999 })[0]?.slice(0, 2)).toEqual(['pressure-may-push-out', 'care']);
    expect(push({}, { pressureMpa: pressure(holdHighN) * 1.0001 })[0]?.slice(0, 2)).toEqual(['pressure-pushes-out', 'bad']);
    // Not measured: no hold is known.
    expect(look({ running: { pressureMpa: 0.02 } }).notChecked).toContain('pushed-out-by-pressure');
    // Hot it holds by the share that is left of what springs, at either end.
    const hot = told({ ...place, running: { pressureMpa: 0.02, housingTemperatureC: 60 } }, /push/u)[0]?.[2] as { readonly holdLowN: number; readonly holdHighN: number };
    const left = told({ ...place, running: { housingTemperatureC: 60 } }, /^case-/u)[0]?.[2] as Record<string, number>;
    const cold = told({ ...place, running: { pressureMpa: 0.02, housingTemperatureC: 20 } }, /push/u)[0]?.[2] as { readonly holdLowN: number; readonly holdHighN: number };
    expect(hot.holdLowN).toBeCloseTo((cold.holdLowN * (left['remainingLowUm'] ?? NaN)) / (left['heldLowUm'] ?? NaN), 6);
    expect(hot.holdHighN).toBeCloseTo((cold.holdHighN * (left['remainingHighUm'] ?? NaN)) / (left['heldHighUm'] ?? NaN), 6);
  });
});

test('inch sizes are told from metric ones, and by which set they are judged', () => {
  const inch = (shaftMm: number | string, outsideMm: number | string, requirementSet?: string) =>
    sealCheck.run({ seal: { shaftMm, outsideMm, widthMm: 6.35, construction: 'metal-case', lipMaterial: 'NBR' }, ...(requirementSet === undefined ? {} : { requirementSet }) }).findings.find(({ code }) => code === 'sizes-are-inch');
  expect(inch('5/8 in', '1 1/8 in')?.parameters).toEqual({ shaftInches: '5/8 in', outsideInches: '1 1/8 in', set: 'iso-6194-1' });
  // As typed from a rule, to half a tenth.
  expect(inch(15.9, 28.6)).toMatchObject({ severity: 'note', role: 'supporting' });
  expect(inch('1 in', 'ø 38.1', 'din-3760')?.parameters['set']).toBe('din-3760');
  expect(inch('1 3/32 in', '2 in')?.parameters['shaftInches']).toBe('1 3/32 in');
  // 25.4 mm by 40 mm is neither; 35 mm by 52 mm is metric although 52.39 mm is an inch size near by.
  for (const [shaft, outside] of [['1 in', 40], [35, 52], [20, 35], ['1 3/64 in', '2 in'], [30.2, 47]] as const) expect(inch(shaft, outside)).toBeUndefined();
  expect(inch('5/8 in', '1 1/8 in', 'rma-inch')).toBeUndefined();
  // 127 mm is five inches, and 152.4 mm six: one of the two decides. 63.5 mm by 88.9 mm could be either, and is named.
  expect(inch(127, 152.4)).toBeDefined();
  expect(inch(127, 254)).toBeUndefined();
});
