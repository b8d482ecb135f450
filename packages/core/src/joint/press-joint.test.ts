import { describe, expect, test } from 'vitest';
import { expectWorkingHolds } from '../../../../tests/laws/internal/evaluate-working.js';
import { pressJoint, type PressJointInput } from './press-joint.js';

/*
 * By hand: solid shaft and hub of one material, d = 40, D = 80, 40 long: U = 2·d·p/(E·(1 − (d/D)²)), 0.50794 µm for each MPa.
 * At the bore of the hub: hoop stress p·(D² + d²)/(D² − d²) = 5/3·p, von Mises p·√(3·D⁴ + d⁴)/(D² − d²) = 7/3·p. The shaft bears p all round.
 * The hub begins to flow (Tresca) at p = R/2·(1 − (d/D)²) = 112.5 MPa for R = 300, and flows through at R·ln(D/d) = 207.9.
 */
const elastic = { youngsModulusGpa: 210, poissonRatio: 0.3, expansionPerK: 11e-6 };
const steel = { id: 'winch-steel', youngsModulusGpa: 210, poissonRatio: 0.3, expansionMinPerK: 11e-6, expansionMaxPerK: 11e-6, yieldMpa: 300, densityKgPerM3: 7850 };
const soft = { ...steel, id: 'soft-steel', yieldMpa: 50 };
const spread = { ...steel, id: 'any-alloy', expansionMinPerK: 20e-6, expansionMaxPerK: 26e-6 };
const usual: PressJointInput = { jointDiameterMm: 40, shaftBoreMm: 0, hubOutsideMm: 80, lengthMm: 40, interferenceUm: 40, shaft: 'winch-steel', hub: 'winch-steel', frictionCoefficient: 0.1, smoothingUm: 0, materials: [steel, soft, spread] };
const umPerMpa = (1000 * 2 * 40) / (210_000 * 0.75);
const areaMm2 = Math.PI * 40 * 40;
const at = (pressureMpa: number) => pressureMpa * umPerMpa;
const look = (more: Partial<PressJointInput> = {}) => pressJoint.compute({ ...usual, ...more });
const told = (more: Partial<PressJointInput> = {}) => look(more).findings.map(({ code, severity }) => `${code} ${severity}`);
const numbers = (code: string, more: Partial<PressJointInput> = {}) => look(more).findings.find((finding) => finding.code === code)?.parameters;

