import { expect, test } from 'vitest';
import { bearingDimensions } from '@seatwright/core/bearing';
import { iso15DeepGroove } from '../../packages/core/src/tables/generated/iso-15-deep-groove.js';
import { iso15WideSeries } from '../../packages/core/src/tables/generated/iso-15-wide-series.js';
import { rowsOf } from './internal/table-rows.js';

test.each(rowsOf(iso15DeepGroove).map((row) => String(row['designation'])))('%s: from the designation to its dimensions and back', (designation) => {
  const [size] = bearingDimensions.run({ designation }).matches;
  const { boreMm = 0, outsideMm = 0, widthMm = 0 } = size ?? {};
  expect(bearingDimensions.run({ boreMm, outsideMm, widthMm, readingErrorMm: 0 }).matches.map((match) => match.designation)).toContain(designation);
  const inch = (mm: number) => `${mm / 25.4} in`;
  expect(bearingDimensions.run({ boreMm: inch(boreMm), outsideMm: inch(outsideMm), widthMm: inch(widthMm) }).matches.map((match) => match.designation)).toContain(designation);
});

test.each([
  ['NU 205', 25, 52, 15],
  ['NJ 205', 25, 52, 15],
  ['NUP2205', 25, 52, 18],
  ['N 306', 30, 72, 19],
  ['NU 2306 C3', 30, 72, 27],
  ['NU 1008', 40, 68, 15],
] as const)('%s: rollers share the sizes of their dimension series', (designation, boreMm, outsideMm, widthMm) => {
  expect(bearingDimensions.run({ designation }).matches[0]).toMatchObject({ boreMm, outsideMm, widthMm });
  expect(bearingDimensions.run({ boreMm, outsideMm, widthMm, bearingKind: 'cylindrical-roller' }).matches.map((match) => match.designation)).toHaveLength(1);
});

test('the error of the readings is that of the instrument, where one is named', () => {
  const at = (instrument: string) => bearingDimensions.run({ boreMm: 17.02, outsideMm: 40, widthMm: 12, instrument }).matches.length;
  expect(at('outside-micrometer')).toBe(0);
  expect(at('digital-calliper-outside')).toBe(1);
  expect(() => at('tape')).toThrow(/instrument/);
});

test.each(['6203', 'NU 205', 'NJ 1008', 'N 306', 'NUP 2205', 'NU 2306'])('%s: the row that the working names stands in the table that it names, with that bore', (designation) => {
  const output = bearingDimensions.run({ designation });
  const [step] = bearingDimensions.explain({ designation }, output);
  if (step?.kind !== 'lookup') throw new Error('a lookup was expected');
  const rows = [...rowsOf(iso15DeepGroove).map((row) => ['iso-15-deep-groove', row['designation'], row['boreMm']]), ...rowsOf(iso15WideSeries).map((row) => ['iso-15-wide-series', `${String(row['dimensionSeries'])} ${String(row['boreCode'])}`, row['boreMm']])];
  expect(rows).toContainEqual([step.table, step.row, step.value]);
});
