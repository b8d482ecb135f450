import { expect, test } from 'vitest';
import { joiningTemperature } from './joining-temperature.js';

const steel = { youngsModulusGpa: 200, poissonRatio: 0.3, expansionPerK: 1.2e-5 };
const stated = { jointDiameterMm: 50, interferenceUm: 40, joiningClearanceUm: 20, outerMaterial: steel, innerMaterial: steel, ambientC: 20 } as const;

test('heat alone: 60 µm on 50 mm at 12e-6 is 100 K', () => {
  const output = joiningTemperature.run({ ...stated, outerLimitC: 200 });
  expect(output.outerPartC).toBeCloseTo(120, 6);
  expect(output.innerPartC).toBe(20);
  expect(output.gapAtLimitUm).toBeCloseTo(108 - 40, 9);
  expect(output.outerPartSpanC?.low).toBeCloseTo(120, 6);
  expect(output.outerPartSpanC?.high).toBeCloseTo(120, 6);
  expect(output.findings.map(({ code }) => code)).toEqual(['joins-by-heat']);
  for (const caution of ['hot-parts-gloves', 'no-flame-for-heating', 'no-food-oven', 'solvents-washed-off', 'seals-out-before-heat', 'burnt-fluoro-rubber']) expect(output.cautions).toContain(caution);
  expect(output.cautions).not.toContain('cold-burns');
});

test('heat to the limit, and the rest by chilling', () => {
  const output = joiningTemperature.run({ ...stated, outerLimitC: 80, innerLimitC: -70 });
  expect([output.outerPartC, output.innerPartC]).toEqual([80, expect.closeTo(-20, 6) as number]);
  expect(output.cautions).toEqual(expect.arrayContaining(['cold-burns', 'cold-gas-smothers', 'hot-parts-gloves']));
});

test('a limit of the inner part that was given is never passed, not even by the alternative', () => {
  const output = joiningTemperature.run({ ...stated, outerLimitC: 60, innerLimitC: 0 });
  expect(output).toMatchObject({ feasible: false, alternative: 'press cold', alternativeInnerC: null, innerPartC: 0 });
  expect(output.findings.map(({ code }) => code)).toEqual(['heat-is-not-enough', 'limits-leave-no-room']);
  expect(output.cautions).toContain('press-straight');
});

test('without a limit of the inner part the alternative names how cold', () => {
  const output = joiningTemperature.run({ ...stated, outerLimitC: 100 });
  expect(output).toMatchObject({ feasible: false, innerPartC: 20, alternative: 'both', outerPartSpanC: null });
  expect(output.alternativeInnerC).toBeCloseTo(0, 6);
  expect(joiningTemperature.run({ ...stated, interferenceUm: 30, outerLimitC: 90 }).alternative).toBe('chill');
  expect(joiningTemperature.run({ ...stated, interferenceUm: 400, outerLimitC: 90 }).alternative).toBe('press cold');
});

test('a seal or grease in the outer part keeps its own limit, whatever was given', () => {
  const output = joiningTemperature.run({ ...stated, outerLimitC: 300, hasSealOrGrease: true });
  expect(output.outerLimitC).toBe(80);
  expect(output.feasible).toBe(false);
  expect(output.assumptions.map(({ name }) => name)).toContain('heating-limit');
  expect(joiningTemperature.run({ ...stated, outerLimitC: 60, hasSealOrGrease: true }).outerLimitC).toBe(60);
});

test('the span: what the other end of the expansion coefficient would need', () => {
  const output = joiningTemperature.run({ ...stated, outerMaterial: 'al-6061-t6', outerLimitC: 150 });
  expect(output.outerPartC).toBeCloseTo(20 + 60 / (50 * 1000 * 23.6e-6), 6);
  expect(output.outerPartSpanC?.high).toBe(output.outerPartC);
  expect(output.outerPartSpanC?.low).toBeCloseTo(20 + 60 / (50 * 1000 * 24e-6), 6);
  expect(output.gapAtLimitSpanUm.low).toBe(output.gapAtLimitUm);
  expect(output.gapAtLimitSpanUm.high).toBeCloseTo(50 * 1000 * 24e-6 * 130 - 40, 6);
});

test('the joining clearance left out is a thousandth of the diameter, and said', () => {
  const { joiningClearanceUm: _clearance, ...without } = stated;
  const output = joiningTemperature.run({ ...without, outerLimitC: 300 });
  expect(output.neededGapUm).toBe(90);
  expect(output.assumptions[0]).toMatchObject({ name: 'joining-clearance', value: 50, unit: 'µm' });
});

test('a limit below the workshop is the workshop: nothing is heated', () => {
  const output = joiningTemperature.run({ ...stated, outerLimitC: 5 });
  expect(output).toMatchObject({ feasible: false, outerLimitC: 20, gapAtLimitUm: -40 });
});
