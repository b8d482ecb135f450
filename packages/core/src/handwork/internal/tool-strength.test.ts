import { describe, expect, it } from 'vitest';
import { commonPractice } from '../../result/index.js';
import { toolStrength } from './tool-strength.js';

const pvc = { id: 'pvc', youngsModulusMpa: 2900, poissonRatio: 0.38, strengthMpa: 66, wantedReserveFactor: 3, isPlastic: true, isBrittleCold: true, strengthSource: commonPractice };
const pipe = (outside: number, wall: number) => ({ outsideMm: { low: outside, high: outside }, insideMm: { low: outside - 2 * wall, high: outside - 2 * wall } });

describe('toolStrength', () => {
  /** Worked by hand for PVC, E 2 900 MPa, 66 MPa, 150 mm long, free at the struck end: area, wrinkling, squash, bending over. */
  it.each([
    ['1 in, schedule 40', 33.4, 3.38, 319, 366, 21, 12],
    ['2 in, schedule 40', 60.32, 3.91, 693, 218, 45.7, 88],
    ['110 × 3.2', 110, 3.2, 1074, 87, 70.9, 487],
  ])('%s', (_, outside, wall, areaMm2, wrinklingMpa, squashKn, eulerKn) => {
    const strength = toolStrength(pipe(outside, wall), pvc, 150);
    expect(strength?.areaMm2).toBeCloseTo(areaMm2, -0.5);
    expect(Math.abs((strength?.localBucklingMpa ?? 0) / wrinklingMpa - 1)).toBeLessThan(0.02);
    expect((strength?.squashForceN ?? 0) / 1000).toBeCloseTo(squashKn, 0);
    expect(Math.round((strength?.eulerForceN ?? 0) / 1000)).toBe(eulerKn);
  });

  it('counts the thinnest wall that the bands allow, and has no answer without a wall', () => {
    const bands = { outsideMm: { low: 39, high: 41 }, insideMm: { low: 29, high: 31 } };
    expect(toolStrength(bands, pvc, 100)?.wallMm).toBe(4);
    expect(toolStrength({ outsideMm: { low: 30, high: 32 }, insideMm: { low: 29, high: 31 } }, pvc, 100)).toBeNull();
  });

  it('says which way it gives way', () => {
    expect(toolStrength(pipe(33.4, 3.38), pvc, 150)?.governedBy).toBe('bending over');
    expect(toolStrength(pipe(110, 3.2), pvc, 150)?.governedBy).toBe('squash');
    expect(toolStrength(pipe(110, 1), pvc, 150)?.governedBy).toBe('wrinkling');
  });
});
