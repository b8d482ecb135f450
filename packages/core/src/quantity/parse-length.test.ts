import { expect, test } from 'vitest';
import { CalculationError } from '../result/index.js';
import { parseLength } from './parse-length.js';

const mm = (written: string | number) => parseLength(written).valueMm;

test.each([
  ['19.05', 19.05], ['19,05 mm', 19.05], ['19.050', 19.05], ['19,050', 19.05], ['.5', 0.5], ['3/4 in', 19.05], ['3/4"', 19.05], ['3/4″', 19.05], ['1 3/8"', 34.925], ['1-3/8 in', 34.925],
  ['1⅜ in', 34.925], ['½"', 12.7], ['0.75 in', 19.05], ['0.002 in', 0.0508], ['2 thou', 0.0508], ['2 mil', 0.0508], ['10 µm', 0.01], ['10 μm', 0.01], ['10 um', 0.01], ['2 cm', 20], ['0.02 m', 20], ["1'", 304.8],
  ['1\' 2 1/2"', 368.3], ['25 + 0.03', 25.03], ['25 mm - 0.05', 24.95], ['35 − 0.02', 34.98], ['1 in + 0.5 mm', 25.9], ['1 + 1/2 in', 38.1], ['+0.03', 0.03], ['-0.03', -0.03], ['ø20', 20], ['Ø 20 mm', 20], ['⌀20', 20],
  ['  20\u00a0mm ', 20], ['3/4 mm', 0.75], ['7 / 8 in', 22.225], ['25 - 3/8 mm', 24.625], ['25 + 10 µm', 25.01], ['19.05 - 2 thou', 18.9992], ['25 µm + 10', 0.035], ['25 mm + 10 µm', 25.01],
] as const)('%s is %s mm', (written, value) => expect(mm(written)).toBe(value));

test('what was written is kept beside the value', () => expect(parseLength('3/4 in')).toEqual({ valueMm: 19.05, asWritten: '3/4 in', unit: 'in' }));
test('a number is millimetres, or the default unit', () => {
  expect(mm(20)).toBe(20);
  expect(parseLength(0.75, { defaultUnit: 'in' }).valueMm).toBe(19.05);
  expect(parseLength('3/4', { defaultUnit: 'in' }).valueMm).toBe(19.05);
});

function errorOf(written: string | number): CalculationError {
  try {
    parseLength(written);
  } catch (error) {
    if (error instanceof CalculationError) return error;
    throw error;
  }
  throw new Error(`${written} was understood`);
}

test('a fault points at the character and says what would be understood', () => {
  expect(errorOf('19.0x5').message).toMatch(/character 5 \("x"\).*3\/4 in/);
  expect(errorOf('20 kg').message).toMatch(/"kg" is not a unit of length/);
  expect(errorOf('80 °C').message).toMatch(/"°C" is a unit of temperature, not of length/);
  expect(errorOf('1,234.5').message).toMatch(/one decimal mark.*character 6/);
  expect(errorOf('1e3').message).toMatch(/powers of ten/);
  expect(errorOf('3/0 in').message).toMatch(/divided by zero/);
  expect(errorOf('').message).toMatch(/nothing is written/);
  expect(errorOf('20 +').message).toMatch(/a number is expected at the end/);
  expect(errorOf('20 30').message).toMatch(/character 4/);
  expect(errorOf('M8').message).toMatch(/character 1/);
  expect(errorOf('9'.repeat(81)).message).toMatch(/longer than 80/);
  expect(errorOf(Number.NaN).code).toBe('invalid-input');
  expect(errorOf(Number.POSITIVE_INFINITY).code).toBe('invalid-input');
});

test('a fraction of one or more after a dash is taken off, not added', () => {
  expect(mm('25-8/4 mm')).toBe(23);
  expect(mm('25-3/3 mm')).toBe(24);
  expect(mm('25-2/3 in')).toBe(651.933333);
});

test('a fraction that nobody says the unit of is not taken for millimetres', () => {
  expect(errorOf('1 1/8').message).toMatch(/^input: write 1 1\/8 in or 1\.125 mm: a fraction without a unit may be inches/u);
  for (const text of ['3/4', '25 - 3/8', '1⅛', '½', '¾', '3⁄8']) expect(errorOf(text).message).toMatch(/may be inches/u);
  expect(parseLength('1 1/8', { defaultUnit: 'in' }).valueMm).toBe(28.575);
  expect(parseLength('1 + 1/8 in').valueMm).toBe(28.575);
});

test('a fault after other terms is pointed at where it stands', () => {
  expect(errorOf('25 + 1 3/0 in').message).toMatch(/divided by zero at character 10 \("0"\)/);
  expect(errorOf('25 + 3/0 in').message).toMatch(/divided by zero at character 8 \("0"\)/);
  expect(errorOf('1 3/8.5 in').message).toMatch(/one decimal mark.*character 6/);
  expect(errorOf('5. mm').message).toMatch(/digits are expected after the mark; at character 2/);
  expect(errorOf('1 2/4e5 in').message).toMatch(/powers of ten.*character 6/);
  expect(errorOf('5 .5').message).toMatch(/"\.5" is not a unit of length/);
  expect(errorOf('1.5½ in').message).toMatch(/character 4 \("½"\)/);
  expect(errorOf('20 mm x').message).toMatch(/this is not understood at character 7/);
});

test('what sticks to a unit makes another word of it', () => {
  for (const word of ['mm2', 'mm²', 'mmx', 'mmµ', 'm3']) expect(errorOf(`20 ${word}`).message, word).toContain(`"${word}" is not a unit of length`);
  expect(mm('20mm')).toBe(20);
  expect(mm('3 in.')).toBe(76.2);
});

test('eighty characters are read, one more is not', () => {
  expect(mm('20 mm'.padStart(80))).toBe(20);
  expect(errorOf('20 mm'.padStart(81)).message).toMatch(/longer than 80/);
});

test('a number in another unit is rounded once; nothing is not below nothing; an unknown unit is named', () => {
  expect(parseLength(1 / 3, { defaultUnit: 'in' }).valueMm).toBe(8.466667);
  expect(parseLength(3, { defaultUnit: 'thou' })).toEqual({ valueMm: 0.0762, asWritten: '3', unit: 'thou' });
  expect(mm(-0)).toBe(0);
  expect(mm('-0.0000001')).toBe(0);
  expect(() => parseLength('3', { defaultUnit: 'kg' as 'mm' })).toThrow(/unknown unit of length/);
});
