import { describe, expect, it } from 'vitest';
import { sealSizes } from './seal-sizes.js';

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