describe('pressure, stress and grip', () => {
  test('by hand', () => {
    const output = look({ interferenceUm: at(60) });
    expect(output.contactPressureMpa).toBeCloseTo(60, 9);
    expect(output.hubHoopStressMpa).toBeCloseTo(100, 9);
    expect(output.hubVonMisesMpa).toBeCloseTo(140, 9);
    expect(output.hubTrescaMpa).toBeCloseTo(160, 9);
    expect(output.shaftHoopStressMpa.bore).toBeNull();
    expect(output.shaftHoopStressMpa.surface).toBeCloseTo(-60, 9);
    expect([output.shaftVonMisesMpa, output.shaftTrescaMpa]).toEqual([expect.closeTo(60, 9), expect.closeTo(60, 9)]);
    expect(output.axialForceN).toBeCloseTo(0.1 * areaMm2 * 60, 6);
    expect(output.pressForceN).toBeCloseTo(0.1 * areaMm2 * 60, 6);
    expect(output.torqueNm).toBeCloseTo((0.1 * areaMm2 * 60 * 20) / 1000, 6);
    // 2·p·d²·D/(E·(D² − d²))
    expect(output.hubOutsideGrowthUm).toBeCloseTo((1000 * 2 * 60 * 1600 * 80) / (210_000 * 4800), 9);
    expect(output.shaftBoreGrowthUm).toBeNull();
  });

  test('a hollow shaft bears most at its bore, which closes', () => {
    const output = look({ shaftBoreMm: 20 });
    const p = output.contactPressureMpa;
    expect(output.shaftHoopStressMpa.bore).toBeCloseTo((-2 * p * 1600) / 1200, 9);
    expect(output.shaftHoopStressMpa.surface).toBeCloseTo((-p * 2000) / 1200, 9);
    expect(output.shaftVonMisesMpa).toBeCloseTo((2 * p * 1600) / 1200, 9);
    // On the diameter: 2·p·d²·d_i/(E·(d² − d_i²)).
    expect(output.shaftBoreGrowthUm).toBeCloseTo((-1000 * 2 * p * 1600 * 20) / (210_000 * 1200), 9);
  });

  test('what is left of the interference', () => {
    const output = look({ smoothingUm: 4, hub: 'any-alloy', temperatureC: 30 });
    // The hub grows 12·10⁻⁶ more, 9 to 15: by 10 K on 40 mm 4.8 µm, 3.6 to 6.
    expect(output.thermalInterferenceUm).toBeCloseTo(-4.8, 9);
    expect(output.effectiveInterferenceUm).toBeCloseTo(31.2, 9);
    expect(output.contactPressureSpanMpa.low).toBeCloseTo(30 / umPerMpa, 9);
    expect(output.contactPressureSpanMpa.high).toBeCloseTo(32.4 / umPerMpa, 9);
    expect(look({ interferenceUm: -40 }).contactPressureSpanMpa).toEqual({ low: 0, high: 0 });
  });

  test('smoothing by either rule: 0.8 or 0.4 of both roughnesses', () => {
    const by = (smoothingRule: PressJointInput['smoothingRule']) => look({ smoothingUm: undefined, smoothingRule, shaftRoughnessRzUm: 4, hubRoughnessRzUm: 6 }).smoothingUm;
    expect(by('din-7190-2001')).toBeCloseTo(8, 9);
    expect(by('din-7190-1-2017')).toBeCloseTo(4, 9);
    const { smoothingUm: _, ...open } = usual;
    expect(() => pressJoint.run({ ...open, shaftRoughnessRzUm: 4 })).toThrow(/smoothingRule/);
    expect(() => pressJoint.run({ ...open, hubRoughnessRzUm: 4 })).toThrow(/smoothingRule/);
    expect(() => pressJoint.run({ ...open, smoothingRule: 'din-7190-2001', hubRoughnessRzUm: 4 })).toThrow(/shaftRoughnessRzUm/);
    expect(() => pressJoint.run({ ...open, smoothingRule: 'din-7190-2001', shaftRoughnessRzUm: 4 })).toThrow(/hubRoughnessRzUm/);
    expect(() => pressJoint.run({ ...usual, smoothingRule: 'din-7190-2001', shaftRoughnessRzUm: 4, hubRoughnessRzUm: 4 })).toThrow(/not both/);
    expect(look().assumptions.map(({ name }) => name)).not.toContain('smoothing');
    expect(pressJoint.compute(open).assumptions.map(({ name }) => name)).toContain('smoothing');
  });

  test('sizes and temperatures must go together', () => {
    expect(() => look({ shaftBoreMm: 40 })).toThrow(/smaller than the joint/);
    expect(() => look({ hubOutsideMm: 40 })).toThrow(/larger than the joint/);
    expect(() => look({ temperatureC: 30, shaftTemperatureC: 30 })).toThrow(/one temperature for both/);
    expect(() => look({ temperatureC: 30, hubTemperatureC: 30 })).toThrow(/one temperature for both/);
    expect(look({ shaftTemperatureC: 30 }).thermalInterferenceUm).toBeCloseTo(4.4, 9);
    expect(look({ hubTemperatureC: 30 }).thermalInterferenceUm).toBeCloseTo(-4.4, 9);
    expect(() => look({ hub: elastic, speedRpm: 100 })).toThrow(/hub\.densityKgPerM3/);
    expect(() => look({ shaft: elastic, speedRpm: 100 })).toThrow(/shaft\.densityKgPerM3/);
    expect(look({ hub: elastic, speedRpm: 0 }).turningLossUm).toBe(0);
  });
});

