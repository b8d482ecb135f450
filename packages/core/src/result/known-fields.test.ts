import * as z from 'zod/mini';
import { expect, test } from 'vitest';
import { bearingDimensions } from '../bearing/index.js';
import { lipSpeed, sealCheck } from '../seal/index.js';
import { CalculationError } from './calculation-error.js';
import { knownFields, likelyFields } from './known-fields.js';

const shape = z.strictObject({ bore: z.optional(z.strictObject({ depthMm: z.number(), readings: z.array(z.strictObject({ valuesMm: z.number() })) })), kind: z.union([z.string(), z.number()]) });

test('the fields at a path of a schema, through what may be left out and through lists', () => {
  expect(knownFields(shape, [])).toEqual(['bore', 'kind']);
  expect(knownFields(shape, ['bore'])).toEqual(['depthMm', 'readings']);
  expect(knownFields(shape, ['bore', 'readings', 3])).toEqual(['valuesMm']);
  for (const path of [['kind'], ['nowhere'], ['__proto__'], ['constructor', 'x']]) expect(knownFields(shape, path)).toEqual([]);
});

test('of the known names the likely ones, whatever unit they end in', () => {
  const known = ['housingClass', 'housingMaterial', 'shaftMm', 'n'];
  expect(likelyFields('housing', known)).toEqual(['housingClass', 'housingMaterial']);
  expect(likelyFields('shaftDiameterMm', known)).toEqual(['shaftMm']);
  expect(likelyFields('SHAFT', known)).toEqual(['shaftMm']);
  expect(likelyFields('colour', known)).toEqual(known);
  expect(likelyFields('no', known)).toEqual(known);
});

const messageOf = (run: () => unknown) => {
  try {
    run();
  } catch (error) {
    if (error instanceof CalculationError) return error.message;
  }
  return '';
};

test('an unknown field is told which are known', () => {
  expect(messageOf(() => lipSpeed.run({ shaftDiameterMm: 20, speedRpm: 1, colour: 1 }))).toBe('colour: unknown field; known are shaftDiameterMm, speedRpm, hours, got 1');
  expect(messageOf(() => sealCheck.run({ seal: { shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR', dust: true } }))).toBe('seal.dust: unknown field; known are hasDustLip, got true');
});

test('a bearing that no table holds is told what to enter instead', () => {
  expect(messageOf(() => bearingDimensions.run({ designation: '7205' }))).toContain('no bearing "7205": the tables hold deep groove ball bearings and cylindrical roller bearings of ISO 15; of any other bearing enter bore, outside and width');
});
