import fc from 'fast-check';
import { expect, test } from 'vitest';
import { verdicts, type Verdict } from '@seatwright/core';
import { driverSearch, extractionPlan, seatingPlan, type Tool } from '@seatwright/core/handwork';
import type { Situation } from '@seatwright/core/seal';
import { expectWorkingHolds } from './internal/evaluate-working.js';
import { expectWords } from './internal/expect-words.js';
import { numRuns } from './internal/num-runs.js';
import { situations } from './internal/situations.js';

const rank = (verdict: Verdict) => verdicts.indexOf(verdict);
/** The standard tables take long to go through, so they are looked at less often. */
const fewRuns = Math.min(numRuns, 400);

function numbersIn(value: unknown): readonly number[] {
  if (typeof value === 'number') return [value];
  if (Array.isArray(value)) return value.flatMap(numbersIn);
  if (typeof value === 'object' && value !== null) return Object.values(value).flatMap(numbersIn);
  return [];
}

const tools: fc.Arbitrary<Tool> = fc
  .record({
    kind: fc.constantFrom('tube', 'socket', 'turned'),
    outsideUm: fc.integer({ min: 4000, max: 320_000 }),
    wallShare: fc.integer({ min: 2, max: 48 }),
    lengthMm: fc.option(fc.integer({ min: 5, max: 400 }), { nil: undefined }),
    material: fc.option(fc.constantFrom('steel', 'pvc-u', 'copper', 'aluminium', 'pe', 'pp', 'abs'), { nil: undefined }),
    outsideToleranceMm: fc.option(fc.constantFrom(0, 0.05, 0.3), { nil: undefined }),
    endSquarenessMm: fc.option(fc.constantFrom(0, 0.1, 1), { nil: undefined }),
    outOfRoundMm: fc.option(fc.constantFrom(0, 0.2), { nil: undefined }),
  })
  .map(({ outsideUm, wallShare, ...rest }) => {
    const given = Object.fromEntries(Object.entries(rest).filter(([, value]) => value !== undefined));
    return { ...given, name: 'offcut', outsideMm: outsideUm / 1000, wallMm: Math.round((outsideUm * wallShare) / 100) / 1000 } as Tool;
  });

const obstacles = fc.option(
  fc.record({ kind: fc.constantFrom('thread', 'keyway', 'key', 'spline', 'sleeve', 'shoulder'), share: fc.integer({ min: 60, max: 130 }), fromMm: fc.integer({ min: -30, max: 40 }) }),
  { nil: undefined },
);

const places: fc.Arbitrary<Situation> = fc.tuple(situations, obstacles).map(([situation, obstacle]) => {
  if (obstacle === undefined) return situation;
  const { kind, share, fromMm } = obstacle;
  return { ...situation, shaft: { ...situation.shaft, obstacles: [{ kind: kind as 'thread', diameterMm: Math.round(situation.seal.shaftMm * share) / 100, fromMm }] } };
});

const searches = fc.tuple(places, fc.array(tools, { maxLength: 6 }), fc.boolean()).map(([situation, toolsAtHand, includeStandardTubes]) => ({ ...situation, toolsAtHand, includeStandardTubes }));

const calculations = [
  ['extraction-plan', extractionPlan, places, numRuns],
  ['seating-plan', seatingPlan, places, numRuns],
  ['driver-search', driverSearch, searches, fewRuns],
] as const;

/** One calculation seen as any, so that three kinds of input share their laws. */
interface Any {
  compute(input: unknown): unknown;
  explain(input: unknown, output: unknown): Parameters<typeof expectWorkingHolds>[0];
  readonly output: { readonly '~standard': { validate(value: unknown): unknown } };
}

test.each(calculations)('%s: no number is NaN or infinite, and what comes out meets its schema', (_, calculation, inputs, runs) => {
  const any = calculation as unknown as Any;
  fc.assert(
    fc.property(inputs as fc.Arbitrary<unknown>, (input) => {
      const output = any.compute(input);
      expect(numbersIn(output).every((number) => Number.isFinite(number))).toBe(true);
      expect((any.output['~standard'].validate(JSON.parse(JSON.stringify(output))) as { readonly issues?: unknown }).issues).toBeUndefined();
    }),
    { numRuns: runs },
  );
});

