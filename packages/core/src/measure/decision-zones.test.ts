import { describe, expect, test } from 'vitest';
import { expectWorkingHolds } from '../../../../tests/laws/internal/evaluate-working.js';
import { conformity, type ConformityInput } from './conformity.js';
import { decisionOf, decisionZones } from './decision-zones.js';

const limits = { lowerLimitMm: 20, upperLimitMm: 20.021 };
const uncertainty = (standardUncertaintyMm: number) => ({ standardUncertaintyMm, expandedUncertaintyMm: 2 * standardUncertaintyMm });
const round = (mm: number | null) => (mm === null ? null : Math.round(mm * 1e7) / 1e7);

/** Share of a normal distribution between two ends, by Simpson's rule. */
function share(from: number, to: number): number {
  const [low, high] = [Math.max(from, -12), Math.min(to, 12)];
  const n = 4000;
  const at = (i: number) => Math.exp(-((low + ((high - low) * i) / n) ** 2) / 2) / Math.sqrt(2 * Math.PI);
  let sum = at(0) + at(n);
  for (let i = 1; i < n; i += 1) sum += (i % 2 === 1 ? 4 : 2) * at(i);
  return (sum * (high - low)) / n / 3;
}

// ISO 14253-1:1998, clause 5: the expanded uncertainty on either side of each limit.
describe('a guard band of the whole expanded uncertainty', () => {
  test('inside each limit proves, outside disproves', () => {
    const zones = decisionZones(limits, uncertainty(0.002), 'expanded-uncertainty');
    expect([zones.guardBandMm, round(zones.acceptance.lowerMm), round(zones.acceptance.upperMm), round(zones.rejection.belowMm), round(zones.rejection.aboveMm)]).toEqual([0.004, 20.004, 20.017, 19.996, 20.025]);
    expect(zones.isAcceptanceEmpty).toBe(false);
  });

  test.each([[0.00525, false], [0.0053, true]])('a standard uncertainty of %d: nothing could be proven: %s', (u, isEmpty) => {
    expect(decisionZones(limits, uncertainty(u), 'expanded-uncertainty').isAcceptanceEmpty).toBe(isEmpty);
  });

  test('a side without a limit has no zone, and is never empty', () => {
    expect(decisionZones({ lowerLimitMm: 20, upperLimitMm: null }, uncertainty(1), 'expanded-uncertainty')).toEqual({ guardBandMm: 2, acceptance: { lowerMm: 22, upperMm: null }, isAcceptanceEmpty: false, rejection: { belowMm: 18, aboveMm: null } });
    expect(decisionZones({ lowerLimitMm: null, upperLimitMm: 20 }, uncertainty(1), 'expanded-uncertainty')).toEqual({ guardBandMm: 2, acceptance: { lowerMm: null, upperMm: 18 }, isAcceptanceEmpty: false, rejection: { belowMm: null, aboveMm: 22 } });
  });

  test.each<[number, number, string]>([
    [20.004, 20.017, 'conforms'], [20.0039, 20.01, 'cannot be proven'], [20.01, 20.0171, 'cannot be proven'],
    [19.996, 20.01, 'cannot be proven'], [19.9959, 20.01, 'does not conform'], [20.01, 20.025, 'cannot be proven'], [20.01, 20.0251, 'does not conform'], [19.99, 20.03, 'does not conform'],
  ])('%d to %d: %s', (lowMm, highMm, expected) => {
    expect(decisionOf({ lowMm, highMm }, decisionZones(limits, uncertainty(0.002), 'expanded-uncertainty'))).toBe(expected);
  });

  test('where nothing could be proven, nothing is', () => {
    expect(decisionOf({ lowMm: 20.0105, highMm: 20.0105 }, decisionZones(limits, uncertainty(0.0053), 'expanded-uncertainty'))).toBe('cannot be proven');
    expect(decisionOf({ lowMm: 25, highMm: 25 }, decisionZones({ lowerLimitMm: 20, upperLimitMm: null }, uncertainty(1), 'expanded-uncertainty'))).toBe('conforms');
    expect(decisionOf({ lowMm: 5, highMm: 17 }, decisionZones({ lowerLimitMm: null, upperLimitMm: 20 }, uncertainty(1), 'expanded-uncertainty'))).toBe('conforms');
  });
});

