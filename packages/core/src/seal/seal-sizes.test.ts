import { describe, expect, it } from 'vitest';
import { expectWorkingHolds } from '../../../../tests/laws/internal/evaluate-working.js';
import { sealSizes, type SealSizesInput } from './seal-sizes.js';

const named = (sizes: readonly { readonly shaftMm: number; readonly outsideMm: number; readonly widthMm: number }[]) => sizes.map(({ shaftMm, outsideMm, widthMm }) => `${shaftMm} × ${outsideMm} × ${widthMm}`);
const codes = (findings: readonly { readonly code: string }[]) => findings.map(({ code }) => code);

describe('seal-sizes', () => {
  it('finds the listed size for shaft and bore as a calliper reads them', () => {
    expect(named(sealSizes.run({ shaftMm: 19.97, boreMm: 35.03, widthMm: 7 }).exact)).toEqual(['20 × 35 × 7']);
  });

  it('names what differs where a size nearly fits, and what that does', () => {
    const { near } = sealSizes.run({ shaftMm: 20, boreMm: 35.2 });
    expect(near[0]).toMatchObject({ shaftMm: 20, outsideMm: 35, differs: ['bore'], verdict: 'does not suit' });
    expect(codes(near[0]?.findings ?? [])).toEqual(['size-outside-may-be-loose']);
    const slack = sealSizes.run({ shaftMm: 19.7, boreMm: 35 }).near[0];
    expect([slack?.shaftMm, slack?.lipInterferenceMm?.low]).toEqual([20, expect.closeTo(0.2, 9)]);
    expect(codes(slack?.findings ?? [])).toEqual(['size-lip-slack']);
  });

  it('19 mm is not 3/4 in: 0.05 mm, less grip on the shaft and a looser outside in 35 mm for 1 3/8 in', () => {
    const { findings, inchEquivalents, isInchLikely } = sealSizes.run({ shaftMm: 19, boreMm: 35 });
    expect(inchEquivalents[0]).toMatchObject({ fraction: '3/4 in', fractionMm: 19.05, differenceMm: -0.05 });
    expect(codes(findings)).toEqual(['size-not-listed', 'inch-seal-grips-less', 'inch-seal-sits-looser']);
    expect(isInchLikely).toBe(false);
  });

  it('suspects inch sizes where both lie on sixteenths and no metric size takes them', () => {
    expect(codes(sealSizes.run({ shaftMm: 19.05, boreMm: 34.93 }).findings)).toContain('inch-size-suspected');
    expect(sealSizes.run({ shaftMm: 20, boreMm: 35 }).isInchLikely).toBe(false);
  });
});

/*
 * By hand for 20 × 35 × 7: shaft h11 0/−0.13, bore H8 0/+0.039; lip made 0.5 to 1.3 smaller than 20 (GB 9877.1); metal outside 0.08 to 0.20 larger than 35, rubber 0.15 to 0.30 (ISO 6194).
 * Where nothing is said a reading is taken to be off by 0.05.
 */
const rounded = (numbers: Readonly<Record<string, string | number>>) => Object.fromEntries(Object.entries(numbers).map(([name, value]) => [name, typeof value === 'number' ? Math.round(value * 1e6) / 1e6 : value]));