test.each(calculations)('%s: every formula of the working gives the value that was computed', (_, calculation, inputs, runs) => {
  const any = calculation as unknown as Any;
  fc.assert(
    fc.property(inputs as fc.Arbitrary<unknown>, (input) => {
      expectWorkingHolds(any.explain(input, any.compute(input)));
    }),
    { numRuns: Math.min(runs, 200) },
  );
});

interface Spoken {
  readonly findings: readonly { readonly code: string; readonly parameters: object; readonly missing?: string }[];
  readonly steps?: readonly { readonly code: string; readonly parameters: object; readonly cautions: readonly string[] }[];
  readonly candidates?: readonly { readonly reasons: Spoken['findings'] }[];
  readonly nearMisses?: readonly { readonly reasons: Spoken['findings'] }[];
  readonly cautions?: readonly string[];
  readonly assumptions: readonly { readonly name: string; readonly effect: string }[];
  readonly notChecked: readonly string[];
}

test.each(calculations)('%s: every finding, step, caution, assumption and open point has words, and every placeholder a parameter', (_, calculation, inputs, runs) => {
  const any = calculation as unknown as Any;
  fc.assert(
    fc.property(inputs as fc.Arbitrary<unknown>, (input) => {
      const output = any.compute(input) as Spoken;
      expectWords({ ...output, findings: [...output.findings, ...[...(output.candidates ?? []), ...(output.nearMisses ?? [])].flatMap((tool) => tool.reasons)] });
    }),
    { numRuns: runs },
  );
});

