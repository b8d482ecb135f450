import { expect, test } from 'vitest';
import { measuredSizeCalculation } from './measured-size-calculation.js';

/** U = 2·√(MPE²/3 + step²/12): MPE² = 9e-6 and step² = 36e-6 give U² = 4·(3e-6 + 3e-6) = 24e-6; twice both, four times that. */
const instruments = [
  { id: 'fine', name: 'Fine gauge', measures: 'inside', resolutionMm: 0.006, permissibleErrorMm: 0.003 },
  { id: 'coarse', measures: 'inside', resolutionMm: 0.012, permissibleErrorMm: 0.006 },
];
const asked = (input: Record<string, unknown>) => ({ measures: 'inside', instruments, ...input });
const run = (input: Record<string, unknown>) => measuredSizeCalculation.run(asked(input));
const steps = (input: Record<string, unknown>) => measuredSizeCalculation.explain(measuredSizeCalculation.input.parse(asked(input)), run(input)).map((step) => ({ ...step, value: step.kind === 'formula' || step.kind === 'choice' ? step.value : null }));
const listed = (input: Record<string, unknown>) => steps(input).map(({ symbol, value }) => [symbol, Number(Number(value).toPrecision(6))]);
const at = (angleDeg: number, depthMm: number, valueMm: number) => ({ angleDeg, depthMm, valueMm });

