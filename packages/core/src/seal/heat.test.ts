import { describe, expect, test } from 'vitest';
import { expectWorkingHolds } from '../../../../tests/laws/internal/evaluate-working.js';
import { lipHeat } from './lip-heat.js';
import { lipMaterialsFor } from './lip-materials.js';
import { sealCheck } from './seal-check.js';
import type { Situation } from './situation-field.js';

const seal: Situation['seal'] = { shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' };
const bore = { readings: [{ instrument: 'inside-micrometer-rod', valuesMm: [35.012, 35.015, 35.01] }], material: 'al-a380' };
const look = (more: Partial<Situation>) => sealCheck.compute({ seal, bore, ...more });
const hot = (more: Partial<Situation>) =>
  look(more).findings.filter(({ code }) => /loose|holds-hot|heat|housing-(?:material|temperature)|outside-holds-hot/.test(code) && !/^outside/.test(code)).map(({ code, severity }) => `${code} ${severity}`);

describe('a metal case in a hot housing', () => {
  const loose = look({}).looseFromC;
  const at = (housingTemperatureC: number, more: Partial<Situation> = {}) => hot({ running: { housingTemperatureC }, ...more });

  test('the hold goes somewhere between two temperatures, and the verdict turns at each of them', () => {
    const { earliest = 0, probable = 0, latest = 0 } = loose ?? {};
    expect(earliest).toBeGreaterThan(20);
    expect(probable).toBeGreaterThan(earliest);
    expect(latest).toBeGreaterThan(probable);
    expect(at(earliest - 0.1)).toEqual(['case-holds-hot good']);
    expect(at(earliest + 0.1)).toEqual(['case-may-loosen-hot care']);
    expect(at(latest - 0.1)).toEqual(['case-may-loosen-hot care']);
    expect(at(latest + 0.1)).toEqual(['case-loose-hot bad']);
  });

  test.each(['circlip', 'plate', 'staking'] as const)('kept by a %s it may be loose, with care', (retainedBy) => {
    expect(at((loose?.latest ?? 0) + 1, { retainedBy })).toEqual(['case-loose-hot-but-retained care']);
    expect(at((loose?.earliest ?? 0) + 1, { retainedBy })).toEqual(['case-loose-hot-but-retained care']);
    expect(at((loose?.earliest ?? 0) - 1, { retainedBy })).toEqual(['case-holds-hot good']);
  });

  test('what is kept by nothing is not kept', () => {
    expect(at((loose?.latest ?? 0) + 1, { retainedBy: 'nothing' })).toEqual(['case-loose-hot bad']);
  });

  test('the fluid stands in for a housing that was not measured, and that is said', () => {
    const byFluid = look({ running: { fluidTemperatureC: 60 } });
    expect(byFluid.assumptions.find(({ name }) => name === 'housing-temperature')).toMatchObject({ value: 60, unit: '°C', effect: 'hold-when-hot' });
    expect(look({ running: { fluidTemperatureC: 60, housingTemperatureC: 60 } }).assumptions.map(({ name }) => name)).not.toContain('housing-temperature');
    expect(hot({})).toEqual(['housing-temperature-missing unknown']);
    expect(hot({ running: { speedRpm: 100 } })).toEqual(['housing-temperature-missing unknown']);
  });

  test('without its material nothing can be said; cast iron lets nothing go', () => {
    const { material: _material, ...unknown } = bore;
    expect(hot({ bore: unknown, running: { housingTemperatureC: 90 } })).toEqual(['housing-material-missing unknown']);
    expect(look({ bore: unknown }).findings.find(({ code }) => code === 'housing-material-missing')?.missing).toBe('bore.material');
    expect(hot({ bore: { ...bore, material: 'gjl250' }, running: { housingTemperatureC: 90 } })).toEqual(['heat-does-not-loosen good']);
  });

  test('where there is no interference cold there is nothing to lose hot', () => {
    expect(hot({ bore: { ...bore, readings: [{ instrument: 'inside-micrometer-rod', valuesMm: [35.45] }] }, running: { housingTemperatureC: 90 } })).toEqual([]);
  });

  test('a rubber cover follows the housing, and what it does not tell is left open', () => {
    const rubber = { seal: { ...seal, construction: 'rubber-covered' as const }, running: { housingTemperatureC: 120 } };
    expect(hot(rubber)).toEqual(['rubber-cover-follows-heat good']);
    expect(look(rubber).notChecked).toEqual(expect.arrayContaining(['housing-stiffness', 'rubber-cover-force', 'rubber-cover-set']));
    expect(look({ bore: { ...bore, housingOutsideMm: 60 }, running: { housingTemperatureC: 60 } }).notChecked).not.toContain('housing-stiffness');
  });
});

describe('which rubber would do', () => {
  const ask = (running: Situation['running']) => lipMaterialsFor.compute({ seal, running });
  test('the one that was given comes first among equals; then the one that stays furthest below its limit', () => {
    const { rubbers } = ask({ fluid: 'engine-oil', fluidTemperatureC: 60, speedRpm: 1000 });
    const suits = rubbers.filter(({ verdict }) => verdict === 'suits');
    expect(suits[0]).toMatchObject({ lipMaterial: 'NBR', isTheOneGiven: true });
    const margins = suits.slice(1).map(({ temperatureMarginK }) => temperatureMarginK ?? -Infinity);
    expect(margins).toEqual(margins.toSorted((a, b) => b - a));
    const order = ['suits', 'suits with care', 'cannot tell', 'does not suit'];
    const verdicts = rubbers.map(({ verdict }) => order.indexOf(verdict));
    expect(verdicts).toEqual(verdicts.toSorted((a, b) => a - b));
  });

  test('margins are what is left to the limits', () => {
    const given = ask({ fluid: 'engine-oil', fluidTemperatureC: 60, speedRpm: 3000 }).rubbers.find(({ isTheOneGiven }) => isTheOneGiven);
    // π·20·3000/60 000 = 3.1416 m/s of 14; NBR works to 100 °C.
    expect(given?.speedMarginMps).toBeCloseTo(14 - Math.PI, 9);
    expect(given?.temperatureMarginK).toBe(40);
    const cold = ask({ fluid: 'engine-oil' }).rubbers.find(({ isTheOneGiven }) => isTheOneGiven);
    expect(cold).toMatchObject({ temperatureMarginK: null, speedMarginMps: null });
    expect(lipMaterialsFor.compute({ seal }).notChecked).toEqual(['price-and-stock', 'lip-heat-by-speed']);
  });

  test('the working tells each margin, and none without a temperature', () => {
    const input = { seal, running: { fluid: 'engine-oil' as const, fluidTemperatureC: 60, speedRpm: 1000 } };
    const output = lipMaterialsFor.compute(input);
    const steps = lipMaterialsFor.explain(input, output);
    expectWorkingHolds(steps);
    expect(steps.map(({ symbol }) => symbol)).toEqual(output.rubbers.filter(({ temperatureMarginK }) => temperatureMarginK !== null).map(({ lipMaterial }) => `m_${lipMaterial}`));
    expect(lipMaterialsFor.explain({ seal }, lipMaterialsFor.compute({ seal }))).toEqual([]);
  });
});

describe('the heat of the lip', () => {
  // Lip hotter than the fluid by 20 to 50 K (selection article 2018).
  const asked = { shaftDiameterMm: 20, speedRpm: 3000, lipMaterial: 'NBR', fluidTemperatureC: 60 } as const;
  test('turning, it is hotter than the fluid and makes power; standing, it does neither', () => {
    const turning = lipHeat.compute(asked);
    expect(turning.lipTemperatureC).toEqual({ low: 80, high: 110 });
    expect(turning.findings.map(({ code }) => code)).toContain('lip-makes-heat');
    expect(turning.assumptions).toMatchObject([{ name: 'lip-hotter-than-fluid', value: 20, upToValue: 50, unit: 'K' }]);
    expect(turning.notChecked).toEqual(['lip-heat-by-speed', 'running-in']);
    const standing = lipHeat.compute({ ...asked, speedRpm: 0 });
    expect(standing.lipTemperatureC).toEqual({ low: 60, high: 60 });
    expect(standing.frictionTorqueNm).toEqual({ low: 0, high: 0 });
    expect(standing.findings.map(({ code }) => code)).not.toContain('lip-makes-heat');
  });

  test('a dust lip adds its own heat', () => {
    expect(lipHeat.compute({ ...asked, hasDustLip: true }).lipTemperatureC.low).toBeGreaterThan(80);
  });

  test('the working counts the estimates and both temperatures', () => {
    for (const input of [asked, { ...asked, hasDustLip: true }, { ...asked, speedRpm: 0 }]) {
      const output = lipHeat.compute(input);
      const steps = lipHeat.explain(input, output);
      expectWorkingHolds(steps);
      expect(steps.map(({ symbol }) => symbol)).toEqual([...output.estimates.map((_, i) => `P_${i + 1}`), 't_1', 't_2']);
    }
  });
});
