import { expect, test } from 'vitest';
import { english } from '../wording/index.js';
import { sealCheck } from './seal-check.js';
import type { Situation } from './situation-field.js';

const look = (shaft: Partial<NonNullable<Situation['shaft']>>) => {
  const { findings, notChecked } = sealCheck.compute({
    shaft: { readings: [{ instrument: 'outside-micrometer', valuesMm: [20] }], ...shaft },
    seal: { shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' },
  });
  return { codes: findings.map(({ code }) => code), notChecked };
};

/** Limits: 0.25 mm runout at any speed (RMA OS-1), 0.13 mm recommended (seal handbook), 0.25 mm offset (Neale, Tribology Handbook B23). */
test.each([
  [{ runoutMm: 0.13 }, 'runout-within', 'runout-by-speed'],
  [{ runoutMm: 0.14 }, 'runout-over-recommended', 'runout-by-speed'],
  [{ offsetMm: 0.25 }, 'offset-within', 'offset-by-diameter'],
])('%o: the one published limit is compared, and what it leaves open is said', (shaft, finding, open) => {
  const { codes, notChecked } = look(shaft);
  expect(codes).toContain(finding);
  expect(notChecked).toContain(open);
  expect(Object.keys(english.notChecked)).toContain(open);
});

test.each([
  [{ runoutMm: 0.26 }, 'runout-over', 'runout-by-speed'],
  [{ offsetMm: 0.26 }, 'offset-over', 'offset-by-diameter'],
])('%o is too much at any speed and size: nothing is left open', (shaft, finding, open) => {
  const { codes, notChecked } = look(shaft);
  expect(codes).toContain(finding);
  expect(notChecked).not.toContain(open);
});
