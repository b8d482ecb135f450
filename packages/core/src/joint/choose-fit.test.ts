import { describe, expect, test } from 'vitest';
import { expectWorkingHolds } from '../../../../tests/laws/internal/evaluate-working.js';
import { chooseFit, type ChooseFitInput } from './choose-fit.js';

/*
 * By hand: solid shaft and hub of one material, d = 40, hub 80 outside, 40 long. U = 2·d·p/(E·(1 − (d/D)²)) = 2·40·p/(210 000·0.75):
 * 0.50794 µm for each MPa. Joint face π·40·40 = 5026.5 mm². Friction 0.1, nothing smoothed.
 */
const steel = { youngsModulusGpa: 210, poissonRatio: 0.3, expansionPerK: 11e-6 };
const joint = { shaftBoreMm: 0, hubOutsideMm: 80, lengthMm: 40, shaft: steel, hub: steel, frictionCoefficient: 0.1, smoothingUm: 0 } as const;
const umPerMpa = (1000 * 2 * 40) / (210_000 * 0.75);
const areaMm2 = Math.PI * 40 * 40;
const umFor = (forceN: number) => (umPerMpa * forceN) / (0.1 * areaMm2);
const look = (more: Partial<ChooseFitInput>) => chooseFit.compute({ nominalMm: 40, ...more });
const failure = (more: Partial<ChooseFitInput>) => {
  try {
    chooseFit.run({ nominalMm: 40, ...more });
  } catch (error) {
    return (error as Error).message;
  }
  return 'none';
};

describe('a window that is asked for', () => {
  test('interference at both ends; clearance counts below nothing', () => {
    expect(look({ leastInterferenceUm: 1, mostInterferenceUm: 60 })).toMatchObject({ leastInterferenceUm: 1, mostInterferenceUm: 60, leastBecauseOf: 'as asked', mostBecauseOf: 'as asked' });
    expect(look({ leastClearanceUm: 5, mostClearanceUm: 80 })).toMatchObject({ leastInterferenceUm: -80, mostInterferenceUm: -5 });
    expect(look({ mostClearanceUm: 60, mostInterferenceUm: 10 })).toMatchObject({ leastInterferenceUm: -60, mostInterferenceUm: 10 });
    expect(Object.is(look({ leastClearanceUm: 0, mostClearanceUm: 80 }).mostInterferenceUm, 0)).toBe(true);
    expect(look({ leastInterferenceUm: 1 })).toMatchObject({ mostInterferenceUm: null, mostBecauseOf: null });
    expect(look({ mostInterferenceUm: 50 })).toMatchObject({ leastInterferenceUm: null, leastBecauseOf: null });
  });

  test('without a joint nothing is said of pressure and forces', () => {
    const { candidates, notChecked, assumptions } = look({ leastInterferenceUm: 1, mostInterferenceUm: 60 });
    expect(candidates[0]).toMatchObject({ contactPressureLowMpa: null, contactPressureHighMpa: null, torqueNm: null, axialForceN: null, pressForceN: null });
    expect(notChecked).toEqual(['fit-away-from-20-c', 'form-and-roughness']);
    expect(assumptions).toEqual([]);
  });

  test('ten fits at the most, or as many as asked for; all are counted', () => {
    const all = look({ leastInterferenceUm: 1, mostInterferenceUm: 90 });
    expect(all.candidates).toHaveLength(10);
    expect(all.candidateCount).toBeGreaterThan(10);
    expect(look({ leastInterferenceUm: 1, mostInterferenceUm: 90, maximumCandidateCount: 3 }).candidates).toEqual(all.candidates.slice(0, 3));
  });

  test('what contradicts itself is named', () => {
    expect(failure({})).toMatch(/say what is wanted/);
    expect(failure({ joint })).toMatch(/say what is wanted/);
    expect(failure({ leastInterferenceUm: 1, mostClearanceUm: 5 })).toMatch(/not for both/);
    expect(failure({ mostInterferenceUm: 9, leastClearanceUm: 5 })).toMatch(/not for both/);
    expect(failure({ leastInterferenceUm: 20.04, mostInterferenceUm: 10 })).toMatch(/at least 20 µm of interference are needed \(as asked\), but at most 10 µm are allowed \(as asked\)/);
    for (const more of [{ torqueNm: 1 }, { axialForceN: 1 }, { pressLimitN: 1 }, { mustStayTight: true }, { mustStayElastic: true }]) expect(failure({ leastInterferenceUm: 1, ...more })).toMatch(/needs the joint/);
    expect(failure({ leastInterferenceUm: 1, mostInterferenceUm: 90, mustStayTight: false, mustStayElastic: false })).toBe('none');
  });

  test('where no fit does it, the nearest are named with what they miss', () => {
    const message = failure({ leastInterferenceUm: 10, mostInterferenceUm: 11 });
    expect(message).toMatch(/no ISO fit guarantees interference from 10 µm \(as asked\) up to 11 µm \(as asked\); nearest: /);
    expect(message.match(/misses by/gu)).toHaveLength(3);
    expect(failure({ leastInterferenceUm: 5000 })).toMatch(/interference from 5000 µm \(as asked\); nearest/);
    expect(failure({ mostInterferenceUm: -5000 })).toMatch(/guarantees interference up to -5000 µm \(as asked\); nearest/);
  });
});

