import fc from 'fast-check';
import { expect, test } from 'vitest';
import { dismantling, joiningTemperature, pushForce, type DismantlingInput, type JoiningTemperatureInput, type PushForceInput } from '@seatwright/core/joint';
import { expectWorkingHolds } from './internal/evaluate-working.js';
import { expectWords, numbersIn } from './internal/expect-words.js';
import { numRuns } from './internal/num-runs.js';

const metals = ['steel-c45', 'steel-c20', 'steel-100cr6', 'al-a380', 'gjs500', 'mg-az91d'] as const;

const joints = fc.record({
  jointDiameterMm: fc.integer({ min: 5, max: 300 }),
  boreShare: fc.oneof(fc.constant(0), fc.integer({ min: 1, max: 90 })),
  hubShare: fc.integer({ min: 110, max: 300 }),
  lengthMm: fc.integer({ min: 5, max: 200 }),
  interferenceUm: fc.integer({ min: -20, max: 300 }),
  shaft: fc.constantFrom(...metals),
  hub: fc.constantFrom(...metals, 'pvc-u'),
  friction: fc.option(fc.integer({ min: 1, max: 40 }), { nil: undefined }),
});

const jointOf = ({ boreShare, hubShare, friction, ...rest }: typeof joints extends fc.Arbitrary<infer T> ? T : never) => ({
  ...rest,
  shaftBoreMm: (rest.jointDiameterMm * boreShare) / 100,
  hubOutsideMm: (rest.jointDiameterMm * hubShare) / 100,
  ...(friction === undefined ? {} : { frictionCoefficient: friction / 100 }),
});

test('push-force: the area under the curve is the work, the end of the curve the largest force', () => {
  fc.assert(
    fc.property(joints, fc.integer({ min: 0, max: 100 }), (drawn, leadShare) => {
      const joint = jointOf(drawn);
      if (joint.hub === 'pvc-u' && joint.frictionCoefficient === undefined) return;
      const input: PushForceInput = { ...joint, leadInMm: (joint.lengthMm * leadShare) / 100, curvePointCount: 2000 };
      const output = pushForce.compute(input);
      expect(numbersIn(output).every(Number.isFinite)).toBe(true);
      let area = 0;
      output.curve.forEach(({ depthMm, highForceN }, i) => {
        const before = output.curve[i - 1];
        if (before !== undefined) area += ((highForceN + before.highForceN) / 2) * (depthMm - before.depthMm);
      });
      expect(Math.abs(area / 1000 - output.highWorkJ)).toBeLessThanOrEqual(1e-5 * output.highWorkJ + 1e-9);
      expect(output.curve.at(-1)?.highForceN).toBeCloseTo(output.highForceN, 6);
      expect(output.lowForceN).toBeLessThanOrEqual(output.highForceN);
      expectWords(output);
      expectWorkingHolds(pushForce.explain(input, output));
    }),
    { numRuns },
  );
});

test('push-force without a friction at hand asks for one', () => {
  expect(() => pushForce.run({ jointDiameterMm: 40, shaftBoreMm: 0, hubOutsideMm: 80, lengthMm: 40, interferenceUm: 30, shaft: 'steel-c45', hub: 'pvc-u' })).toThrow(/frictionCoefficient: missing/);
});

test('dismantling: words, working, no NaN; a stronger press never does worse', () => {
  fc.assert(
    fc.property(joints, fc.option(fc.integer({ min: 1, max: 1_000_000 }), { nil: undefined }), (drawn, pressN) => {
      const input: DismantlingInput = { ...jointOf(drawn), ...(pressN === undefined ? {} : { pressN }) };
      const output = dismantling.compute(input);
      expect(numbersIn(output).every(Number.isFinite)).toBe(true);
      expectWords(output);
      expectWorkingHolds(dismantling.explain(input, output));
      if (pressN !== undefined && output.verdict === 'suits') expect(dismantling.compute({ ...input, pressN: pressN * 2 }).verdict).toBe('suits');
    }),
    { numRuns },
  );
});

