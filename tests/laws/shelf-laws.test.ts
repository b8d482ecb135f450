import fc from 'fast-check';
import { expect, test } from 'vitest';
import { CalculationError } from '@seatwright/core';
import { sealCheck, shelfMatch, shelfMatcher, type Situation } from '@seatwright/core/seal';
import { expectWords, numbersIn } from './internal/expect-words.js';
import { numRuns } from './internal/num-runs.js';

const place: Situation = {
  seal: { shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' },
  shaft: { readings: [{ instrument: 'outside-micrometer', valuesMm: [19.97] }] },
  bore: { readings: [{ instrument: 'inside-micrometer-rod', valuesMm: [35.01] }], material: 'al-a380', depthMm: 10 },
  running: { speedRpm: 1500, fluid: 'mineral-oil', fluidTemperatureC: 60, housingTemperatureC: 60 },
};
const header = ['id', 'shaft', 'outside', 'width', 'type', 'material', 'stock'];
const cell = (mm: number) => fc.constantFrom(String(mm), `${mm},0`, `${mm}.0 mm`, ` ${mm} `);
const row = fc.tuple(
  fc.nat(999).map(String),
  fc.constantFrom(19, 20, 22).chain(cell),
  fc.constantFrom(35, 36, 40).chain(cell),
  fc.constantFrom(7, 8, 10).chain(cell),
  fc.constantFrom('metal', 'A', 'rubber covered', 'ribbed', ''),
  fc.constantFrom('NBR', 'FKM', 'silicone', 'EPDM', ''),
  fc.constantFrom('0', '1', '25', ''),
);

test('a row that says everything is judged exactly as the seal check judges it; the best stand first', () => {
  const rank = ['suits', 'suits with care', 'cannot tell', 'does not suit'];
  fc.assert(
    fc.property(fc.array(row, { maxLength: 30 }), (rows) => {
      const output = shelfMatch.compute({ ...place, header, rows: rows.map((cells) => [...cells]), bestCount: 1000 });
      expectWords(output);
      expect(numbersIn(output).every(Number.isFinite)).toBe(true);
      expect(output.candidates.map(({ verdict }) => rank.indexOf(verdict))).toEqual(output.candidates.map(({ verdict }) => rank.indexOf(verdict)).toSorted());
      expect(output.suitsCount + output.suitsWithCareCount + output.cannotTellCount + output.doesNotSuitCount + output.badRowCount).toBe(output.rowCount);
      for (const { construction, lipMaterial, shaftMm, outsideMm, widthMm, pieceCount, verdict, reasons } of output.candidates) {
        expectWords({ findings: reasons, assumptions: [], notChecked: [] });
        if (construction === null || lipMaterial === null || pieceCount === 0 || widthMm !== 7) continue;
        const seal = { ...place.seal, shaftMm, outsideMm, widthMm, construction, lipMaterial, hasDustLip: false } as Situation['seal'];
        expect(verdict).toBe(sealCheck.compute({ ...place, seal }).verdict);
      }
      for (const { shaftMm, outsideMm } of output.nearMisses) expect(sealCheck.compute({ ...place, seal: { ...place.seal, shaftMm, outsideMm } }).verdict).toBe('does not suit');
    }),
    { numRuns: Math.min(numRuns, 300) },
  );
});

test('any cells whatever: each row is judged or named, nothing throws, no name of a column reaches a prototype', () => {
  const anyCell = fc.oneof(fc.string({ maxLength: 12 }), fc.constantFrom('__proto__', 'constructor', '1e999', '-5', 'NaN', '3/0 in', '20', '35', '7'));
  fc.assert(
    fc.property(fc.array(fc.array(anyCell, { maxLength: 9 }), { maxLength: 20 }), (rows) => {
      const matcher = shelfMatcher(place, header);
      rows.forEach((cells, i) => matcher.take(cells, i + 2));
      const output = matcher.result();
      expect(output.badRowCount).toBeGreaterThanOrEqual(output.badRows.length);
      expect(numbersIn(output).every(Number.isFinite)).toBe(true);
    }),
    { numRuns },
  );
  fc.assert(
    fc.property(fc.array(fc.oneof(anyCell, fc.constantFrom('d', 'D', 'b', 'size', 'Width [mm]', 'shaft (in)')), { maxLength: 8 }), (names) => {
      try {
        shelfMatcher(place, names);
      } catch (error) {
        expect(error).toBeInstanceOf(CalculationError);
      }
      expect(({} as Record<string, unknown>)['shaft']).toBeUndefined();
    }),
    { numRuns },
  );
});

test('headers are understood as people write them', () => {
  const one = (names: string[], cells: string[]) => shelfMatch.run({ ...place, header: names, rows: [cells] }).candidates[0];
  expect(one(['d', 'D', 'b'], ['20', '35', '7'])).toMatchObject({ shaftMm: 20, outsideMm: 35, widthMm: 7 });
  expect(one(['Shaft [mm]', 'Bore (mm)', 'Width_mm'], ['20,0', '35', '7'])).toMatchObject({ shaftMm: 20 });
  expect(one(['shaft (in)', 'outside in', 'width_in'], ['0.7874', '1.378', '0.2756'])).toMatchObject({ shaftMm: 19.99996 });
  expect(one(['Size', 'Rubber'], ['20 × 35 × 7', 'nitrile'])).toMatchObject({ lipMaterial: 'NBR' });
  expect(() => one(['d', 'D'], ['20', '35'])).toThrow(/no column says width/);
  expect(() => one(['shaft', 'd1', 'outside', 'width'], [])).toThrow(/both say the shaft/);
});
