import fc from 'fast-check';
import { expect, test } from 'vitest';
import { expectWorkingHolds } from '../../../../tests/laws/internal/evaluate-working.js';
import { drawInRod } from './draw-in-rod.js';

test('the torque of an oiled thread lies near the rule of a fifth: T = 0.2·F·d (common practice, no source)', () => {
  for (const { thread, torqueNm } of drawInRod.run({ pushForceN: 10_000, condition: 'oiled' }).candidates) {
    const rule = (0.2 * 10_000 * Number(thread.slice(1))) / 1000;
    expect(torqueNm.low).toBeLessThan(rule);
    expect(torqueNm.high).toBeGreaterThan(rule * 0.9);
  }
});

test('the smallest rod that is strong enough comes first; where none is, the strongest', () => {
  expect(drawInRod.run({ pushForceN: 2200 }).candidates[0]?.thread).toBe('M8');
  const weak = drawInRod.run({ pushForceN: '80 kN', threads: ['M6', 'M10'] });
  expect(weak).toMatchObject({ verdict: 'does not suit', candidates: [{ thread: 'M10' }, { thread: 'M6' }] });
});

test('torque grows with force and friction, strength with size; the working holds', () => {
  fc.assert(
    fc.property(fc.integer({ min: 10, max: 100_000 }), fc.integer({ min: 1, max: 100 }), (forceN, more) => {
      const base = drawInRod.run({ pushForceN: forceN, condition: 'oiled', threads: ['M10'] });
      const harder = drawInRod.run({ pushForceN: forceN + more, condition: 'oiled', threads: ['M10'] });
      const dry = drawInRod.run({ pushForceN: forceN, condition: 'dry', threads: ['M10'] });
      expect(harder.candidates[0]?.torqueNm.high).toBeGreaterThan(base.candidates[0]?.torqueNm.high ?? Infinity);
      expect(dry.candidates[0]?.torqueNm.high).toBeGreaterThan(base.candidates[0]?.torqueNm.high ?? Infinity);
      expect(drawInRod.run({ pushForceN: forceN, threads: ['M12'] }).candidates[0]?.reserveFactor).toBeGreaterThan(drawInRod.run({ pushForceN: forceN, threads: ['M10'] }).candidates[0]?.reserveFactor ?? Infinity);
      const input = { pushForceN: forceN, threads: ['M10'] };
      expect(expectWorkingHolds(drawInRod.explain(input, drawInRod.compute(input)))).toBe(2);
    }),
  );
});

test('a hole that no rod passes is said', () => expect(() => drawInRod.run({ pushForceN: 100, passesMm: 4 })).toThrow(/no thread of the table passes a hole of 4 mm/));

/** M10: pitch 1.5, stress area 58 mm², 16 across flats. */
const byHand = (mu: number, forceN: number) => {
  const thread = forceN * (1.5 / (2 * Math.PI) + (mu * (10 - 0.649519 * 1.5)) / (2 * Math.cos(Math.PI / 6)));
  const shear = (16 * thread) / (Math.PI * Math.sqrt((4 * 58) / Math.PI) ** 3);
  return { torqueNm: (thread + (forceN * mu * 26) / 4) / 1000, vonMisesMpa: Math.sqrt((forceN / 58) ** 2 + 3 * shear ** 2) };
};
const codes = (input: Parameters<typeof drawInRod.run>[0]) => drawInRod.run(input).findings.map(({ code, severity, parameters }) => [code, severity, parameters]);
const close = (value: number) => expect.closeTo(value, 6) as number;

test('an M10 by hand: torque from oiled to dry, stress of pull and twist at the dry end', () => {
  const [best] = drawInRod.run({ pushForceN: 3000, threads: ['M10'] }).candidates;
  expect(best).toMatchObject({ thread: 'M10', pitchMm: 1.5, acrossFlatsMm: 16, torqueNm: { low: close(byHand(0.08, 3000).torqueNm), high: close(byHand(0.24, 3000).torqueNm) }, tensileStressMpa: close(3000 / 58), vonMisesMpa: close(byHand(0.24, 3000).vonMisesMpa), reserveFactor: close(240 / byHand(0.24, 3000).vonMisesMpa) });
  const of = (condition: 'dry' | 'oiled') => drawInRod.run({ pushForceN: 3000, threads: ['M10'], condition }).candidates[0]?.torqueNm;
  expect(of('oiled')).toEqual({ low: close(byHand(0.08, 3000).torqueNm), high: close(byHand(0.16, 3000).torqueNm) });
  expect(of('dry')).toEqual({ low: close(byHand(0.16, 3000).torqueNm), high: close(byHand(0.24, 3000).torqueNm) });
});

