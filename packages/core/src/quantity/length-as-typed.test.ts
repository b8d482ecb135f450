import fc from 'fast-check';
import { expect, test } from 'vitest';
import { asTyped, lengthAsTyped } from './length-as-typed.js';
import { parseLength } from './parse-length.js';

test.each([
  [20, 'mm', '.', '20'],
  [20, 'in', '.', '20 mm'],
  [0, 'in', '.', '0'],
  [19.985, 'mm', ',', '19,985'],
  [19.985, 'in', ',', '19,985 mm'],
  ['20', 'in', '.', '20 mm'],
  [' 35,012 ', 'in', '.', '35,012 mm'],
  ['35,012', 'mm', '.', '35,012'],
  ['25 + 0.03', 'in', '.', '25 + 0.03 mm'],
  ['3/4 in', 'in', '.', '3/4 in'],
  ['3/4 in', 'mm', '.', '3/4 in'],
  ['19.05 mm', 'in', '.', '19.05 mm'],
  ['2o', 'in', '.', '2o'],
  ['', 'in', '.', ''],
] as const)('%j in a form in %s with "%s": %j', (stored, formUnit, mark, shown) => {
  expect(lengthAsTyped(stored, formUnit, mark)).toBe(shown);
  if (/^[^a-z]*\d[^a-z]*$|mm$|in$/u.test(String(stored))) expect(parseLength(shown, { defaultUnit: formUnit }).valueMm).toBe(parseLength(String(stored), { defaultUnit: 'mm' }).valueMm);
});

test('what is shown means in the form what the document means', () => {
  fc.assert(fc.property(fc.double({ min: 0.001, max: 3000, noNaN: true }), fc.constantFrom('mm', 'in'), fc.constantFrom('.', ','), fc.boolean(), (mm, unit, mark, isText) => {
    const rounded = Math.round(mm * 1000) / 1000;
    const shown = lengthAsTyped(isText ? String(rounded) : rounded, unit, mark);
    expect(parseLength(shown, { defaultUnit: unit }).valueMm).toBeCloseTo(rounded, 6);
  }));
});

test('a text stays as it was typed, whatever the decimal mark in use', () => {
  expect(asTyped('7.5 mm', ',')).toBe('7.5 mm');
  expect(lengthAsTyped('7.5', 'mm', ',')).toBe('7.5');
});