const seal = { shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' } as const;
const bore = (boreMm: number) => ({ readings: [{ instrument: 'inside-micrometer-rod', valuesMm: [boreMm] }], depthMm: 8.5, innerEnd: 'shoulder' as const });
const verdictOf = (situation: Situation, tool: Tool): Verdict => {
  const output = driverSearch.compute({ ...situation, toolsAtHand: [tool], includeStandardTubes: false });
  return output.candidates[0]?.verdict ?? output.nearMisses[0]?.verdict ?? 'does not suit';
};

test('a tool that serves still serves when it is known better', () => {
  fc.assert(
    fc.property(fc.integer({ min: 26_000, max: 36_000 }), fc.integer({ min: 1000, max: 6000 }), fc.integer({ min: 0, max: 500 }), fc.integer({ min: 0, max: 500 }), (outsideUm, wallUm, toleranceUm, lessUm) => {
      const tool = (um: number): Tool => ({ name: 'tube', kind: 'tube', material: 'steel', lengthMm: 80, outsideMm: outsideUm / 1000, wallMm: wallUm / 1000, outsideToleranceMm: um / 1000, wallToleranceMm: 0, outOfRoundMm: 0 });
      const situation: Situation = { seal, bore: bore(35.01), seat: { kind: 'shoulder' }, lipFacing: 'inward' };
      const known = verdictOf(situation, tool(toleranceUm));
      if (rank(known) >= rank('cannot tell')) return;
      expect(rank(verdictOf(situation, tool(Math.max(toleranceUm - lessUm, 0))))).toBeLessThanOrEqual(rank(known));
    }),
    { numRuns },
  );
});

test('a tool that enters one bore enters every larger one, with no less clearance', () => {
  fc.assert(
    fc.property(fc.integer({ min: 30_000, max: 35_000 }), fc.integer({ min: 0, max: 300 }), (outsideUm, moreUm) => {
      const tool: Tool = { name: 'tube', kind: 'tube', material: 'steel', lengthMm: 80, outsideMm: outsideUm / 1000, wallMm: 2.5, outsideToleranceMm: 0.02, wallToleranceMm: 0.02, outOfRoundMm: 0 };
      const clearance = (boreMm: number) => driverSearch.compute({ seal, bore: bore(boreMm), seat: { kind: 'shoulder' }, toolsAtHand: [tool], includeStandardTubes: false }).candidates[0]?.clearanceToBoreMm;
      const tight = clearance(35);
      if (tight === undefined || tight === null) return;
      expect(clearance(35 + moreUm / 1000)).toBeGreaterThanOrEqual(tight - 1e-9);
    }),
    { numRuns },
  );
});

test('a candidate clears the shaft, and one that suits bears on the rim, even at the worst of its own tolerances', () => {
  fc.assert(
    fc.property(searches, (search) => {
      const output = driverSearch.compute({ ...search, includeStandardTubes: false });
      for (const { insideMm, outsideMm, role, verdict } of output.candidates) {
        if (rank(verdict) >= rank('cannot tell')) continue;
        if (output.required.insideOverMm !== null) expect(insideMm.low).toBeGreaterThan(output.required.insideOverMm - 1e-6);
        if (verdict === 'suits') expect(outsideMm.low).toBeGreaterThan(output.required.outsideOverMm - 1e-6);
        if (role === 'enters') expect(outsideMm.high).toBeLessThan(output.required.outsideUpToMm + 1e-6);
      }
    }),
    { numRuns: fewRuns },
  );
});

test('a hole in the face always leaves the wall asked for on both sides', () => {
  fc.assert(
    fc.property(places, fc.integer({ min: 3, max: 30 }), (situation, wallTenths) => {
      const { hole } = extractionPlan.compute({ ...situation, leastWallMm: wallTenths / 10 });
      if (hole.drillMm === null) return;
      expect(hole.wallToShaftMm).toBeGreaterThanOrEqual(wallTenths / 10 - 1e-9);
      expect(hole.wallToCaseMm).toBeGreaterThanOrEqual(wallTenths / 10 - 1e-9);
    }),
    { numRuns },
  );
});

test('a drill at its stop stays a millimetre clear of what lies behind, in the narrowest seal that the width allows, whichever way the lip faces', () => {
  const drilled = fc.sample(places, { numRuns: 2000, seed: 7 }).flatMap((situation) => {
    const { method, hole } = extractionPlan.compute(situation);
    if (method !== 'drill and screw' || hole.drillStopFromSealFaceMm === null || situation.clearBehindMm === undefined) return [];
    // A width of up to 10 mm may be 0.3 mm less by ISO 6194-1 and 0.2 mm by DIN 3760; a larger one 0.1 mm more by either.
    const narrowestMm = situation.seal.widthMm - (situation.requirementSet === 'din-3760' ? 0.2 : 0.3) - (situation.seal.widthMm <= 10 ? 0 : 0.1);
    return [{ facing: situation.lipFacing, leftMm: narrowestMm + situation.clearBehindMm - hole.drillStopFromSealFaceMm }];
  });
  for (const facing of ['inward', 'outward']) expect(drilled.filter((one) => one.facing === facing).length, facing).toBeGreaterThan(20);
  expect(Math.min(...drilled.map(({ leftMm }) => leftMm))).toBeGreaterThanOrEqual(1 - 1e-9);
});

test('the driver to turn, made anywhere within its classes, serves by the same judgement', () => {
  fc.assert(
    fc.property(places, (situation) => {
      const { turnedDriver } = driverSearch.compute({ ...situation, includeStandardTubes: false });
      if (turnedDriver?.form !== 'plain sleeve') return;
      const { outsideMm, outsideDeviationMm, insideMm, insideDeviationMm, lengthMm, insideDepthMm, isOpenThrough } = turnedDriver;
      const middle = (nominal: number, { low, high }: { readonly low: number; readonly high: number }) => nominal + (low + high) / 2;
      const outside = middle(outsideMm, outsideDeviationMm);
      const inside = middle(insideMm, insideDeviationMm);
      const tool: Tool = {
        name: 'turned',
        kind: 'turned',
        material: 'steel',
        outsideMm: outside,
        insideMm: inside,
        outsideToleranceMm: (outsideDeviationMm.high - outsideDeviationMm.low) / 2,
        wallToleranceMm: (insideDeviationMm.high - insideDeviationMm.low) / 4,
        outOfRoundMm: 0,
        lengthMm,
        ...(isOpenThrough ? {} : { closedEndDepthMm: insideDepthMm }),
      };
      const output = driverSearch.compute({ ...situation, toolsAtHand: [tool], includeStandardTubes: false });
      expect(output.nearMisses.map(({ reasons }) => reasons.filter(({ severity }) => severity === 'bad'))).toEqual([]);
    }),
    { numRuns },
  );
});
