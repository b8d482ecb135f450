import { expect, test } from 'vitest';
import { jobSheet } from './job-sheet.js';

const seal = { kind: 'seal', shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' };
const sheet = (innerDepthMm: number) =>
  jobSheet.run({
    workshop: {
      format: 'seatwright', version: 1,
      machines: [{ name: 'winch', positions: [{ name: 'drum', parts: [{ ...seal, name: 'outer', seat: { kind: 'depth', depthMm: 0 } }, { ...seal, name: 'inner', seat: { kind: 'depth', depthMm: innerDepthMm } }] }] }],
    },
  });
const codes = (depthMm: number) => sheet(depthMm).fileFindings.map(({ code }) => code);

test('two seals in one bore each need their own depth', () => {
  expect(codes(9)).toContain('seals-stand-apart');
  expect(sheet(9).fileFindings.find(({ code }) => code === 'seals-stand-apart')?.parameters['gapMm']).toBe(2);
  expect(codes(6.5)).toContain('seals-overlap');
  expect(sheet(6.5).verdict).toBe('does not suit');
});
