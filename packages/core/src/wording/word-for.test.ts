import { expect, test } from 'vitest';
import { english } from './english/index.js';
import { german } from './german/index.js';
import { wordFor } from './word-for.js';

test.each(['constructor', 'toString', '__proto__', 'hasOwnProperty'])('a tool may be called "%s"', (name) => {
  for (const catalogue of [english, german]) expect(wordFor(name, catalogue)).toBe(name);
});

test('a word of a table is put into the language; what nobody knows stays as it is', () => {
  expect(wordFor('metal-case', english)).toBe('metal case');
  expect(wordFor('Offcut of gas pipe', german)).toBe('Offcut of gas pipe');
});
