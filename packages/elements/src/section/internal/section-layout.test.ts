import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { englishWords } from '../../words/english.js';
import { drawnLength } from './dimensions.js';
import { gapMarksOf, rangeOf, roundMagnification } from './gap-marks.js';
import { sectionGeometry, type SectionSituation } from './section-geometry.js';
import { extentOf, layoutSection } from './section-layout.js';

const geometryOf = (situation: SectionSituation | null) => sectionGeometry({ situation, extraction: null, seating: null, driver: null, mode: 'as driven' });

describe('the section drawing', () => {
  it('is to scale, the same along and across, and keeps on its paper', () => {
    const sizes = fc.record({ shaftMm: fc.integer({ min: 4, max: 400 }), ringMm: fc.integer({ min: 2, max: 25 }), widthMm: fc.integer({ min: 2, max: 25 }), depthMm: fc.integer({ min: -5, max: 30 }), width: fc.constantFrom(300, 358, 620, 760, 1000), isCompact: fc.boolean(), rows: fc.integer({ min: 1, max: 3 }) });
    fc.assert(
      fc.property(sizes, ({ shaftMm, ringMm, widthMm, depthMm, width, isCompact, rows }) => {
        const geometry = geometryOf({ seal: { shaftMm, outsideMm: shaftMm + 2 * ringMm, widthMm }, seat: { kind: 'depth', depthMm } });
        const layout = layoutSection(extentOf(geometry), { width, isCompact, rows });
        const across = layout.y(shaftMm / 2) - layout.y(shaftMm / 2 + ringMm);
        const along = layout.x(depthMm + widthMm) - layout.x(depthMm);
        expect(across / ringMm).toBeCloseTo(layout.pxPerMm, 6);
        expect(along / widthMm).toBeCloseTo(layout.pxPerMm, 6);
        expect(layout.x(Math.min(depthMm, 0))).toBeGreaterThan(layout.driverLeft);
        expect(layout.x(depthMm + widthMm)).toBeLessThan(width);
        expect(layout.y(shaftMm / 2 + ringMm)).toBeGreaterThan(layout.topY);
        expect(layout.y(shaftMm / 2)).toBeLessThan(layout.axisY);
        expect(layout.height).toBeLessThan(440 + 26 * (rows - 1));
      }),
      { numRuns: 200 },
    );
  });

  it('stands in with usual sizes while nothing is known, and says so', () => {
    expect(geometryOf(null).known).toEqual({ shaft: false, bore: false, width: false, depth: false });
    expect(geometryOf({ seal: { shaftMm: 30 } })).toMatchObject({ shaftMm: 30, boreMm: 45, known: { shaft: true, bore: false } });
  });

  it('draws the seal where the old one sat while it comes out, and where the new one goes otherwise', () => {
    const situation: SectionSituation = { seal: { shaftMm: 20, outsideMm: 35, widthMm: 7 }, bore: { depthMm: 9 }, seat: { kind: 'shoulder' }, oldDepthMm: [1, 1.2] };
    expect(geometryOf(situation).depthMm).toBe(2);
    expect(sectionGeometry({ situation, extraction: null, seating: null, driver: null, mode: 'taking out' }).depthMm).toBeCloseTo(1.1, 9);
  });

  it('writes lengths as drawings do', () => {
    const mm = { lengthUnit: 'mm', decimalMark: '.' } as const;
    expect([20, 26.29, 0.5, 100, 0].map((value) => drawnLength(value, mm))).toEqual(['20', '26.29', '0.5', '100', '0']);
    expect([19.05, 31.75, 26].map((value) => drawnLength(value, { lengthUnit: 'in', decimalMark: ',' }))).toEqual(['3/4', '1 1/4', '1,024']);
  });
});

describe('the magnified detail', () => {
  it('states a round magnification that is not over what fits', () => {
    expect([0.4, 1, 9.9, 43, 151, 999].map(roundMagnification)).toEqual([1, 1, 8, 40, 150, 800]);
  });

  it('has room for every mark', () => {
    const marks = { nominalMm: 35, inner: { made: { lowUm: 80, highUm: 200, label: 'seal' }, read: null, wanted: null }, outer: { made: null, read: { lowUm: 9, highUm: 15, meanUm: 12, uncertaintyUm: 50, label: 'bore' }, wanted: null }, interference: null };
    const { lowUm, highUm } = rangeOf(marks);
    expect(lowUm).toBeLessThan(12 - 50);
    expect(highUm).toBeGreaterThan(200);
    expect(gapMarksOf(null, 35, englishWords.section)).toBeNull();
  });
});
