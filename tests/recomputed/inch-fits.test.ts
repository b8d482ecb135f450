import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { inchFit } from '@seatwright/core/tolerance';

/**
 * Inch fits anew: deviations and sizes in whole units of 10⁻⁷ inch, and the width of every zone against the tolerance unit of the
 * system, i = 0.052·∛D + 0.001·D (thousandths of an inch, D the geometric mean of the range in inches; 7, 10, 16, 25, 40, 64, 100,
 * 160, 250 of it for grades 5 to 13; from memory). The standard rounds to preferred numbers by no stated rule.
 */
const rows = readFileSync(new URL('../../reference/tolerance/ansi-b4-1-inch-fits.csv', import.meta.url), 'utf8')
  .trim()
  .split('\n')
  .slice(1)
  .map((line) => line.split(','))
  .map(([fitClass = '', overIn = '', upToIn = '', holeClass = '', , , shaftClass = '']) => ({ fitClass, over: Number(overIn), upTo: Number(upToIn), holeClass, shaftClass }));

/** Thousandths of an inch as whole units of 10⁻⁷ inch; fails where anything is left over. */
function units(thou: number): number {
  const whole = Math.round(thou * 10_000);
  expect(Math.abs(thou * 10_000 - whole)).toBeLessThan(1e-6);
  return whole;
}

test('clearances are differences of the deviations, and sizes their sums, in whole units', () => {
  for (const { fitClass, over, upTo } of rows) {
    for (const nominalIn of [Number((over + 0.001).toFixed(3)), upTo]) {
      const found = inchFit.run({ nominalIn, fitClass });
      const [hu, hl, su, sl] = [units(found.hole.upperThou), units(found.hole.lowerThou), units(found.shaft.upperThou), units(found.shaft.lowerThou)];
      expect([units(found.minimumThou), units(found.maximumThou)], `${fitClass} at ${nominalIn}`).toEqual([hl - su, hu - sl]);
      const nominal = Math.round(nominalIn * 1e7);
      const sizes = [found.holeLargestIn, found.holeSmallestIn, found.shaftLargestIn, found.shaftSmallestIn].map((size) => Math.round(size * 1e7));
      expect(sizes).toEqual([nominal + hu, nominal + hl, nominal + su, nominal + sl]);
      expect(found.kind).toBe(hl - su >= 0 ? 'clearance' : hu - sl <= 0 ? 'interference' : 'transition');
    }
  }
});

const multiples: Readonly<Record<string, number>> = { 4: 5, 5: 7, 6: 10, 7: 16, 8: 25, 9: 40, 10: 64, 11: 100, 12: 160, 13: 250 };

test('the widths of all zones of a grade follow the tolerance unit, within a fifth from 0.12 in on and a third below', () => {
  const wrong: string[] = [];
  let met = 0;
  for (const { fitClass, over, upTo, holeClass, shaftClass } of rows) {
    const found = inchFit.run({ nominalIn: upTo, fitClass });
    const D = Math.sqrt(Math.max(over, upTo / 3) * upTo);
    const unit = 0.052 * Math.cbrt(D) + 0.001 * D;
    for (const [zoneClass, zone] of [[holeClass, found.hole], [shaftClass, found.shaft]] as const) {
      const multiple = multiples[/\d+$/.exec(zoneClass)?.[0] ?? ''];
      if (multiple === undefined) continue;
      met += 1;
      const width = zone.upperThou - zone.lowerThou;
      const off = width / (multiple * unit) - 1;
      if (Math.abs(off) > (over === 0 ? 0.34 : 0.2)) wrong.push(`${fitClass} ${zoneClass} ${over}-${upTo}: ${width.toFixed(2)} for ${(multiple * unit).toFixed(2)}`);
    }
  }
  // As the page has them: LN1 keeps the smallest shaft at the largest hole, and its width is what is left; the finest zone of the smallest sizes is the width that can be made.
  expect(wrong).toEqual(['RC1 g4 0-0.12: 0.15 for 0.11', 'LN1 n5 0.4-0.71: 0.40 for 0.30', 'LN1 n5 0.71-1.19: 0.50 for 0.36']);
  expect(met).toBeGreaterThan(500);
});
