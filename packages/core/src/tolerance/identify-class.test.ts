import { describe, expect, it } from 'vitest';
import { identifyClass } from './identify-class.js';

const classesOf = (list: readonly { readonly toleranceClass: string }[]) => list.map(({ toleranceClass }) => toleranceClass);

describe('identify class', () => {
  it('finds the class that equals printed limits', () => {
    const { matching, matchingCount } = identifyClass.run({ nominalMm: 25, kind: 'shaft', upperLimitDeviationUm: 35, lowerLimitDeviationUm: 22 });
    expect(classesOf(matching)).toEqual(['p6']);
    expect(matchingCount).toBe(1);
    expect(matching[0]).toMatchObject({ upperMarginUm: 0, lowerMarginUm: 0, differenceUm: 0 });
  });

  it('finds every class that equals the limits', () => {
    const { matching } = identifyClass.run({ nominalMm: 2, kind: 'hole', upperLimitDeviationUm: 4, lowerLimitDeviationUm: -6 });
    expect(classesOf(matching)).toEqual(['J7']);
    const even = identifyClass.run({ nominalMm: 5, kind: 'hole', upperLimitDeviationUm: 6, lowerLimitDeviationUm: -6 });
    expect(classesOf(even.matching).sort()).toEqual(['J7', 'JS7']);
  });

  it('reads limits of size', () => {
    const { matching, upperUm, lowerUm } = identifyClass.run({ nominalMm: 25, kind: 'hole', largestMm: 25.021, smallestMm: 25 });
    expect(classesOf(matching)).toEqual(['H7']);
    expect({ upperUm, lowerUm }).toEqual({ upperUm: 21, lowerUm: 0 });
  });

  it('puts the preferred classes in front, and the narrower of two alike', () => {
    const { containing } = identifyClass.run({ nominalMm: 25, kind: 'shaft', sizesMm: [25.023, 25.03] });
    expect(classesOf(containing).slice(0, 3)).toEqual(['p6', 'p5', 'n7']);
    expect(containing.slice(0, 3).map(({ preference }) => preference)).toEqual(['first', 'second', 'second']);
  });

  it('lists the zones that hold measured sizes, with the room that each leaves', () => {
    const { containing, containingCount, notChecked } = identifyClass.run({ nominalMm: 25, kind: 'shaft', sizesMm: [25.028, 25.023, 25.031] });
    expect(containing.every(({ upperMarginUm, lowerMarginUm }) => upperMarginUm >= 0 && lowerMarginUm >= 0)).toBe(true);
    expect(containing).toHaveLength(12);
    expect(containingCount).toBeGreaterThan(12);
    expect(notChecked).toEqual(['measurement-uncertainty']);
  });

  it('orders the nearest by how far both limits are away', () => {
    const { nearest, consideredCount } = identifyClass.run({ nominalMm: 25, kind: 'shaft', upperLimitDeviationUm: 34, lowerLimitDeviationUm: 20 });
    expect(nearest[0]).toMatchObject({ toleranceClass: 'p6', upperMarginUm: 1, lowerMarginUm: -2, differenceUm: 3 });
    expect(nearest).toHaveLength(12);
    expect(nearest.map(({ differenceUm }) => differenceUm)).toEqual(nearest.map(({ differenceUm }) => differenceUm).sort((a, b) => a - b));
    expect(consideredCount).toBeGreaterThan(400);
  });

  it('counts a class that equals the range among those that hold it, and stands all lists in their order', () => {
    const { containing, nearest, notChecked } = identifyClass.run({ nominalMm: 25, kind: 'shaft', upperLimitDeviationUm: 35, lowerLimitDeviationUm: 22 });
    expect(classesOf(containing)[0]).toBe('p6');
    expect(notChecked).toEqual([]);
    const rank = { first: 0, second: 1, none: 2 };
    const inOrder = <T>(list: readonly T[], ...keys: ((one: T) => number)[]) => {
      const ordered = list.toSorted((a, b) => keys.map((key) => key(a) - key(b)).find((difference) => difference !== 0) ?? 0);
      expect(list).toEqual(ordered);
    };
    inOrder(containing, ({ preference }) => rank[preference], ({ standardToleranceUm }) => standardToleranceUm, ({ differenceUm }) => differenceUm);
    inOrder(nearest, ({ differenceUm }) => differenceUm, ({ preference }) => rank[preference], ({ standardToleranceUm }) => standardToleranceUm);
    for (const sizesMm of [[25.001, 25.002], [24.98], [25.1, 25.2]]) {
      const found = identifyClass.run({ nominalMm: 25, kind: 'shaft', sizesMm });
      inOrder(found.containing, ({ preference }) => rank[preference], ({ standardToleranceUm }) => standardToleranceUm, ({ differenceUm }) => differenceUm);
      inOrder(found.nearest, ({ differenceUm }) => differenceUm, ({ preference }) => rank[preference], ({ standardToleranceUm }) => standardToleranceUm);
    }
  });

  it('takes a range of no width', () => {
    expect(identifyClass.run({ nominalMm: 25, kind: 'hole', upperLimitDeviationUm: 5, lowerLimitDeviationUm: 5 }).containing.length).toBeGreaterThan(0);
    expect(identifyClass.run({ nominalMm: 25, kind: 'hole', largestMm: 25.005, smallestMm: 25.005 })).toMatchObject({ upperUm: 5, lowerUm: 5 });
  });

  it.each([
    [{ nominalMm: 25, kind: 'hole' }, 'invalid-input', ''],
    [{ kind: 'hole', largestMm: 25.021, smallestMm: 25 }, 'invalid-input', 'nominalMm'],
    [{ nominalMm: 25, kind: 'hole', upperLimitDeviationUm: 21 }, 'invalid-input', 'lowerLimitDeviationUm'],
    [{ nominalMm: 25, kind: 'hole', smallestMm: 25 }, 'invalid-input', 'largestMm'],
    [{ nominalMm: 25, kind: 'hole', sizesMm: [] }, 'invalid-input', 'sizesMm'],
    [{ nominalMm: 25, kind: 'hole', upperLimitDeviationUm: 0, lowerLimitDeviationUm: 21 }, 'contradiction', 'upperLimitDeviationUm'],
    [{ nominalMm: 25, kind: 'hole', largestMm: 25, smallestMm: 25.1 }, 'contradiction', 'largestMm'],
    [{ nominalMm: 25, kind: 'hole', largestMm: 25.1, smallestMm: 25, sizesMm: [25] }, 'contradiction', 'largestMm'],
    [{ nominalMm: 25, kind: 'hole', largestMm: 25.1, smallestMm: 25, upperLimitDeviationUm: 1, lowerLimitDeviationUm: 0 }, 'contradiction', 'upperLimitDeviationUm'],
  ])('refuses %j as %s at %j', (input, code, path) => {
    expect(() => identifyClass.run(input)).toThrow(expect.objectContaining({ code, path }) as Error);
  });
});
