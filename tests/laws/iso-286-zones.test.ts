import { CalculationError } from '@seatwright/core/result';
import { iso2861HoleDeviations, iso2861ShaftDeviations, iso2861StandardTolerances } from '@seatwright/core/tables';
import { toleranceZone, type ToleranceZone } from '@seatwright/core/tolerance';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { expectWorkingHolds } from './internal/evaluate-working.js';
import { numRuns } from './internal/num-runs.js';

const letters = ['A', 'B', 'C', 'CD', 'D', 'E', 'EF', 'F', 'FG', 'G', 'H', 'J', 'JS', 'K', 'M', 'N', 'P', 'R', 'S', 'T', 'U', 'V', 'X', 'Y', 'Z', 'ZA', 'ZB', 'ZC'];
const grades = ['01', '0', ...Array.from({ length: 18 }, (_, at) => String(at + 1))];
const upToMm = iso2861ShaftDeviations.columns.upToMm;
/** One size in each row, and the two that the footnotes at 1 mm tell apart. */
const sizes = [0.5, 1, ...upToMm];

const everyClass = letters.flatMap((letter) => grades.flatMap((grade) => [`${letter}${grade}`, `${letter.toLowerCase()}${grade}`]));

/** The zone, or null where the standard gives none; anything else is a failure. */
function zoneOrNone(nominalMm: number, toleranceClass: string): ToleranceZone | null {
  try {
    return toleranceZone.compute({ nominalMm, toleranceClass });
  } catch (error) {
    if (error instanceof CalculationError && error.code === 'no-such-class') return null;
    throw error;
  }
}

function forEveryZone(check: (zone: ToleranceZone, toleranceClass: string) => void): number {
  let count = 0;
  for (const toleranceClass of everyClass) {
    for (const nominalMm of sizes) {
      const zone = zoneOrNone(nominalMm, toleranceClass);
      if (zone === null) continue;
      check(zone, toleranceClass);
      count += 1;
    }
  }
  return count;
}

/** Standard tolerance read straight from the table. */
function toleranceFromTable(nominalMm: number, grade: string): number | null {
  const { columns } = iso2861StandardTolerances;
  const row = columns.upToMm.findIndex((upTo) => nominalMm <= upTo);
  return (columns as Readonly<Record<string, readonly (number | null)[]>>)[`it${grade}Um`]?.[row] ?? null;
}

