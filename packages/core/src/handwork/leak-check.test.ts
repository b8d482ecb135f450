import { describe, expect, test } from 'vitest';
import { expectWorkingHolds } from '../../../../tests/laws/internal/evaluate-working.js';
import { standingPressureLimit } from '../seal/index.js';
import { leakCheck, type LeakCheckInput } from './leak-check.js';

/*
 * By hand: 300 cm³ lose 10 000 Pa in 300 s at 20 °C: Q = 300·10⁻⁶ · 10 000/300 = 0.01 Pa·m³/s = 0.01/101 325 · 60·10⁶ = 5.92 mL/min.
 * Gauge ± 1600 Pa, temperature ± 0.5 K, volume ± 10 %, each spread evenly (divided by √3); expanded with k = 2 (GUM).
 */
const usual: LeakCheckInput = { volumeCm3: 300, startPressureMpa: 0.05, endPressureMpa: 0.04, holdHours: 1 / 12 };
const look = (more: Partial<LeakCheckInput> = {}) => leakCheck.compute({ ...usual, ...more });
const told = (more: Partial<LeakCheckInput> = {}) => look(more).findings.map(({ code, severity, missing }) => [code, severity, ...(missing === undefined ? [] : [missing])].join(' '));
const perMl = 101_325 / 60e6;
const byHold = 2 * Math.hypot((1e-6 * 1600) / Math.sqrt(3), (1e-6 * 1600) / Math.sqrt(3), (1e-6 * 151_325 * 0.5) / Math.sqrt(3) / 293.15, (1e-6 * 141_325 * 0.5) / Math.sqrt(3) / 293.15);
const byVolume = (2 * 0.01 * 0.1) / Math.sqrt(3);
const uncertainty = Math.hypot(byHold, byVolume) / perMl;
const leak = 0.01 / perMl;

describe('the leak', () => {
  test('from the fall of pressure, with its uncertainty', () => {
    const output = look();
    expect(output.leakPaM3PerS).toBeCloseTo(0.01, 12);
    expect(output.leakMlPerMin).toBeCloseTo(leak, 9);
    expect(output.leakUncertaintyMlPerMin).toBeCloseTo(uncertainty, 9);
    expect(output.pressureByHeatMpa).toBe(0);
  });

  test('a reading step, a better gauge, a known volume and a known temperature count', () => {
    const of = (more: Partial<LeakCheckInput>) => look(more).leakUncertaintyMlPerMin * perMl;
    const heat = [(1e-6 * 151_325) / 293.15, (1e-6 * 141_325) / 293.15];
    expect(of({ gaugeErrorMpa: 0.0001, temperatureErrorK: 1, volumeErrorPercent: 0 })).toBeCloseTo(2 * Math.hypot((1e-6 * 100) / Math.sqrt(3), (1e-6 * 100) / Math.sqrt(3), ...heat.map((one) => one / Math.sqrt(3))), 12);
    // Half a step on either side.
    const withStep = Math.hypot(1600, 1000) / Math.sqrt(3);
    expect(of({ gaugeStepMpa: 0.002, volumeErrorPercent: 0 })).toBeCloseTo(2 * Math.hypot(1e-6 * withStep, 1e-6 * withStep, ...heat.map((one) => (one * 0.5) / Math.sqrt(3))), 12);
  });

  test('heat makes pressure of its own, which is no leak', () => {
    const warmed = { startTemperatureC: 20, endTemperatureC: 30, endPressureMpa: (151_325 * 303.15) / 293.15 / 1e6 - 0.101325 };
    expect(look(warmed).leakMlPerMin).toBeCloseTo(0, 6);
    expect(look(warmed).pressureByHeatMpa).toBeCloseTo((151_325 * 10) / 293.15 / 1e6, 12);
    expect(look({ startTemperatureC: 30, endTemperatureC: 30 }).leakPaM3PerS).toBeCloseTo((0.01 * 293.15) / 303.15, 12);
  });

  test('under suction it is what comes in', () => {
    const output = look({ startPressureMpa: -0.05, endPressureMpa: -0.04 });
    expect(output.leakMlPerMin).toBeCloseTo(leak, 9);
    expect(output.cautions).toEqual(['test-pressure-low', 'blanks-fly', 'no-oxygen', 'suction-turns-lips', 'machine-cannot-start']);
    expect(look().cautions).toEqual(['test-pressure-low', 'blanks-fly', 'no-oxygen', 'machine-cannot-start']);
  });
});

