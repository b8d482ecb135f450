import { describe, expect, it } from 'vitest';
import { inchFit } from './inch-fit.js';

describe('inch fit', () => {
  it('gives the limits of a running fit', () => {
    expect(inchFit.run({ nominalIn: 1, fitClass: 'RC5' })).toMatchObject({
      nominalIn: 1,
      fitClass: 'RC5',
      kind: 'clearance',
      hole: { upperThou: 1.2, lowerThou: 0 },
      shaft: { upperThou: -1.6, lowerThou: -2.4 },
      minimumThou: 1.6,
      maximumThou: 3.6,
      holeLargestIn: 1.0012,
      holeSmallestIn: 1,
      shaftLargestIn: 0.9984,
      shaftSmallestIn: 0.9976,
      held: 'page',
    });
  });

  it('counts interference as negative clearance', () => {
    expect(inchFit.run({ nominalIn: 1, fitClass: 'FN2' })).toMatchObject({ kind: 'interference', minimumThou: -1.9, maximumThou: -0.6 });
  });

  it('reads a class in small letters and with a space', () => {
    expect(inchFit.run({ nominalIn: 1, fitClass: ' fn 2' }).fitClass).toBe('FN2');
  });

  it('takes the row that ends at the size, and the next one just over it', () => {
    const upper = (nominalIn: number) => inchFit.run({ nominalIn, fitClass: 'RC5' }).hole.upperThou;
    expect([upper(1.19), upper(1.1900001), upper(1.19001)]).toEqual([1.2, 1.2, 1.6]);
  });

  it('names the range of the class when the size is outside it', () => {
    expect(() => inchFit.run({ nominalIn: 40, fitClass: 'RC5' })).toThrow(
      expect.objectContaining({ code: 'outside-table', path: 'nominalIn', message: 'nominalIn: 40 is outside ANSI B4.1 RC5 (over 0, up to and including 19.69 in)' }) as Error,
    );
  });

  it('names the classes that there are', () => {
    expect(() => inchFit.run({ nominalIn: 1, fitClass: 'FN6' })).toThrow(
      expect.objectContaining({ code: 'no-such-class', path: 'fitClass', allowed: 'nearest: FN1, FN2, FN3, FN4, FN5' }) as Error,
    );
    expect(() => inchFit.run({ nominalIn: 1, fitClass: 'H7' })).toThrow(/RC1, RC2, .*LN3/u);
  });
});
