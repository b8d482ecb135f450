import { describe, expect, test } from 'vitest';
import { seatClasses, type SeatClassesInput } from './seat-classes.js';

// Expected classes: the two sets of recommendations as printed (reference/bearing/seat-classes.csv), ANSI/ABMA 7 first, then the handbook.
const usual: SeatClassesInput = { boreMm: 25, innerRingLoad: 'rotating', outerRingLoad: 'stationary', magnitude: 'normal' };
const look = (more: Partial<SeatClassesInput> = {}) => seatClasses.compute({ ...usual, ...more });
const classes = (list: readonly { readonly set: string; readonly toleranceClass: string }[]) => list.map(({ set, toleranceClass }) => `${set} ${toleranceClass}`).join(', ');

describe('the shaft', () => {
  test.each<[Partial<SeatClassesInput>, string]>([
    [{ boreMm: 10 }, 'abma-7 j5, handbook js5'],
    [{ boreMm: 10.001 }, 'abma-7 j5, handbook j5'],
    [{ boreMm: 17 }, 'abma-7 j5, handbook j5'],
    [{ boreMm: 18 }, 'abma-7 j5, handbook k5'],
    [{ boreMm: 18.001 }, 'abma-7 k5, handbook k5'],
    [{ boreMm: 100 }, 'abma-7 k5, handbook k5'],
    [{ boreMm: 100.001 }, 'abma-7 k5, handbook m5'],
    [{ boreMm: 500.001 }, 'abma-7 k5'],
    [{ boreMm: 18, magnitude: 'light' }, 'abma-7 h5, handbook j6'],
    [{ boreMm: 18, magnitude: 'heavy' }, 'handbook k5'],
    [{ boreMm: 120, magnitude: 'heavy' }, 'abma-7 m5, handbook m5'],
    // The shaft under shock is listed as under heavy load.
    [{ boreMm: 120, magnitude: 'shock' }, 'abma-7 m5, handbook m5'],
    [{ boreMm: 65, magnitude: 'heavy', bearingKind: 'cylindrical-roller' }, 'abma-7 m6'],
    [{ boreMm: 65.001, magnitude: 'heavy', bearingKind: 'cylindrical-roller' }, 'abma-7 n6'],
    [{ innerRingLoad: 'axial' }, 'abma-7 j6'],
    [{ innerRingLoad: 'stationary' }, 'abma-7 h6'],
    [{ innerRingLoad: 'stationary', mustSlideOnShaft: false }, 'abma-7 h6'],
    [{ innerRingLoad: 'stationary', mustSlideOnShaft: true }, 'abma-7 g6'],
  ])('%j: %s', (more, expected) => {
    expect(classes(look(more).shaft)).toBe(expected);
  });

  test('a designation brings bore and kind along', () => {
    const input = (designation: string): SeatClassesInput => ({ designation, innerRingLoad: 'rotating', outerRingLoad: 'stationary', magnitude: 'heavy' });
    expect(seatClasses.run(input('6205'))).toMatchObject({ boreMm: 25, shaft: [{ toleranceClass: 'k5', set: 'abma-7', condition: 'any' }, { toleranceClass: 'k5', set: 'handbook' }] });
    expect(classes(seatClasses.run(input('NU210')).shaft)).toBe('abma-7 m6');
  });
});

