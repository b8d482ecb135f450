import { expect, test } from 'vitest';
import { materialNames } from './find-material.js';
import { materialProperties } from './material-properties.js';

test('every material of the table lists modulus, Poisson ratio and expansion, each with a source', () => {
  for (const { id } of materialNames()) {
    const { properties } = materialProperties.run({ material: id });
    expect(properties.map(({ property }) => property)).toEqual(expect.arrayContaining(['youngsModulus', 'poissonRatio', 'expansion']));
    for (const { value, low, high, source } of properties) {
      expect(source.id).not.toBe('');
      if (low !== null && high !== null) expect(low <= value && value <= high).toBe(true);
    }
  }
});

test('a material of the workshop comes first, with the source that the workshop states', () => {
  const own = { id: 'steel-c45', name: 'our shaft steel', youngsModulusGpa: 205, poissonRatio: 0.3, expansionMinPerK: 1.1e-5, expansionMaxPerK: 1.2e-5, yieldMpa: 400, source: 'mill certificate' };
  const output = materialProperties.run({ material: 'steel-c45', materials: [own] });
  expect(output.name).toBe('our shaft steel');
  expect(output.properties.find(({ property }) => property === 'yieldStrength')).toMatchObject({ value: 400, source: { clause: 'mill certificate' } });
});

test('an unknown material lists what is known', () => expect(() => materialProperties.run({ material: 'cheese' })).toThrow(/known are steel-c45/));

test.each([
  ['mg-az91', /known are mg-az91d, or a material of the workshop file/u],
  ['Cast iron', /known are gjl250, gjs500, or/u],
  ['aluminium', /known are al-a380, .*al-a356-t6, or/u],
  ['unobtainium', /known are steel-c45, .*ptfe, or/u],
])('an unknown material, %s, is answered with those that may be meant', (id, message) => {
  expect(() => materialProperties.run({ material: id })).toThrow(message);
});