test('twice the strength is wanted: below it with care, below once not at all', () => {
  // The stress grows with the force: 240 MPa are met at one force.
  const atOnce = (3000 * 240) / byHand(0.24, 3000).vonMisesMpa;
  const at = (share: number) => drawInRod.run({ pushForceN: atOnce * share, threads: ['M10'] });
  const told = (share: number) => [at(share).verdict, at(share).candidates[0]?.verdict, at(share).findings[0]?.code, at(share).findings[0]?.severity];
  expect(told(0.4999)).toEqual(['suits', 'suits', 'rod-draws-it-in', 'good']);
  expect(told(0.5001)).toEqual(['suits with care', 'suits with care', 'rod-barely-draws-it-in', 'care']);
  expect(told(0.9999)).toEqual(['suits with care', 'suits with care', 'rod-barely-draws-it-in', 'care']);
  expect(told(1.0001)).toEqual(['does not suit', 'does not suit', 'rod-too-weak', 'bad']);
  expect(codes({ pushForceN: 3000, threads: ['M10'] })).toEqual([['rod-draws-it-in', 'good', { thread: 'M10', reserveFactor: close(240 / byHand(0.24, 3000).vonMisesMpa), wantedFactor: 2, lowTorqueNm: close(byHand(0.08, 3000).torqueNm), highTorqueNm: close(byHand(0.24, 3000).torqueNm), pushForceN: 3000 }]]);
  // A better rod is stronger by its yield strength.
  expect(drawInRod.run({ pushForceN: 3000, threads: ['M10'], yieldMpa: 480 }).candidates[0]?.reserveFactor).toBeCloseTo(480 / byHand(0.24, 3000).vonMisesMpa, 9);
});

test('a rod must be thinner than the hole; those that are strong keep the order of the table', () => {
  expect(drawInRod.run({ pushForceN: 100, passesMm: 10 }).candidates.map(({ thread }) => thread)).not.toContain('M10');
  expect(drawInRod.run({ pushForceN: 100, passesMm: 10.01 }).candidates.map(({ thread }) => thread)).toContain('M10');
  expect(() => drawInRod.run({ pushForceN: 100, passesMm: 10, threads: ['M10', 'M12'] })).toThrow(/^no thread of M10, M12 passes a hole of 10 mm/u);
  const sizes = drawInRod.run({ pushForceN: 100 }).candidates.map(({ thread }) => Number(thread.slice(1)));
  expect(sizes).toEqual(sizes.toSorted((a, b) => a - b));
});

test('what is taken for granted, the work with its numbers and cautions, and the working', () => {
  const input = { pushForceN: 3000, threads: ['M10'] };
  const output = drawInRod.run(input);
  const assumed = (more: object) => drawInRod.run({ ...input, ...more }).assumptions.map(({ name, value, upToValue }) => [name, value, upToValue]);
  expect(assumed({})).toEqual([['thread-friction', 0.08, 0.24], ['rod-yield', 240, undefined], ['rod-reserve', 2, undefined]]);
  expect(assumed({ yieldMpa: 300, condition: 'oiled' })).toEqual([['thread-friction', 0.08, 0.16], ['rod-reserve', 2, undefined]]);
  expect(output.notChecked).toEqual(['rod-bends', 'thread-strips-in-soft-nut']);
  const { low = NaN, high = NaN } = output.candidates[0]?.torqueNm ?? {};
  expect(output.steps.map(({ code, parameters, cautions }) => [code, parameters, cautions])).toEqual([
    ['draw-set-up', { thread: 'M10' }, ['makers-manual-first', 'machine-cannot-start']],
    ['draw-oil-thread', {}, []],
    ['draw-line-up', {}, []],
    ['draw-turn-nut', { acrossFlatsMm: 16, pitchMm: 1.5, lowTorqueNm: low, highTorqueNm: high }, ['eye-protection', 'rod-snaps']],
    ['draw-stop', { highTorqueNm: high }, []],
  ]);
  expect(drawInRod.explain(input, output)).toMatchObject([{ symbol: 'T', scope: { F: 3000, P: 1.5, d: 10, s: 16, mu: 0.24 } }, { symbol: 'sigma', scope: { F: 3000, A: 58 } }]);
});