test('three readings of one place: scatter 0.01, so that u² = 6e-6 + 1e-4/3 and two degrees of freedom are left', () => {
  const readings = [{ instrument: 'fine', valuesMm: [20, 20.01, 20.02] }];
  // ν = 2·(39.333/33.333)² = 2.78, cut to 2; t(95.45 %, 2) = 4.53 and the table of outliers for 3 readings, 1.154, as published.
  expect(listed({ readings })).toEqual([['U', 0.00489898], ['s', 0.01], ['u_s', 0.0057735], ['G', 1], ['d', 20.01], ['u', 0.00627163], ['ν', 2], ['k', 4.52654], ['U', 0.0283888]]);
  const [own, deviation, ofMean, furthest, size, combined, degrees, factor, expanded] = steps({ readings });
  expect(own).toMatchObject({ kind: 'formula', scope: { MPE: 0.003, step: 0.006 }, unit: 'mm', meaning: expect.stringContaining('Fine gauge') as string });
  expect(deviation).toMatchObject({ kind: 'choice', unit: 'mm', why: expect.stringMatching(/without a place/u) as string });
  expect(ofMean).toMatchObject({ scope: { n: 3 }, source: { clause: '4.2' } });
  expect(furthest).toMatchObject({ unit: '', why: expect.stringMatching(/^does not stand apart: chance allows 1\.154/u) as string });
  expect(size).toMatchObject({ kind: 'choice', why: 'mean of all readings', unit: 'mm' });
  expect(combined).toMatchObject({ meaning: expect.stringMatching(/u1 permissible-error, u2 step, u3 repeatability$/u) as string, scope: { c1: 1, c2: 1, c3: 1, u1: 0.003 / Math.sqrt(3), u2: 0.006 / Math.sqrt(12) } });
  expect(degrees).toMatchObject({ scope: { c3: 1, n3: 2 }, unit: '' });
  expect(degrees && 'scope' in degrees ? Object.keys(degrees.scope).toSorted() : []).toEqual(['c3', 'n3', 'u', 'u3']);
  expect(factor).toMatchObject({ why: expect.stringMatching(/^factor of Student's t for 95\.45 % and 2 degrees/u) as string });
  expect(expanded).toMatchObject({ formula: 'k * u', unit: 'mm' });
  expect(run({ readings })).toMatchObject({
    effectiveDegreesOfFreedomCount: 2, repeatabilityMm: expect.closeTo(0.01, 12) as number, outlier: { distanceRatio: expect.closeTo(1, 9) as number, criticalRatio: expect.closeTo(1.1543, 4) as number, isOutlier: false },
    assumptions: [{ name: 'outlier-false-alarm', value: 5, unit: '%' }], notChecked: ['form-between-readings', 'temperature-in-uncertainty', 'odd-lobes'],
    findings: [{ code: 'too-few-readings', parameters: { readingCount: 3, coverageFactor: expect.closeTo(4.5265, 4) as number, uncertaintyMm: expect.closeTo(0.0283888, 7) as number } }],
  });
});

test('two sets weigh by 1/U²: four fifths and one fifth; that they lie 0.05 apart where √(24e-6 + 96e-6) is allowed is told', () => {
  const readings = [{ instrument: 'fine', valuesMm: [20.01] }, { instrument: 'coarse', valuesMm: [20.06] }];
  expect(listed({ readings })).toEqual([['U_1', 0.00489898], ['U_2', 0.00979796], ['d', 20.02], ['d', 20.02], ['u', 0.00219089], ['k', 2], ['U', 0.00438178]]);
  expect(steps({ readings })[2]).toMatchObject({ why: 'means of the sets, weighted by 1/U²' });
  expect(steps({ readings })[3]).toMatchObject({ formula: '(d1 / U1^2 + d2 / U2^2) / (1 / U1^2 + 1 / U2^2)', scope: { d1: 20.01, d2: 20.06, U1: expect.closeTo(Math.sqrt(24e-6), 12) as number, U2: expect.closeTo(Math.sqrt(96e-6), 12) as number } });
  expect(steps({ readings })[5]).toMatchObject({ why: 'only stated limits weigh: k = 2 for about 95 %' });
  const output = run({ readings });
  expect(output.findings).toMatchObject([{ code: 'instruments-disagree', parameters: { apartMm: expect.closeTo(0.05, 9) as number, allowedMm: expect.closeTo(Math.sqrt(120e-6), 9) as number, lowMm: 20.01, highMm: 20.06, instrument: 'Fine gauge', otherInstrument: 'coarse' } }]);
  expect(output).toMatchObject({ permissibleErrorMm: 0.003, resolutionMm: 0.006, smallestMm: 20.01, largestMm: 20.01, notChecked: ['operator-form-temperature-in-uncertainty'], assumptions: [] });
  expect(output.budget.map(({ instrument, component, sensitivityFactor }) => [instrument, component, Number(sensitivityFactor.toFixed(9))])).toEqual([['fine', 'permissible-error', 0.8], ['fine', 'step', 0.8], ['coarse', 'permissible-error', 0.2], ['coarse', 'step', 0.2]]);
  // The other way round, and just within what is allowed: 0.01095 mm.
  expect(run({ readings: [...readings].reverse() }).findings).toMatchObject([{ parameters: { instrument: 'Fine gauge', otherInstrument: 'coarse' } }]);
  expect(run({ readings: [{ instrument: 'fine', valuesMm: [20.06] }, { instrument: 'coarse', valuesMm: [20.01] }] }).findings).toMatchObject([{ parameters: { lowMm: 20.01, highMm: 20.06, instrument: 'coarse', otherInstrument: 'Fine gauge' } }]);
  for (const [apart, codes] of [[0.0109, []], [0.011, ['instruments-disagree']]] as const) expect(run({ readings: [{ instrument: 'fine', valuesMm: [20] }, { instrument: 'coarse', valuesMm: [20 + apart] }] }).findings.map(({ code }) => code)).toEqual(codes);
});

test('an oval of 20 µm along 0° in a taper of 2 µm a millimetre: D = 20.02 + 0.01·cos 2φ + 0.002·(z − 5)', () => {
  const points = [at(0, 0, 20.02), at(60, 0, 20.005), at(120, 0, 20.005), at(0, 10, 20.04), at(60, 10, 20.025), at(120, 10, 20.025)];
  const readings = [{ instrument: 'fine', points }];
  const found = steps({ readings });
  expect(found.map(({ symbol }) => symbol)).toEqual(['U', 's', 'u_s', 'd', 'D_0', 'o', 't', 'u', 'k', 'U']);
  expect(found[1]).toMatchObject({ why: 'about the fitted oval and taper', value: expect.closeTo(0, 9) as number });
  expect(found[4]).toMatchObject({ value: expect.closeTo(20.02, 9) as number, unit: 'mm', why: expect.stringMatching(/through 6 diameters$/u) as string });
  expect(found[5]).toMatchObject({ value: 20, unit: 'µm', why: expect.stringMatching(/the largest at 0\.0°$/u) as string });
  expect(found[6]).toMatchObject({ value: expect.closeTo(20, 9) as number, unit: 'µm', scope: { L: 10, m: expect.closeTo(0.002, 9) as number } });
  const output = run({ readings });
  expect(output).toMatchObject({ leastSquaresDiameterMm: expect.closeTo(20.02, 9) as number, harmonicOvalityUm: 20, largestAtDeg: 0, fittedTaperUm: 20, taperRatio: expect.closeTo(0.002, 9) as number, isWavy: false, outlier: null });
  expect(output.assumptions.map(({ name, value }) => [name, value])).toEqual([['two-point-contact', 'two-point'], ['waviness-steps', 2]]);
  expect(output.findings).toMatchObject([{ code: 'oval-with-direction', parameters: { ovalityUm: 20, largestAtDeg: 0 } }]);
  // Said to touch at two points, it need not be assumed; an oval of one step is not told.
  expect(run({ readings, contact: 'two-point' }).assumptions.map(({ name }) => name)).toEqual(['waviness-steps']);
  const oval = (um: number) => run({ readings: [{ instrument: 'fine', points: [0, 60, 120].map((angle) => at(angle, 0, 20 + (um / 2000) * Math.cos((angle * Math.PI) / 90))) }] }).findings.map(({ code }) => code);
  expect([oval(5.9), oval(6.1)]).toEqual([[], ['oval-with-direction']]);
});

test('a round bore has no direction, and no taper without depths', () => {
  const readings = [{ instrument: 'fine', points: [0, 60, 120].map((angle) => at(angle, 0, 20.1)) }];
  expect(listed({ readings })).toEqual([['U', 0.00489898], ['d', 20.1], ['D_0', 20.1], ['o', 0], ['u', 0.00244949], ['k', 2], ['U', 0.00489898]]);
  expect(steps({ readings })[3]).toMatchObject({ why: 'no direction is larger' });
  expect(run({ readings })).toMatchObject({ harmonicOvalityUm: 0, largestAtDeg: null, isWavy: null, findings: [], taperUm: null });
});

test('at 40 °C with a gauge of 30 °C: D·(1 + 11.5e-6·10)/(1 + 21.8e-6·20), four lines of limits over √3', () => {
  const input = { readings: [{ instrument: 'fine', valuesMm: [50] }], partTemperatureC: 40, instrumentTemperatureC: 30, temperatureUncertaintyK: 0.5, partMaterial: { youngsModulusGpa: 71, poissonRatio: 0.33, expansionPerK: 21.8e-6 } };
  const at20 = (50 * 1.000115) / 1.000436;
  expect(steps(input)[2]).toMatchObject({ symbol: 'd_20', value: expect.closeTo(at20, 10) as number, scope: { d: 50, a_i: 11.5e-6, T_i: 10, a_p: 21.8e-6, T_p: 20 }, source: { id: 'iso-1-2022' } });
  const output = run(input);
  expect(output.sizeAt20CMm).toBeCloseTo(at20, 10);
  expect(output.findings).toMatchObject([{ code: 'size-corrected-to-20-c', parameters: { correctionUm: expect.closeTo((at20 - 50) * 1000, 6) as number, meanMm: 50 } }]);
  // Stated expansion is exact; the gauge is known within 2e-6, both temperatures within half a kelvin.
  const limits = [0, 50 * 10 * 2e-6, 50 * 21.8e-6 * 0.5, 50 * 11.5e-6 * 0.5].map((limit) => limit / Math.sqrt(3));
  expect(output.budget.slice(2).map(({ component, standardUncertaintyMm }) => [component, Number(standardUncertaintyMm.toPrecision(9))])).toEqual(['part-expansion', 'instrument-expansion', 'part-temperature', 'instrument-temperature'].map((name, i) => [name, Number((limits[i] ?? 0).toPrecision(9))]));
  expect(output.assumptions).toMatchObject([{ name: 'instrument-expansion', value: 9.5, upToValue: 13.5 }]);
  expect(output.notChecked).toEqual(['form-between-readings', 'repeatability-of-every-set']);
  expect(output.expandedUncertaintyMm).toBeCloseTo(2 * Math.sqrt(6e-6 + limits.reduce((sum, limit) => sum + limit ** 2, 0)), 12);
});

test('what a temperature leaves open is assumed and told', () => {
  const readings = [{ instrument: 'fine', valuesMm: [50] }];
  const named = (input: Record<string, unknown>) => run({ readings, ...input }).assumptions.map(({ name, value }) => [name, value]);
  // The table has a span for this alloy: it is told with it.
  expect(named({ partTemperatureC: 25, partMaterial: 'al-a380' })).toEqual([['instrument-expansion', 9.5], ['part-expansion-scatter', expect.any(Number)], ['instrument-temperature-as-part', 25], ['temperature-uncertainty', 1]]);
  expect(() => run({ readings, temperatureUncertaintyK: 1 })).toThrow(/^partTemperatureC: missing/u);
  // 50·(1.0000575/1.000058 − 1) is under a tenth of the step of 6 µm: not worth a line.
  expect(run({ readings, partTemperatureC: 25, partMaterial: { youngsModulusGpa: 200, poissonRatio: 0.3, expansionPerK: 11.6e-6 } }).findings).toEqual([]);
});

test('repeats at a place are told apart from form; lobes under four deviations of them are not called wavy', () => {
  const same = run({ readings: [{ instrument: 'fine', points: [at(0, 2, 20), at(0, 2, 20.02), at(180, 2, 20.01)] }] });
  expect(same.repeatabilityMm).toBeCloseTo(0.01, 9);
  expect(steps({ readings: [{ instrument: 'fine', points: [at(0, 2, 20), at(0, 2, 20.02), at(180, 2, 20.01)] }] })[1]).toMatchObject({ symbol: 's', why: 'from places read more than once, pooled' });
  const lobes = (repeatMm: number) => [0, 30, 60, 90, 120, 150].flatMap((angle) => [-1, 1].map((sign) => at(angle, 2, 20 + 0.02 * Math.cos((4 * angle * Math.PI) / 180) + sign * repeatMm)));
  // Twelve readings at six places: s² = 12·r²/6, so s = 1.414·r. cos 4φ goes from −½ to 1: without repeats the residuals span 0.03 mm.
  expect(run({ readings: [{ instrument: 'fine', points: lobes(0) }] })).toMatchObject({ isWavy: true, findings: [{ code: 'surface-wavy', parameters: { limitUm: 12, spreadUm: expect.closeTo(30, 6) as number } }] });
  const noisy = run({ readings: [{ instrument: 'fine', points: lobes(0.03) }] });
  expect(noisy.repeatabilityMm).toBeCloseTo(0.03 * Math.SQRT2, 9);
  expect(noisy.isWavy).toBe(false);
});