describe('what is found', () => {
  test.each<[Partial<PressJointInput>, readonly string[]]>([
    [{ interferenceUm: -5 }, ['joint-loose bad']],
    [{ interferenceUm: 0 }, ['joint-loose bad']],
    [{ interferenceUm: 1 }, ['joint-presses good']],
    // A hub of some alloy, 10 K warmer: 4.8 µm are lost, or up to 6.
    [{ interferenceUm: 5.5, hub: 'any-alloy', temperatureC: 30 }, ['joint-may-be-loose care']],
    [{ interferenceUm: 6.1, hub: 'any-alloy', temperatureC: 30 }, ['joint-presses good']],
    [{ interferenceUm: at(112.4) }, ['joint-presses good']],
    [{ interferenceUm: at(114) }, ['joint-presses good', 'hub-flows-in-part care']],
    [{ interferenceUm: 400 }, ['joint-presses good', 'hub-flows-through bad', 'shaft-yields care']],
    [{ interferenceUm: at(49.9), shaft: 'soft-steel' }, ['joint-presses good']],
    [{ interferenceUm: at(50.1), shaft: 'soft-steel' }, ['joint-presses good', 'shaft-yields care']],
    [{ hub: elastic }, ['joint-presses good', 'hub-strength-unknown note']],
    [{ hub: elastic, interferenceUm: -1 }, ['joint-loose bad']],
    [{ shaft: elastic }, ['joint-presses good']],
    [{ interferenceUm: at(50), axialLoadN: 0.0999 * areaMm2 * 50 }, ['joint-presses good', 'joint-holds-load good']],
    [{ interferenceUm: at(50), axialLoadN: 0.1001 * areaMm2 * 50 }, ['joint-presses good', 'joint-slips bad']],
  ])('%j: %j', (more, expected) => {
    expect(told(more)).toEqual(expected);
  });

  test('the numbers beside it', () => {
    expect(numbers('joint-loose', { interferenceUm: -5 })).toEqual({ gapUm: 5 });
    expect(Object.is(numbers('joint-loose', { interferenceUm: 0 })?.['gapUm'], 0)).toBe(true);
    expect(Number(numbers('joint-presses', { interferenceUm: at(50) })?.['pressureMpa'])).toBeCloseTo(50, 9);
    expect(Number(numbers('joint-may-be-loose', { interferenceUm: 5.5, hub: 'any-alloy', temperatureC: 30 })?.['leastUm'])).toBeCloseTo(-0.5, 9);
    expect(Number(numbers('joint-may-be-loose', { interferenceUm: 5.5, hub: 'any-alloy', temperatureC: 30 })?.['mostUm'])).toBeCloseTo(1.9, 9);
    expect(numbers('shaft-yields', { interferenceUm: at(50.1), shaft: 'soft-steel' })).toEqual({ yieldMpa: 50 });
    // 3000 N along and 80 N·m round (4000 N) are 5000 N together.
    expect(look({ interferenceUm: at(50), axialLoadN: 3000, torqueLoadNm: 80 }).slipRatio).toBeCloseTo(5000 / (0.1 * areaMm2 * 50), 9);
    expect(look({ interferenceUm: at(50), torqueLoadNm: 80 }).slipRatio).toBeCloseTo(4000 / (0.1 * areaMm2 * 50), 9);
    expect(look({ interferenceUm: -5, axialLoadN: 3000 }).slipRatio).toBeNull();
    expect(look().slipRatio).toBeNull();
  });

  // Three tenths of the section flow out to √(40² + 0.3·(80² − 40²)) = 55.14 mm: p = R/2·(1 − 0.475) + R·ln(55.14/40) = 175.0 MPa (Tresca, perfectly plastic).
  test('from three tenths of the section on in flow it is too much', () => {
    const pressureMpa = 150 * (1 - 3040 / 6400) + 300 * Math.log(Math.sqrt(3040) / 40);
    const flowing = Array.from({ length: 1200 }, (_, i) => look({ interferenceUm: 58 + i / 10 }).findings.find(({ code }) => code === 'hub-flows-in-part')).filter((finding) => finding !== undefined);
    const pressures = (severity: string) => flowing.filter((finding) => finding.severity === severity).map(({ parameters }) => Number(parameters['pressureMpa']));
    expect(Math.max(...pressures('care'))).toBeLessThanOrEqual(pressureMpa);
    expect(Math.max(...pressures('care'))).toBeGreaterThan(pressureMpa - 0.2);
    expect(Math.min(...pressures('bad'))).toBeGreaterThan(pressureMpa);
    expect(Math.min(...pressures('bad'))).toBeLessThan(pressureMpa + 0.2);
  });

  test('whether each part yields, and at which interference', () => {
    const output = look({ interferenceUm: at(60) });
    expect(output.yields).toEqual({ hub: false, shaft: false });
    // By von Mises: the hub at 300/(7/3) MPa, the shaft at 300.
    expect(output.firstYieldUm.hub).toBeCloseTo(at((300 * 3) / 7), 6);
    expect(output.firstYieldUm.shaft).toBeCloseTo(at(300), 6);
    expect(look({ interferenceUm: at(129) }).yields.hub).toBe(true);
    expect(look({ hub: elastic, shaft: elastic })).toMatchObject({ yields: { hub: null, shaft: null }, firstYieldUm: { hub: null, shaft: null }, elasticPlastic: null });
  });

  test('what was not looked at', () => {
    const not = (more: Partial<PressJointInput>) => look(more).notChecked;
    expect(not({})).toEqual(['edge-pressure', 'form-and-roughness']);
    for (const more of [{ temperatureC: 30 }, { hubTemperatureC: 30 }, { shaftTemperatureC: 30 }]) expect(not(more)).toEqual(['edge-pressure', 'form-and-roughness', 'modulus-and-yield-at-temperature']);
    expect(not({ frictionCoefficient: undefined, hub: elastic })).toContain('friction-of-this-pair');
    expect(not({ interferenceUm: 200, speedRpm: 100 })).toContain('flow-while-turning');
    expect(not({ speedRpm: 100 })).toEqual(['edge-pressure', 'form-and-roughness']);
  });
});

