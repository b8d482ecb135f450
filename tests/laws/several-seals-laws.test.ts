import fc from 'fast-check';
import { expect, test } from 'vitest';
import { jobSheet } from '@seatwright/core/job';

const seal = { kind: 'seal', shaftMm: 30, outsideMm: 47, widthMm: 7, construction: 'rubber-covered', lipMaterial: 'NBR' };
const depthsMm = fc.uniqueArray(fc.integer({ min: 0, max: 60 }), { minLength: 2, maxLength: 4 });
const sheetOf = (parts: readonly object[]) =>
  jobSheet.run({ workshop: { format: 'seatwright', version: 1, machines: [{ name: 'winch', positions: [{ name: 'drum', bore: { diameterMm: 47, depthMm: 80, innerEnd: 'open' }, behind: 'gear', clearBehindMm: 3, lipFacing: 'inward', parts }] }] } });
const at = (depthMm: number) => ({ ...seal, name: `at ${depthMm}`, seat: { kind: 'depth', depthMm } });
const named = (steps: ReturnType<typeof sheetOf>['blocks']['takeOut']) => steps.flatMap(({ code, parameters }) => (code.includes('-now-the-') ? [parameters['name']] : []));

test('seals of one bore come out from the outside inward and go in the other way, however the file orders them', () => {
  fc.assert(
    fc.property(depthsMm.chain((depths) => fc.tuple(fc.constant(depths), fc.shuffledSubarray(depths, { minLength: depths.length }))), ([depths, shuffled]) => {
      const [one, other] = [sheetOf(depths.map(at)), sheetOf(shuffled.map(at))];
      const outward = [...depths].sort((a, b) => a - b).map((depth) => `at ${depth}`);
      expect(named(one.blocks.takeOut)).toEqual(outward);
      expect(named(one.blocks.putIn)).toEqual([...outward].reverse());
      expect(other.blocks).toEqual(one.blocks);
      expect(other.verdict).toBe(one.verdict);
    }),
    { numRuns: 40 },
  );
});

test('of neighbours either a gap is told or an overlap, and only the innermost knows what lies behind', () => {
  fc.assert(
    fc.property(depthsMm, (depths) => {
      const { fileFindings, parts } = sheetOf(depths.map(at));
      const sorted = [...depths].sort((a, b) => a - b);
      const gaps = sorted.slice(1).map((depth, i) => depth - (sorted[i] ?? 0) - seal.widthMm);
      const told = fileFindings.flatMap(({ code, parameters }) => (code === 'seals-stand-apart' ? [parameters['gapMm']] : code === 'seals-overlap' ? [-Number(parameters['overlapMm'])] : []));
      expect(told).toEqual(gaps);
      const behind = parts.map((part) => [part.name, (part.situation as { behind?: string }).behind] as const);
      for (const [name, what] of behind) expect(what).toBe(name === `at ${Math.max(...depths)}` ? 'gear' : 'second seal');
    }),
    { numRuns: 40 },
  );
});