describe('a load', () => {
  test('along the shaft, round it, or both at once', () => {
    expect(look({ joint, axialForceN: 10_000 }).leastInterferenceUm).toBeCloseTo(umFor(10_000), 9);
    // 200 N·m on a radius of 20 mm are 10 000 N.
    expect(look({ joint, torqueNm: 200 }).leastInterferenceUm).toBeCloseTo(umFor(10_000), 9);
    expect(look({ joint, torqueNm: 200, axialForceN: 10_000 }).leastInterferenceUm).toBeCloseTo(umFor(10_000 * Math.SQRT2), 9);
    expect(look({ joint, torqueNm: 200 })).toMatchObject({ leastBecauseOf: 'load', mostBecauseOf: null, notChecked: ['edge-pressure', 'form-and-roughness'] });
  });

  test('smoothing and heat are lost to it', () => {
    expect(look({ joint: { ...joint, smoothingUm: 4 }, axialForceN: 10_000 }).leastInterferenceUm).toBeCloseTo(umFor(10_000) + 4, 9);
    // A hub that grows 12·10⁻⁶ more: by 50 K on 40 mm 24 µm.
    const warm = { ...joint, hub: { ...steel, expansionPerK: 23e-6 }, temperatureC: 70 };
    expect(look({ joint: warm, axialForceN: 10_000 }).leastInterferenceUm).toBeCloseTo(umFor(10_000) + 24, 9);
    expect(look({ joint: warm, mustStayTight: true })).toMatchObject({ leastInterferenceUm: expect.closeTo(24, 9) as number, leastBecauseOf: 'temperature' });
    // Cold it holds more; at 20 °C it must hold as well.
    expect(look({ joint: { ...warm, temperatureC: -30 }, axialForceN: 10_000 }).leastInterferenceUm).toBeCloseTo(umFor(10_000), 9);
    expect(look({ joint, mustStayTight: true }).leastInterferenceUm).toBeCloseTo(0, 9);
  });

  test('the stronger wish counts, and says why', () => {
    expect(look({ joint, axialForceN: 10_000, leastInterferenceUm: 50 })).toMatchObject({ leastInterferenceUm: 50, leastBecauseOf: 'as asked' });
    expect(look({ joint, axialForceN: 10_000, leastInterferenceUm: 5 })).toMatchObject({ leastBecauseOf: 'load' });
    expect(look({ joint, leastInterferenceUm: 1, mostInterferenceUm: 90, pressLimitN: 60_000 })).toMatchObject({ mostInterferenceUm: expect.closeTo(umFor(60_000), 9) as number, mostBecauseOf: 'press' });
    expect(look({ joint, leastInterferenceUm: 1, mostInterferenceUm: 45, pressLimitN: 60_000 })).toMatchObject({ mostInterferenceUm: 45, mostBecauseOf: 'as asked' });
  });

  test('each fit tells what it gives at its least and asks at its most', () => {
    const warm = { ...joint, hub: { ...steel, expansionPerK: 23e-6 }, temperatureC: 30, smoothingUm: 2 };
    for (const candidate of look({ joint: warm, leastInterferenceUm: -5, mostInterferenceUm: 90, maximumCandidateCount: 50 }).candidates) {
      // By heat 4.8 µm, by smoothing 2.
      const low = Math.max(candidate.leastInterferenceUm - 6.8, 0) / umPerMpa;
      const high = Math.max(candidate.mostInterferenceUm - 2, 0) / umPerMpa;
      expect(candidate.contactPressureLowMpa).toBeCloseTo(low, 9);
      expect(candidate.contactPressureHighMpa).toBeCloseTo(high, 9);
      expect(candidate.axialForceN).toBeCloseTo(0.1 * areaMm2 * low, 6);
      expect(candidate.torqueNm).toBeCloseTo((0.1 * areaMm2 * low * 20) / 1000, 6);
      expect(candidate.pressForceN).toBeCloseTo(0.1 * areaMm2 * high, 6);
    }
  });
});

