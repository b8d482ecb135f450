import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isLikePad, padOf, rowsOfPad, withAngle, withDepth, withOneMoreAngle, withOneMoreDepth, withReading } from './pad.js';
import type { Row } from './raw-readings.js';

const row = (value: string, angle = '', depth = ''): Row => ({ value, angle, depth, raw: undefined });
const plain = ({ value, angle, depth }: Row) => `${value} ${angle} ${depth}`;

describe('a pad of readings', () => {
  it('has a line for each angle and a column for each depth', () => {
    const pad = padOf([row('35.01', '0', '2'), row('35.02', '90', '2'), row('35.03', '0', '6')]);
    expect(pad.angles).toEqual(['0', '90']);
    expect(pad.depths).toEqual(['2', '6']);
    expect(pad.cells.map((line) => line.map(({ value }) => value))).toEqual([['35.01', '35.03'], ['35.02', '']]);
  });

  it('loses no reading and no place of one, however they lie', () => {
    const text = fc.constantFrom('', '0', '60', '90', '2', '6');
    fc.assert(
      fc.property(fc.array(fc.record({ value: fc.constantFrom('35.01', '35.02', '3/4 in'), angle: text, depth: text }), { maxLength: 30 }), (rows) => {
        const back = rowsOfPad(padOf(rows));
        expect(back.map(plain).toSorted()).toEqual(rows.map((one) => plain(one)).toSorted());
        expect(padOf(back).angles.length).toBe(back.length === 0 ? 3 : padOf(rows).angles.length);
      }),
    );
  });

  it('takes texts, angles and depths as they are typed', () => {
    const typed = withReading(withDepth(withOneMoreDepth(withReading(padOf([]), 1, 0, '35.01')), 1, '6'), 2, 1, '35.04');
    expect(rowsOfPad(typed).map(plain)).toEqual(['35.01 60 ', '35.04 120 6']);
    const grown = withReading(withAngle(withOneMoreAngle(typed), 3, '150'), 3, 0, '35.05');
    expect(rowsOfPad(grown).map(plain)).toEqual(['35.01 60 ', '35.04 120 6', '35.05 150 ']);
  });

  it('leaves a number of the file as it was until it is touched', () => {
    const pad = padOf([{ value: '35.01', angle: '0', depth: '2', raw: 35.01 }, { value: '35.02', angle: '0', depth: '6', raw: 35.02 }]);
    expect(rowsOfPad(withReading(pad, 0, 1, '35.03')).map(({ raw }) => raw)).toEqual([35.01, undefined]);
  });

  it('is how readings at several angles and depths are shown at first', () => {
    expect(isLikePad([row('1', '0', '2'), row('1', '90', '6')])).toBe(true);
    expect(isLikePad([row('1', '0', '2'), row('1', '90', '2')])).toBe(false);
    expect(isLikePad([row('1', '0'), row('1', '90', '6')])).toBe(false);
    expect(isLikePad([])).toBe(false);
  });
});
