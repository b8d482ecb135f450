import { describe, expect, it } from 'vitest';
import { findHalfOpenRow } from './half-open-range.js';

const over = [0, 3, 6, 10, 18];
const upTo = [3, 6, 10, 18, 30];

describe('findHalfOpenRow', () => {
  it('counts the upper limit in and the lower limit out', () => {
    expect(findHalfOpenRow(over, upTo, 3)).toBe(0);
    expect(findHalfOpenRow(over, upTo, 3.001)).toBe(1);
    expect(findHalfOpenRow(over, upTo, 18)).toBe(3);
    expect(findHalfOpenRow(over, upTo, 30)).toBe(4);
  });

  it('answers -1 outside', () => {
    expect(findHalfOpenRow(over, upTo, 0)).toBe(-1);
    expect(findHalfOpenRow(over, upTo, -5)).toBe(-1);
    expect(findHalfOpenRow(over, upTo, 30.001)).toBe(-1);
    expect(findHalfOpenRow(over, upTo, NaN)).toBe(-1);
    expect(findHalfOpenRow(over, upTo, Infinity)).toBe(-1);
    expect(findHalfOpenRow([], [], 1)).toBe(-1);
  });

  it('snaps noise of floating point to a millionth before it compares', () => {
    expect(findHalfOpenRow(over, upTo, 0.1 + 0.2 + 2.7)).toBe(0);
    expect(findHalfOpenRow(over, upTo, 10.0000000004)).toBe(2);
    expect(findHalfOpenRow(over, upTo, 10.000001)).toBe(3);
    expect(findHalfOpenRow(over, upTo, 1e-9)).toBe(-1);
  });

  it('agrees with a plain walk over every limit and its neighbours', () => {
    for (const limit of [...over, ...upTo]) {
      for (const value of [limit - 0.001, limit, limit + 0.001]) {
        expect(findHalfOpenRow(over, upTo, value)).toBe(over.findIndex((low, at) => value > low && value <= (upTo[at] ?? NaN)));
      }
    }
  });

  it('leaves gaps empty', () => {
    expect(findHalfOpenRow([0, 10], [5, 20], 5)).toBe(0);
    expect(findHalfOpenRow([0, 10], [5, 20], 7)).toBe(-1);
    expect(findHalfOpenRow([0, 10], [5, 20], 10)).toBe(-1);
    expect(findHalfOpenRow([0, 10], [5, 20], 10.5)).toBe(1);
  });

  it('takes a blank limit as open', () => {
    expect(findHalfOpenRow([null, 10], [10, null], -40)).toBe(0);
    expect(findHalfOpenRow([null, 10], [10, null], 1e6)).toBe(1);
  });
});
