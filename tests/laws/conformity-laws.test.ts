import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { conformanceProbability, conformity, decisionOf, decisionZones, normalProbability } from '@seatwright/core/measure';
import { expectWorkingHolds } from './internal/evaluate-working.js';
import { expectWords } from './internal/expect-words.js';
import { numRuns } from './internal/num-runs.js';

const um = (min: number, max: number) => fc.integer({ min, max }).map((value) => value / 1000);
const finite = (min: number, max: number) => fc.double({ min, max, noNaN: true, noDefaultInfinity: true });
const rule = fc.constantFrom('expanded-uncertainty' as const, 'probability-95' as const);
const uncertainty = um(1, 200).map((mm) => ({ standardUncertaintyMm: mm / 2, expandedUncertaintyMm: mm }));
const limits = fc.tuple(um(-100, 100), um(1, 300)).map(([centreMm, halfMm]) => ({ lowerLimitMm: centreMm - halfMm, upperLimitMm: centreMm + halfMm }));
const one = (mm: number) => ({ lowMm: mm, highMm: mm });

describe('the normal distribution', () => {
  it('stays in 0 to 1, rises, and mirrors', () => {
    fc.assert(
      fc.property(finite(-40, 40), finite(0, 5), (z, further) => {
        const p = normalProbability(z);
        expect(p).toBeGreaterThanOrEqual(0);
        expect(p).toBeLessThanOrEqual(1);
        expect(normalProbability(z + further)).toBeGreaterThanOrEqual(p - 1e-15);
        expect(p + normalProbability(-z)).toBeCloseTo(1, 14);
      }),
      { numRuns },
    );
  });
});

describe('conformity', () => {
  it('is a probability, falls away from the middle, and is the same mirrored', () => {
    fc.assert(
      fc.property(limits, uncertainty, um(0, 600), um(0, 100), (given, { standardUncertaintyMm }, awayMm, furtherMm) => {
        const middleMm = (given.lowerLimitMm + given.upperLimitMm) / 2;
        const at = (mm: number) => conformanceProbability(one(mm), given, standardUncertaintyMm);
        const p = at(middleMm + awayMm);
        expect(p).toBeGreaterThanOrEqual(0);
        expect(p).toBeLessThanOrEqual(1);
        expect(at(middleMm + awayMm + furtherMm)).toBeLessThanOrEqual(p + 1e-14);
        expect(at(middleMm - awayMm)).toBeCloseTo(p, 11);
      }),
      { numRuns },
    );
  });

  it('rises with the measured value where only a lower limit is given', () => {
    fc.assert(
      fc.property(um(-300, 300), um(0, 100), uncertainty, (mm, moreMm, { standardUncertaintyMm }) => {
        const at = (size: number) => conformanceProbability(one(size), { lowerLimitMm: 0, upperLimitMm: null }, standardUncertaintyMm);
        expect(at(mm + moreMm)).toBeGreaterThanOrEqual(at(mm) - 1e-15);
      }),
      { numRuns },
    );
  });

  it('decides the same mirrored, and never more with a larger uncertainty', () => {
    fc.assert(
      fc.property(limits, uncertainty, rule, um(-600, 600), um(-600, 600), um(1, 100), (given, known, by, a, b, moreMm) => {
        const [lowMm, highMm] = a < b ? [a, b] : [b, a];
        const decision = decisionOf({ lowMm, highMm }, decisionZones(given, known, by));
        const mirrored = { lowerLimitMm: -given.upperLimitMm, upperLimitMm: -given.lowerLimitMm };
        expect(decisionOf({ lowMm: -highMm, highMm: -lowMm }, decisionZones(mirrored, known, by))).toBe(decision);
        const coarser = { standardUncertaintyMm: known.standardUncertaintyMm + moreMm / 2, expandedUncertaintyMm: known.expandedUncertaintyMm + moreMm };
        const second = decisionOf({ lowMm, highMm }, decisionZones(given, coarser, by));
        expect([decision, 'cannot be proven']).toContain(second);
      }),
      { numRuns },
    );
  });

  it('proven by 95 % means 95 %', () => {
    fc.assert(
      fc.property(limits, uncertainty, um(-400, 400), (given, known, mm) => {
        const decision = decisionOf(one(mm), decisionZones(given, known, 'probability-95'));
        const p = conformanceProbability(one(mm), given, known.standardUncertaintyMm);
        if (decision === 'conforms') expect(p).toBeGreaterThanOrEqual(0.95 - 1e-6);
        if (decision === 'does not conform') expect(p).toBeLessThanOrEqual(0.05 + 1e-6);
        if (decision === 'cannot be proven') expect(p).toBeLessThanOrEqual(0.95 + 1e-6);
      }),
      { numRuns },
    );
  });

  it('has working that holds, words for every code, and deciders that decide', () => {
    const how = fc.oneof(
      fc.record({ instrument: fc.constantFrom('digital-calliper', 'vernier-calliper-002', 'inside-micrometer-rod'), measuredMm: um(34_800, 35_200) }),
      fc.record({ expandedUncertaintyMm: um(1, 200), measuredMm: um(34_800, 35_200) }),
      fc.array(fc.record({ valueMm: um(34_980, 35_060), angleDeg: fc.constantFrom(0, 45, 90), depthMm: fc.constantFrom(2, 8) }), { minLength: 1, maxLength: 8 }).map((points) => ({ readings: [{ instrument: 'inside-micrometer-rod', points }] })),
    );
    const against = fc.oneof(
      fc.constantFrom('H6', 'H8', 'H11', 'K7', 'F7').map((toleranceClass) => ({ nominalMm: 35, toleranceClass })),
      fc.record({ lowerLimitMm: um(34_900, 35_000), upperLimitMm: um(35_001, 35_200) }),
      fc.record({ upperLimitMm: um(34_900, 35_200) }),
      fc.record({ lowerLimitMm: um(34_900, 35_200) }),
    );
    const warm = fc.constantFrom({}, { partTemperatureC: 60, partMaterial: 'al-a380' }, { partTemperatureC: 5, instrumentTemperatureC: 18, partMaterial: 'steel-c45', temperatureUncertaintyK: 3 });
    fc.assert(
      fc.property(how, against, warm, rule, fc.boolean(), (reading, limit, temperature, decisionRule, isRuleGiven) => {
        const input = conformity.parse({ measures: 'inside', ...reading, ...limit, ...temperature, ...(isRuleGiven ? { decisionRule } : {}) });
        const output = conformity.compute(input);
        expectWorkingHolds(conformity.explain(input, output));
        expect(JSON.stringify(output)).toBe(JSON.stringify(output, (_, value: unknown) => (typeof value === 'number' && !Number.isFinite(value) ? 'none' : value)));
        expectWords(output);
        const { forThisSize } = output.deciders;
        if (forThisSize !== null && isRuleGiven === false) {
          const zones = decisionZones(output, { standardUncertaintyMm: forThisSize.expandedUncertaintyMm / 2, expandedUncertaintyMm: forThisSize.expandedUncertaintyMm }, output.decisionRule);
          expect(decisionOf({ lowMm: output.smallestMm, highMm: output.largestMm }, zones)).not.toBe('cannot be proven');
        }
      }),
      { numRuns },
    );
  });
});
