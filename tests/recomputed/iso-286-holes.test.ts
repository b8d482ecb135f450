import { expect, test } from 'vitest';
import { fit, toleranceZone } from '@seatwright/core/tolerance';
import { cellOf, printedTable, type Row } from './internal/printed-table.js';

/**
 * Every hole from the shaft of the same letter, by the rules of ISO 286-1 (1988, clauses on the deviations of holes; from memory):
 *   general:  EI = −es (A to H),  ES = −ei (the rest);
 *   over 3 up to 500 mm, K, M, N to grade 8 and P to ZC to grade 7:  ES = −ei + Δ,  Δ = ITn − IT(n − 1);
 *   N from grade 9 on, over 3 up to 500 mm: ES = 0;  JS: ± IT/2.
 * In whole tenths of a µm, so that nothing is rounded away.
 */
const grades = printedTable('tolerance/iso-286-1-standard-tolerances');
const shafts = printedTable('tolerance/iso-286-1-shaft-deviations');

const names = ['01', '0', ...Array.from({ length: 18 }, (_, i) => String(i + 1))];
const tenths = (um: number): number => Math.round(um * 10);
const gradeRow = (size: number): Row | undefined => grades.find((row) => size > (row['overMm'] ?? 0) && size <= (row['upToMm'] ?? 0));
const it = (name: string, size: number): number | null => {
  const value = gradeRow(size)?.[`it${name}Um`];
  return value === null || value === undefined ? null : tenths(value);
};
const capital = (letter: string): string => letter.charAt(0).toUpperCase() + letter.slice(1);

const clearance = ['a', 'b', 'c', 'cd', 'd', 'e', 'ef', 'f', 'fg', 'g', 'h'];
const steep = ['p', 'r', 's', 't', 'u', 'v', 'x', 'y', 'z', 'za', 'zb', 'zc'];

/** Sizes from the ends of every range, both sides of each. */
const sizes = shafts.flatMap((row) => [cellOf(row, 'overMm') + 0.001, cellOf(row, 'upToMm')]).filter((size) => size > 1);
const shaftRow = (size: number): Row | undefined => shafts.find((row) => size > (row['overMm'] ?? 0) && size <= (row['upToMm'] ?? 0));

/** Upper and lower limit deviation of a hole in tenths of a µm; null where the rules or the shaft give none. */
function hole(letter: string, name: string, size: number): readonly [upper: number, lower: number] | null {
  const width = it(name, size);
  const row = shaftRow(size);
  if (width === null || row === undefined) return null;
  const number = name === '01' ? 0 : Number(name);
  if (letter === 'js') return [width / 2, -width / 2];
  if (clearance.includes(letter)) {
    const es = row[`es${capital(letter)}Um`];
    return es === null || es === undefined ? null : [-tenths(es) + width, -tenths(es)];
  }
  if (letter === 'm' && name === '6' && size > 250 && size <= 315) return [-90, -90 - width];
  const ei = row[letter === 'k' ? 'eiK4ToK7Um' : `ei${capital(letter)}Um`];
  if (ei === null || ei === undefined) return null;
  const isMiddle = size > 3 && size <= 500;
  if (letter === 'n' && number > 8 && isMiddle) return [0, -width];
  if (letter === 'k' && number > 8 && size > 3) return null;
  const hasDelta = isMiddle && number >= 3 && number <= (steep.includes(letter) ? 7 : 8);
  const finer = hasDelta ? it(String(number - 1), size) : null;
  const upper = -tenths(ei) + (finer === null ? 0 : width - finer);
  return [upper, upper - width];
}

const zoneOf = (size: number, toleranceClass: string) => {
  try {
    const { upperLimitDeviationUm, lowerLimitDeviationUm } = toleranceZone.run({ nominalMm: size, toleranceClass });
    return [upperLimitDeviationUm * 10, lowerLimitDeviationUm * 10] as const;
  } catch {
    return null;
  }
};

test.each([...clearance, 'js', 'k', 'm', 'n', ...steep])('holes %s: limits at every range and grade by the rules', (letter) => {
  const wrong: string[] = [];
  let met = 0;
  for (const size of sizes) {
    for (const name of names) {
      const found = zoneOf(size, `${letter.toUpperCase()}${name}`);
      if (found === null) continue;
      met += 1;
      const byRule = hole(letter, name, size);
      const isSame = byRule !== null && found.every((value, i) => Math.abs(value - (byRule[i] ?? Number.NaN)) < 1e-6);
      if (!isSame) wrong.push(`${letter.toUpperCase()}${name} at ${size}: ${String(found)}, by rule ${String(byRule)}`);
    }
  }
  expect(wrong).toEqual([]);
  expect(met).toBeGreaterThan(50);
});

test('the special rule keeps its purpose: H with a shaft one grade finer fits like the shaft basis mirror of it', () => {
  let met = 0;
  for (const size of sizes.filter((size) => size > 3 && size <= 500)) {
    for (const [letter, coarsest] of [...['k', 'm', 'n'].map((name) => [name, 8] as const), ...steep.map((name) => [name, 7] as const)]) {
      for (let number = 5; number <= coarsest; number += 1) {
        if (letter === 'm' && number === 6 && size > 250 && size <= 315) continue;
        if (zoneOf(size, `${letter}${number - 1}`) === null || zoneOf(size, `${letter.toUpperCase()}${number}`) === null) continue;
        const holeBasis = fit.run({ nominalMm: size, hole: `H${number}`, shaft: `${letter}${number - 1}` });
        const shaftBasis = fit.run({ nominalMm: size, hole: `${letter.toUpperCase()}${number}`, shaft: `h${number - 1}` });
        expect([shaftBasis.maximumClearanceUm, shaftBasis.minimumClearanceUm], `${letter}${number} at ${size}`).toEqual([holeBasis.maximumClearanceUm, holeBasis.minimumClearanceUm]);
        met += 1;
      }
    }
  }
  expect(met).toBeGreaterThan(1000);
});