describe('the working', () => {
  const symbols = (more: Partial<PressJointInput> = {}) => {
    const steps = pressJoint.explain({ ...usual, ...more }, look(more));
    expectWorkingHolds(steps);
    return steps.map(({ symbol }) => symbol).join(' ');
  };

  test('goes from the interference to the grip', () => {
    expect(symbols()).toMatch(/^U C_o C_i p sigma_t sigma_v sigma_s dD F_in F T\b/);
    expect(symbols({ shaftBoreMm: 20 })).toMatch(/^U C_o C_i p sigma_t sigma_v sigma_s sigma_b dD F_in F T\b/);
    expect(symbols({ temperatureC: 30 })).toMatch(/^U_t U C_o/);
    expect(symbols({ smoothingUm: undefined, smoothingRule: 'din-7190-2001', shaftRoughnessRzUm: 4, hubRoughnessRzUm: 6 })).toMatch(/^G U C_o/);
    expect(symbols({ smoothingUm: undefined, smoothingRule: 'din-7190-1-2017', shaftRoughnessRzUm: 4, hubRoughnessRzUm: 6 })).toMatch(/^G U C_o/);
    expect(symbols({ frictionCoefficient: undefined, hub: elastic })).toBe('U C_o C_i p sigma_t sigma_v sigma_s dD');
    expect(symbols({ speedRpm: 3000 })).not.toContain('sigma_t');
  });
});
