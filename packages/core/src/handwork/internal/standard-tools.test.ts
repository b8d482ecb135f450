import { expect, test } from 'vitest';
import { german, wordFor } from '../../wording/index.js';
import { standardTools } from './standard-tools.js';

const tubes = standardTools().filter(({ kind }) => kind === 'tube');

test('a tube says what to look for before it says its standard', () => {
  const kinds = new Set(tubes.map(({ name }) => name.split(', ')[0]));
  expect([...kinds].sort()).toEqual(['PE pipe', 'PVC-U conduit', 'PVC-U pipe', 'copper tube', 'steel pipe']);
  expect(tubes.filter(({ name }) => name.includes('conduit')).every(({ name }) => /IEC 60423|IS 9537/u.test(name))).toBe(true);
  expect(tubes.some(({ name }) => name === 'copper tube, EN 1057, 28, 28 x 1')).toBe(true);
});

test('in German every one of them too', () => {
  const heads = new Set(tubes.map(({ name }) => wordFor(name, german).split(', ')[0]));
  expect([...heads].sort()).toEqual(['Kupferrohr', 'PE-Rohr', 'PVC-U-Installationsrohr', 'PVC-U-Rohr', 'Stahlrohr']);
});
