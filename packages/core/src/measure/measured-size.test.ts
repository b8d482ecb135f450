import { expect, test } from 'vitest';
import { measuredSize } from './measured-size.js';

test('mean, extremes, ovality at one depth and taper between depths', () => {
  const size = measuredSize(
    [
      {
        instrument: 'inside-micrometer-rod',
        points: [
          { valueMm: 35.02, angleDeg: 0, depthMm: 2 },
          { valueMm: 35.03, angleDeg: 90, depthMm: 2 },
          { valueMm: 35.01, angleDeg: 0, depthMm: 6 },
          { valueMm: 35.014, angleDeg: 90, depthMm: 6 },
        ],
      },
    ],
    'inside',
  );
  expect(size).toMatchObject({ smallestMm: 35.01, largestMm: 35.03, ovalityUm: 10, taperUm: -13, readingCount: 4 });
  expect(size?.meanMm).toBeCloseTo(35.0185, 9);
});

test('uncertainty of a 0.05 mm vernier calliper is about 0.065 mm (permissible error and step as rectangular limits, k = 2)', () => {
  expect(measuredSize([{ instrument: 'vernier-calliper-005', valuesMm: [35] }], 'outside')?.expandedUncertaintyMm).toBeCloseTo(0.0645, 4);
});

test('a calliper outside may not be used in a bore', () => {
  expect(() => measuredSize([{ instrument: 'digital-calliper-outside', valuesMm: [35] }], 'inside')).toThrow(/measures outside, not inside/);
});

test('a family name stands for the instrument that measures this way', () => {
  expect(measuredSize([{ instrument: 'digital-calliper', valuesMm: [35] }], 'inside')?.instrument.id).toBe('digital-calliper-inside');
});

test('two instruments are weighted by their uncertainty', () => {
  const both = measuredSize([{ instrument: 'digital-calliper', valuesMm: [35.1] }, { instrument: 'inside-micrometer-rod', valuesMm: [35.02] }], 'inside');
  expect(both?.meanMm).toBeGreaterThan(35.02);
  expect(both?.meanMm).toBeLessThan(35.03);
});

test('one reading has no ovality and no taper', () => {
  expect(measuredSize([{ instrument: 'digital-calliper', valuesMm: [35.1] }], 'inside')).toMatchObject({ ovalityUm: null, taperUm: null });
});

test('a size beyond the instrument is an error that names its reach', () => {
  expect(() => measuredSize([{ instrument: 'inside-micrometer-rod', valuesMm: [12] }], 'inside')).toThrow(/range of inside-micrometer-rod/);
});

test('readings whose mean is exactly the end of a row take that row, in whatever order they were read', () => {
  const values = [49.944, 50.094, 49.968, 49.994];
  const errors = [values, [50.094, 49.994, 49.968, 49.944]].map((valuesMm) => measuredSize([{ instrument: 'outside-micrometer', valuesMm }], 'outside')?.instrument.permissibleErrorMm);
  expect(errors).toEqual([0.004, 0.004]);
});
