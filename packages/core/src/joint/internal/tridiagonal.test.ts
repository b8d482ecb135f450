import { lusolve } from 'mathjs';
import { expect, test } from 'vitest';
import { solveTridiagonal } from './tridiagonal.js';

test.each([1, 2, 3, 7, 60])('%i rows: meets a full solution by mathjs', (n) => {
  let seed = 7 + n;
  const next = () => (seed = (seed * 48_271) % 2_147_483_647) / 2_147_483_647;
  const below = Float64Array.from({ length: n }, () => -next());
  const above = Float64Array.from({ length: n }, () => -next());
  const on = Float64Array.from({ length: n }, (_, i) => (below[i] ?? 0) * -1 - (above[i] ?? 0) + next());
  const right = Float64Array.from({ length: n }, () => 2 * next() - 1);
  const full = Array.from({ length: n }, (_, i) => Array.from({ length: n }, (__, j) => (j === i - 1 ? below[i] : j === i ? on[i] : j === i + 1 ? above[i] : 0) ?? 0));
  const expected = (lusolve(full, [...right]) as number[][]).map((row) => row[0] ?? 0);
  [...solveTridiagonal({ below, on, above }, right)].forEach((x, i) => expect(x).toBeCloseTo(expected[i] ?? Number.NaN, 9));
});

test('no rows, no answer', () => {
  const none = new Float64Array(0);
  expect(solveTridiagonal({ below: none, on: none, above: none }, none)).toHaveLength(0);
});