describe('the housing', () => {
  test.each<[Partial<SeatClassesInput>, string]>([
    [{}, 'abma-7 H6, handbook H7'],
    [{ isSplitHousing: true }, 'abma-7 H7, handbook H7'],
    [{ hasHeatThroughShaft: true }, 'abma-7 G7, abma-7 H6, handbook H7, handbook G7'],
    [{ isThinWalled: true }, 'abma-7 H6, handbook H7'],
    [{ magnitude: 'shock' }, 'abma-7 J6, handbook H7'],
    [{ outerRingLoad: 'rotating' }, 'abma-7 N6, handbook N7'],
    [{ outerRingLoad: 'rotating', magnitude: 'heavy' }, 'abma-7 N6, handbook N7'],
    [{ outerRingLoad: 'rotating', magnitude: 'heavy', isThinWalled: true }, 'abma-7 N6, abma-7 P6, handbook N7, handbook P7'],
    [{ outerRingLoad: 'indeterminate', magnitude: 'shock' }, 'abma-7 M6, handbook M7'],
    // Shock against a turning outer ring is not listed, and heavy load does not stand for it there.
    [{ outerRingLoad: 'rotating', magnitude: 'shock' }, ''],
    [{ outerRingLoad: 'axial' }, ''],
  ])('%j: %s', (more, expected) => {
    const { housing, findings } = look(more);
    expect(classes(housing)).toBe(expected);
    expect(findings.some(({ code }) => code === 'no-housing-class-listed')).toBe(expected === '');
  });

  test('each class names where it stands, and what is from memory', () => {
    expect(look({ outerRingLoad: 'indeterminate', magnitude: 'light' }).housing.map(({ source }) => [source.id, source.held])).toEqual([['ansi-abma-7', 'memory'], ['bearing-handbook-reprints', 'page']]);
  });

  // "Tighter than listed": the next letter, J and JS being one; each class once.
  test.each<[Partial<SeatClassesInput>, readonly string[]]>([
    [{}, ['J6', 'J7']],
    [{ isSplitHousing: true }, ['J7']],
    [{ outerRingLoad: 'indeterminate', magnitude: 'light' }, ['K6', 'K7']],
    [{ outerRingLoad: 'indeterminate' }, ['M6', 'M7']],
    [{ outerRingLoad: 'rotating', magnitude: 'heavy', isThinWalled: true }, ['P6', 'R6', 'P7', 'R7']],
    [{ hasHeatThroughShaft: true }, ['H7', 'J6', 'J7']],
  ])('light alloy, %j: %j', (more, expected) => {
    expect(look({ ...more, isLightAlloy: true }).tighterHousing).toEqual(expected);
    expect(look(more).tighterHousing).toEqual([]);
  });
});

describe('how heavy the load is', () => {
  // P ≤ 0.06 C light, P ≤ 0.13 C normal (handbook).
  test.each([[0.06, 'light'], [0.0601, 'normal'], [0.13, 'normal'], [0.1301, 'heavy']])('P/C %d: %s', (loadRatio, expected) => {
    const { magnitude: _, ...rest } = usual;
    const output = seatClasses.run({ ...rest, loadRatio });
    expect(output.magnitude).toBe(expected);
    expect(output.assumptions).toEqual([]);
  });

  test('where nothing is said it is taken as normal, and that is told', () => {
    const { magnitude: _, ...rest } = usual;
    expect(seatClasses.run(rest)).toMatchObject({ magnitude: 'normal', assumptions: [{ name: 'load-is-normal', value: 'normal', effect: 'which-seat-class' }] });
    expect(look().assumptions).toEqual([]);
  });
});

describe('what else is said', () => {
  const told = (more: Partial<SeatClassesInput>) => look(more).findings.map(({ code, severity }) => `${code} ${severity}`);

  test('a split housing is for standing load; light alloy wants more', () => {
    expect(told({})).toEqual([]);
    expect(told({ isSplitHousing: true })).toEqual([]);
    expect(told({ isSplitHousing: true, outerRingLoad: 'rotating' })).toEqual(['split-housing-not-for-this care']);
    expect(told({ outerRingLoad: 'rotating' })).toEqual([]);
    expect(told({ isLightAlloy: true })).toEqual(['light-alloy-wants-tighter care']);
    expect(look().notChecked).toEqual(['seat-when-hot', 'makers-drawing-first']);
  });

  test('one size and one weight of load', () => {
    expect(() => seatClasses.run({ ...usual, designation: '6205' })).toThrow(/boreMm/);
    expect(() => seatClasses.run({ innerRingLoad: 'rotating', outerRingLoad: 'stationary' })).toThrow(/boreMm/);
    expect(() => seatClasses.run({ ...usual, loadRatio: 0.1 })).toThrow(/loadRatio/);
  });

  test('the working lists each class with the reason', () => {
    const output = look();
    expect(seatClasses.explain(usual, output)).toMatchObject([
      { kind: 'choice', symbol: 'c_1', value: 1, meaning: 'class of the shaft: k5', why: 'abma-7, normal load, any' },
      { symbol: 'c_2', value: 2, meaning: 'class of the shaft: k5', why: 'handbook, normal load, any' },
      { symbol: 'c_3', value: 3, meaning: 'class of the housing: H6', why: 'abma-7, normal load, not-split', source: { id: 'ansi-abma-7' } },
      { symbol: 'c_4', value: 4, meaning: 'class of the housing: H7', why: 'handbook, normal load, any' },
    ]);
  });
});
