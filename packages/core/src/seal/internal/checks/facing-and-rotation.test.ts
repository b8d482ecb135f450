import { expect, test } from 'vitest';
import { sealCheck } from '../../seal-check.js';

const codes = (lipFacing: 'inward' | 'outward' | undefined, fluidSide: 'inside' | 'outside' | undefined, rotation: 'clockwise' | 'counter-clockwise') =>
  sealCheck
    .run({
      seal: { shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR', turns: 'clockwise' },
      rotation,
      ...(lipFacing === undefined ? {} : { lipFacing }),
      ...(fluidSide === undefined ? {} : { fluidSide }),
    })
    .findings.map(({ code }) => code);

test('the mark counts from the air side: outside for a lip that faces inward, inside for one that faces outward', () => {
  expect(codes('inward', 'inside', 'clockwise')).toContain('lip-rotation-right');
  expect(codes('inward', 'inside', 'counter-clockwise')).toContain('lip-made-for-other-rotation');
  expect(codes('outward', 'outside', 'counter-clockwise')).toContain('lip-rotation-right');
  expect(codes('outward', 'outside', 'clockwise')).toContain('lip-made-for-other-rotation');
});

test('where nobody noted how the lip faces, the side of the fluid tells', () => {
  expect(codes(undefined, 'outside', 'counter-clockwise')).toContain('lip-rotation-right');
  expect(codes(undefined, undefined, 'clockwise')).toContain('lip-rotation-right');
});