describe('one hole that leaks as much', () => {
  const gamma = 1.4;
  const holeMm = (flowPaM3: number, upPa: number, ratio: number, discharge: number) => {
    const speed = Math.sqrt(((2 * gamma) / ((gamma - 1) * 287.05 * 293.15)) * (ratio ** (2 / gamma) - ratio ** ((gamma + 1) / gamma)));
    return 1000 * Math.sqrt((4 * (flowPaM3 / (287.05 * 293.15))) / (Math.PI * discharge * upPa * speed));
  };

  test('by the flow of air through an orifice, sharp or rounded', () => {
    const { equivalentHoleMm } = look();
    const ratio = 101_325 / 146_325;
    expect(equivalentHoleMm?.high).toBeCloseTo(holeMm(0.01, 146_325, ratio, 0.6), 9);
    expect(equivalentHoleMm?.low).toBeCloseTo(holeMm(0.01, 146_325, ratio, 0.85), 9);
  });

  test('in thin air the same leak asks for a larger hole', () => {
    const { equivalentHoleMm } = look({ airPressureMpa: 0.08 });
    expect(equivalentHoleMm?.high).toBeCloseTo(holeMm(0.01, 125_000, 80 / 125, 0.6), 9);
    expect(Number(equivalentHoleMm?.high)).toBeGreaterThan(Number(look().equivalentHoleMm?.high));
    expect(look({ airPressureMpa: 0.101325 }).equivalentHoleMm).toEqual(look().equivalentHoleMm);
  });

  test('at the speed of sound no more comes through', () => {
    // 0.2 MPa over air: 0.336 is below the critical (2/2.4)^3.5 = 0.528.
    const { equivalentHoleMm } = look({ startPressureMpa: 0.205, endPressureMpa: 0.195 });
    expect(equivalentHoleMm?.high).toBeCloseTo(holeMm(0.01, 301_325, (2 / 2.4) ** 3.5, 0.6), 9);
  });

  test('none where nothing leaks', () => {
    expect(look({ endPressureMpa: 0.05 }).equivalentHoleMm).toBeNull();
    expect(look({ endPressureMpa: 0.06 }).equivalentHoleMm).toBeNull();
  });
});

describe('against a limit', () => {
  test('none given: nothing is judged, and it is asked for', () => {
    expect(told()).toEqual(['leak-limit-not-given unknown limitDropMpa', 'leak-is-real care']);
    expect(look()).toMatchObject({ verdict: 'cannot tell', limitMlPerMin: null, holdToDecideHours: null });
    expect(Object.keys(look().findings[0]?.parameters ?? {})).toEqual(['leakMlPerMin', 'uncertaintyMlPerMin']);
  });

  test('a permitted fall of pressure stands for a leak', () => {
    expect(look({ limitDropMpa: 0.02 }).limitMlPerMin).toBeCloseTo(2 * leak, 9);
    expect(look({ limitDropMpa: 0.02, startTemperatureC: 30, endTemperatureC: 30 }).limitMlPerMin).toBeCloseTo((2 * leak * 293.15) / 303.15, 9);
    expect(look({ limitMlPerMin: 3 }).limitMlPerMin).toBe(3);
  });

  test.each([
    [leak + uncertainty + 1e-6, 'holds-air good'],
    [leak + uncertainty - 1e-6, 'leak-cannot-tell unknown holdHours'],
    [leak - uncertainty - 1e-6, 'leaks-air bad'],
    [leak - uncertainty + 1e-6, 'leak-cannot-tell unknown holdHours'],
    [leak, 'leak-too-near-limit unknown gaugeErrorMpa'],
  ])('a limit of %d mL/min: %s', (limitMlPerMin, expected) => {
    expect(told({ limitMlPerMin })[0]).toBe(expected);
    expect(look({ limitMlPerMin }).findings[0]?.parameters['limitMlPerMin']).toBe(limitMlPerMin);
  });

  test('how long to wait: what gauge and temperature spoil grows less, what the volume spoils does not', () => {
    const of = (apartPaM3: number) => look({ limitMlPerMin: leak + apartPaM3 / perMl }).holdToDecideHours;
    const apart = Math.hypot(byVolume, byHold / 2);
    expect(of(apart)).toBeCloseTo((1 / 12) * 2, 6);
    // Five times as long all the pressure is gone: 15 of 3 Pa·m³ a hold.
    expect(of(Math.hypot(byVolume, byHold / 4.99))).toBeCloseTo(4.99 / 12, 4);
    expect(of(Math.hypot(byVolume, byHold / 5.01))).toBeNull();
    expect(of(byVolume * 0.999)).toBeNull();
    expect(of((uncertainty + 0.001) * perMl)).toBeNull();
  });

  test('a leak that is one is told, as care only where it is over the limit', () => {
    expect(told({ limitMlPerMin: 100 })).toEqual(['holds-air good', 'leak-is-real note']);
    expect(told({ limitMlPerMin: 1 })).toEqual(['leaks-air bad', 'leak-is-real care']);
    expect(told({ limitMlPerMin: 100, endPressureMpa: 0.05 })).toEqual(['holds-air good']);
    expect(told({ limitMlPerMin: 100, endPressureMpa: 0.06 })).toEqual(['holds-air good', 'leak-below-nothing care']);
  });

  test('more than a lip stands is told of', () => {
    const { pressureMaxMpa } = standingPressureLimit();
    expect(told({ startPressureMpa: pressureMaxMpa, endPressureMpa: pressureMaxMpa }).join()).not.toContain('test-pressure-over-lip');
    for (const startPressureMpa of [pressureMaxMpa + 0.001, -pressureMaxMpa - 0.001]) {
      const finding = look({ startPressureMpa, endPressureMpa: startPressureMpa }).findings.find(({ code }) => code === 'test-pressure-over-lip');
      expect(finding).toMatchObject({ severity: 'care', parameters: { testMpa: Math.abs(startPressureMpa), limitMpa: pressureMaxMpa } });
    }
  });
});