const joinings: fc.Arbitrary<JoiningTemperatureInput> = fc
  .record({
    jointDiameterMm: fc.integer({ min: 5, max: 500 }),
    interferenceUm: fc.integer({ min: -30, max: 400 }),
    joiningClearanceUm: fc.option(fc.integer({ min: 0, max: 200 }), { nil: undefined }),
    outerMaterial: fc.constantFrom(...metals),
    innerMaterial: fc.constantFrom(...metals),
    ambientC: fc.integer({ min: -20, max: 45 }),
    outerLimitC: fc.option(fc.integer({ min: 40, max: 350 }), { nil: undefined }),
    innerLimitC: fc.option(fc.integer({ min: -196, max: 20 }), { nil: undefined }),
    hasSealOrGrease: fc.option(fc.boolean(), { nil: undefined }),
  })
  .map((drawn) => Object.fromEntries(Object.entries(drawn).filter(([, value]) => value !== undefined)) as JoiningTemperatureInput);

test('joining-temperature: the room that its two temperatures make is what is needed, or more where none is; words and working hold', () => {
  fc.assert(
    fc.property(joinings, (input) => {
      const output = joiningTemperature.compute(input);
      expect(numbersIn(output).every(Number.isFinite)).toBe(true);
      expectWords(output);
      const steps = joiningTemperature.explain(input, output);
      expectWorkingHolds(steps);
      const room = steps.find((step) => step.symbol === 'r');
      const roomUm = typeof room?.value === 'number' ? room.value : Number.NaN;
      expect(output.outerPartC).toBeLessThanOrEqual(Math.max(output.outerLimitC, input.ambientC) + 1e-9);
      expect(output.innerPartC).toBeGreaterThanOrEqual(output.innerLimitC - 1e-9);
      expect((joiningTemperature.output['~standard'].validate(JSON.parse(JSON.stringify(output))) as { readonly issues?: unknown }).issues).toBeUndefined();
      if (input.innerLimitC !== undefined) expect(output.alternativeInnerC).toBeNull();
      if (input.hasSealOrGrease === true) expect(output.outerLimitC).toBeLessThanOrEqual(80);
      expect(output.gapAtLimitSpanUm.low).toBe(output.gapAtLimitUm);
      expect(output.outerPartSpanC === null).toBe(!output.feasible);
      if (output.outerPartSpanC !== null) expect(Math.abs(output.outerPartSpanC.high - output.outerPartC)).toBeLessThan(1e-6);
      if (output.innerPartSpanC !== null) expect(Math.abs(output.innerPartSpanC.low - output.innerPartC)).toBeLessThan(1e-6);
      if (!output.feasible) {
        expect(roomUm).toBeLessThan(output.neededGapUm);
        expect(output.alternative).not.toBeNull();
        return;
      }
      expect(output.alternative).toBeNull();
      expect(roomUm).toBeGreaterThanOrEqual(output.neededGapUm - 1e-4);
      if (output.outerPartC !== input.ambientC || output.innerPartC !== input.ambientC) expect(roomUm).toBeLessThan(output.neededGapUm + 1e-4);
    }),
    { numRuns },
  );
});

test('joining-temperature: more interference never asks for less heat, a higher limit never makes it worse', () => {
  fc.assert(
    fc.property(joinings, fc.integer({ min: 1, max: 100 }), (input, more) => {
      const base = joiningTemperature.compute(input);
      const tighter = joiningTemperature.compute({ ...input, interferenceUm: input.interferenceUm + more });
      if (tighter.feasible) {
        expect(base.feasible).toBe(true);
        expect(tighter.outerPartC).toBeGreaterThanOrEqual(base.outerPartC - 1e-9);
        expect(tighter.innerPartC).toBeLessThanOrEqual(base.innerPartC + 1e-9);
      }
      if (base.feasible) expect(joiningTemperature.compute({ ...input, outerLimitC: base.outerLimitC + more }).feasible).toBe(true);
    }),
    { numRuns },
  );
});

test('a small bearing ring: 120 °C makes 30 mm of bore grow by some 36 µm, so a generous gap over a tight seat is not to be had', () => {
  const output = joiningTemperature.run({ jointDiameterMm: 30, interferenceUm: 25, outerMaterial: 'steel-100cr6', innerMaterial: 'steel-c45', ambientC: 20 });
  expect(output.outerLimitC).toBe(120);
  expect(output.feasible).toBe(false);
  expect(output.gapAtLimitUm).toBeGreaterThan(5);
  expect(output.findings[0]?.code).toBe('joins-with-less-clearance');
  expect(output.alternative).toBe('both');
});

test('no limit at hand is asked for, not guessed', () => {
  expect(() => joiningTemperature.run({ jointDiameterMm: 30, interferenceUm: 25, outerMaterial: 'brass-cuzn30', innerMaterial: 'steel-c45', ambientC: 20 })).toThrow(/outerLimitC: missing; no heating limit/);
});
