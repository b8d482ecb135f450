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

  // A calliper is taken to be off by 0.05 mm; a micrometer by less.
  it('takes what lies within the error of the reading, and says which error it took', () => {
    const found = (input: object) => bearingDimensions.run(input).matches.map(({ designation }) => designation);
    expect(found({ boreMm: 17.05, outsideMm: 40, widthMm: 12 })).toEqual(['6203']);
    expect(found({ boreMm: 17.051, outsideMm: 40, widthMm: 12 })).toEqual([]);
    expect(found({ boreMm: 17.05, outsideMm: 40, widthMm: 12, readingErrorMm: 0.04 })).toEqual([]);
    expect(found({ boreMm: 17.05, outsideMm: 40, widthMm: 12, instrument: 'outside-micrometer' })).toEqual([]);
    expect(found({ boreMm: 17, outsideMm: 40, widthMm: 12, instrument: 'outside-micrometer' })).toEqual(['6203']);
    const assumed = (input: object) => bearingDimensions.run(input).assumptions.map(({ name, value }) => `${name} ${value}`);
    expect(assumed({ boreMm: 17 })).toEqual(['reading-error 0.05']);
    expect(assumed({ boreMm: 17, readingErrorMm: 0.02 })).toEqual([]);
    expect(assumed({ boreMm: 17, instrument: 'outside-micrometer' })).toEqual([]);
  });

  it('knows nothing of seals, clearance and grooves from sizes, and lists no nearest beside a match', () => {
    expect(bearingDimensions.run({ boreMm: 17, outsideMm: 40, widthMm: 12 })).toMatchObject({
      nearest: [], seal: 'not said', closedSideCount: 0, clearanceGroup: null, hasSnapRingGroove: false, unknownSuffixes: [],
      notChecked: ['dimensions-as-listed', 'clearance-group-is-marked', 'ratings-by-the-maker'],
    });
    expect(bearingDimensions.run({ designation: '6203' })).toMatchObject({ nearest: [], assumptions: [], notChecked: ['dimensions-as-listed', 'ratings-by-the-maker'] });
  });

  it('lists six of the nearest, the nearest first', () => {
    const { nearest } = bearingDimensions.run({ boreMm: 17.3 });
    expect(nearest).toHaveLength(6);
    expect(nearest.map(({ boreMm, differenceMm }) => [boreMm, differenceMm])).toEqual(Array.from({ length: 6 }, () => [17, 0.3]));
  });

  it('finds rollers where rollers are asked for: 25 × 52 × 15 is a 6205 or an NU 205', () => {
    const input = { boreMm: 25, outsideMm: 52, widthMm: 15 };
    expect(bearingDimensions.run(input).matches.map(({ designation }) => designation)).toEqual(['6205']);
    expect(bearingDimensions.run({ ...input, bearingKind: 'cylindrical-roller' }).matches.map(({ designation }) => designation)).toEqual(['NU 205']);
  });

  it('shows the row of the table in its working, of the first match alone', () => {
    const row = (input: { readonly designation?: string; readonly boreMm?: number }) => bearingDimensions.explain(input, bearingDimensions.compute(input)).map((step) => (step.kind === 'lookup' ? `${step.table} ${step.row} ${step.value}` : step.kind));
    expect(row({ designation: '6205' })).toEqual(['iso-15-deep-groove 6205 25']);
    expect(row({ designation: 'NU 205' })).toEqual(['iso-15-deep-groove 6205 25']);
    expect(row({ designation: 'NJ 2205' })).toEqual(['iso-15-wide-series 22 05 25']);
    expect(row({ boreMm: 17 })).toHaveLength(1);
    expect(row({ boreMm: 17.3 })).toEqual([]);
  });

  it('asks for a designation or for sizes, not both', () => {
    for (const size of [{ boreMm: 17 }, { outsideMm: 40 }, { widthMm: 12 }]) {
      expect(() => bearingDimensions.run({ designation: '6203', ...size })).toThrow(/designation/);
      expect(bearingDimensions.run(size).matches.length).toBeGreaterThan(0);
    }
  });

  it('names a dozen at the most of those that start alike, rollers among rollers', () => {
    const named = (designation: string) => {
      try {
        bearingDimensions.run({ designation });
      } catch (error) {
        return (error as Error).message;
      }
      return '';
    };
    expect(named('NU 299')).toMatch(/NU 2/);
    expect(named('NU 299')).not.toMatch(/6\d\d\d/);
    expect(named('6299').match(/\b62\d\d\b/gu)).toHaveLength(13);
  });
});
