import { CalculationError } from '@seatwright/core/result';
import { ansiB41InchFits, rowsOf } from '@seatwright/core/tables';
import { inchFit } from '@seatwright/core/tolerance';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { expectWorkingHolds } from './internal/evaluate-working.js';
import { numRuns } from './internal/num-runs.js';

const rows = rowsOf(ansiB41InchFits);
const classes = [...new Set(rows.map((row) => row.fitClass))];

describe('inch fits, every class and range', () => {
  it('have printed clearances that are the differences of their printed limits', () => {
    for (const row of rows) {
      expect(row.holeLowerThou - row.shaftUpperThou, `${row.fitClass} to ${row.upToIn} in`).toBeCloseTo(row.minimumThou, 9);
      expect(row.holeUpperThou - row.shaftLowerThou, `${row.fitClass} to ${row.upToIn} in`).toBeCloseTo(row.maximumThou, 9);
    }
  });

  it('give every row at both of its ends, with limits as printed and working that holds', () => {
    for (const row of rows) {
      for (const nominalIn of [row.overIn + 1e-5, row.upToIn]) {
        const input = { nominalIn, fitClass: row.fitClass };
        const found = inchFit.run(input);
        expect(found, `${row.fitClass} at ${nominalIn} in`).toMatchObject({
          hole: { upperThou: row.holeUpperThou, lowerThou: row.holeLowerThou },
          shaft: { upperThou: row.shaftUpperThou, lowerThou: row.shaftLowerThou },
          minimumThou: row.minimumThou,
          maximumThou: row.maximumThou,
        });
        expect(expectWorkingHolds(inchFit.explain(input, found))).toBe(6);
      }
    }
  });

  it('are of the kind that their family is named for', () => {
    const kinds: Readonly<Record<string, readonly string[]>> = {
      RC: ['clearance'],
      LC: ['clearance'],
      LT: ['transition'],
      // Locational interference fits start at nothing in the small sizes, as in the fits they were drawn from.
      LN: ['interference', 'transition'],
      FN: ['interference'],
    };
    for (const row of rows) expect(kinds[row.fitClass.slice(0, 2)], `${row.fitClass} to ${row.upToIn} in`).toContain(inchFit.run({ nominalIn: row.upToIn, fitClass: row.fitClass }).kind);
  });

  it('answer any size with a fit or with the range of the class', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-6, max: 250, noNaN: true }), fc.constantFrom(...classes), (nominalIn, fitClass) => {
        try {
          const found = inchFit.run({ nominalIn, fitClass });
          expect(found.minimumThou).toBeLessThanOrEqual(found.maximumThou);
        } catch (error) {
          expect(error).toBeInstanceOf(CalculationError);
          expect(error).toMatchObject({ code: 'outside-table', path: 'nominalIn' });
        }
      }),
      { numRuns },
    );
  });
});
