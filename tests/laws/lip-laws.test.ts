import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fluids, lipHeat, lipMaterials, lipMaterialsFor, sealCheck, wearTrackRemedies, type LipHeatInput, type Situation } from '@seatwright/core/seal';
import { expectWorkingHolds } from './internal/evaluate-working.js';
import { expectWords, numbersIn } from './internal/expect-words.js';
import { numRuns } from './internal/num-runs.js';

const order = ['suits', 'suits with care', 'cannot tell', 'does not suit'];

const heats: fc.Arbitrary<LipHeatInput> = fc.record(
  {
    shaftDiameterMm: fc.integer({ min: 6, max: 400 }),
    speedRpm: fc.integer({ min: 0, max: 12_000 }),
    lipMaterial: fc.constantFrom(...lipMaterials),
    fluidTemperatureC: fc.integer({ min: 20, max: 260 }),
    fluid: fc.constantFrom(...fluids),
    viscosityAt40CMm2PerS: fc.integer({ min: 2, max: 3200 }),
    hasDustLip: fc.boolean(),
  },
  { requiredKeys: ['shaftDiameterMm', 'speedRpm', 'lipMaterial', 'fluidTemperatureC'] },
);

test('lip-heat: words and working hold; faster or hotter is never better, and never makes less heat', () => {
  fc.assert(
    fc.property(heats, fc.integer({ min: 0, max: 3000 }), fc.integer({ min: 0, max: 60 }), (input, rpm, kelvins) => {
      const output = lipHeat.compute(input);
      expectWords(output);
      expectWorkingHolds(lipHeat.explain(input, output));
      expect(numbersIn(output).every(Number.isFinite)).toBe(true);
      const faster = lipHeat.compute({ ...input, speedRpm: input.speedRpm + rpm });
      const hotter = lipHeat.compute({ ...input, fluidTemperatureC: input.fluidTemperatureC + kelvins });
      expect(faster.frictionPowerW.high).toBeGreaterThanOrEqual(output.frictionPowerW.high - 1e-9);
      for (const later of [faster, hotter]) {
        expect(later.lipTemperatureC.high).toBeGreaterThanOrEqual(output.lipTemperatureC.high);
        expect(order.indexOf(later.verdict)).toBeGreaterThanOrEqual(order.indexOf(output.verdict));
      }
    }),
    { numRuns },
  );
});

const seal = { shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case' } as const;
const places: fc.Arbitrary<Situation> = fc.record({
  seal: fc.record({ shaftMm: fc.constant(20), outsideMm: fc.constant(35), widthMm: fc.constant(7), construction: fc.constant('metal-case' as const), lipMaterial: fc.constantFrom(...lipMaterials), hasDustLip: fc.boolean() }),
  running: fc.record({ speedRpm: fc.integer({ min: 0, max: 12_000 }), fluid: fc.constantFrom(...fluids), fluidTemperatureC: fc.integer({ min: -40, max: 260 }), runsDry: fc.boolean() }, { requiredKeys: [] }),
});

test('lip-materials: every rubber once, best first, judged exactly as the seal check judges it', () => {
  fc.assert(
    fc.property(places, (situation) => {
      const output = lipMaterialsFor.compute(situation);
      expectWords(output);
      expectWorkingHolds(lipMaterialsFor.explain(situation, output));
      expect(output.rubbers.map(({ lipMaterial }) => lipMaterial).toSorted()).toEqual(lipMaterials.toSorted());
      expect(output.rubbers.map(({ verdict }) => order.indexOf(verdict))).toEqual(output.rubbers.map(({ verdict }) => order.indexOf(verdict)).toSorted());
      for (const { lipMaterial, findings, isTheOneGiven } of output.rubbers) {
        expectWords({ findings, assumptions: [], notChecked: [] });
        expect(isTheOneGiven).toBe(lipMaterial === situation.seal.lipMaterial);
        const checked = sealCheck.compute({ ...situation, seal: { ...situation.seal, lipMaterial } }).findings;
        for (const finding of findings) expect(checked).toContainEqual(finding);
      }
    }),
    { numRuns: Math.min(numRuns, 500) },
  );
});

const depth = fc.integer({ min: 0, max: 120 }).map((tenths) => tenths / 10);
const tracks: fc.Arbitrary<Situation> = fc.record(
  {
    seal: fc.constant({ ...seal, lipMaterial: 'NBR' as const }),
    bore: fc.record({ depthMm: depth.map((mm) => mm + 5), innerEnd: fc.constantFrom('shoulder', 'open') }, { requiredKeys: [] }),
    shaft: fc.record({ obstacles: fc.array(fc.record({ kind: fc.constantFrom('keyway', 'thread', 'spline'), diameterMm: fc.constant(18), fromMm: fc.integer({ min: -12, max: 20 }), lengthMm: fc.integer({ min: 1, max: 10 }) }), { maxLength: 2 }) }),
    wearTrack: fc.record({ catchesNail: fc.boolean(), widthMm: depth.map((mm) => mm / 5 + 0.1), depthMm: depth.map((mm) => mm / 60), fromFaceMm: depth }, { requiredKeys: [] }),
    oldDepthMm: fc.array(depth, { minLength: 1, maxLength: 4 }),
    clearBehindMm: depth,
    running: fc.record({ fluidTemperatureC: fc.integer({ min: -20, max: 120 }) }),
  },
  { requiredKeys: ['seal', 'wearTrack'] },
);

test('wear-track: words and working hold; a remedy that suits leaves the track and stays in the bore', () => {
  fc.assert(
    fc.property(tracks, (situation) => {
      const output = wearTrackRemedies.compute(situation);
      expectWords(output);
      expectWorkingHolds(wearTrackRemedies.explain(situation, output));
      for (const option of output.options) {
        expectWords({ findings: option.findings, assumptions: [], notChecked: [] });
        if (option.verdict === 'does not suit' || option.verdict === 'cannot tell') continue;
        if (option.moveMm !== null && option.newDepthMm !== null) {
          expect(Math.abs(option.moveMm)).toBeGreaterThanOrEqual(situation.wearTrack?.widthMm ?? 1);
          if (situation.bore?.depthMm !== undefined && option.moveMm > 0) expect(option.newDepthMm + seal.widthMm).toBeLessThanOrEqual(situation.bore.depthMm + 1e-9);
          if (option.newDepthMm < 0) expect((situation.bore?.depthMm ?? 0) + 0).toBeGreaterThan(0);
        }
        if (option.kind === 'regrind and smaller seal') expect(option.newShaftMm).toBeLessThanOrEqual(20 - 2 * (situation.wearTrack?.depthMm ?? 0));
        if (option.kind === 'turned sleeve and larger seal') expect(option.newShaftMm).toBeGreaterThanOrEqual(24);
        if (option.sleeveBoreLowerMm !== null) {
          expect(option.sleeveBoreLowerMm).toBeLessThan(option.sleeveBoreUpperMm ?? 0);
          expect(option.sleeveBoreUpperMm ?? 0).toBeLessThan(20);
        }
      }
    }),
    { numRuns: Math.min(numRuns, 500) },
  );
});
