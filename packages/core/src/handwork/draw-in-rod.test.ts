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