describe('20 × 35 × 7', () => {
  const look = (input: Partial<SealSizesInput>) => {
    const output = sealSizes.run({ shaftMm: 20, boreMm: 35, ...input });
    const size = [...output.exact, ...output.near].find(({ shaftMm, outsideMm, widthMm }) => shaftMm === 20 && outsideMm === 35 && widthMm === 7);
    return { differs: size?.differs.join(' '), told: size?.findings.map(({ code, severity }) => `${code} ${severity}`).join(', '), numbers: rounded(size?.findings[0]?.parameters ?? {}), size };
  };

  it.each<[Partial<SealSizesInput>, string, string]>([
    [{}, '', ''],
    [{ shaftMm: 19.82 }, '', ''],
    [{ shaftMm: 19.819 }, 'shaft', 'size-lip-slack care'],
    [{ shaftMm: 20.05 }, '', ''],
    [{ shaftMm: 20.051 }, 'shaft', 'size-lip-stretched care'],
    [{ shaftMm: 20.051, readingErrorMm: 0.06 }, '', ''],
    [{ shaftMm: 19.51 }, 'shaft', 'size-lip-slack care'],
    [{ shaftMm: 19.5 }, 'shaft', 'size-lip-may-not-touch bad'],
    [{ shaftMm: 19.49 }, 'shaft', 'size-for-another-shaft bad'],
    [{ shaftMm: 20.5 }, 'shaft', 'size-lip-stretched care'],
    [{ shaftMm: 20.51 }, 'shaft', 'size-for-another-shaft bad'],
    [{ boreMm: 34.95 }, '', ''],
    [{ boreMm: 34.949 }, 'bore', 'size-outside-very-tight care'],
    [{ boreMm: 35.089 }, '', ''],
    [{ boreMm: 35.09 }, 'bore', 'size-outside-may-be-loose bad'],
    [{ boreMm: 35.05, readingErrorMm: 0 }, 'bore', 'size-outside-holds-less care'],
    [{ boreMm: 35.079, readingErrorMm: 0 }, 'bore', 'size-outside-holds-less care'],
    [{ boreMm: 35.08, readingErrorMm: 0 }, 'bore', 'size-outside-may-be-loose bad'],
    [{ boreMm: 35.5 }, 'bore', 'size-outside-may-be-loose bad'],
    [{ boreMm: 35.51 }, 'bore', 'size-for-another-bore bad'],
    [{ boreMm: 34.49 }, 'bore', 'size-for-another-bore bad'],
    [{ widthMm: 7.3 }, '', ''],
    [{ widthMm: 7.31 }, 'width', 'size-narrower care'],
    [{ widthMm: 6.69 }, 'width', 'size-wider care'],
    [{ shaftMm: 19.8, boreMm: 35.1, widthMm: 8 }, 'shaft bore width', 'size-lip-slack care, size-outside-may-be-loose bad, size-narrower care'],
  ])('%j differs in "%s": %s', (input, differs, told) => {
    expect(look(input)).toMatchObject({ differs, told });
  });

  it('tells by how much, and what lip and outside have left', () => {
    expect(look({ shaftMm: 19.7 }).numbers).toEqual({ differenceMm: 0.3, markedMm: 20, lipLowMm: 0.2, lipHighMm: 1 });
    expect(look({ shaftMm: 20.6 }).numbers).toEqual({ differenceMm: 0.6, markedMm: 20 });
    expect(look({ boreMm: 34.9, readingErrorMm: 0 }).numbers).toEqual({ differenceMm: 0.1, markedMm: 35, leastUm: 180, mostUm: 300 });
    expect(look({ boreMm: 35.6 }).numbers).toEqual({ differenceMm: 0.6, markedMm: 35 });
    expect(look({ widthMm: 8 }).numbers).toEqual({ differenceMm: 1, markedMm: 7 });
    expect(look({}).size).toMatchObject({ widthDifferenceMm: null, lipInterferenceMm: { low: 0.5, high: 1.3 }, caseInterferenceUm: { low: 80, high: 200 } });
    expect(look({ construction: 'rubber-covered' }).size?.caseInterferenceUm?.low).toBeCloseTo(150, 9);
    expect(look({ shaftMm: 20.6, boreMm: 35 }).size?.lipInterferenceMm).toBeNull();
    expect(look({ boreMm: 35.6 }).size?.caseInterferenceUm).toBeNull();
  });

  it('is looked for up to 6 mm off, as long as one of shaft and bore is right', () => {
    expect(look({ shaftMm: 26 }).size).toBeDefined();
    expect(look({ shaftMm: 26.1 }).size).toBeUndefined();
    expect(look({ shaftMm: 20.5, boreMm: 41 }).size).toBeDefined();
    expect(look({ shaftMm: 20.6, boreMm: 35.6 }).size).toBeUndefined();
  });

  it('stands once, with all lists that have it, before what suits less', () => {
    const { exact, near } = sealSizes.run({ shaftMm: 20, boreMm: 35 });
    const all = named([...exact, ...near]);
    expect(new Set(all).size).toBe(all.length);
    expect(exact[0]?.lists).toEqual(expect.arrayContaining(['din-3760', 'iso-6194-1']));
    expect(near.length).toBeLessThanOrEqual(12);
    const order = ['suits', 'suits with care', 'cannot tell', 'does not suit'];
    const places = near.map(({ verdict, differs }) => order.indexOf(verdict) * 10 + differs.length);
    expect(places).toEqual(places.toSorted((a, b) => a - b));
  });
});

