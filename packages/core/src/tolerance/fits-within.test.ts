import { describe, expect, test } from 'vitest';
import { preferredToleranceClasses as preferred } from '../tables/generated/preferred-tolerance-classes.js';
import { fitsWithin, type FitCandidate, type InterferenceWindow } from './fits-within.js';
import { zoneOfClass } from './internal/zone-of-class.js';

/** All fits of one size by trying every pair of letters and grades, through the limits that a single class has. */
function everyFit(nominalMm: number) {
  const letters = ['A', 'B', 'C', 'CD', 'D', 'E', 'EF', 'F', 'FG', 'G', 'H', 'J', 'JS', 'K', 'M', 'N', 'P', 'R', 'S', 'T', 'U', 'V', 'X', 'Y', 'Z', 'ZA', 'ZB', 'ZC'];
  const of = (kind: 'hole' | 'shaft') => letters.flatMap((letter) => [4, 5, 6, 7, 8, 9, 10, 11, 12].flatMap((grade) => {
    const text = `${kind === 'hole' ? letter : letter.toLowerCase()}${grade}`;
    try {
      const zone = zoneOfClass({ nominalMm, toleranceClass: text });
      const row = preferred.columns.toleranceClass.indexOf(text);
      return [{ text, letter, low: zone.lowerLimitDeviationUm, high: zone.upperLimitDeviationUm, rank: row < 0 ? 2 : preferred.columns.preference[row] === 'first' ? 0 : 1 }];
    } catch {
      return [];
    }
  }));
  const shafts = of('shaft');
  return of('hole').flatMap((hole) => shafts.flatMap((shaft) => {
    if (hole.letter !== 'H' && shaft.letter !== 'H' && (hole.rank === 2 || shaft.rank === 2)) return [];
    return [{ pair: `${hole.text}/${shaft.text}`, rank: Math.max(hole.rank, shaft.rank), basis: hole.letter === 'H' ? 0 : shaft.letter === 'H' ? 1 : 2, leastUm: shaft.low - hole.high, mostUm: shaft.high - hole.low }];
  }));
}

const pairOf = ({ hole, shaft }: FitCandidate) => `${hole}/${shaft}`;

describe.each([17, 40, 250])('at %d mm, against every pair tried one by one', (nominalMm) => {
  const all = everyFit(nominalMm);

  test.each<InterferenceWindow>([{ leastUm: 1, mostUm: 60 }, { leastUm: -40, mostUm: 0 }, { leastUm: -20, mostUm: 25 }, { leastUm: 10 }, { mostUm: -5 }])('%j', ({ leastUm = -Infinity, mostUm = Infinity }) => {
    const { found, nearest, consideredCount } = fitsWithin(nominalMm, { leastUm, mostUm });
    const expected = all.filter((fit) => fit.leastUm >= leastUm - 1e-9 && fit.mostUm <= mostUm + 1e-9);
    expect(consideredCount).toBe(all.length);
    expect(found.map(pairOf).toSorted()).toEqual(expected.map(({ pair }) => pair).toSorted());
    expect(nearest).toEqual([]);
    // Best first: by preference, those with H or h before others, the widest tolerance, H before h.
    const byPair = new Map(expected.map((fit) => [fit.pair, fit]));
    const worth = found.map((fit) => {
      const { rank = 9, basis = 9, leastUm: least = 0, mostUm: most = 0 } = byPair.get(pairOf(fit)) ?? {};
      return [rank, basis === 2 ? 1 : 0, -Math.round((most - least) * 1000), basis];
    });
    const sorted = worth.toSorted((a, b) => a.map((one, i) => one - (b[i] ?? 0)).find((difference) => difference !== 0) ?? 0);
    expect(worth).toEqual(sorted);
    for (const fit of found) {
      const by = byPair.get(pairOf(fit));
      expect([['first', 'second', 'none'].indexOf(fit.preference), ['hole-basis', 'shaft-basis', 'none'].indexOf(fit.basis)]).toEqual([by?.rank, by?.basis]);
      expect(fit.leastInterferenceUm).toBeCloseTo(by?.leastUm ?? NaN, 6);
      expect(fit.mostInterferenceUm).toBeCloseTo(by?.mostUm ?? NaN, 6);
      expect(fit.fitToleranceUm).toBeCloseTo((by?.mostUm ?? NaN) - (by?.leastUm ?? NaN), 6);
      expect(fit.missUm).toBe(0);
    }
  });

  test('where none keeps to the window, the twelve that leave it least', () => {
    const [leastUm, mostUm] = [10, 11];
    const { found, nearest } = fitsWithin(nominalMm, { leastUm, mostUm });
    expect(found).toEqual([]);
    const misses = all.map((fit) => Math.max(0, leastUm - fit.leastUm) + Math.max(0, fit.mostUm - mostUm)).toSorted((a, b) => a - b).slice(0, 12);
    expect(nearest.map(({ missUm }) => missUm)).toEqual(misses.map((miss) => expect.closeTo(miss, 6) as number));
    for (let i = 1; i < nearest.length; i += 1) {
      const [a, b] = [nearest[i - 1], nearest[i]];
      if (a !== undefined && a.missUm === b?.missUm) expect(['first', 'second', 'none'].indexOf(a.preference)).toBeLessThanOrEqual(['first', 'second', 'none'].indexOf(b.preference));
    }
  });
});
