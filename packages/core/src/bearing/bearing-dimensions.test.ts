import { describe, expect, it } from 'vitest';
import { bearingDimensions } from './bearing-dimensions.js';

describe('bearing-dimensions', () => {
  it('knows the dimensions behind a designation, whatever stands around it', () => {
    for (const designation of ['6203', ' 6203 2RS', '6203-2Z/C3', '6203.ZZ']) {
      const [match] = bearingDimensions.run({ designation }).matches;
      expect([match?.boreMm, match?.outsideMm, match?.widthMm]).toEqual([17, 40, 12]);
    }
  });

  it('reads the suffixes that the trade shares and asks about the rest', () => {
    expect(bearingDimensions.run({ designation: '6203 2RS C3' })).toMatchObject({ seal: 'seals', clearanceGroup: '3', unknownSuffixes: [] });
    expect(bearingDimensions.run({ designation: '6203-ZZ' })).toMatchObject({ seal: 'shields', clearanceGroup: 'N' });
    expect(bearingDimensions.run({ designation: '6203 NR' })).toMatchObject({ hasSnapRingGroove: true });
    expect(bearingDimensions.run({ designation: '6203 TQ7' }).unknownSuffixes).toEqual(['TQ7']);
    expect(bearingDimensions.run({ designation: '6203 2RS1 C3' })).toMatchObject({ seal: 'not said', clearanceGroup: '3', unknownSuffixes: ['2RS1'] });
    expect(bearingDimensions.run({ designation: '6203' })).toMatchObject({ seal: 'open', clearanceGroup: 'N' });
  });

  it('tells one closed side from two', () => {
    const sides = (designation: string) => bearingDimensions.run({ designation }).closedSideCount;
    expect(['6203', '6203 Z', '6203 RS', '6203-2Z', '6203 ZZ', '6203-2RSC3'].map(sides)).toEqual([0, 1, 1, 2, 2, 2]);
  });

  it('reads suffixes that are run together', () => {
    expect(bearingDimensions.run({ designation: '6203-2RSC3' })).toMatchObject({ seal: 'seals', clearanceGroup: '3', unknownSuffixes: [] });
    expect(bearingDimensions.run({ designation: '6203ZZC4' })).toMatchObject({ seal: 'shields', clearanceGroup: '4', unknownSuffixes: [] });
    expect(bearingDimensions.run({ designation: '6203 ZNR' })).toMatchObject({ seal: 'shields', hasSnapRingGroove: true, unknownSuffixes: [] });
    expect(bearingDimensions.run({ designation: '6203 C3TQ7' })).toMatchObject({ clearanceGroup: null, unknownSuffixes: ['C3TQ7'] });
  });

  it('finds the bearing from sizes as a calliper reads them', () => {
    expect(bearingDimensions.run({ boreMm: 17.02, outsideMm: 39.98, widthMm: 12.03 }).matches.map(({ designation }) => designation)).toEqual(['6203']);
    expect(bearingDimensions.run({ boreMm: '17 mm', outsideMm: '40 mm' }).matches.map(({ designation }) => designation)).toEqual(['6203']);
  });

  it('lists the nearest where none matches, each with what it differs by', () => {
    const { matches, nearest } = bearingDimensions.run({ boreMm: 17, outsideMm: 41, widthMm: 12 });
    expect(matches).toEqual([]);
    expect(nearest[0]).toMatchObject({ designation: '6203', differenceMm: 1 });
  });

  it('says which designations start alike when there is none of that name', () => {
    expect(() => bearingDimensions.run({ designation: '6299' })).toThrow(/6200/);
    expect(() => bearingDimensions.run({ designation: 'nonsense' })).toThrow(/designation/);
    expect(() => bearingDimensions.run({})).toThrow(/designation/);
  });
});
