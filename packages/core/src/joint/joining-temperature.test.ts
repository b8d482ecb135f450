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

const codesOf = (input: Record<string, unknown>) => joiningTemperature.run({ ...stated, ...input }).findings.map(({ code, severity, parameters }) => [code, severity, parameters]);
const close = (value: number) => expect.closeTo(value, 6) as number;
const namesOf = (input: Record<string, unknown>) => joiningTemperature.run({ ...stated, ...input }).assumptions.map(({ name, value, upToValue }) => [name, value, ...(upToValue === undefined ? [] : [upToValue])]);

test('each way of going together has its sentence, its numbers and its cautions', () => {
  // 60 µm are wanted; a kelvin makes 0.6 µm.
  expect(codesOf({ interferenceUm: -20, outerLimitC: 100 })).toEqual([['joins-without-heat', 'good', { ambientC: 20 }]]);
  expect(codesOf({ interferenceUm: -20, ambientC: 0, outerLimitC: 100 })).toEqual([['joins-without-heat', 'good', { ambientC: 0 }]]);
  expect(codesOf({ outerLimitC: 120 })).toEqual([['joins-by-heat', 'good', { outerC: close(120), outerLimitC: 120, neededUm: 60 }]]);
  expect(codesOf({ outerLimitC: 80, innerLimitC: -20 })).toEqual([['joins-by-heat-and-cold', 'good', { outerC: 80, innerC: close(-20), neededUm: 60 }]]);
  // 48 µm at the limit: 8 beyond the interference, 12 short of the clearance.
  expect(codesOf({ outerLimitC: 100 })).toEqual([
    ['joins-with-less-clearance', 'care', { outerLimitC: 100, innerLimitC: 20, gapUm: close(8), clearanceUm: 20 }],
    ['instead-heat-and-chill', 'note', { innerC: close(0), outerLimitC: 100 }],
  ]);
  expect(codesOf({ outerLimitC: 80 })).toEqual([
    ['heat-is-not-enough', 'bad', { outerLimitC: 80, innerLimitC: 20, gapUm: close(4), clearanceUm: 20 }],
    ['instead-heat-and-chill', 'note', { innerC: close(-20), outerLimitC: 80 }],
  ]);
  // Chilling alone: 50 µm are 83.3 K below 20 °C.
  expect(codesOf({ interferenceUm: 30, outerLimitC: 90 })).toEqual([
    ['joins-with-less-clearance', 'care', { outerLimitC: 90, innerLimitC: 20, gapUm: close(12), clearanceUm: 20 }],
    ['instead-chill', 'note', { innerC: close(20 - 50 / 0.6), outerLimitC: 90 }],
  ]);
  expect(codesOf({ interferenceUm: 400, outerLimitC: 90 })).toEqual([
    ['heat-is-not-enough', 'bad', { outerLimitC: 90, innerLimitC: 20, gapUm: close(358), clearanceUm: 20 }],
    ['instead-press-cold', 'note', {}],
  ]);
  expect(codesOf({ outerLimitC: 60, innerLimitC: 0 })[1]).toEqual(['limits-leave-no-room', 'note', { outerLimitC: 60, innerLimitC: 0 }]);
});

test('cautions go with what is done', () => {
  const heat = ['hot-parts-gloves', 'no-flame-for-heating', 'no-food-oven', 'solvents-washed-off', 'seals-out-before-heat', 'burnt-fluoro-rubber'];
  const cold = ['cold-burns', 'cold-gas-smothers'];
  const cautions = (input: Record<string, unknown>) => joiningTemperature.run({ ...stated, ...input }).cautions;
  expect(cautions({ interferenceUm: -20, outerLimitC: 100 })).toEqual(['makers-manual-first', 'join-in-one-go']);
  expect(cautions({ outerLimitC: 120 })).toEqual(['makers-manual-first', ...heat, 'join-in-one-go']);
  expect(cautions({ outerLimitC: 80, innerLimitC: -20 })).toEqual(['makers-manual-first', ...heat, ...cold, 'join-in-one-go']);
  // To 0 °C a freezer does it, which burns and smothers nobody.
  expect(cautions({ outerLimitC: 100 })).toEqual(['makers-manual-first', ...heat, 'join-in-one-go']);
  expect(cautions({ outerLimitC: 80 })).toEqual(['makers-manual-first', ...heat, ...cold, 'join-in-one-go']);
  // The outer part may not be heated at all, and chilling alone is enough.
  expect(cautions({ interferenceUm: 30, outerLimitC: 20 })).toEqual(['makers-manual-first', ...cold, 'join-in-one-go']);
  expect(cautions({ interferenceUm: 400, outerLimitC: 20 })).toEqual(['makers-manual-first', 'eye-protection', 'press-straight']);
});