// ISO 14253-1:2017: 95 % of conformity; 1.6449 standard uncertainties where one limit is alone.
describe('95 % of conformity', () => {
  test('one limit alone', () => {
    expect(decisionZones({ lowerLimitMm: 20, upperLimitMm: null }, uncertainty(0.001), 'probability-95').guardBandMm).toBeCloseTo(0.0016448536, 9);
    expect(decisionZones({ lowerLimitMm: null, upperLimitMm: 20 }, uncertainty(0.001), 'probability-95').rejection.aboveMm).toBeCloseTo(20.0016448536, 9);
  });

  test.each([0.001, 0.003, 0.0045, 0.005])('two limits, a standard uncertainty of %d: there the chance is 95 %%', (u) => {
    const { guardBandMm, rejection, isAcceptanceEmpty } = decisionZones(limits, uncertainty(u), 'probability-95');
    expect(isAcceptanceEmpty).toBe(false);
    expect(share(-guardBandMm / u, (0.021 - guardBandMm) / u)).toBeCloseTo(0.95, 6);
    expect(rejection.belowMm).toBeCloseTo(20 - 1.6448536 * u, 8);
  });

  test('where the chance never is 95 %, nothing could be proven', () => {
    // At the middle of 21 µm: 95 % within ± 1.96 u = 10.5 µm up to u = 5.357 µm.
    expect(decisionZones(limits, uncertainty(0.00535), 'probability-95').isAcceptanceEmpty).toBe(false);
    expect(decisionZones(limits, uncertainty(0.00536), 'probability-95').isAcceptanceEmpty).toBe(true);
    expect(decisionZones(limits, uncertainty(0.02), 'probability-95')).toMatchObject({ isAcceptanceEmpty: true, guardBandMm: expect.closeTo(0.0328970, 6) as number });
  });
});

