import { expect, test } from 'vitest';
import { bearingDimensions } from '@seatwright/core/bearing';
import { iso15DeepGroove } from '../../packages/core/src/tables/generated/iso-15-deep-groove.js';
import { rowsOf } from './internal/table-rows.js';

test.each(rowsOf(iso15DeepGroove).map((row) => String(row['designation'])))('%s: from the designation to its dimensions and back', (designation) => {
  const [size] = bearingDimensions.run({ designation }).matches;
  const { boreMm = 0, outsideMm = 0, widthMm = 0 } = size ?? {};
  expect(bearingDimensions.run({ boreMm, outsideMm, widthMm, readingErrorMm: 0 }).matches.map((match) => match.designation)).toContain(designation);
  const inch = (mm: number) => `${mm / 25.4} in`;
  expect(bearingDimensions.run({ boreMm: inch(boreMm), outsideMm: inch(outsideMm), widthMm: inch(widthMm) }).matches.map((match) => match.designation)).toContain(designation);
});
