import { expect, test } from 'vitest';
import { refused } from '../../../../tests/laws/internal/refused.js';
import { conformity } from './conformity.js';

const bore = (input: Record<string, unknown>) => conformity.run({ measures: 'inside', ...input });
const h8 = { nominalMm: 35, toleranceClass: 'H8' };
const codes = (output: { readonly findings: readonly { readonly code: string }[] }) => output.findings.map(({ code }) => code);

test('a calliper cannot prove an H8 bore of 35 mm; the finding names the micrometer that would decide', () => {
  const output = bore({ ...h8, measuredMm: 35.02, instrument: 'digital-calliper' });
  expect(output).toMatchObject({ decision: 'cannot be proven', lowerLimitMm: 35, upperLimitMm: 35.039, acceptFromMm: null, acceptUpToMm: null });
  expect(output.deciders.forThisSize).toMatchObject({ id: 'inside-micrometer-rod', costRankCount: 3 });
  expect(codes(output)).toEqual(['size-not-provable-at-upper-limit', 'other-instrument-would-decide', 'no-reading-could-prove-it', 'no-listed-instrument-for-tolerance']);
});

test('a calliper is enough where the size is far out', () => {
  const output = bore({ ...h8, measuredMm: 35.2, instrument: 'digital-calliper' });
  expect(output.decision).toBe('does not conform');
  expect(output.conformityProbability).toBeLessThan(1e-9);
  expect(output.deciders.forThisSize).toMatchObject({ costRankCount: 1 });
  expect(codes(output)).toContain('size-above-upper-limit');
});

test('an inside micrometer proves the middle of the tolerance, not its edge', () => {
  expect(bore({ ...h8, measuredMm: 35.02, instrument: 'inside-micrometer-rod' })).toMatchObject({ decision: 'conforms' });
  expect(bore({ ...h8, measuredMm: 35.038, instrument: 'inside-micrometer-rod' })).toMatchObject({ decision: 'cannot be proven' });
});

test('an oval bore is judged by its extremes, not by its mean', () => {
  const points = [[0, 34.97], [45, 35.02], [90, 35.07], [135, 35.02]].map(([angleDeg, valueMm]) => ({ angleDeg, valueMm, depthMm: 3 }));
  const output = bore({ ...h8, readings: [{ instrument: 'inside-micrometer-rod', points }] });
  expect(output).toMatchObject({ decision: 'does not conform', smallestMm: 34.97, largestMm: 35.07 });
});

test('one limit alone will do', () => {
  const output = bore({ upperLimitMm: 35.1, measuredMm: 35, expandedUncertaintyMm: 0.05 });
  expect(output).toMatchObject({ decision: 'conforms', lowerLimitMm: null, toleranceMm: null, uncertaintyShareRatio: null });
  expect(output.deciders.forTheTolerance).toBeNull();
});

test('the newer rule keeps 1.645 standard uncertainties off a limit that is alone', () => {
  const output = bore({ upperLimitMm: 35.1, measuredMm: 35.059, expandedUncertaintyMm: 0.05, decisionRule: 'probability-95' });
  expect(output.guardBandMm).toBeCloseTo(0.04112, 5);
  expect(output.decision).toBe('cannot be proven');
  expect(bore({ upperLimitMm: 35.1, measuredMm: 35.0588, expandedUncertaintyMm: 0.05, decisionRule: 'probability-95' }).decision).toBe('conforms');
});

test('an own instrument that would decide is named before one to be bought', () => {
  const instruments = [{ id: 'bore-gauge', name: 'Our bore gauge', measures: 'inside', resolutionMm: 0.001, permissibleErrorMm: 0.003 }];
  const output = bore({ ...h8, measuredMm: 35.02, instrument: 'digital-calliper', instruments });
  expect(output.deciders).toMatchObject({ forThisSize: { id: 'bore-gauge', costRankCount: 0 }, forTheTolerance: { id: 'bore-gauge' } });
});

test('repeats at one place widen the decision, and steadier reading is advised', () => {
  const points = [35.02, 35.02, 35.05, 35.02].map((valueMm) => ({ angleDeg: 0, depthMm: 3, valueMm }));
  const output = bore({ nominalMm: 35, toleranceClass: 'H9', readings: [{ instrument: 'inside-micrometer-rod', points }] });
  expect(output.budget.map(({ component }) => component)).toContain('repeatability');
  expect(output.coverageFactor).toBeGreaterThan(2);
  expect(codes(output)).toContain('steadier-readings-would-decide');
});

