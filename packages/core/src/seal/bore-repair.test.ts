import fc from 'fast-check';
import { expect, test } from 'vitest';
import { expectWorkingHolds } from '../../../../tests/laws/internal/evaluate-working.js';
import { english, placeholdersOf } from '../wording/index.js';
import { boreRepair } from './bore-repair.js';
import type { Situation } from './situation-field.js';

const place = (boreMm: number, more: Partial<NonNullable<Situation['bore']>> = {}, running: Situation['running'] = { housingTemperatureC: 90 }): Situation => ({
  bore: { readings: [{ instrument: 'inside-micrometer-rod', valuesMm: [boreMm] }], material: 'al-a380', depthMm: 12, ...more },
  seal: { shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' },
  running,
});

test('a bore within what the standard lets happen needs no repair', () => expect(boreRepair.compute(place(35.01)).verdict).toBe('suits'));

test('a bore 0.15 mm too large: a sleeve that stays tight at 90 °C, the next size after boring, a compound as the last', () => {
  const { options, overUm } = boreRepair.compute(place(35.15));
  expect(overUm).toBeCloseTo(1000 * (35.15 + 0.0096 - (35.08 - 0.041)), -1);
  expect(options.map(({ kind, verdict }) => [kind, verdict])).toEqual([
    ['sleeve in the bore', 'suits'],
    ['next size', 'suits with care'],
    ['retaining compound', 'suits with care'],
    ['rubber-covered seal of the same size', 'does not suit'],
  ]);
  expect(options[0]).toMatchObject({ sleeveOutsideMm: 39, sleeveFit: expect.stringMatching(/^[A-Z]+\d+\/[a-z]+\d+$/) as string });
});

test('a thin wall takes neither sleeve nor next size', () => {
  const { options } = boreRepair.compute(place(35.15, { housingOutsideMm: 42 }));
  expect(options.filter(({ kind }) => kind === 'sleeve in the bore' || kind === 'next size').map(({ verdict }) => verdict)).toEqual(['does not suit', 'does not suit']);
});

test('without a reading of the bore nothing is guessed', () => {
  expect(() => boreRepair.run({ seal: { shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' } })).toThrow(/bore\.readings: missing/);
});

test('a larger bore never has more repairs; words and working hold', () => {
  const order = ['suits', 'suits with care', 'cannot tell', 'does not suit'];
  fc.assert(
    fc.property(fc.integer({ min: 35_000, max: 35_600 }), fc.integer({ min: 0, max: 300 }), fc.constantFrom('al-a380', 'gjl250', 'mg-az91d', undefined), (boreUm, more, material) => {
      const at = (um: number) => boreRepair.compute(place(um / 1000, material === undefined ? {} : { material }));
      const output = at(boreUm);
      for (const option of at(boreUm + more).options) {
        const before = output.options.find(({ kind }) => kind === option.kind);
        if (before !== undefined && option.kind !== 'next size') expect(order.indexOf(option.verdict)).toBeGreaterThanOrEqual(order.indexOf(before.verdict));
      }
      for (const { code, parameters } of output.options.flatMap(({ findings }) => findings)) {
        const words = english.findings[code];
        expect(words, code).toBeDefined();
        for (const name of placeholdersOf(`${words?.says ?? ''} ${words?.todo ?? ''}`)) expect(Object.keys(parameters), `${code} {${name}}`).toContain(name);
      }
      for (const code of [...output.notChecked, ...output.refused]) expect(Object.keys(english.notChecked), code).toContain(code);
      for (const { name } of output.assumptions) expect(Object.keys(english.assumed), name).toContain(name);
      expect(expectWorkingHolds(boreRepair.explain(place(boreUm / 1000), boreRepair.compute(place(boreUm / 1000))))).toBe(2);
    }),
  );
});