describe('what stands behind it', () => {
  test('the working', () => {
    const working = (more: Partial<LeakCheckInput>) => {
      const steps = leakCheck.explain({ ...usual, ...more }, look(more));
      expectWorkingHolds(steps);
      return steps.map(({ symbol }) => symbol).join(' ');
    };
    expect(working({})).toBe('Q q d');
    expect(working({ startPressureMpa: -0.05, endPressureMpa: -0.04 })).toBe('Q q d');
    expect(working({ startPressureMpa: 0.205, endPressureMpa: 0.195, startTemperatureC: 25, endTemperatureC: 26 })).toBe('Q q d');
    expect(working({ endPressureMpa: 0.06 })).toBe('Q q');
  });

  test('what was taken for granted, and what was not looked at', () => {
    const assumed = (more: Partial<LeakCheckInput>) => look(more).assumptions.map(({ name, value }) => `${name} ${value}`);
    expect(assumed({})).toEqual(['discharge-of-hole 0.6', 'air-pressure-normal 0.101325', 'gauge-error 0.0016', 'volume-error 10', 'temperature-error 0.5', 'temperature-steady 20']);
    expect(assumed({ airPressureMpa: 0.1, gaugeErrorMpa: 0.001, volumeErrorPercent: 5, temperatureErrorK: 1, startTemperatureC: 20, endTemperatureC: 20 })).toEqual(['discharge-of-hole 0.6']);
    expect(look().notChecked).toEqual(['gauge-was-checked', 'what-expands-under-test', 'gauge-step', 'temperature-during-hold']);
    expect(look({ gaugeStepMpa: 0.001, startTemperatureC: 20, endTemperatureC: 20 }).notChecked).toEqual(['gauge-was-checked', 'what-expands-under-test']);
  });

  test('readings must go together', () => {
    for (const [startPressureMpa, endPressureMpa] of [[0, 0], [0.05, -0.01], [-0.05, 0.01]] as const) expect(() => leakCheck.run({ ...usual, startPressureMpa, endPressureMpa })).toThrow(/startPressureMpa/);
    expect(leakCheck.run({ ...usual, endPressureMpa: 0 }).leakMlPerMin).toBeCloseTo(5 * leak, 9);
    expect(() => leakCheck.run({ ...usual, startTemperatureC: 20 })).toThrow(/endTemperatureC/);
    expect(() => leakCheck.run({ ...usual, endTemperatureC: 20 })).toThrow(/endTemperatureC/);
    expect(() => leakCheck.run({ ...usual, limitDropMpa: 0.01, limitMlPerMin: 1 })).toThrow(/limitMlPerMin/);
  });
});
