import { expect, test } from 'vitest';
import { screwsForSheet } from './internal/sheet-screw.js';

const of = (sheetMm: number) => screwsForSheet(sheetMm).map(({ designation, pilotMm, pilotSource }) => [designation, pilotMm, pilotSource.id]);
const one = (designation: string, sheetMm: number) => of(sheetMm).find(([name]) => name === designation);

test('DIN 7975 answers half a step either side of the thickness that it lists; the hole group answers elsewhere', () => {
  // DIN 7975 lists ST 2.2 from 0.8 mm: 1.7 mm to 1.3 mm. Below, the hole group 1B: to 0.56 mm 1.6, to 0.75 mm 1.7.
  expect(one('ST 2.2', 0.5)).toEqual(['ST 2.2', 1.6, 'st-hole-group-1b']);
  expect(one('ST 2.2', 0.56)).toEqual(['ST 2.2', 1.6, 'st-hole-group-1b']);
  expect(one('ST 2.2', 0.57)).toEqual(['ST 2.2', 1.7, 'st-hole-group-1b']);
  expect(one('ST 2.2', 0.74)).toEqual(['ST 2.2', 1.7, 'st-hole-group-1b']);
  expect(one('ST 2.2', 0.8)).toEqual(['ST 2.2', 1.7, 'din-7975']);
  expect(one('ST 2.2', 0.85)?.[2]).toBe('din-7975');
  expect(one('ST 2.2', 1.5)?.[2]).toBe('din-7975');
  expect(one('ST 2.2', 1.55)?.[2]).toBe('din-7975');
  expect(one('ST 2.2', 1.56)).toBeUndefined();
});

test('each has the pilot of its own row, and they come from the smallest on', () => {
  // DIN 7975 begins at 1.3 mm for ST 3.5; group 1B gives 2.8, 3.3 and 3.9 mm there.
  expect(of(1.2)).toEqual([['ST 2.2', 1.7, 'din-7975'], ['ST 2.9', 2.2, 'din-7975'], ['ST 3.5', 2.8, 'st-hole-group-1b'], ['ST 4.2', 3.3, 'st-hole-group-1b'], ['ST 4.8', 3.9, 'st-hole-group-1b']]);
  const sizes = screwsForSheet(1.2).map(({ outsideMm }) => outsideMm);
  expect(sizes).toEqual(sizes.toSorted((a, b) => a - b));
  for (const { designation, outsideMm, outsideMinMm, pitchMm, pilotMm, pilotSource } of [0.6, 0.9, 1.2, 1.8, 2].flatMap((sheet) => screwsForSheet(sheet))) {
    // ST 2.2 has an outside of 2.24 and so on; the pilot lies between the root and the outside.
    expect(Math.abs(outsideMm - Number(designation.slice(3)))).toBeLessThan(0.05);
    expect(outsideMinMm).toBeLessThan(outsideMm);
    expect(pilotMm).toBeLessThan(outsideMinMm);
    expect(pilotMm).toBeGreaterThan(0.65 * outsideMm);
    expect(pitchMm).toBeGreaterThan(0.3 * outsideMm);
    expect(pilotSource.clause).toContain(designation);
  }
});

test('a sheet that no row reaches has no screw', () => {
  expect(of(0)).toEqual([]);
  expect(of(2.6)).toEqual([]);
});
