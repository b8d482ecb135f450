import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { measuredSize } from './measured-size.js';
import { trustedSize, type TrustedSize } from './trusted-size.js';

const part = { measured: 'measured-shaft', path: 'shaft.readings' } as const;
const read = (valuesMm: number[], instrument = 'outside-micrometer'): TrustedSize => trustedSize([{ instrument, valuesMm }], 'outside', part);
const codesOf = ({ doubts }: TrustedSize) => doubts.map(({ code, role, severity }) => `${code} ${role} ${severity}`);

describe('a slip of the pen does not become a size', () => {
  test.each([
    ['a decimal point', [34.98, 3.498, 34.985]],
    ['swapped digits', [34.98, 43.98]],
    ['inches among millimetres', [34.98, 1.377]],
    ['just over the millimetre', [34.98, 35.981]],
  ])('%s', (_, valuesMm) => {
    const found = read(valuesMm);
    expect(found.size).toBeNull();
    expect(codesOf(found)).toEqual(['readings-contradict deciding unknown']);
    expect(found.doubts[0]).toMatchObject({ missing: 'shaft.readings', parameters: { measured: 'measured-shaft', lowMm: Math.min(...valuesMm), highMm: Math.max(...valuesMm) } });
  });

  test('a worn groove of half a millimetre is no slip, and a large part may differ by a hundredth of its size', () => {
    expect(read([34.98, 33.981]).size?.meanMm).toBeCloseTo(34.4805, 6);
    expect(read([120, 121.2]).size?.meanMm).toBeCloseTo(120.6, 6);
    expect(read([120, 121.22]).size).toBeNull();
  });

  test('between instruments as within one', () => {
    const found = trustedSize([{ instrument: 'outside-micrometer', valuesMm: [34.98] }, { instrument: 'digital-calliper', valuesMm: [53] }], 'outside', part);
    expect(codesOf(found)).toEqual(['readings-contradict deciding unknown']);
  });
});

test('a reading beyond the instrument names its reach and leaves the rest of a sheet alone', () => {
  const found = read([510.2, 510.3]);
  expect(found.size).toBeNull();
  expect(found.doubts).toMatchObject([{ code: 'readings-beyond-instrument', role: 'deciding', severity: 'unknown', missing: 'shaft.readings', parameters: { readingMm: 510.25, instrument: 'Outside micrometer', overMm: 0, upToMm: 500 } }]);
  const second = trustedSize([{ instrument: 'digital-calliper', valuesMm: [24.9] }, { instrument: 'inside-micrometer-rod', valuesMm: [24.95] }], 'inside', part);
  expect(second.doubts).toMatchObject([{ parameters: { readingMm: 24.95, instrument: 'Inside micrometer, rod and sleeve', overMm: 25, upToMm: 200 } }]);
  expect(() => read([20], 'a stick')).toThrow(/unknown instrument/u);
});

describe('one reading far from the others', () => {
  // The micrometer errs by 0.0074 mm (k = 2) at 35 mm: twice that, or three times what the others differ by, is far.
  test.each([
    ['far from two that agree', [34.98, 34.98, 35.0], 'reading-far-from-others supporting care'],
    ['within twice the error of the instrument', [34.98, 34.98, 34.99], ''],
    ['far, but the others spread as well', [34.95, 34.98, 35.05], ''],
    ['low', [34.98, 34.981, 34.979, 34.9], 'reading-far-from-others supporting care'],
    ['two readings tell nothing', [34.98, 35.4], ''],
    ['an oval has two of each', [34.98, 35.1, 34.98, 35.1], ''],
  ])('%s', (_, valuesMm, expected) => {
    const found = read(valuesMm);
    expect(codesOf(found).join()).toBe(expected);
    expect(found.size).toEqual(measuredSize([{ instrument: 'outside-micrometer', valuesMm }], 'outside'));
  });

  test('names it, and the span of the others', () => {
    expect(read([34.98, 34.981, 34.979, 34.9]).doubts[0]?.parameters).toEqual({ measured: 'measured-shaft', readingMm: 34.9, lowMm: 34.979, highMm: 34.981 });
  });
});

test('two instruments that disagree: the uncertainty reaches to both', () => {
  const sets = [{ instrument: 'outside-micrometer', valuesMm: [34.98] }, { instrument: 'digital-calliper', valuesMm: [35.2] }];
  const found = trustedSize(sets, 'outside', part);
  expect(codesOf(found)).toEqual(['instruments-tell-two-sizes supporting care']);
  expect(found.doubts[0]?.parameters).toMatchObject({ lowMm: 34.98, highMm: 35.2, instrument: 'Outside micrometer', otherInstrument: 'Digital calliper, outside' });
  const { meanMm = 0, expandedUncertaintyMm = 0 } = found.size ?? {};
  expect(meanMm + expandedUncertaintyMm).toBeCloseTo(35.2, 9);
  expect(codesOf(trustedSize([{ instrument: 'outside-micrometer', valuesMm: [34.98] }, { instrument: 'digital-calliper', valuesMm: [35] }], 'outside', part))).toEqual([]);
});

test('whatever is read within its instrument and within a millimetre is the size that the readings tell', () => {
  fc.assert(
    fc.property(fc.double({ min: 5, max: 99, noNaN: true }), fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 1, maxLength: 8 }), (fromMm, steps) => {
      const valuesMm = steps.map((step) => fromMm + step);
      const found = trustedSize([{ instrument: 'digital-calliper', valuesMm }], 'outside', part);
      expect(found.size).toEqual(measuredSize([{ instrument: 'digital-calliper', valuesMm }], 'outside'));
      expect(found.doubts.every(({ role }) => role === 'supporting')).toBe(true);
    }),
  );
});

test('no readings, no size and no doubt', () => {
  expect(trustedSize([], 'outside', part)).toEqual({ size: null, doubts: [] });
});
