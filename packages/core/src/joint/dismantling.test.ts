import { describe, expect, test } from 'vitest';
import { expectWorkingHolds } from '../../../../tests/laws/internal/evaluate-working.js';
import { dismantling, type DismantlingInput } from './dismantling.js';

/*
 * By hand: solid shaft and hub of one steel, d = 40, D = 80, 40 long: p = U·E·(1 − (d/D)²)/(2·d) = 78.75 MPa for 40 µm; friction 0.1, after
 * long standing half as much again. Free by heat at 20 + (40 + 20)/(11·10⁻⁶·40 000) = 156.4 °C.
 */
const steel = { youngsModulusGpa: 210, poissonRatio: 0.3, expansionPerK: 11e-6 };
const usual: DismantlingInput = { jointDiameterMm: 40, shaftBoreMm: 0, hubOutsideMm: 80, lengthMm: 40, interferenceUm: 40, shaft: steel, hub: steel, frictionCoefficient: 0.1, smoothingUm: 0 };
const lowN = 0.1 * Math.PI * 40 * 40 * 78.75;
const highN = 1.5 * lowN;
const freeC = 20 + 60 / 0.44;
const look = (more: Partial<DismantlingInput> = {}) => dismantling.compute({ ...usual, ...more });
const told = (more: Partial<DismantlingInput> = {}) => look(more).findings.map(({ code, severity }) => `${code} ${severity}`);

describe('by force', () => {
  test('from the friction when it went together to half as much again', () => {
    const output = look();
    expect(output.contactPressureMpa).toBeCloseTo(78.75, 9);
    expect(output.lowForceN).toBeCloseTo(lowN, 6);
    expect(output.highForceN).toBeCloseTo(highN, 6);
    expect(told()[0]).toBe('parts-by-force note');
    expect(Object.keys(look().findings[0]?.parameters ?? {})).toEqual(['lowForceN', 'highForceN']);
  });

  test.each([
    [highN + 1, 'press-is-strong-enough good'], [highN - 1, 'press-may-be-too-weak care'], [lowN + 1, 'press-may-be-too-weak care'], [lowN - 1, 'press-is-too-weak care'],
  ])('a press of %d N: %s', (pressN, expected) => {
    expect(told({ pressN })[0]).toBe(expected);
    expect(look({ pressN }).findings[0]?.parameters['pressN']).toBe(pressN);
  });

  test('where no friction of the pair is known, no force is told', () => {
    const output = look({ frictionCoefficient: undefined });
    expect(output).toMatchObject({ lowForceN: null, highForceN: null, notChecked: ['rust-and-fretting', 'heat-soaks-into-shaft', 'friction-of-this-pair'] });
    expect(told({ frictionCoefficient: undefined })).toEqual(['heat-limit-unknown note']);
    expect(look().notChecked).toEqual(['rust-and-fretting', 'heat-soaks-into-shaft']);
  });
});

describe('by heat on the hub', () => {
  test('until interference and gap are made up', () => {
    expect(look().hubFreeC).toBeCloseTo(freeC, 9);
    expect(look({ freeGapUm: 0 }).hubFreeC).toBeCloseTo(20 + 40 / 0.44, 9);
    // The low end of the expansion counts; a hub that is warm already starts there.
    expect(look({ hub: 'any-alloy', materials: [{ id: 'any-alloy', youngsModulusGpa: 210, poissonRatio: 0.3, expansionMinPerK: 10e-6, expansionMaxPerK: 12e-6 }] }).hubFreeC).toBeCloseTo(20 + 60 / 0.4, 9);
    expect(look({ temperatureC: 50 }).hubFreeC).toBeCloseTo(50 + 60 / 0.44, 9);
  });

  test('its limit decides', () => {
    expect(look({ hubLimitC: freeC + 0.01 })).toMatchObject({ isFreeByHeat: true, hubLimitC: freeC + 0.01 });
    expect(told({ hubLimitC: freeC + 0.01 })[1]).toBe('comes-free-by-heat good');
    expect(told({ hubLimitC: freeC - 0.01 })[1]).toBe('does-not-come-free-by-heat note');
    expect(look({ hubLimitC: 100 }).findings[1]?.parameters).toEqual({ hubFreeC: look().hubFreeC, hubLimitC: 100 });
    expect(look()).toMatchObject({ isFreeByHeat: null, hubLimitC: null });
    expect(told()[1]).toBe('heat-limit-unknown note');
    expect(look().findings[1]?.parameters).toEqual({ hubFreeC: look().hubFreeC });
  });

  test('a limit of the material is taken where none is given, and told', () => {
    const known = look({ hub: 'al-a380' });
    expect(known.hubLimitC).not.toBeNull();
    expect(known.assumptions.find(({ name }) => name === 'heating-limit')).toMatchObject({ value: known.hubLimitC, unit: '°C', effect: 'whether-heat-is-enough' });
    expect(look({ hub: 'al-a380', hubLimitC: 90 })).toMatchObject({ hubLimitC: 90 });
    expect(look({ hub: 'al-a380', hubLimitC: 90 }).assumptions.map(({ name }) => name)).not.toContain('heating-limit');
    expect(look().assumptions.map(({ name }) => name)).not.toContain('heating-limit');
  });
});

test('what is loose already needs neither', () => {
  expect(told({ interferenceUm: -3 })).toEqual(['joint-already-loose good']);
  expect(look({ interferenceUm: -3 }).findings[0]?.parameters).toEqual({ gapUm: 3 });
  expect(Object.is(look({ interferenceUm: 0 }).findings[0]?.parameters['gapUm'], 0)).toBe(true);
  expect(look({ interferenceUm: -3 })).toMatchObject({ contactPressureMpa: 0, lowForceN: 0, highForceN: 0 });
  // No interference to make up, only the gap.
  expect(look({ interferenceUm: -3 }).hubFreeC).toBeCloseTo(20 + 20 / 0.44, 9);
});

test('what was taken for granted, and the cautions', () => {
  const assumed = (more: Partial<DismantlingInput>) => look(more).assumptions.map(({ name, value }) => `${name} ${value}`);
  expect(assumed({})).toEqual(['friction-after-standing 1.5', 'gap-when-free 20']);
  expect(assumed({ freeGapUm: 10 })).toEqual(['friction-after-standing 1.5']);
  expect(look().cautions).toEqual(['makers-manual-first', 'eye-protection', 'press-straight', 'parts-fly-when-free', 'hot-parts-gloves', 'no-flame-for-heating', 'seals-out-before-heat', 'solvents-washed-off']);
});

test('the working', () => {
  const symbols = (more: Partial<DismantlingInput>) => {
    const steps = dismantling.explain({ ...usual, ...more }, look(more));
    expectWorkingHolds(steps);
    return steps.map(({ symbol }) => symbol).join(' ');
  };
  expect(symbols({})).toBe('t_o F');
  expect(symbols({ freeGapUm: 5, temperatureC: 40 })).toBe('t_o F');
  expect(symbols({ interferenceUm: -3 })).toBe('t_o F');
  expect(symbols({ frictionCoefficient: undefined })).toBe('t_o');
});
