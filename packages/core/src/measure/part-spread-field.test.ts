import { expect, test } from 'vitest';
import { readSpread } from './internal/read-spread.js';
import { partSpreadField } from './part-spread-field.js';

const faults = (part: Record<string, unknown>) => {
  const read = partSpreadField.safeParse(part);
  return read.success ? [] : read.error.issues.map(({ message, path }) => [message, path.join('.')]);
};
const onceOnly = 'give a toleranceClass, or lowerMm and upperMm, or valuesMm';

const described: readonly (readonly [Readonly<Record<string, unknown>>, readonly (readonly string[])[]])[] = [
  [{ toleranceClass: 'H7' }, []],
  [{ lowerMm: 35, upperMm: 35.025 }, []],
  [{ valuesMm: [35, 35.01] }, []],
  [{}, [[onceOnly, '']]],
  [{ spread: 'uniform' }, [[onceOnly, '']]],
  [{ toleranceClass: 'H7', lowerMm: 35, upperMm: 36 }, [[onceOnly, '']]],
  [{ toleranceClass: 'H7', valuesMm: [35, 36] }, [[onceOnly, '']]],
  [{ lowerMm: 35, upperMm: 36, valuesMm: [35, 36] }, [[onceOnly, '']]],
  [{ lowerMm: 35 }, [['give both lowerMm and upperMm', '']]],
  [{ upperMm: 35 }, [['give both lowerMm and upperMm', '']]],
  [{ lowerMm: 35, upperMm: 35 }, [['lowerMm must be smaller than upperMm', 'upperMm']]],
  [{ lowerMm: 36, upperMm: 35 }, [['lowerMm must be smaller than upperMm', 'upperMm']]],
  ...[{ spread: 'normal' }, { peakMm: 35.005 }, { limitDeviationsCount: 3 }].map((more) => [{ valuesMm: [35, 35.01], ...more }, [['measured sizes spread as they were measured: leave out spread, peakMm and limitDeviationsCount', 'valuesMm']]] as const),
  ...['normal', 'normal within limits'].map((spread) => [{ toleranceClass: 'H7', spread, limitDeviationsCount: 3 }, []] as const),
  [{ toleranceClass: 'H7', limitDeviationsCount: 3 }, []],
  ...['uniform', 'triangular'].map((spread) => [{ toleranceClass: 'H7', spread, limitDeviationsCount: 3 }, [['only a normal spread has limitDeviationsCount', 'limitDeviationsCount']]] as const),
  [{ toleranceClass: 'H7', spread: 'uniform', peakMm: 35.01 }, [['a uniform spread has no peak', 'peakMm']]],
  [{ toleranceClass: 'H7', spread: 'triangular', peakMm: 35.01 }, []],
  [{ toleranceClass: 'H7', peakMm: 35.01 }, []],
];

test.each(described)('%j: %j', (part, expected) => {
  expect(faults(part)).toEqual(expected);
});

test('limits, peak and deviations in µm from the nominal size; what was not said is assumed', () => {
  // H7 at 35 mm: 0 to 25 µm.
  const plain = readSpread({ toleranceClass: 'H7' }, 35, 'hole');
  expect(plain).toMatchObject({ lowUm: 0, highUm: 25, spread: { mean: 12.5, low: 0, high: 25 }, assumptions: [{ name: 'spread-of-hole', value: 'normal within limits' }, { name: 'deviations-to-limit-of-hole', value: 3 }] });
  const offMiddle = readSpread({ lowerMm: 34.98, upperMm: 35.01, peakMm: 35, spread: 'normal', limitDeviationsCount: 2.5 }, 35, 'shaft');
  // The nearer limit is 10 µm from the peak: a deviation of 4 µm.
  expect(offMiddle).toMatchObject({ lowUm: -20, highUm: 10, spread: { mean: 0, variance: 16, low: -Infinity, high: Infinity }, assumptions: [] });
  expect(readSpread({ lowerMm: 35, upperMm: 35.02, spread: 'uniform' }, 35, 'hole')).toMatchObject({ spread: { mean: 10, variance: expect.closeTo(400 / 12, 9) as number }, assumptions: [] });
  for (const peakMm of [35, 35.02]) expect(readSpread({ lowerMm: 35, upperMm: 35.02, spread: 'triangular', peakMm }, 35, 'hole').spread.mean).toBeCloseTo((0 + 20 + (peakMm - 35) * 1000) / 3, 9);
  expect(readSpread({ valuesMm: [35.004, 35.01, 34.999] }, 35, 'hole')).toMatchObject({ lowUm: -1, highUm: 10, assumptions: [] });
});

test('a peak beyond the limits, or on one of them for a normal spread, and a class of the other part are refused', () => {
  const limits = { lowerMm: 35, upperMm: 35.02 } as const;
  for (const peakMm of [34.999, 35.021]) for (const spread of ['triangular', 'normal', undefined] as const) expect(() => readSpread({ ...limits, peakMm, spread }, 35, 'hole')).toThrow(/hole\.peakMm.*outside the limits/u);
  for (const peakMm of [35, 35.02]) expect(() => readSpread({ ...limits, peakMm, spread: 'normal' }, 35, 'shaft')).toThrow(/shaft\.peakMm.*inside the limits/u);
  expect(() => readSpread({ toleranceClass: 'h7' }, 35, 'hole')).toThrow(/hole\.toleranceClass.*h7 is a class for a shaft/u);
});