describe('a hub that must not flow', () => {
  const ductile = { id: 'winch-steel', youngsModulusGpa: 210, poissonRatio: 0.3, expansionMinPerK: 11e-6, expansionMaxPerK: 11e-6, yieldMpa: 300 };
  const own = { ...joint, shaft: 'winch-steel', hub: 'winch-steel', materials: [ductile] };

  test('its bore begins to flow at a pressure that its wall decides', () => {
    const output = look({ joint: own, leastInterferenceUm: 1, mustStayElastic: true });
    const [, step] = chooseFit.explain({ nominalMm: 40, joint: own, leastInterferenceUm: 1, mustStayElastic: true }, output);
    expect(output.mostBecauseOf).toBe('flow of the hub');
    // Largest shear (Tresca): p = R/2·(1 − (d/D)²) = 112.5 MPa for R = 300.
    expect(Number(output.mostInterferenceUm) / umPerMpa).toBeCloseTo(112.5, 9);
    expect(step).toMatchObject({ symbol: 'U_max', kind: 'formula' });
  });

  test('heat that tightens takes from it', () => {
    const cold = look({ joint: own, leastInterferenceUm: 1, mustStayElastic: true }).mostInterferenceUm ?? NaN;
    const warm = look({ joint: { ...own, shaft: { ...steel, expansionPerK: 23e-6 }, temperatureC: 30 }, leastInterferenceUm: 1, mustStayElastic: true }).mostInterferenceUm ?? NaN;
    // The shaft grows 4.8 µm more than the hub by 10 K.
    expect(cold - warm).toBeCloseTo(4.8, 9);
    expect(look({ joint: { ...own, smoothingUm: 3 }, leastInterferenceUm: 1, mustStayElastic: true }).mostInterferenceUm).toBeCloseTo(cold + 3, 9);
  });

  test('is asked for its strength', () => {
    expect(failure({ joint, leastInterferenceUm: 1, mustStayElastic: true })).toMatch(/no yield strength/);
    expect(look({ joint, leastInterferenceUm: 1, mustStayElastic: false }).mostInterferenceUm).toBeNull();
  });
});

describe('the working', () => {
  const symbols = (more: Partial<ChooseFitInput>) => {
    const input = { nominalMm: 40, ...more };
    const steps = chooseFit.explain(input, chooseFit.compute(input));
    expectWorkingHolds(steps);
    return steps.map((step) => `${step.symbol}:${step.kind}`).join(' ');
  };

  test('a formula for what load and press ask, a choice for what was asked', () => {
    expect(symbols({ leastInterferenceUm: 1, mostInterferenceUm: 60 })).toBe('U_min:choice U_max:choice fit:choice');
    expect(symbols({ joint, torqueNm: 100, pressLimitN: 60_000 })).toBe('U_min:formula U_max:formula fit:choice');
    expect(symbols({ joint, mustStayTight: true })).toBe('U_min:choice fit:choice');
    expect(symbols({ mostInterferenceUm: 60 })).toBe('U_max:choice fit:choice');
    expect(symbols({ joint: { ...joint, smoothingUm: 3 }, torqueNm: 100, pressLimitN: 60_000 })).toBe('U_min:formula U_max:formula fit:choice');
  });

  test('why, in words', () => {
    const input = { nominalMm: 40, joint, mustStayTight: true, mostInterferenceUm: 60 };
    const output = chooseFit.compute(input);
    const [best] = output.candidates;
    expect(chooseFit.explain(input, output)).toMatchObject([{ why: 'temperature' }, { why: 'as asked', value: 60 }, { value: `${best?.hole ?? ''}/${best?.shaft ?? ''}`, source: { id: 'iso-1829-1975' } }]);
  });
});
