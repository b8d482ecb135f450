import { expect, test } from 'vitest';
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