test('a limit that is just enough is enough: heat, cold, both, and the alternatives', () => {
  const run = (input: Record<string, unknown>) => joiningTemperature.run({ ...stated, interferenceUm: 40, ...input });
  expect(run({ interferenceUm: -20, outerLimitC: 100 })).toMatchObject({ feasible: true, outerPartC: 20, innerPartC: 20 });
  // One part in a million more.
  expect(run({ interferenceUm: -19.9999, outerLimitC: 120 }).outerPartC).toBeCloseTo(20 + 0.0001 / 0.6, 6);
  expect(run({ outerLimitC: 119.9999 }).feasible).toBe(false);
  expect(run({ outerLimitC: 80, innerLimitC: -19.9999 }).feasible).toBe(false);
  // 98 K of dry ice make 58.8 µm, 216 K of nitrogen 129.6 µm.
  expect(run({ interferenceUm: 38.7, outerLimitC: 30 }).alternative).toBe('chill');
  expect(run({ interferenceUm: 38.9, outerLimitC: 30 }).alternative).toBe('both');
  expect(run({ interferenceUm: 115.5, outerLimitC: 30 }).alternative).toBe('both');
  expect(run({ interferenceUm: 115.7, outerLimitC: 30 }).alternative).toBe('press cold');
});

test('what was not given is assumed and told, nothing else', () => {
  expect(namesOf({ outerLimitC: 120 })).toEqual([]);
  expect(namesOf({ outerLimitC: 120, joiningClearanceUm: undefined })).toEqual([['joining-clearance', 50]]);
  expect(namesOf({ outerLimitC: 150, outerMaterial: 'al-6061-t6' })).toEqual([['expansion-of-outer', 23.6e-6, 24e-6]]);
  expect(namesOf({ outerLimitC: 150, innerMaterial: 'al-6061-t6' })).toEqual([['expansion-of-inner', 23.6e-6, 24e-6]]);
  // A seal keeps its 80 °C where more was given, and is no news where less was.
  expect(namesOf({ outerLimitC: 300, hasSealOrGrease: true })).toEqual([['heating-limit', 80]]);
  expect(namesOf({ outerLimitC: 80, hasSealOrGrease: true })).toEqual([]);
  expect(() => joiningTemperature.run(stated)).toThrow(/^outerLimitC: missing; no heating limit of as stated is at hand/u);
  expect(() => joiningTemperature.run({ ...stated, hasSealOrGrease: true })).toThrow(/^outerLimitC: missing/u);
  const own = joiningTemperature.run({ ...stated, outerMaterial: 'steel-c45', hasSealOrGrease: true });
  expect(own.outerLimitC).toBe(80);
  expect(joiningTemperature.run({ ...stated, outerMaterial: 'steel-c45' }).outerLimitC).toBeGreaterThan(80);
  expect(own.notChecked).toEqual(['heat-lost-on-the-way', 'expansion-in-deep-cold', 'hardness-after-heating']);
});

test('a cold workshop: below 20 °C the end of the coefficient that leaves less room is the other one', () => {
  const wide = { id: 'wide', youngsModulusGpa: 100, poissonRatio: 0.3, expansionMinPerK: 20e-6, expansionMaxPerK: 24e-6 };
  const run = (input: Record<string, unknown>) => joiningTemperature.run({ jointDiameterMm: 50, joiningClearanceUm: 10, materials: [wide], ambientC: 0, outerLimitC: 10, interferenceUm: 0, ...input });
  // Outer part at 10 °C shrinks by 24e-6·10 at the most; the inner part at 0 °C by 20e-6·20 at the least: 12 µm and 20 µm on 50 mm.
  const output = run({ outerMaterial: 'wide', innerMaterial: 'wide' });
  expect(output.gapAtLimitUm).toBeCloseTo(-12 + 20, 9);
  expect(output.gapAtLimitSpanUm.high).toBeCloseTo(-10 + 24, 9);
  const input = { jointDiameterMm: 50, joiningClearanceUm: 10, materials: [wide], ambientC: 0, outerLimitC: 10, interferenceUm: 0, outerMaterial: 'wide', innerMaterial: 'wide' };
  const steps = joiningTemperature.explain(input, output);
  expect(steps).toMatchObject([
    { symbol: 'g', scope: { U: 0, S: 10 }, value: 10 },
    { symbol: 'r', scope: { alpha_o: 24e-6, alpha_i: 20e-6, t_o: 10, t_i: 0, t_0: 20, d: 50 }, value: close(8) },
    { symbol: 'c', scope: { alpha_o: 24e-6, alpha_i: 20e-6, t_o: 10, t_i: 0, U: 0 }, value: close(8) },
  ]);
  const warm = joiningTemperature.run({ ...input, ambientC: 20, outerLimitC: 100 });
  expect(joiningTemperature.explain({ ...input, ambientC: 20, outerLimitC: 100 }, warm)).toMatchObject([{ symbol: 'g' }, { symbol: 'r', scope: { alpha_o: 20e-6, alpha_i: 24e-6 }, value: close(10) }, { symbol: 'c', scope: { alpha_o: 20e-6, alpha_i: 24e-6, t_o: 100, t_i: 20 }, value: close(80) }]);
});