test.each([
  [{ measuredMm: 35 }, /instrument: missing/],
  [{ instrument: 'digital-calliper' }, /measuredMm: missing/],
  [{ measuredMm: 35, instrument: 'digital-calliper', expandedUncertaintyMm: 0.1 }, /give one of the two/],
  [{ measuredMm: 35, readings: [{ instrument: 'digital-calliper', valuesMm: [35] }] }, /give one of the two/],
])('what is given twice or not at all is refused: %j', (input, message) => {
  expect(() => bore({ ...h8, ...input })).toThrow(message);
});

test.each([
  [{}, /lowerLimitMm: missing/],
  [{ nominalMm: 35 }, /toleranceClass: missing/],
  [{ toleranceClass: 'H8' }, /nominalMm: missing/],
  [{ ...h8, upperLimitMm: 36 }, /not both/],
  [{ lowerLimitMm: 36, upperLimitMm: 35 }, /must lie below/],
  [{ nominalMm: 35, toleranceClass: 'h8' }, /class for a shaft, but inside was measured/],
])('limits must be told once and fit the part: %j', (limits, message) => {
  expect(() => bore({ measuredMm: 35, instrument: 'digital-calliper', ...limits })).toThrow(message);
});

/** U² = 4·(0.003²/3 + 0.006²/12) = 24e-6. */
const fine = { id: 'fine', name: 'Fine gauge', measures: 'inside', resolutionMm: 0.006, permissibleErrorMm: 0.003 };

test.each([
  [{ ...h8, measuredMm: 35, readings: [{ instrument: 'digital-calliper', valuesMm: [35] }] }, 'measuredMm, readings'],
  [{ ...h8, readings: [{ instrument: 'digital-calliper', valuesMm: [35] }], instrument: 'digital-calliper' }, 'instrument, readings'],
  [{ ...h8, readings: [{ instrument: 'digital-calliper', valuesMm: [35] }], expandedUncertaintyMm: 0.1 }, 'expandedUncertaintyMm, readings'],
  [{ ...h8, measuredMm: 35, instrument: 'digital-calliper', expandedUncertaintyMm: 0.1 }, 'expandedUncertaintyMm, instrument'],
  [{ measuredMm: 35, instrument: 'digital-calliper', lowerLimitMm: 36, upperLimitMm: 35 }, 'lowerLimitMm, upperLimitMm'],
  [{ measuredMm: 35, instrument: 'digital-calliper', lowerLimitMm: 35, upperLimitMm: 35 }, 'lowerLimitMm, upperLimitMm'],
  [{ measuredMm: 35, instrument: 'digital-calliper', ...h8, lowerLimitMm: 35 }, 'lowerLimitMm, toleranceClass'],
  [{ measuredMm: 35, instrument: 'digital-calliper', ...h8, upperLimitMm: 35 }, 'upperLimitMm, toleranceClass'],
  [{ measuredMm: 35, instrument: 'digital-calliper', nominalMm: 35, upperLimitMm: 35 }, 'upperLimitMm, nominalMm'],
  [{ measuredMm: 35, instrument: 'digital-calliper', nominalMm: 35, toleranceClass: 'h8' }, 'toleranceClass, measures'],
])('what contradicts is named by both fields: %j', (input, fields) => {
  expect(refused(() => bore(input))).toMatchObject({ code: 'contradiction', path: fields.split(', ')[0] });
  expect(refused(() => bore(input)).message).toMatch(new RegExp(`^${fields.replace(', ', ' and ')}: `, 'u'));
});

test('a stated uncertainty stands for all of it: named as such, nothing of the hand is missing, and no form is in one reading', () => {
  const output = bore({ ...h8, measuredMm: 35.02, expandedUncertaintyMm: 0.01 });
  expect(output).toMatchObject({ standardUncertaintyMm: 0.005, expandedUncertaintyMm: 0.01, budget: [{ component: 'stated', instrument: null }] });
  expect(output.uncertaintyShareRatio).toBeCloseTo(0.01 / 0.039, 9);
  // T/(4·u)
  expect(output.capabilityRatio).toBeCloseTo(0.039 / 0.02, 9);
  expect(output.notChecked).toEqual(['process-before-measuring', 'temperature-in-uncertainty', 'form-from-one-reading']);
  expect(output.findings[0]).toMatchObject({ code: 'size-conforms', parameters: { instrument: 'stated-uncertainty', sizeMm: 35.02, limitMm: 35.039, uncertaintyMm: 0.01, guardBandMm: 0.01 } });
  // 0.019 from either limit is 3.8 standard uncertainties.
  expect(Number((output.findings[0]?.parameters ?? {})['conformityPercent'])).toBeCloseTo(100, 1);
});