describe('ISO 286 zones, all letters, grades and ranges', () => {
  it('gives numbers or says that there is no such class', () => {
    const count = forEveryZone((zone, toleranceClass) => {
      const numbers = [zone.upperLimitDeviationUm, zone.lowerLimitDeviationUm, zone.standardToleranceUm, zone.fundamentalDeviationUm, zone.upperLimitOfSizeMm, zone.lowerLimitOfSizeMm];
      expect(numbers.every((number) => Number.isFinite(number) && !Object.is(number, -0)), `${toleranceClass} ${zone.nominalMm}`).toBe(true);
    });
    expect(count).toBeGreaterThan(30_000);
  });

  it('names at least one class that exists when it has none', () => {
    for (const toleranceClass of everyClass) {
      for (const nominalMm of sizes) {
        if (zoneOrNone(nominalMm, toleranceClass) !== null) continue;
        let nearest: string[] = [];
        try {
          toleranceZone.compute({ nominalMm, toleranceClass });
        } catch (error) {
          nearest = (error as CalculationError).allowed.replace('nearest: ', '').split(', ');
        }
        if (nearest.length === 0 || nearest.some((near) => zoneOrNone(nominalMm, near) === null)) expect.fail(`${toleranceClass} at ${nominalMm}: ${nearest.join()}`);
      }
    }
  });

  it('is as wide as the standard tolerance of its grade', () => {
    forEveryZone((zone, toleranceClass) => {
      const width = Math.round((zone.upperLimitDeviationUm - zone.lowerLimitDeviationUm) * 1000) / 1000;
      if (width !== zone.standardToleranceUm || width !== toleranceFromTable(zone.nominalMm, zone.grade)) expect.fail(`${toleranceClass} at ${zone.nominalMm}: ${width}`);
    });
  });

  it('gives the limits of size as nominal size and deviation', () => {
    forEveryZone((zone, toleranceClass) => {
      const upper = Math.abs(zone.upperLimitOfSizeMm - zone.nominalMm - zone.upperLimitDeviationUm / 1000);
      const lower = Math.abs(zone.lowerLimitOfSizeMm - zone.nominalMm - zone.lowerLimitDeviationUm / 1000);
      if (upper > 1e-9 || lower > 1e-9 || String(zone.upperLimitOfSizeMm).length > 11) expect.fail(`${toleranceClass} at ${zone.nominalMm}`);
    });
  });

  it('lets JS and js lie evenly', () => {
    forEveryZone((zone) => {
      if (zone.letter.toUpperCase() === 'JS') expect(zone.lowerLimitDeviationUm).toBe(-zone.upperLimitDeviationUm);
    });
  });

  it('mirrors holes A to H and shafts a to h', () => {
    for (const letter of letters.slice(0, 11)) {
      for (const grade of grades) {
        for (const nominalMm of sizes) {
          const hole = zoneOrNone(nominalMm, `${letter}${grade}`);
          const shaft = zoneOrNone(nominalMm, `${letter.toLowerCase()}${grade}`);
          expect(hole?.lowerLimitDeviationUm ?? null).toBe(shaft === null ? null : 0 - shaft.upperLimitDeviationUm);
        }
      }
    }
  });

  it('mirrors the coarser holes P to ZC, and all over 500 mm', () => {
    for (const letter of letters.slice(16)) {
      for (const grade of grades) {
        for (const nominalMm of sizes) {
          if (nominalMm > 3 && nominalMm <= 500 && grades.indexOf(grade) - 1 <= 7) continue;
          const hole = zoneOrNone(nominalMm, `${letter}${grade}`);
          const shaft = zoneOrNone(nominalMm, `${letter.toLowerCase()}${grade}`);
          expect(hole?.upperLimitDeviationUm ?? null).toBe(shaft === null ? null : 0 - shaft.lowerLimitDeviationUm);
        }
      }
    }
  });

  /** Why the increment exists: a hole of one grade with a shaft one grade finer fits alike, whichever of the two is H or h. */
  it('makes fits alike in both systems: H with the shaft one grade finer, and the hole with h one grade finer', () => {
    let count = 0;
    for (const letter of letters.slice(13)) {
      const last = ['K', 'M', 'N'].includes(letter) ? 8 : 7;
      for (let grade = 3; grade <= last; grade += 1) {
        for (const nominalMm of sizes.filter((size) => size > 3 && size <= 500)) {
          if (letter === 'M' && grade === 6 && nominalMm > 250 && nominalMm <= 315) continue;
          // k has its values in grades 4 to 7 only; K has them in all grades to 8.
          if (letter === 'K' && (grade - 1 < 4 || grade - 1 > 7)) continue;
          const hole = zoneOrNone(nominalMm, `${letter}${grade}`);
          const shaft = zoneOrNone(nominalMm, `${letter.toLowerCase()}${grade - 1}`);
          if (hole === null || shaft === null) {
            expect(hole).toBe(shaft);
            continue;
          }
          const holeBasis = toleranceZone.compute({ nominalMm, toleranceClass: `H${grade}` });
          const shaftBasis = toleranceZone.compute({ nominalMm, toleranceClass: `h${grade - 1}` });
          const inHoleBasis = holeBasis.upperLimitDeviationUm - shaft.lowerLimitDeviationUm;
          const inShaftBasis = hole.upperLimitDeviationUm - shaftBasis.lowerLimitDeviationUm;
          expect(inShaftBasis, `${letter}${grade} at ${nominalMm}`).toBeCloseTo(inHoleBasis, 9);
          count += 1;
        }
      }
    }
    expect(count).toBeGreaterThan(1500);
  });

  it('prints its own value for M6 over 250, up to and including 315 mm', () => {
    const upper = (nominalMm: number) => toleranceZone.compute({ nominalMm, toleranceClass: 'M6' }).upperLimitDeviationUm;
    expect([250, 250.001, 280, 315, 315.001].map(upper)).toEqual([-8, -9, -9, -9, -10]);
  });

  it('widens with the grade and lets the fundamental deviation of a to h and m to zc stand', () => {
    for (const letter of letters.map((each) => each.toLowerCase())) {
      for (const nominalMm of sizes) {
        const zones = grades.map((grade) => zoneOrNone(nominalMm, `${letter}${grade}`)).filter((zone) => zone !== null);
        zones.slice(1).forEach((zone, at) => expect(zone.standardToleranceUm).toBeGreaterThan(zones[at]?.standardToleranceUm ?? Infinity));
        if (!['j', 'js', 'k'].includes(letter)) expect(new Set(zones.map((zone) => zone.fundamentalDeviationUm)).size).toBeLessThanOrEqual(1);
      }
    }
  });

  it('never narrows as the size grows', () => {
    for (const grade of grades) {
      const widths = sizes.map((nominalMm) => zoneOrNone(nominalMm, `js${grade}`)?.standardToleranceUm).filter((width) => width !== undefined);
      expect(widths).toEqual([...widths].sort((a, b) => a - b));
    }
  });

  it('moves away from the nominal size as it grows', () => {
    for (const letter of letters.filter((each) => !['J', 'JS', 'K'].includes(each))) {
      const away = sizes.map((nominalMm) => zoneOrNone(nominalMm, `${letter.toLowerCase()}7`)).filter((zone) => zone !== null).map((zone) => Math.abs(zone.fundamentalDeviationUm));
      expect(away, letter).toEqual([...away].sort((a, b) => a - b));
    }
  });

  it('orders the letters of shafts from a to zc by their place', () => {
    for (const nominalMm of sizes) {
      const upper = letters.filter((each) => !['J', 'JS'].includes(each)).map((letter) => zoneOrNone(nominalMm, `${letter.toLowerCase()}6`)?.upperLimitDeviationUm).filter((value) => value !== undefined);
      expect(upper).toEqual([...upper].sort((a, b) => a - b));
    }
  });

  it('takes the right row one micrometre to either side of every range limit', () => {
    for (const limit of upToMm.slice(0, -1)) {
      const next = upToMm[upToMm.indexOf(limit) + 1] ?? 0;
      for (const toleranceClass of ['H7', 'p6', 'u6', 'R7', 'js5']) {
        const at = (nominalMm: number) => toleranceZone.compute({ nominalMm, toleranceClass }).upperLimitDeviationUm;
        expect(at(limit - 0.001)).toBe(at(limit));
        expect(at(limit + 0.001)).toBe(at(next));
        expect(at(limit * (1 + Number.EPSILON))).toBe(at(limit));
        expect(at(limit * (1 - Number.EPSILON))).toBe(at(limit));
      }
    }
  });

  it('has the deviation rows inside the tolerance rows', () => {
    const { columns } = iso2861StandardTolerances;
    for (const upTo of columns.upToMm) expect(upToMm).toContain(upTo);
    expect(iso2861HoleDeviations.columns.upToMm).toEqual(upToMm);
  });

  it('keeps to the footnotes at 1 mm', () => {
    const given = (toleranceClass: string) => [0.1, 1, 1.000001].map((nominalMm) => zoneOrNone(nominalMm, toleranceClass) !== null);
    for (const toleranceClass of ['A11', 'b9', 'H14', 'js18', 'N9', 'N11']) expect(given(toleranceClass), toleranceClass).toEqual([false, false, true]);
    for (const toleranceClass of ['C11', 'H13', 'N8', 'n9']) expect(given(toleranceClass), toleranceClass).toEqual([true, true, true]);
  });

  it('answers any size and class with a zone around it or with an error of ours', () => {
    const size = fc.oneof(fc.double({ min: 1e-6, max: 3150, noNaN: true }), fc.constantFrom(...upToMm));
    fc.assert(
      fc.property(size, fc.constantFrom(...everyClass), (nominalMm, toleranceClass) => {
        const zone = zoneOrNone(nominalMm, toleranceClass);
        if (zone === null) return;
        expect(zone.upperLimitOfSizeMm).toBeGreaterThan(zone.lowerLimitOfSizeMm);
        expect(Math.abs(zone.nominalMm - nominalMm)).toBeLessThanOrEqual(5.1e-7);
        expectWorkingHolds(toleranceZone.explain({ nominalMm, toleranceClass }, zone));
      }),
      { numRuns },
    );
  });

  it('answers any text at all with an error of ours', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.stringMatching(/^[A-Za-z]{0,3} ?[0-9]{0,3}$/u)), (toleranceClass) => {
        try {
          toleranceZone.run({ nominalMm: 25, toleranceClass });
        } catch (error) {
          expect(error).toBeInstanceOf(CalculationError);
        }
      }),
      { numRuns },
    );
  });

  it('shows working that holds, for every kind of rule', () => {
    const classes = ['H7', 'g6', 'JS7', 'js01', 'K7', 'M6', 'N9', 'P7', 'P8', 'ZC7', 'j5', 'J8', 'k6', 'k8', 'M2', 'a13', 'EF6'];
    for (const toleranceClass of classes) {
      for (const nominalMm of [0.7, 2, 2.00000049, 25.4, 300, 499.9999995, 2900]) {
        const zone = zoneOrNone(nominalMm, toleranceClass);
        if (zone !== null) expect(expectWorkingHolds(toleranceZone.explain({ nominalMm, toleranceClass }, zone))).toBeGreaterThanOrEqual(3);
      }
    }
  });
});
