import { expect, test } from 'vitest';
import { bearingRemoval } from './bearing-removal.js';

const inAluminium = { designation: '6203', shaftClass: 'h6', housingClass: 'P7', housingMaterial: 'al-a380' } as const;
const heatSteps = (input: object) => bearingRemoval.run(input).steps.filter(({ code }) => code === 'bearing-out-heat-case' || code === 'bearing-out-ease-by-heat');

// Limits: 120 °C for bearings (bearing-maintenance-guide), 93 °C for plastic cages and rubber seals (bearing-handbook-reprints).
test('a case is warmed past the point where it lets go, and never over its limit', () => {
  const [step] = heatSteps(inAluminium);
  expect(step?.code).toBe('bearing-out-heat-case');
  expect(step?.parameters['limitC']).toBe(120);
  expect(Number(step?.parameters['warmPartC'])).toBeLessThan(120);
});

test('where the limit comes first, heat only eases: said so, and no step asks for more', () => {
  const [step] = heatSteps({ ...inAluminium, caseLimitC: 50 });
  expect(step?.code).toBe('bearing-out-ease-by-heat');
  expect(step?.parameters['limitC']).toBe(50);
  expect(bearingRemoval.run({ ...inAluminium, caseLimitC: 50 }).findings.map(({ code }) => code)).toContain('outer-ring-draws-out-heat-eases');
});

test('a bearing that goes in again is spared for its seals and its cage; one that is thrown away is not', () => {
  const limits = (more: object) => bearingRemoval.run({ ...inAluminium, ...more }).seats.map(({ limitC }) => limitC);
  expect(limits({ mustBeReused: true, designation: '6203-2RS' })).toEqual([93, 93]);
  expect(limits({ mustBeReused: true, hasPolymerCage: true })).toEqual([93, 93]);
  expect(limits({ mustBeReused: true })).toEqual([120, 120]);
  expect(limits({ designation: '6203-2RS' })).toEqual([120, 120]);
});
