import { expect, test } from 'vitest';
import { caseHold } from './case-hold.js';
import type { Construction } from './seal-field.js';
import { sealCheck } from './seal-check.js';

const placed = (construction: Construction) => ({
  seal: { shaftMm: 20, outsideMm: 35, widthMm: 7, construction, lipMaterial: 'NBR' as const },
  bore: { readings: [{ instrument: 'inside-micrometer-rod', valuesMm: [35.01] }], material: 'al-a380' },
});

test('a half-rubber seal presses as hard as a metal case, over its metal half alone', () => {
  const [metal, half] = [caseHold(placed('metal-case')), caseHold(placed('half-rubber'))];
  expect(half?.contactPressureMpa).toEqual(metal?.contactPressureMpa);
  expect((half?.pushInForceN?.high ?? 0) / (metal?.pushInForceN?.high ?? 1)).toBeCloseTo(0.6, 9);
  expect((half?.pushInForceN?.low ?? 0) / (metal?.pushInForceN?.low ?? 1)).toBeCloseTo(0.4, 9);
  expect(half?.assumptions.map(({ name }) => name)).toContain('half-rubber-metal-share');
  expect(sealCheck.run(placed('half-rubber')).findings.map(({ code }) => code)).toContain('allowance-of-metal-half');
});

test('a rubber-covered seal has no force that is published', () => {
  expect(caseHold(placed('rubber-covered'))?.pushInForceN).toBeNull();
});