describe('inches', () => {
  const look = (input: SealSizesInput) => sealSizes.run(input);

  it.each([
    [19.05, '3/4 in', 0], [25.4, '1 in', 0], [34.93, '1 3/8 in', 0.005], [20, '13/16 in', -0.6375], [38.05, '1 1/2 in', -0.05],
  ])('%d mm: %s, %d mm off', (shaftMm, fraction, differenceMm) => {
    expect(look({ shaftMm, boreMm: 60 }).inchEquivalents[0]).toMatchObject({ dimension: 'shaft', measuredMm: shaftMm, fraction, differenceMm });
  });

  it('are suspected within the error of the readings alone, on sixteenths alone', () => {
    const likely = (shaftMm: number, boreMm: number, readingErrorMm?: number) => look({ shaftMm, boreMm, ...(readingErrorMm === undefined ? {} : { readingErrorMm }) }).isInchLikely;
    expect(likely(19.05, 34.925)).toBe(true);
    expect(likely(19.1, 34.925)).toBe(true);
    expect(likely(19.11, 34.925)).toBe(false);
    expect(likely(19.11, 34.925, 0.06)).toBe(true);
    expect(likely(19.05, 34.98)).toBe(false);
    // 25/32 in.
    expect(likely(19.84375, 34.925)).toBe(false);
    expect(look({ shaftMm: 19.05, boreMm: 34.925 }).findings.find(({ code }) => code === 'inch-size-suspected')?.parameters).toEqual({ shaftInches: '3/4 in', boreInches: '1 3/8 in' });
  });

  it.each<[SealSizesInput, readonly string[]]>([
    [{ shaftMm: 19.15, boreMm: 60 }, ['inch-seal-grips-more']],
    [{ shaftMm: 18.95, boreMm: 60 }, ['inch-seal-grips-less']],
    [{ shaftMm: 19.3, boreMm: 60 }, ['inch-seal-grips-more']],
    [{ shaftMm: 19.301, boreMm: 60 }, []],
    [{ shaftMm: 19.05, boreMm: 60 }, []],
    [{ shaftMm: 20, boreMm: 35.025 }, ['inch-seal-sits-looser']],
    [{ shaftMm: 20, boreMm: 34.85 }, ['inch-seal-sits-tighter']],
    [{ shaftMm: 20, boreMm: 35, widthMm: 6.3 }, ['inch-seal-sits-looser']],
  ])('%j: %j', (input, expected) => {
    expect(codes(look(input).findings).filter((code) => code.startsWith('inch-seal'))).toEqual(expected);
  });

  it('stand in the working as sixteenths', () => {
    const steps = sealSizes.explain({ shaftMm: 19.05, boreMm: 34.925, widthMm: 6.35 }, look({ shaftMm: 19.05, boreMm: 34.925, widthMm: 6.35 }));
    expectWorkingHolds(steps);
    expect(steps).toMatchObject([{ symbol: 'f_shaft', scope: { n: 12 }, value: 19.05 }, { symbol: 'f_bore', scope: { n: 22 }, value: 34.925 }, { symbol: 'f_width', scope: { n: 4 }, value: 6.35 }]);
  });
});

it('says how many sizes are listed, and which error it took', () => {
  const output = sealSizes.run({ shaftMm: 20, boreMm: 35 });
  expect(output.findings[0]).toMatchObject({ code: 'size-is-listed', severity: 'good', parameters: { sizeCount: output.exact.length } });
  expect(output.assumptions).toMatchObject([{ name: 'reading-error', value: 0.05, effect: 'which-size' }]);
  expect(sealSizes.run({ shaftMm: 20, boreMm: 35, readingErrorMm: 0.1 }).assumptions).toEqual([]);
  expect(sealSizes.run({ shaftMm: 20, boreMm: 35.5 }).findings[0]).toMatchObject({ code: 'size-not-listed', severity: 'care' });
  expect(output.notChecked).toEqual(['sizes-beyond-the-lists']);
});