describe('conformity of a stated size', () => {
  const usual: ConformityInput = { measures: 'outside', measuredMm: 20.01, expandedUncertaintyMm: 0.004, lowerLimitMm: 20, upperLimitMm: 20.021 };
  const look = (more: Partial<ConformityInput> = {}) => conformity.compute({ ...usual, ...more });

  test.each<[number, string, number]>([
    [20.004, 'size-conforms good', 20], [20.0103, 'size-conforms good', 20], [20.0106, 'size-conforms good', 20.021], [20.017, 'size-conforms good', 20.021],
    [20.0039, 'size-not-provable-at-lower-limit unknown', 20], [20.0171, 'size-not-provable-at-upper-limit unknown', 20.021],
    [19.9959, 'size-below-lower-limit bad', 20], [20.0251, 'size-above-upper-limit bad', 20.021],
  ])('%d mm: %s, against %d', (measuredMm, expected, limitMm) => {
    const [finding] = look({ measuredMm }).findings;
    expect(`${finding?.code ?? ''} ${finding?.severity ?? ''}`).toBe(expected);
    expect(finding?.parameters).toMatchObject({ sizeMm: measuredMm, limitMm, guardBandMm: 0.004, uncertaintyMm: 0.004, instrument: 'stated-uncertainty' });
  });

  test('one limit alone is the one that is told', () => {
    const { lowerLimitMm: _, ...upper } = usual;
    const { upperLimitMm: __, ...lower } = usual;
    expect(conformity.compute({ ...upper, measuredMm: 20.03 }).findings[0]).toMatchObject({ code: 'size-above-upper-limit', parameters: { limitMm: 20.021 } });
    expect(conformity.compute({ ...lower, measuredMm: 19.9 }).findings[0]).toMatchObject({ code: 'size-below-lower-limit', parameters: { limitMm: 20 } });
    expect(conformity.compute(lower)).toMatchObject({ toleranceMm: null, uncertaintyShareRatio: null, capabilityRatio: null, acceptUpToMm: null, rejectAboveMm: null });
  });

  test('the numbers', () => {
    const output = look();
    expect(output).toMatchObject({ decision: 'conforms', toleranceMm: 0.021, decisionRule: 'expanded-uncertainty', guardBandMm: 0.004, smallestMm: 20.01, largestMm: 20.01 });
    expect(output.uncertaintyShareRatio).toBeCloseTo(4 / 21, 9);
    expect(output.capabilityRatio).toBeCloseTo(21 / 8, 9);
    expect(output.conformityProbability).toBeCloseTo(share(-5, 5.5), 9);
    expect(look({ measuredMm: 20.019 }).conformityProbability).toBeCloseTo(share(-9.5, 1), 9);
    expect(look({ expandedUncertaintyMm: 0.03 })).toMatchObject({ acceptFromMm: null, acceptUpToMm: null });
  });

  test('an uncertainty that fills the tolerance, or takes more than its share', () => {
    const codes = (more: Partial<ConformityInput>) => look(more).findings.map(({ code }) => code);
    // A fifth of 21 µm is 4.2.
    expect(codes({ expandedUncertaintyMm: 0.0042 })).toEqual(['size-conforms']);
    expect(codes({ expandedUncertaintyMm: 0.0043 })[1]).toMatch(/for-tolerance/);
    expect(codes({ expandedUncertaintyMm: 0.0043, largestShareRatio: 0.3 })).toEqual(['size-conforms']);
    expect(codes({ expandedUncertaintyMm: 0.011 })).toContain('no-reading-could-prove-it');
    expect(codes({ expandedUncertaintyMm: 0.0105 })).not.toContain('no-reading-could-prove-it');
    const wanted = look({ expandedUncertaintyMm: 0.0043 }).findings[1]?.parameters;
    expect(wanted).toMatchObject({ uncertaintyMm: 0.0043, toleranceMm: 0.021 });
    expect(Number(wanted?.['wantedMm'])).toBeCloseTo(0.0042, 9);
  });

  test('what was taken for granted', () => {
    const assumed = (more: Partial<ConformityInput>) => look(more).assumptions.map(({ name, value }) => `${name} ${value}`);
    expect(assumed({})).toEqual(['guard-band-rule expanded-uncertainty', 'uncertainty-share 20']);
    expect(assumed({ decisionRule: 'probability-95', largestShareRatio: 0.1 })).toEqual([]);
    expect(look().notChecked).toEqual(['process-before-measuring', 'temperature-in-uncertainty', 'form-from-one-reading']);
  });

  test('the working', () => {
    const symbols = (more: Partial<ConformityInput>) => {
      const steps = conformity.explain({ ...usual, ...more }, look(more));
      expectWorkingHolds(steps);
      return steps.map(({ symbol }) => symbol).join(' ');
    };
    expect(symbols({})).toMatch(/^x_min x_max .*T_L T_U A_L A_U R_L R_U p U\/T decision$/);
    expect(symbols({ decisionRule: 'probability-95' })).toMatch(/^x_min x_max .*T_L T_U g p U\/T decision$/);
    expect(symbols({ expandedUncertaintyMm: 0.03 })).toMatch(/T_L T_U R_L R_U p U\/T decision$/);
    expect(symbols({ lowerLimitMm: undefined })).toMatch(/T_U A_U R_U p decision$/);
    expect(symbols({ upperLimitMm: undefined })).toMatch(/T_L A_L R_L p decision$/);
    const [first] = conformity.explain(usual, look());
    expect(first).toMatchObject({ why: 'one reading', value: 20.01 });
    for (const [measuredMm, why] of [[20.01, /inside both limits/], [19.9, /outside its limit/], [20.0039, /within the reach/]] as const) expect(conformity.explain({ ...usual, measuredMm }, look({ measuredMm })).at(-1)).toMatchObject({ why: expect.stringMatching(why) as string });
  });
});
