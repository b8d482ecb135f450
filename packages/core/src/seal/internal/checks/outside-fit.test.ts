import { expect, test } from 'vitest';
import { sealCheck } from '../../seal-check.js';

/** A metal seal 20 × 35 × 7: made 80 to 200 µm over size, and 41 µm of it may be left in the largest permitted bore. */
function hold(boreMm: number, instrument = 'inside-micrometer-rod') {
  const { findings } = sealCheck.run({ seal: { shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' }, bore: { diameterMm: 35, material: 'gjl250', readings: [{ instrument, valuesMm: [boreMm] }] } });
  return findings.filter(({ code }) => code.startsWith('outside-'));
}

test.each([
  [35.02, 'outside-holds', 'good'],
  [35.035, 'outside-holds-unproved', 'care'],
  [35.06, 'outside-holds-less-than-standard', 'care'],
  [35.075, 'outside-hold-cannot-tell', 'unknown'],
  [35.15, 'outside-may-be-loose', 'bad'],
  [35.209, 'outside-may-be-loose', 'bad'],
  [35.22, 'outside-is-loose', 'bad'],
])('a bore of %s mm: %s', (boreMm, code, severity) => {
  expect(hold(boreMm).map((finding) => [finding.code, finding.severity])).toEqual([[code, severity]]);
});

test.each([
  [47.64, 47, 'bore-is-an-inch-size', { fraction: '1 7/8 in' }],
  [42.01, 40, 'bore-is-another-size', { nearestMm: 42 }],
  [40.9, 40, 'bore-is-no-listed-size', { boreMm: 40.9 }],
])('a bore of %s mm for a seal marked %s: %s', (boreMm, outsideMm, code, parameters) => {
  const { findings } = sealCheck.run({ seal: { shaftMm: 25, outsideMm, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' }, bore: { readings: [{ instrument: 'inside-micrometer-rod', valuesMm: [boreMm] }] } });
  expect(findings.find((finding) => finding.code.startsWith('bore-is'))).toMatchObject({ code, severity: 'bad', parameters });
});

test('loose for certain: the gap is told, from the largest seal to the smallest', () => {
  const [loose] = hold(35.25);
  expect(loose?.parameters).toMatchObject({ leastGapUm: expect.closeTo(50, 6) as number, mostGapUm: expect.closeTo(170, 6) as number });
});
