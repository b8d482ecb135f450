import { expect, test } from 'vitest';
import { contactOf } from './contact-set.js';

const row = (...values: readonly number[]) => Float64Array.from(values);
/** Three equal joints: 2 on the diagonal, −1 beside it. */
const three = { below: row(0, -1, -1), on: row(2, 2, 2), above: row(-1, -1, 0) };

test('all press: the linear system alone', () => {
  const { pressures, gaps } = contactOf(three, row(1, 0, 1));
  pressures.forEach((pressure) => expect(pressure).toBeCloseTo(1, 12));
  expect([...gaps]).toEqual([0, 0, 0]);
});

test('the middle one stands open where its clearance is more than its neighbours take up', () => {
  const { pressures, gaps } = contactOf(three, row(1, -3, 1));
  expect([...pressures]).toEqual([0.5, 0, 0.5]);
  expect([...gaps]).toEqual([0, 2, 0]);
});

test('a joint with clearance closes because its neighbours press', () => {
  const { pressures, gaps } = contactOf(three, row(1, -0.5, 1));
  expect(pressures[1]).toBeCloseTo(0.5, 12);
  expect(gaps[1]).toBe(0);
});

test('neighbours press exactly as far as the clearance: it touches, without pressure and without gap', () => {
  const { pressures, gaps } = contactOf(three, row(1, -1, 1));
  expect(pressures[1]).toBe(0);
  expect(gaps[1]).toBe(0);
});

test('nothing interferes: gaps alone, and zero is plain zero', () => {
  const { pressures, gaps } = contactOf(three, row(-1, 0, -2));
  expect([...pressures]).toEqual([0, 0, 0]);
  expect([...gaps]).toEqual([1, 0, 2]);
  expect([...gaps, ...pressures].some((value) => Object.is(value, -0))).toBe(false);
});