test('several readings with an instrument: its scatter or the hand, the other sets, and form are told as far as they go', () => {
  const readings = [{ instrument: 'fine', valuesMm: [35.01, 35.02] }, { instrument: 'digital-calliper', valuesMm: [35.03] }];
  expect(bore({ ...h8, readings, instruments: [fine] }).notChecked).toEqual(['process-before-measuring', 'temperature-in-uncertainty', 'hand-in-uncertainty', 'other-instruments-in-decision']);
  expect(bore({ ...h8, readings: readings.slice(0, 1), instruments: [fine] }).notChecked).toEqual(['process-before-measuring', 'temperature-in-uncertainty', 'hand-in-uncertainty']);
  const points = [35.01, 35.02].map((valueMm) => ({ angleDeg: 0, depthMm: 3, valueMm }));
  expect(bore({ ...h8, readings: [{ instrument: 'fine', points }], instruments: [fine] }).notChecked).toEqual(['process-before-measuring', 'temperature-in-uncertainty']);
  const warm = { partTemperatureC: 30, partMaterial: { youngsModulusGpa: 200, poissonRatio: 0.3, expansionPerK: 11.5e-6 } };
  const output = bore({ ...h8, measuredMm: 35.02, instrument: 'fine', instruments: [fine], ...warm });
  expect(output.notChecked).toEqual(['process-before-measuring', 'hand-in-uncertainty', 'form-from-one-reading']);
  // Part and gauge grow alike: the size stays, the uncertainty does not.
  expect(output.smallestMm).toBeCloseTo(35.02, 9);
  expect(output.expandedUncertaintyMm).toBeGreaterThan(Math.sqrt(24e-6));
});

test('the end of the size that stands nearer to its limit is the one told', () => {
  const at = (measuredMm: number, more: Record<string, unknown> = {}) => bore({ lowerLimitMm: 35, upperLimitMm: 35.04, measuredMm, expandedUncertaintyMm: 0.01, ...more }).findings[0];
  expect(at(35.005)).toMatchObject({ code: 'size-not-provable-at-lower-limit', parameters: { sizeMm: 35.005, limitMm: 35 } });
  expect(at(35.035)).toMatchObject({ code: 'size-not-provable-at-upper-limit', parameters: { limitMm: 35.04 } });
  expect(at(34.98)).toMatchObject({ code: 'size-below-lower-limit', parameters: { limitMm: 35 } });
  expect(at(35.06)).toMatchObject({ code: 'size-above-upper-limit', parameters: { limitMm: 35.04 } });
  expect(at(34.98, { upperLimitMm: undefined })).toMatchObject({ code: 'size-below-lower-limit' });
  expect(at(35.06, { lowerLimitMm: undefined })).toMatchObject({ code: 'size-above-upper-limit' });
});

test('what would settle it: the cheapest first, an own one before any to be bought, none for another way of measuring', () => {
  const asked = { lowerLimitMm: 35, upperLimitMm: 35.04, measuredMm: 35.0345, expandedUncertaintyMm: 0.02 };
  const outsideOnly = { ...fine, id: 'other', name: 'Outside gauge', measures: 'outside', permissibleErrorMm: 0.0001, resolutionMm: 0.0001 };
  const finer = { ...fine, id: 'finer', name: 'Finer gauge', permissibleErrorMm: 0.001, resolutionMm: 0.001 };
  const settled = bore({ ...asked, instruments: [outsideOnly, fine, finer] });
  // 5.5 µm from the limit: the fine one leaves 4.9, the finer one 1.3; of two as cheap the finest comes first.
  expect(settled.deciders).toMatchObject({ forThisSize: { id: 'finer', name: 'Finer gauge', costRankCount: 0, expandedUncertaintyMm: expect.closeTo(2 * Math.sqrt(1e-6 / 3 + 1e-6 / 12), 9) as number } });
  expect(settled.findings.map(({ code }) => code)).toEqual(['size-not-provable-at-upper-limit', 'other-instrument-would-decide', 'instrument-coarse-for-tolerance']);
  expect(settled.findings[1]).toMatchObject({ parameters: { instrument: 'stated-uncertainty', decider: 'Finer gauge', uncertaintyMm: 0.02 } });
  // A tenth of 0.04 is wanted unless another share is.
  expect(settled.findings[2]).toMatchObject({ parameters: { toleranceMm: 0.04, uncertaintyMm: 0.02, decider: 'Finer gauge' } });
  const undecided = bore({ ...asked, measuredMm: 35.04 });
  expect(undecided.deciders.forThisSize).toBeNull();
  expect(undecided.findings[1]).toMatchObject({ code: 'no-listed-instrument-decides', parameters: { uncertaintyMm: 0.02 } });
  expect(bore({ ...asked, measuredMm: 35.02, expandedUncertaintyMm: 0.021 }).findings.map(({ code }) => code)).toContain('no-reading-could-prove-it');
});
